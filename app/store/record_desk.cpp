#include "app/store/record_desk.h"

#include <algorithm>

#include "app/store/record_check_off.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_standing.h"

namespace fb {

namespace record_desk_detail {

// Without a sheet nobody stands anywhere.
Result<bool> addStudents(Desk& desk, const Store& store, const QString& key, const Moment& now)
{
    const auto known = std::ranges::find(desk.sheets, key, &SheetOnFile::key);
    const SheetOnFile current = known != desk.sheets.end() ? *known
                                : desk.sheets.empty()      ? SheetOnFile{}
                                                           : desk.sheets.front();
    desk.currentSheet = current.key;
    auto students = readStandings(store, current, now);
    if (!students)
        return tl::unexpected(students.error());
    desk.students = std::move(*students);
    return true;
}

Result<bool> fill(Desk& desk, const Store& store, const QString& key, const Moment& now)
{
    auto sheets = readSheets(store);
    if (!sheets)
        return tl::unexpected(sheets.error());
    desk.sheets = std::move(*sheets);
    if (const auto added = addStudents(desk, store, key, now); !added)
        return added;
    auto assessors = readAssessors(store);
    if (!assessors)
        return tl::unexpected(assessors.error());
    desk.assessors = std::move(*assessors);
    auto running = readRunning(store);
    if (!running)
        return tl::unexpected(running.error());
    desk.running = std::move(*running);
    return true;
}

void count(CohortCount& counts, const WhereTheyStand& where)
{
    switch (where.standing) {
    case Standing::NotTried: ++counts.notTried; return;
    case Standing::Running: ++counts.running; return;
    case Standing::Passed: ++counts.passed; return;
    case Standing::RemediationDue:
    case Standing::Waiting:
    case Standing::MayRetest: ++counts.due; return;
    case Standing::OutOfAttempts: ++counts.outOfAttempts; return;
    }
}

Result<bool> countOutcomes(Board& board, const Store& store, const QString& sheet)
{
    return store.each(
        {QStringLiteral(
             "SELECT outcome, count(*) FROM check_off WHERE sheet_key = ? AND closed_at IS NOT NULL "
             "GROUP BY outcome ORDER BY outcome"),
         {sheet}},
        [&](const QSqlQuery& row) {
            if (const auto outcome = outcomeFrom(row.value(0).toString().toStdString()))
                board.outcomes.emplace_back(*outcome, row.value(1).toInt());
            return true;
        });
}

}  // namespace record_desk_detail

Result<Desk> readDesk(const Store& store, const QString& sheet, const Moment& now)
{
    Desk desk;
    return store.snapshot([&] { return record_desk_detail::fill(desk, store, sheet, now); }).map([&](bool) {
        return std::move(desk);
    });
}

Result<Board> readBoard(const Store& store, const QString& sheet, const Moment& now)
{
    Board board;
    const auto read = store.snapshot([&]() -> Result<bool> {
        const auto known = readSheet(store, sheet);
        if (!known)
            return tl::unexpected(known.error());
        auto students = readStandings(store, *known, now);
        if (!students)
            return tl::unexpected(students.error());
        board.students = std::move(*students);
        for (const StudentStanding& line : board.students)
            record_desk_detail::count(board.count, line.where);
        return record_desk_detail::countOutcomes(board, store, sheet);
    });
    return read.map([&](bool) { return std::move(board); });
}

}  // namespace fb
