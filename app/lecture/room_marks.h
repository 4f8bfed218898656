// The points that volunteers of the room have named, clicked by the speaker or read from a CSV.
#pragma once

#include <QByteArray>
#include <QString>
#include <optional>
#include <vector>

#include "core/basics/problem.h"
#include "core/grade/grade.h"

namespace fb {

struct RoomMark {
    QString name;                // empty: only its number is shown
    Point at;                    // viewer's frame of the view that is asked, cm
    std::optional<Grade> grade;  // once revealed; nullopt for a place off the body
};

inline constexpr int kMostRoomMarks = 60;

inline constexpr int kLongestRoomName = 60;       // letters
inline constexpr double kFarthestRoomMark = 300;  // cm from the origin; more than any picture shows

// A name in one line, without control characters, cut at kLongestRoomName. A formula is text like any.
[[nodiscard]] QString tidyRoomName(const QString& name);

// Columns by header name, whatever their case and order: name (may be missing), x_cm, y_cm in the viewer's
// frame, as `fingerbreadth grade --at` takes them. UTF-8 with or without its mark; comma, semicolon or tab;
// numbers with a decimal point or a decimal comma, no signs between thousands. Faults name the file as given:
// FileNotUtf8, CsvBroken, MarksNoColumn, MarksBadValue, MarksEmpty, MarksTooMany.
[[nodiscard]] Result<std::vector<RoomMark>> roomMarksFromCsv(const QByteArray& bytes,
                                                             const QString& file = {});

}  // namespace fb
