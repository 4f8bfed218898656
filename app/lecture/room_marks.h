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

// Columns by header name: name (may be missing), x_cm, y_cm in the viewer's frame, as `fingerbreadth grade
// --at` takes them. MarksNotReadable names the line and what is wrong: no such column, not a number, more
// than kMostRoomMarks, wrong encoding.
[[nodiscard]] Result<std::vector<RoomMark>> roomMarksFromCsv(const QByteArray& bytes);

}  // namespace fb
