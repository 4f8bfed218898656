// Beginning a check-off, and finding the one that was begun again: see record_check_off.h.
#include <algorithm>

#include "app/store/audit_chain.h"
#include "app/store/record_check_off.h"
#include "app/store/record_order.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_standing.h"

namespace fb {

namespace record_begin_detail {

std::string nameOf(const Student& student)
{
    return (student.given + u' ' + student.family).trimmed().toStdString();
}

Result<bool> mayBegin(const WhereTheyStand& where)
{
    switch (where.standing) {
    case Standing::RemediationDue: return fault(Problem::RemediationNotSigned);
    case Standing::Waiting:
        return fault(Problem::NotDueYet, {}, dayText(where.earliest.value_or(Day{})).toStdString());
    case Standing::Passed:
    case Standing::OutOfAttempts: return fault(Problem::NoAttemptLeft);
    case Standing::Running:
    case Standing::NotTried:
    case Standing::MayRetest: break;
    }
    return true;
}

Result<bool> noneRuns(const Store& store)
{
    const auto running = readRunning(store);
    if (!running)
        return tl::unexpected(running.error());
    if (*running)
        return fault(Problem::CheckOffRunning, {}, nameOf((*running)->student));
    return true;
}

Result<qint64> freshId(const Store& store)
{
    return store.rows({QStringLiteral("SELECT coalesce(max(check_off_id), 0) + 1 FROM check_off")})
        .map([](const auto& rows) { return rows.front().front().toLongLong(); });
}

Result<bool> addCheckOff(Store& store, RunningCheckOff& begun, const Moment& now)
{
    const CheckOffOrder& order = begun.order;
    const auto policy = keepPolicy(store, notNull(order.policyText));
    const auto id = policy ? freshId(store) : tl::unexpected(policy.error());
    if (!id)
        return tl::unexpected(id.error());
    begun.id = *id;
    const auto added = store.change(
        {QStringLiteral("INSERT INTO check_off (check_off_id, student_id, sheet_key, attempt, seed, "
                        "extra_percent, policy_hash, plate_hashes, program_version, pixels_per_mm, "
                        "needs_second, begun_at, on_screen_ms, on_manikin_ms) "
                        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, 0)"),
         {*id, order.student, order.sheet, begun.attempt, static_cast<qint64>(order.seed), order.extraPercent,
          *policy, notNull(order.plateHashes), notNull(order.programVersion), order.pixelsPerMm,
          begun.needsSecondAssessor ? 1 : 0, isoText(now.at)}});
    if (!added)
        return added;
    const QString detail =
        QStringLiteral("student=%1 sheet=%2 attempt=%3 seed=%4 policy=%5 plates=%6 program=%7")
            .arg(order.student, order.sheet)
            .arg(begun.attempt)
            .arg(order.seed)
            .arg(*policy, order.plateHashes, order.programVersion);
    return appendAudit(store,
                       {.actor = QStringLiteral("program"),
                        .event = QStringLiteral("BEGIN"),
                        .object = objectName(*id),
                        .detail = detail},
                       now.at)
        .map([](const ChainEnd&) { return true; });
}

Result<RunningCheckOff> runningIn(const Store& store, const QVariantList& row)
{
    RunningCheckOff running;
    running.id = row[0].toLongLong();
    auto read = readOrder(store, running.id);
    if (!read)
        return tl::unexpected(read.error());
    running.order = std::move(*read);
    auto student = readStudent(store, running.order.student);
    if (!student)
        return tl::unexpected(student.error());
    running.student = std::move(*student);
    auto sheet = readSheet(store, running.order.sheet);
    if (!sheet)
        return tl::unexpected(sheet.error());
    running.sheet = std::move(*sheet);
    auto events = readEvents(store, running.id);
    if (!events)
        return tl::unexpected(events.error());
    running.events = std::move(*events);
    running.attempt = row[1].toInt();
    running.needsSecondAssessor = row[2].toBool();
    const CheckOffEvent last = running.events.empty() ? CheckOffEvent{} : running.events.back();
    running.onScreen = std::max(last.onScreen, Ms{row[3].toLongLong()});
    running.onManikin = std::max(last.onManikin, Ms{row[4].toLongLong()});
    running.begunAt = timeFrom(row[5].toString());
    return running;
}

}  // namespace record_begin_detail

using namespace record_begin_detail;

Result<RunningCheckOff> beginCheckOff(Store& store, const CheckOffOrder& order, const Moment& now)
{
    RunningCheckOff begun;
    begun.order = order;
    begun.begunAt = now.at;
    const auto done = store.transaction([&]() -> Result<bool> {
        const auto student = readStudent(store, order.student);
        if (!student)
            return tl::unexpected(student.error());
        if (const auto none = noneRuns(store); !none)
            return none;
        const auto sheet = readSheet(store, order.sheet);
        if (!sheet)
            return tl::unexpected(sheet.error());
        const auto line = readStanding(store, *sheet, *student, now);
        if (!line)
            return tl::unexpected(line.error());
        if (const auto may = mayBegin(line->where); !may)
            return may;
        begun.student = *student;
        begun.sheet = *sheet;
        begun.attempt = line->where.used + 1;
        begun.needsSecondAssessor = line->where.needsSecondAssessor;
        return addCheckOff(store, begun, now).and_then([&](bool) { return useSheet(store, order.sheet); });
    });
    return done.map([&](bool) { return begun; });
}

Result<std::optional<RunningCheckOff>> readRunning(const Store& store)
{
    const auto rows = store.rows(
        {QStringLiteral("SELECT check_off_id, attempt, needs_second, on_screen_ms, on_manikin_ms, begun_at "
                        "FROM check_off WHERE closed_at IS NULL")});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return std::nullopt;
    return runningIn(store, rows->front()).map([](const RunningCheckOff& one) { return std::optional(one); });
}

}  // namespace fb
