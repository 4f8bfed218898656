// Rating and signature: see check_off_presenter.h.
#include "app/checkoff/check_off_presenter.h"

namespace fb {

void CheckOffPresenter::rate(int rating, const QString& remark)
{
    m_turn.ask([this, rating, remark] {
        if (m_checkOff)
            ask(m_checkOff->rate(rating, remark.trimmed().toStdString(), now()));
    });
}

void CheckOffPresenter::enrol(const QString& name, const QString& pin)
{
    m_turn.ask([this, name, pin] {
        setSaving(true);
        m_records.enrol(name.trimmed(), pin, std::nullopt, this, [this](const Result<Proof>& enrolled) {
            if (!enrolled)
                return fail(enrolled.error());
            m_state.desk.assessors.push_back(enrolled->assessor);
            setSaving(false);
            Q_EMIT kept();
            m_turn.goOn();
        });
    });
}

void CheckOffPresenter::sign(qint64 first, const QString& pin, qint64 second, const QString& secondPin)
{
    m_turn.ask([this, first, pin, second, secondPin] {
        if (!m_checkOff || m_state.signedOff)
            return;
        const auto event = m_checkOff->sign(now());
        if (!event)
            return tell(event.error());
        setSaving(true);
        m_records.prove(first, pin, this, [this, event, second, secondPin](const Result<Proof>& proof) {
            if (!proof)
                return fail(proof.error());
            if (second == 0)
                return signWith(*event, *proof, std::nullopt);
            m_records.prove(second, secondPin, this, [this, event, one = *proof](const Result<Proof>& other) {
                if (other)
                    signWith(*event, one, *other);
                else
                    fail(other.error());
            });
        });
    });
}

void CheckOffPresenter::signWith(const CheckOffEvent& event, const Proof& first,
                                 const std::optional<Proof>& second)
{
    m_records.sign(m_state.open->id, event, m_checkOff->result(), first, second, this,
                   [this, event](const Result<SignedOff>& done) {
                       if (!done)
                           return fail(done.error());
                       m_state.signedOff = *done;
                       applied(event);
                       // Who is due now is asked of the records.
                       openDesk();
                   });
}

}  // namespace fb
