// The pieces a feedback sheet is made of, in the order they are read. One unit is a fifth of a millimetre, so
// that the program's own type comes to 7 to 17 points on paper.
#pragma once

#include "app/look/palette.h"
#include "app/look/type.h"
#include "app/report/feedback_sheet.h"
#include "app/report/set_text.h"
#include "app/report/sheet_flow.h"

namespace fb {

inline constexpr double kSheetUnitMm = 0.2;

// Where a piece may stand: from the leading edge of the text to its trailing one.
struct SheetRoom {
    double width = 0.0;
    Qt::LayoutDirection direction = Qt::LeftToRight;
    Scheme scheme;

    [[nodiscard]] SetText set(const QString& text, double wide, Type type, bool atEnd = false) const;
    [[nodiscard]] SetText strong(const QString& text, double wide) const;  // running text, bold
    // The left side of something so wide that stands so far from the leading edge.
    [[nodiscard]] double left(double leading, double wide) const
    {
        return direction == Qt::RightToLeft ? width - leading - wide : leading;
    }
    // A hairline across the text.
    void rule(QPainter& painter, double top) const;
};

using SheetBlocks = std::vector<SheetBlock>;

// Who, when, outcome and why, what to practise, rating and remark.
[[nodiscard]] SheetBlocks headBlocks(const FeedbackSheet& sheet, const SheetRoom& room);
// Two plates in a row.
[[nodiscard]] SheetBlocks itemBlocks(const FeedbackSheet& sheet, const SheetRoom& room);
[[nodiscard]] SheetBlocks stepBlocks(const FeedbackSheet& sheet, const SheetRoom& room);
// Who signed, and the log.
[[nodiscard]] SheetBlocks recordBlocks(const FeedbackSheet& sheet, const SheetRoom& room);

// Shared by these: a heading, lines with a point before each, pairs of a name and what it is.
[[nodiscard]] SheetBlock headingBlock(const QString& text, const SheetRoom& room);
[[nodiscard]] SheetBlocks listBlocks(const QStringList& lines, const SheetRoom& room);
[[nodiscard]] SheetBlock textBlock(const QString& text, const SheetRoom& room);
[[nodiscard]] SheetBlocks factBlocks(const std::vector<SheetFact>& facts, const SheetRoom& room);

}  // namespace fb
