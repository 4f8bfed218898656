// The backup that is offered after a damage, and putting it back: see check_off_presenter.h.
#include "app/checkoff/check_off_presenter.h"

namespace fb {

void CheckOffPresenter::putBack()
{
    if (!m_state.offered || m_state.saving)
        return;
    m_work = std::make_shared<LongWork>();
    m_state.puttingBack = 0;
    setSaving(true);
    m_look.start();
    m_records.putBack(m_state.offered->file, std::nullopt, m_work, this, [this](const Result<PutBack>& done) {
        if (!done)
            return notPutBack(done.error());
        // Whatever was chosen before is of other records.
        m_state.chosenStudent.clear();
        m_records.openDesk({}, this, [this, done = *done](const Result<Desk>& desk) {
            endPutBack();
            m_state.putBack = done;
            if (!desk)
                return tell(desk.error());
            take(*desk);
            Q_EMIT kept();
        });
    });
}

// Nothing was changed; of a backup that turned out to be damaged the one before it is offered.
void CheckOffPresenter::notPutBack(const Fault& why)
{
    const bool wasCancelled = m_work->cancelled;
    endPutBack();
    if (!wasCancelled)
        tell(why);
    openDesk();
}

void CheckOffPresenter::endPutBack()
{
    m_look.stop();
    m_work.reset();
    m_state.puttingBack.reset();
    setSaving(false);
}

void CheckOffPresenter::lookHowFar()
{
    m_state.puttingBack = m_work->percent;
    Q_EMIT ticked();
}

void CheckOffPresenter::cancelPutBack()
{
    if (m_work)
        m_work->cancelled = true;
}

void CheckOffPresenter::declineBackup()
{
    if (m_state.saving)
        return;
    m_declined = true;
    m_state.offered.reset();
    Q_EMIT changed();
}

void CheckOffPresenter::dismissPutBack()
{
    m_state.putBack.reset();
    Q_EMIT changed();
}

}  // namespace fb
