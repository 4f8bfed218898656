// What the pieces of a feedback sheet share: see sheet_blocks.h.
#include "app/report/sheet_blocks.h"

#include <QPainter>
#include <algorithm>

#include "app/look/style.h"

namespace fb {

namespace sheet_blocks_detail {

QFont printed(Type type)
{
    QFont font = fontOf(type, 1.0);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Set letter by letter: of ligatures ("Qu", "fi") whoever searches a PDF finds nothing. Scripts that must
    // be shaped still are; of the title the letters join nothing and keep their kerning.
    if (type != Type::Title)
        font.setStyleStrategy(QFont::PreferNoShaping);
    // Of the two cuts of the display face the one for text, which a plain request may miss.
    if (font.families().front() == QLatin1String("EB Garamond"))
        font.setFamilies(QStringList{QStringLiteral("EB Garamond 12")} + font.families());
    return font;
}

}  // namespace sheet_blocks_detail

SetText SheetRoom::set(const QString& text, double wide, Type type, bool atEnd) const
{
    return SetText(text, wide, {sheet_blocks_detail::printed(type), direction, atEnd});
}

SetText SheetRoom::strong(const QString& text, double wide) const
{
    QFont font = sheet_blocks_detail::printed(Type::Body);
    font.setBold(true);
    return SetText(text, wide, {font, direction, false});
}

void SheetRoom::rule(QPainter& painter, double top) const
{
    painter.setPen(QPen(scheme.line, 1.0));
    painter.drawLine(QPointF(0.0, top), QPointF(width, top));
}

SheetBlock headingBlock(const QString& text, const SheetRoom& room)
{
    const SetText words = room.set(text, room.width, Type::Request);
    return {words.height() + space::kNear, space::kMargin, true,
            [words, room](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                words.paint(painter, {0.0, top});
                room.rule(painter, top + words.height() + space::kTight / 2.0);
            }};
}

SheetBlocks listBlocks(const QStringList& lines, const SheetRoom& room)
{
    constexpr double kIndent = 20.0;
    constexpr double kPoint = 2.2;
    SheetBlocks blocks;
    for (const QString& line : lines) {
        const double wide = room.width - kIndent;
        const SetText words = room.set(line, wide, Type::Body);
        blocks.push_back(
            {words.height(), space::kTight, false, [words, room, wide](QPainter& painter, double top) {
                 painter.setPen(room.scheme.ink);
                 words.paint(painter, {room.left(kIndent, wide), top});
                 painter.setPen(Qt::NoPen);
                 painter.setBrush(room.scheme.ink);
                 painter.drawEllipse(QPointF(room.left(kIndent / 2.0, 0.0), top + words.baseline() * 0.68),
                                     kPoint, kPoint);
             }});
    }
    return blocks;
}

SheetBlock textBlock(const QString& text, const SheetRoom& room)
{
    const SetText words = room.set(text, room.width, Type::Body);
    return {words.height(), space::kTight, false, [words, room](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                words.paint(painter, {0.0, top});
            }};
}

SheetBlocks factBlocks(const std::vector<SheetFact>& facts, const SheetRoom& room)
{
    constexpr std::size_t kColumns = 3;
    const double wide = (room.width - (kColumns - 1) * space::kApart) / kColumns;
    SheetBlocks rows;
    for (std::size_t first = 0; first < facts.size(); first += kColumns) {
        std::vector<std::pair<SetText, SetText>> cells;
        double height = 0.0;
        for (std::size_t i = first; i < std::min(first + kColumns, facts.size()); ++i) {
            cells.emplace_back(room.set(facts[i].first, wide, Type::Small),
                               room.set(facts[i].second, wide, Type::Body));
            height = std::max(height, cells.back().first.height() + cells.back().second.height());
        }
        rows.push_back({height, space::kNear, false, [cells, room, wide](QPainter& painter, double top) {
                            double leading = 0.0;
                            for (const auto& [name, value] : cells) {
                                painter.setPen(room.scheme.quietInk);
                                name.paint(painter, {room.left(leading, wide), top});
                                painter.setPen(room.scheme.ink);
                                value.paint(painter, {room.left(leading, wide), top + name.height()});
                                leading += wide + space::kApart;
                            }
                        }});
    }
    return rows;
}

SheetBlocks recordBlocks(const FeedbackSheet& sheet, const SheetRoom& room)
{
    const SheetWords& words = sheet.words;
    SheetBlocks blocks{headingBlock(words.recordHeading, room)};
    for (SheetBlock& row : factBlocks(words.record, room)) {
        row.staysWithNext = true;
        blocks.push_back(std::move(row));
    }
    constexpr double kLine = 44.0;  // room for a pen
    const double wide = room.width / 3.0 * 2.0 - space::kApart;
    const double rest = room.width - wide - space::kApart;
    const SetText read = room.set(words.readByStudent, wide, Type::Small);
    const SetText day = room.set(words.day, rest, Type::Small);
    blocks.push_back({kLine + read.height(), space::kApart, false,
                      [read, day, room, wide, rest](QPainter& painter, double top) {
                          const double line = top + kLine;
                          painter.setPen(QPen(room.scheme.ink, 1.0));
                          const auto draw = [&](double leading, double length, const SetText& under) {
                              const double left = room.left(leading, length);
                              painter.drawLine(QPointF(left, line), QPointF(left + length, line));
                              under.paint(painter, {left, line + 2.0});
                          };
                          draw(0.0, wide, read);
                          draw(wide + space::kApart, rest, day);
                      }});
    return blocks;
}

}  // namespace fb
