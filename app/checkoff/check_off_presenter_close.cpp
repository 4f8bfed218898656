// Rating and signature: see check_off_presenter.h.
#include <algorithm>

#include "app/checkoff/check_off_presenter.h"

namespace fb {

namespace check_off_close_detail {

// Of two who sign, it is said whose PIN it was.
Fault ofOne(Fault fault, qint64 signer, const std::vector<Assessor>& assessors)
{
    const bool ofPin = fault.problem == Problem::PinWrong || fault.problem == Problem::PinHeld;
    const auto who = std::ranges::find(assessors, signer, &Assessor::id);
    if (ofPin && who != assessors.end())
        fault.what = who->name.toStdString();
    return fault;
}

}  // namespace check_off_close_detail

using check_off_close_detail::ofOne;

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
        m_records.prove(
            first, pin, this, [this, event, first, second, secondPin](const Result<Proof>& proof) {
                if (!proof)
                    return fail(second == 0 ? proof.error()
                                            : ofOne(proof.error(), first, m_state.desk.assessors));
                if (second == 0)
                    return signWith(*event, *proof, std::nullopt);
                const auto proved = [this, event, second, one = *proof](const Result<Proof>& other) {
                    if (other)
                        signWith(*event, one, *other);
                    else
                        fail(ofOne(other.error(), second, m_state.desk.assessors));
                };
                m_records.prove(second, secondPin, this, proved);
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
