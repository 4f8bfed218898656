// The records as files for others, written row by row for their owner alone.
//
// Gradebook CSV: one row a student: id, family, given, section, then for each sheet its title (percent of the
// points, a bare number), "TITLE outcome", "TITLE attempts", "TITLE date" of the last attempt that was
// judged; empty without one. Full CSV: one row an answer: its check-off (hashes by their first twelve
// digits), then the columns of the table of answers (record_answers.h). Lengths in cm, times in UTC. Full
// JSON: {"format", "version", "written_at", "chain", "students", "assessors", "sheets", "policies",
// "check_offs"}; a check-off holds its order, its result, its practice signed and its "events", each
// {"seq", "at", "event"}, the event as textOf() of core/session/check_off.h writes it: answers with patient,
// mark and grade, lengths in cm, counted times in ms.
// CSV is RFC 4180 in UTF-8 with a byte-order mark, for spreadsheets; texts are guarded against formulas,
// numbers never.
#pragma once

#include <functional>

#include "app/doors/records.h"
#include "app/store/export_file.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// An empty sheet: all. False: cancelled, and no file left behind. OutputNotWritable.
[[nodiscard]] Result<bool> exportRecords(const Store& store, ExportKind kind, const QString& sheet,
                                         const QString& file, const Moment& now, LongWork& work);

// One for each kind, into an open file.
[[nodiscard]] Result<bool> exportGradebook(const Store& store, const QString& sheet, const Moment& now,
                                           ExportFile& out);
[[nodiscard]] Result<bool> exportFullCsv(const Store& store, const QString& sheet, ExportFile& out,
                                         LongWork& work);
[[nodiscard]] Result<bool> exportFullJson(const Store& store, const QString& sheet, const Moment& now,
                                          ExportFile& out, LongWork& work);

[[nodiscard]] QByteArray csvByteOrderMark();  // of UTF-8

// Check-offs from..to.
struct CheckOffRange {
    qint64 from = 0, to = 0;
};
// The text of one range, in the thread the store was opened in.
using MakeRange = std::function<Result<QByteArray>(const Store&, const CheckOffRange&)>;
// All check-offs in the order of their ids, so many at a time and by two hands at once, until it is
// cancelled; `between` stands between two texts that are not empty. Each range is of one moment.
[[nodiscard]] Result<bool> writeRanges(const Store& store, ExportFile& out, LongWork& work,
                                       const QByteArray& between, const MakeRange& make);

}  // namespace fb
