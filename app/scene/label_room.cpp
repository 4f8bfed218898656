#include "app/scene/label_room.h"

#include <QLineF>
#include <algorithm>
#include <array>
#include <utility>

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

// Where there is any free place, there is one that touches what is taken, or the paper's edge, at its left
// and at its top: of all these the one nearest to the wish.
std::optional<QRectF> freeAnywhere(const QRectF& wish, const QRectF& paper, const QVector<QRectF>& taken,
                                   double apart)
{
    QVector<double> lefts{paper.left()};
    QVector<double> tops{paper.top()};
    for (const QRectF& other : taken) {
        lefts.push_back(std::max(paper.left(), other.right() + apart));
        tops.push_back(std::max(paper.top(), other.bottom() + 1));
    }
    std::optional<QRectF> nearest;
    const auto away = [&](const QRectF& box) { return QLineF(box.topLeft(), wish.topLeft()).length(); };
    for (const double left : std::as_const(lefts)) {
        for (const double top : std::as_const(tops)) {
            const QRectF box(QPointF(left, top), wish.size());
            if (paper.contains(box) && isFreeOf(box, taken, apart) &&
                (!nearest || away(box) < away(*nearest)))
                nearest = box;
        }
    }
    return nearest;
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

QRectF heldOn(const QRectF& paper, QRectF box)
{
    box.moveLeft(std::clamp(box.left(), paper.left(), std::max(paper.left(), paper.right() - box.width())));
    box.moveTop(std::clamp(box.top(), paper.top(), std::max(paper.top(), paper.bottom() - box.height())));
    return box;
}

bool isFreeOf(const QRectF& box, const QVector<QRectF>& taken, double apart)
{
    return std::ranges::none_of(taken, [room = box.adjusted(-apart, -1, apart, 1)](const QRectF& other) {
        return room.intersects(other);
    });
}

std::optional<QRectF> freePlace(const QRectF& wish, const QRectF& paper, const QVector<QRectF>& taken,
                                double apart)
{
    for (const double dx : {0.0, -0.5, 0.5, -1.0, 1.0, -1.5, 1.5, -2.0, 2.0, -3.0, 3.0}) {
        for (int step = 0; step < 600; ++step) {
            const int rung = (step + 1) / 2;
            const double dy = (step % 2 == 0 ? 1 : -1) * rung * 3.0;
            const QRectF box = heldOn(paper, wish.translated(dx * wish.width(), dy));
            if (isFreeOf(box, taken, apart))
                return box;
        }
    }
    return label_room_detail::freeAnywhere(wish, paper, taken, apart);
}

}  // namespace fb
