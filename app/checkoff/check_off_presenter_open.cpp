// How one check-off is opened, gone on with and left: see check_off_presenter.h.
#include <QCoreApplication>
#include <algorithm>

#include "app/checkoff/check_off_presenter.h"
#include "app/doors/plate_hashes.h"

namespace fb {

CheckOffOrder CheckOffPresenter::orderFor(const Student& student, const SheetOnFile& sheet)
{
    CheckOffOrder order;
    order.student = student.id;
    order.sheet = sheet.key;
    order.seed = sheet.sheet.seedRule == SeedRule::SameForAll ? sheet.sheet.seed : m_seeds.fresh();
    order.extraPercent = student.extraPercent;
    order.policyText = m_policyText;
    order.plateHashes = plateHashesOf(requestsOf(sheet.sheet, order.seed));
    order.programVersion = QCoreApplication::applicationVersion();
    order.pixelsPerMm = m_pixelsPerMm;
    return order;
}

void CheckOffPresenter::begin(const QString& student)
{
    const StudentStanding* line = standing(student);
    const SheetOnFile* chosen = sheet();
    const bool isFreeToBegin = m_state.ready && !m_state.saving && (!m_state.open || m_state.signedOff);
    if (!line || !chosen || !isFreeToBegin || !mayStart(line->where))
        return;
    if (m_state.desk.running) {
        const Student& other = m_state.desk.running->student;
        return tell({Problem::CheckOffRunning, {}, (other.given + u' ' + other.family).toStdString()});
    }
    RunningCheckOff running;
    running.student = line->student;
    running.sheet = *chosen;
    running.order = orderFor(line->student, *chosen);
    running.attempt = line->where.used + 1;
    running.needsSecondAssessor = line->where.needsSecondAssessor;
    running.begunAt = m_clock.wall();
    m_state.chosenStudent = student;
    m_state.timeShown = true;
    open(running, *m_labPolicy);
}

void CheckOffPresenter::goOn()
{
    if (!m_state.ready || m_state.open || !m_state.desk.running)
        return;
    const RunningCheckOff running = *m_state.desk.running;
    const auto policy = Policy::parseOver(running.order.policyText.toStdString(), m_library->defaultPolicy());
    if (!policy)
        return tell(policy.error());
    open(running, *policy);
}

void CheckOffPresenter::open(const RunningCheckOff& running, const Policy& policy)
{
    CheckOff checkOff({running.sheet.sheet, running.order.seed, running.order.extraPercent});
    QString pauseReason;
    for (const CheckOffEvent& event : running.events) {
        if (const auto applied = checkOff.apply(event, std::nullopt); !applied)
            return tell(applied.error());
        if (event.kind == CheckOffEventKind::Paused)
            pauseReason = QString::fromStdString(event.note);
    }
    leave();
    checkOff.resumeAt(now(), running.onScreen, running.onManikin);
    m_checkOff.emplace(std::move(checkOff));
    m_policy = policy;
    m_state.open = running;
    m_state.pauseReason = pauseReason;
    m_state.notice.reset();
    m_timeKept = now();
    m_timer.start();
    showItem();
    refresh();
}

void CheckOffPresenter::leave()
{
    m_timer.stop();
    m_checkOff.reset();
    m_unkept.reset();
    m_stopped.reset();
    m_stopwatch = CountedTime();
    m_turn.forget();
    m_state.open.reset();
    m_state.signedOff.reset();
    m_state.itemTimeUp = false;
    m_state.pauseReason.clear();
}

// Read before it is shown, so that the first one stands there at once.
void CheckOffPresenter::showItem()
{
    if (m_checkOff->stage() <= CheckOffStage::OnScreen)
        m_items->examine(m_checkOff->requests(), m_checkOff->item(), *m_policy);
}

void CheckOffPresenter::withRecord(const Then& then)
{
    if (!m_state.open || m_state.saving)
        return;
    if (m_state.open->id != 0)
        return then();
    setSaving(true);
    m_records.begin(m_state.open->order, this, [this, then](const Result<RunningCheckOff>& begun) {
        if (!begun)
            return fail(begun.error());
        m_state.open = *begun;
        setSaving(false);
        Q_EMIT kept();
        then();
    });
}

void CheckOffPresenter::backToDesk()
{
    if (!m_state.open || m_state.saving)
        return;
    const bool isUnbegun = m_state.open->id == 0;
    if (!isUnbegun && m_state.stage == CheckOffStage::Identity)
        return voidTechnical(tr("Wrong student chosen"));
    if (!isUnbegun && !m_state.signedOff)
        return;
    if (m_state.signedOff && m_state.next)
        m_state.chosenStudent = m_state.next->id;
    leave();
    openDesk();
    Q_EMIT changed();
}

// Who comes after this one on the list and may start.
void CheckOffPresenter::findNext()
{
    m_state.next.reset();
    if (!m_state.open)
        return;
    const auto& students = m_state.desk.students;
    auto at = std::ranges::find_if(
        students, [&](const StudentStanding& each) { return each.student.id == m_state.open->student.id; });
    at = at == students.end() ? at : std::find_if(std::next(at), students.end(), [](const auto& each) {
        return mayStart(each.where);
    });
    if (at != students.end())
        m_state.next = at->student;
}

void CheckOffPresenter::nextStudent()
{
    if (m_state.signedOff && m_state.next)
        begin(QString(m_state.next->id));
}

}  // namespace fb
