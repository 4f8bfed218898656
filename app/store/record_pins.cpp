#include "app/store/record_pins.h"

#include <algorithm>

#include "app/lock/pin.h"
#include "app/store/audit_chain.h"
#include "app/store/record_people.h"

namespace fb {

namespace record_pins_detail {

Ms delayAfter(int wrongInARow) { return std::chrono::seconds{pinDelay(wrongInARow)}; }

Result<bool> keepTries(Store& store, qint64 assessor, int wrong, const QDateTime& until)
{
    return store.transaction([&] {
        return store.change(
            {QStringLiteral("UPDATE assessor SET wrong_in_a_row = ?, wait_until = ? WHERE assessor_id = ?"),
             {wrong, orNull(until.isValid() ? std::optional(isoText(until)) : std::nullopt), assessor}});
    });
}

Result<qint64> nextAssessor(const Store& store)
{
    return store.rows({QStringLiteral("SELECT coalesce(max(assessor_id), 0) + 1 FROM assessor")})
        .map([](const auto& rows) { return rows.front().front().toLongLong(); });
}

// The first may be enrolled by anybody.
Result<bool> mayEnrol(const Store& store, qint64 next, const std::optional<Proof>& by)
{
    if (next == 1)
        return true;
    return readAssessor(store, by ? by->assessor.id : 0).map([](const Assessor&) { return true; });
}

}  // namespace record_pins_detail

using namespace record_pins_detail;

Result<Proof> enrolAssessor(Store& store, const QString& name, const QString& pin,
                            const std::optional<Proof>& by, const Moment& now)
{
    if (name.trimmed().isEmpty())
        return fault(Problem::NameMissing);
    const auto hash = checkedPin(pin).and_then([&](bool) { return pinHash(pin); });
    if (!hash)
        return tl::unexpected(hash.error());
    Assessor fresh{0, name.trimmed()};
    const auto done = store.transaction([&]() -> Result<bool> {
        const auto id = nextAssessor(store);
        if (!id)
            return tl::unexpected(id.error());
        fresh.id = *id;
        if (const auto may = mayEnrol(store, *id, by); !may)
            return may;
        const auto added = store.change(
            {QStringLiteral("INSERT INTO assessor (assessor_id, name, pin_hash, wrong_in_a_row, enrolled_at) "
                            "VALUES (?, ?, ?, 0, ?)"),
             {fresh.id, fresh.name, *hash, isoText(now.at)}});
        if (!added)
            return added;
        return appendAudit(store,
                           {.actor = actorName(by ? by->assessor : fresh),
                            .event = QStringLiteral("ENROL"),
                            .object = actorName(fresh),
                            .detail = fresh.name},
                           now.at)
            .map([](const ChainEnd&) { return true; });
    });
    return done.map([&](bool) { return Proof{fresh}; });
}

Result<PinCheck::Kept> PinCheck::kept(const Store& store, qint64 assessor)
{
    const auto rows = store.rows(
        {QStringLiteral(
             "SELECT name, pin_hash, wrong_in_a_row, wait_until FROM assessor WHERE assessor_id = ?"),
         {assessor}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::AssessorUnknown);
    const QVariantList& row = rows->front();
    return Kept{
        {assessor, row[0].toString()}, row[1].toString(), row[2].toInt(), timeFrom(row[3].toString())};
}

Ms PinCheck::left(const Kept& kept, const Moment& now, Ms steady)
{
    const auto waits = m_until.find(kept.assessor.id);
    if (waits != m_until.end())
        return waits->second - steady;
    if (!kept.until.isValid())
        return Ms{0};
    const Ms inherited = std::min(Ms{now.at.msecsTo(kept.until)}, delayAfter(kept.wrong));
    m_until[kept.assessor.id] = steady + inherited;
    return inherited;
}

Result<Proof> PinCheck::prove(Store& store, qint64 assessor, const QString& pin, const Moment& now, Ms steady)
{
    const auto known = kept(store, assessor);
    if (!known)
        return tl::unexpected(known.error());
    if (const Ms wait = left(*known, now, steady); wait > Ms{0})
        return fault(Problem::PinHeld, {}, {},
                     static_cast<double>(std::chrono::ceil<std::chrono::seconds>(wait).count()));
    const int wrong = known->wrong + 1;
    const Ms delay = delayAfter(wrong);
    const QDateTime until = delay > Ms{0} ? now.at.addMSecs(delay.count()) : QDateTime();
    if (const auto noted = keepTries(store, assessor, wrong, until); !noted)
        return tl::unexpected(noted.error());
    m_until[assessor] = steady + delay;
    if (!pinMatches(known->hash, pin))
        return fault(Problem::PinWrong);
    if (const auto forgiven = keepTries(store, assessor, 0, {}); !forgiven)
        return tl::unexpected(forgiven.error());
    m_until[assessor] = steady;
    return Proof{known->assessor};
}

}  // namespace fb
