#include "app/handout/handout_pieces.h"

#include <QPainter>
#include <algorithm>

#include "app/look/style.h"
#include "app/report/item_picture.h"
#include "app/words/site_words.h"

namespace fb {

namespace handout_pieces_detail {

constexpr double kNumberWide = 24.0;
constexpr double kRulerCm = 5.0;

}  // namespace handout_pieces_detail

SheetRoom roomOf(const HandoutWords& words, double width, double setting)
{
    return {width / setting, words.direction, paperScheme()};
}

SetText displayed(const QString& text, const SheetRoom& room, double wide, Display size)
{
    QFont font = fontOf(Type::Title, 1.0);
    font.setPixelSize(static_cast<int>(size));
    font.setFamilies(QStringList{QStringLiteral("EB Garamond 12")} + font.families());
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferNoShaping);
    return SetText(text, wide, {font, room.direction, false});
}

SheetBlock headPiece(const QString& title, const QStringList& lines, const QString& small,
                     const SheetRoom& room)
{
    const SetText head = displayed(title, room, room.width, Display::Title);
    std::vector<SetText> under;
    for (const QString& line : lines)
        if (!line.isEmpty())
            under.push_back(displayed(line, room, room.width, Display::Word));
    const SetText last = room.set(small, room.width, Type::Small);
    double height = head.height() + last.height() + space::kNear;
    for (const SetText& line : under)
        height += line.height();
    return {height, 0.0, false, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                head.paint(painter, {0.0, top});
                double at = top + head.height();
                for (const SetText& line : under) {
                    line.paint(painter, {0.0, at});
                    at += line.height();
                }
                painter.setPen(room.scheme.quietInk);
                last.paint(painter, {0.0, at});
                room.rule(painter, top + height);
            }};
}

SheetBlock titledPiece(const QString& title, const QString& text, const SheetRoom& room, double wide)
{
    const SetText head = displayed(title, room, wide, Display::Word);
    const SetText body = room.set(text, wide, Type::Small);
    const double under = text.isEmpty() ? 0.0 : body.height();
    return {head.height() + under, space::kNear, false, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                head.paint(painter, {0.0, top});
                body.paint(painter, {0.0, top + head.height()});
            }};
}

SheetBlock numberedPiece(const QString& number, const QString& text, const SheetRoom& room, double wide)
{
    using handout_pieces_detail::kNumberWide;
    const SetText count = room.strong(number, kNumberWide);
    const double beside = wide - kNumberWide;
    const SetText words = room.set(text, beside, Type::Small);
    const bool isLeftward = room.direction == Qt::RightToLeft;
    return {std::max(words.height(), count.height()), space::kTight, false,
            [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                // Both stand on one line.
                const double lift = std::max(0.0, count.baseline() - words.baseline());
                count.paint(painter, {isLeftward ? beside : 0.0, top - lift});
                words.paint(painter, {isLeftward ? 0.0 : kNumberWide, top});
            }};
}

SheetBlock linePiece(const QString& word, const SheetRoom& room, double wide)
{
    constexpr double kLine = 40.0;  // room for a pen
    const SetText words = room.set(word, wide, Type::Small);
    const double used = word.isEmpty() ? 0.0 : words.width() + space::kNear;
    const bool isLeftward = room.direction == Qt::RightToLeft;
    return {kLine, 0.0, false, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                words.paint(painter, {0.0, top + kLine - words.height()});
                painter.setPen(QPen(room.scheme.line, 1.0));
                const double from = isLeftward ? 0.0 : used;
                painter.drawLine(QPointF(from, top + kLine - space::kTight),
                                 QPointF(from + wide - used, top + kLine - space::kTight));
            }};
}

SheetBlock footPiece(const QString& first, const QString& last, const SheetRoom& room)
{
    const double lastWide = last.isEmpty() ? 0.0 : room.width * 0.25;
    const double firstWide = room.width - lastWide;
    const SetText caution = room.set(first, firstWide, Type::Small);
    const SetText page = room.set(last, std::max(lastWide, 1.0), Type::Small, true);
    return {caution.height() + space::kTight, 0.0, false, [=](QPainter& painter, double top) {
                room.rule(painter, top);
                painter.setPen(room.scheme.quietInk);
                caution.paint(painter, {room.left(0.0, firstWide), top + space::kTight});
                if (lastWide > 0.0)
                    page.paint(painter, {room.left(firstWide, lastWide), top + space::kTight});
            }};
}

SheetBlocks sourcesPieces(const QString& title, const QString& lines, const SheetRoom& room, double wide)
{
    constexpr double kIndent = 14.0;
    SheetBlocks pieces{titledPiece(title, {}, room, wide)};
    const bool isLeftward = room.direction == Qt::RightToLeft;
    for (const QString& line : lines.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const SetText point = room.set(QStringLiteral("–"), kIndent, Type::Small);
        const SetText words = room.set(line, wide - kIndent, Type::Small);
        pieces.push_back({words.height(), 0.0, false, [=](QPainter& painter, double top) {
                              painter.setPen(room.scheme.ink);
                              point.paint(painter, {isLeftward ? wide - kIndent : 0.0, top});
                              words.paint(painter, {isLeftward ? 0.0 : kIndent, top});
                          }});
    }
    return pieces;
}

double heightOf(const SheetBlocks& blocks)
{
    double height = 0.0;
    for (const SheetBlock& block : blocks)
        height += block.height + (&block == &blocks.front() ? 0.0 : block.before);
    return height;
}

void paintDown(QPainter& painter, const SheetBlocks& blocks, double top)
{
    for (const SheetBlock& block : blocks) {
        top += &block == &blocks.front() ? 0.0 : block.before;
        block.paint(painter, top);
        top += block.height;
    }
}

void paintDown(QPainter& painter, const SheetBlocks& blocks, QPointF leadingTop, const SheetRoom& room,
               double wide)
{
    painter.save();
    painter.translate(room.left(leadingTop.x(), wide), 0.0);
    paintDown(painter, blocks, leadingTop.y());
    painter.restore();
}

void paintPlate(QPainter& painter, const HandoutInk& ink, const QRectF& at, const LectureLook& look,
                double labelScale)
{
    ink.body.paint(painter, at, look, labelScale, ink.words.direction);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(paperScheme().line, 1.0));
    painter.drawRect(at);
}

void paintRuler(QPainter& painter, const HandoutInk& ink, const QRectF& at, const LectureLook& look,
                const SheetRoom& room)
{
    using namespace handout_pieces_detail;
    const double unitsPerCm = at.width() / ink.body.fittedArea(look.area, at.width() / at.height()).width();
    const double length = kRulerCm * unitsPerCm;
    const SetText words = room.set(cmText(kRulerCm), length, Type::Small);
    const double left =
        room.direction == Qt::RightToLeft ? at.left() + space::kApart : at.right() - space::kApart - length;
    const double y = at.bottom() - space::kApart;
    const QRectF ground(left - space::kNear, y - words.height() - space::kNear, length + 2.0 * space::kNear,
                        words.height() + 2.0 * space::kNear);
    painter.fillRect(ground, QColor(255, 255, 255, 225));
    painter.setPen(QPen(room.scheme.ink, 1.2));
    painter.drawLine(QPointF(left, y), QPointF(left + length, y));
    for (int cm = 0; cm <= static_cast<int>(kRulerCm); ++cm) {
        const double x = left + cm * unitsPerCm;
        painter.drawLine(QPointF(x, y), QPointF(x, y - 4.0));
    }
    words.paint(painter, {left, y - words.height() - 3.0});
}

}  // namespace fb
