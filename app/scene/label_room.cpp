#include "app/scene/label_room.h"

#include <algorithm>
#include <array>

#include "app/scene/scene_painter.h"

namespace fb {

namespace label_room_detail {

bool holds(const QPolygonF& area, const QVector<QPolygonF>& over, const QRectF& box)
{
    const std::array corners{box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()};
    return std::all_of(corners.begin(), corners.end(), [&](QPointF corner) {
        return area.containsPoint(corner, Qt::OddEvenFill) &&
               std::none_of(over.begin(), over.end(), [&](const QPolygonF& other) {
                   return other.containsPoint(corner, Qt::OddEvenFill);
               });
    });
}

}  // namespace label_room_detail

std::optional<QRectF> roomWithin(const QPolygonF& area, const QVector<QPolygonF>& over, const QSizeF& size,
                                 const std::function<bool(const QRectF&)>& isFree)
{
    constexpr int kSteps = 24;
    const QRectF bounds = area.boundingRect();
    if (size.width() > bounds.width() || size.height() > bounds.height())
        return std::nullopt;
    for (int step = 0; step < kSteps; ++step) {
        const int rung = (step + 1) / 2;
        const double dy = (step % 2 == 0 ? 1 : -1) * rung * bounds.height() / (kSteps + 2);
        for (const double dx : {0.0, -0.2, 0.2, -0.35, 0.35}) {
            QRectF box(QPointF(), size);
            box.moveCenter(bounds.center() + QPointF(dx * bounds.width(), dy));
            if (label_room_detail::holds(area, over, box) && isFree(box))
                return box;
        }
    }
    return std::nullopt;
}

QPointF placeOn(const QPolygonF& area, const QRectF& paper)
{
    constexpr double kUprights = 8.0;
    const QPointF middle = area.boundingRect().intersected(paper).center();
    if (area.containsPoint(middle, Qt::OddEvenFill))
        return middle;
    const auto uprights = ruled(area, 90.0, area.boundingRect().width() / kUprights);
    const auto longest =
        std::max_element(uprights.begin(), uprights.end(),
                         [](const QLineF& a, const QLineF& b) { return a.length() < b.length(); });
    return longest == uprights.end() ? middle : longest->center();
}

}  // namespace fb
