// Each item on its plate, two beside each other: see sheet_blocks.h.
#include <QPainter>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/report/item_picture.h"
#include "app/report/sheet_blocks.h"

namespace fb {

namespace sheet_items_detail {

constexpr double kProportion = 1.6;  // of a picture, width to height
constexpr double kDotsPerMm = 300.0 / 25.4;
constexpr double kSign = 15.0;

struct Card {
    SetText name, patient, verdict, finding, reason;
    QImage ink;
    QRectF area;
    Scene scene;
    std::optional<Point> mark;
    Icon sign{};
    double picture = 0.0;  // height

    [[nodiscard]] double height() const
    {
        return name.height() + patient.height() + picture + 2.0 * space::kTight +
               std::max(verdict.height(), kSign) + finding.height() + reason.height();
    }
};

Icon signOf(const SheetItemFound& item)
{
    return item.answer.timeUp ? Icon::NotDone : iconOf(item.attempt.grade.verdict);
}

Card cardOf(const SheetItemFound& item, const SheetItemWords& words, const SheetRoom& room, double wide)
{
    const double indent = kSign + space::kNear;
    const double high = wide / kProportion;
    const QRectF area = itemArea(*item.target, item.answer.mark, kProportion);
    const QSize pixels = (QSizeF(wide, high) * kSheetUnitMm * kDotsPerMm).toSize();
    return {room.strong(words.name, wide),
            room.set(words.patient, wide, Type::Small),
            room.strong(words.verdict, wide - indent),
            room.set(words.finding, wide, Type::Body),
            room.set(words.reason, wide, Type::Small),
            itemInk(*item.picture, area, pixels),
            area,
            words.scene,
            item.answer.mark,
            signOf(item),
            high};
}

void paintCard(QPainter& painter, const Card& card, const SheetRoom& room, double leading, double wide,
               double top)
{
    const double left = room.left(leading, wide);
    const auto line = [&](const SetText& text, const QColor& colour, double from) {
        painter.setPen(colour);
        text.paint(painter, {from, top});
        top += text.height();
    };
    line(card.name, room.scheme.ink, left);
    line(card.patient, room.scheme.quietInk, left);
    top += space::kTight;
    paintItem(painter, {left, top, wide, card.picture}, card.ink, card.area, card.scene, card.mark);
    top += card.picture + space::kTight;
    const double indent = kSign + space::kNear;
    const double middle = top + card.verdict.baseline() * 0.62;
    paintIcon(painter, card.sign, room.scheme.ink,
              {room.left(leading, kSign), middle - kSign / 2.0, kSign, kSign});
    line(card.verdict, room.scheme.ink, room.left(leading + indent, wide - indent));
    line(card.finding, room.scheme.ink, left);
    line(card.reason, room.scheme.quietInk, left);
}

}  // namespace sheet_items_detail

SheetBlocks itemBlocks(const FeedbackSheet& sheet, const SheetRoom& room)
{
    using namespace sheet_items_detail;
    const auto& items = sheet.findings.items;
    if (items.empty())
        return {};
    SheetBlocks blocks{headingBlock(sheet.words.itemsHeading, room)};
    const double wide = (room.width - space::kMargin) / 2.0;
    for (std::size_t first = 0; first < items.size(); first += 2) {
        std::vector<Card> row;
        double height = 0.0;
        for (std::size_t i = first; i < std::min(first + 2, items.size()); ++i) {
            row.push_back(cardOf(items[i], sheet.words.items[i], room, wide));
            height = std::max(height, row.back().height());
        }
        const double before = first == 0 ? space::kTight : space::kApart + space::kNear;
        blocks.push_back({height, before, false, [row, room, wide](QPainter& painter, double top) {
                              for (std::size_t i = 0; i < row.size(); ++i)
                                  paintCard(painter, row[i], room,
                                            static_cast<double>(i) * (wide + space::kMargin), wide, top);
                          }});
    }
    return blocks;
}

}  // namespace fb
