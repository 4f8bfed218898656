// What student and assessor do, one after the other, up to the signing: see check_off_presenter.h.
#include <algorithm>

#include "app/checkoff/check_off_presenter.h"

namespace fb {

void CheckOffPresenter::confirmIdentity()
{
    if (m_state.stage == CheckOffStage::Identity)
        withRecord([this] { ask(m_checkOff->confirm(now())); });
}

void CheckOffPresenter::startItems()
{
    if (isFree() && m_state.stage == CheckOffStage::Instructions)
        ask(m_checkOff->start(now()));
}

void CheckOffPresenter::setTimeShown(bool shown)
{
    m_state.timeShown = shown;
    Q_EMIT changed();
}

void CheckOffPresenter::pause(const QString& reason)
{
    if (isFree())
        ask(m_checkOff->pause(reason.trimmed().toStdString(), now()));
}

void CheckOffPresenter::resume()
{
    if (isFree() && m_state.paused)
        ask(m_checkOff->resume(now()));
}

void CheckOffPresenter::takeOver()
{
    if (isFree() && m_state.stage == CheckOffStage::Handover)
        ask(m_checkOff->takeOver(now()));
}

void CheckOffPresenter::observe(ProcedureStep step, Seen seen, const QString& remark)
{
    m_turn.ask([this, step, seen, remark] {
        if (m_checkOff)
            ask(m_checkOff->observe(step, seen, remark.trimmed().toStdString(), now()));
    });
}

void CheckOffPresenter::withdraw(ProcedureStep step)
{
    m_turn.ask([this, step] {
        if (m_checkOff && m_checkOff->seen(step))
            ask(m_checkOff->withdraw(step, now()));
    });
}

void CheckOffPresenter::restNotDone()
{
    if (!m_state.open || m_state.stage != CheckOffStage::OnManikin)
        return;
    const Sheet sheet = m_state.open->sheet.sheet;
    for (const SheetStep& each : sheet.steps) {
        const auto said = std::ranges::find(m_state.observations, each.step, &Observation::step);
        if (said == m_state.observations.end() && belongs(each.step, sheet.protocol))
            observe(each.step, Seen::NotDone);
    }
}

// Stopped, the seconds stay on the watch until they are kept.
void CheckOffPresenter::toggleHolding()
{
    m_turn.ask([this] {
        if (!m_checkOff || m_state.stage != CheckOffStage::OnManikin || m_state.paused)
            return;
        if (!m_stopwatch.isRunning() && !m_stopped) {
            m_stopwatch = CountedTime();
            m_stopwatch.run(now());
            return refresh();
        }
        if (!m_stopped) {
            m_stopwatch.hold(now());
            constexpr double kMsPerSecond = 1000.0;
            m_stopped = static_cast<double>(m_stopwatch.used().count()) / kMsPerSecond;
        }
        ask(m_checkOff->hold(*m_stopped, now()));
    });
}

void CheckOffPresenter::finish()
{
    if (isFree())
        ask(m_checkOff->finish(now()));
}

void CheckOffPresenter::stopForSafety(const QString& why)
{
    m_turn.ask([this, why] {
        if (m_checkOff)
            ask(m_checkOff->stopForSafety(why.trimmed().toStdString(), now()));
    });
}

void CheckOffPresenter::voidTechnical(const QString& why)
{
    if (!m_state.open)
        goOn();
    withRecord([this, why] { ask(m_checkOff->voidTechnical(why.trimmed().toStdString(), now())); });
}

void CheckOffPresenter::noShow()
{
    if (!m_state.open)
        begin(QString(m_state.chosenStudent));
    withRecord([this] { ask(m_checkOff->noShow(now())); });
}

}  // namespace fb
