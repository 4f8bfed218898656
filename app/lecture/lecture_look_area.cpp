#include "app/lecture/lecture_look_area.h"

#include <algorithm>
#include <vector>

#include "core/hand/laid_bars.h"

namespace fb {

namespace lecture_look_area_detail {

// Of a right side, cm from the first landmark; chosen by eye for a body of the reference's size.
struct Sight {
    double left = 0.0, right = 0.0, low = 0.0, high = 0.0;
};

Sight sightOf(View view, Convention convention)
{
    // The tuberosity lies far down the arm.
    if (convention == Convention::DeltoidHalfway)
        return {-14.0, 14.0, -21.5, 4.0};
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter: return {-12.0, 12.0, -14.5, 4.0};
    case View::HipSide: return {-20.1, 11.5, -11.3, 12.0};
    case View::HipBehind: return {-33.0, 9.0, -6.0, 19.2};
    case View::ThighFront: return {-11.4, 47.1, -9.0, 14.0};
    case View::ThighSide: return {-5.5, 46.7, -9.0, 16.7};
    // The hands are no views of a patient.
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return {-15.0, 15.0, -15.0, 15.0};
}

// Bodies up to so much larger than the reference are shown at its size.
constexpr double kShare = 1.08;

// Whatever is laid and drawn on a body.
QRectF boundsOf(const Target& target)
{
    constexpr double kRoom = 0.5;  // cm
    std::vector<Point> points = target.region.corners();
    for (const Step& step : target.construction)
        points.insert(points.end(), step.points.begin(), step.points.end());
    if (target.hand) {
        for (const LaidBar& bar : barsOf(*target.hand)) {
            const Point corner{bar.half.value(), bar.half.value()};
            for (const Point end : {bar.from, bar.to})
                points.insert(points.end(), {end - corner, end + corner});
        }
    }
    const Bounds all = fb::boundsOf(points);
    return QRectF(QPointF(all.low.x, all.low.y), QPointF(all.high.x, all.high.y))
        .adjusted(-kRoom, -kRoom, kRoom, kRoom);
}

}  // namespace lecture_look_area_detail

QRectF lectureArea(const Target& target)
{
    using namespace lecture_look_area_detail;
    const Sight sight = sightOf(target.view, target.convention);
    const double size = std::max(1.0, target.scale / kShare);
    QRectF area(QPointF(sight.left, sight.low) * size, QPointF(sight.right, sight.high) * size);
    if (target.side == Side::Left)
        area = QRectF(-area.right(), area.top(), area.width(), area.height());
    return area.united(boundsOf(target));
}

}  // namespace fb
