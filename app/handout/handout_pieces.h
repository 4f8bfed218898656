// What the pages of a hand-out share. One unit is a fifth of a millimetre on paper, as on a feedback sheet,
// so that the program's own type comes to 7 to 17 points; a page that would not hold its words is set a
// little smaller as a whole.
#pragma once

#include "app/handout/handout_words.h"
#include "app/handout/paper_look.h"
#include "app/report/sheet_blocks.h"

namespace fb {

// What one page is painted from.
struct HandoutInk {
    const HandoutWords& words;
    const PaperBody& body;
};

inline constexpr double kPlateLabelScale = 0.68;  // of the small plates' letters: six points
inline constexpr double kLeastSetting = 0.6;      // the smallest a page's own type is set

// The room of a page of this size that is set at a share of the usual size: everything is laid out in a
// room that is larger by as much, and painted scaled.
[[nodiscard]] SheetRoom roomOf(const HandoutWords& words, double width, double setting);

// The display face, upright, in units, each letter as it is: of its ligatures, of the forms that letters take
// beside others, and of its italics no reader of a PDF knows all again.
enum class Display { Word = 19, Caption = 23, Title = 30 };
[[nodiscard]] SetText displayed(const QString& text, const SheetRoom& room, double wide, Display size);
// A title, with lines under it; a hairline closes it.
[[nodiscard]] SheetBlock headPiece(const QString& title, const QStringList& lines, const QString& small,
                                   const SheetRoom& room);
// A word in the display face over small running text.
[[nodiscard]] SheetBlock titledPiece(const QString& title, const QString& text, const SheetRoom& room,
                                     double wide);
// The same over a list, one entry a line of the text.
[[nodiscard]] SheetBlocks sourcesPieces(const QString& title, const QString& lines, const SheetRoom& room,
                                        double wide);
// A number, and beside it what it stands for.
[[nodiscard]] SheetBlock numberedPiece(const QString& number, const QString& text, const SheetRoom& room,
                                       double wide);
// A word and an empty line to write on, of a width.
[[nodiscard]] SheetBlock linePiece(const QString& word, const SheetRoom& room, double wide);
// A hairline, then a text at either end.
[[nodiscard]] SheetBlock footPiece(const QString& first, const QString& last, const SheetRoom& room);

[[nodiscard]] double heightOf(const SheetBlocks& blocks);  // with what stands between them
void paintDown(QPainter& painter, const SheetBlocks& blocks, double top);
// The same, from a place of the room that is so far from the leading edge and so wide.
void paintDown(QPainter& painter, const SheetBlocks& blocks, QPointF leadingTop, const SheetRoom& room,
               double wide);

// A plate in its frame.
void paintPlate(QPainter& painter, const HandoutInk& ink, const QRectF& at, const LectureLook& look,
                double labelScale);
// In the plate's lower trailing corner: how long five centimetres of this body are.
void paintRuler(QPainter& painter, const HandoutInk& ink, const QRectF& at, const LectureLook& look,
                const SheetRoom& room);

}  // namespace fb
