#include "core/hand/posed_hand.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

namespace fb {

namespace posed_detail {

Point turned(Point p, double radians)
{
    return {p.x * std::cos(radians) - p.y * std::sin(radians),
            p.x * std::sin(radians) + p.y * std::cos(radians)};
}

Point pointOf(const Plate& art, std::string_view id) { return art.points.find(id)->second.at; }

double angleBetween(Point a, Point b) { return std::atan2(cross(a, b), dot(a, b)); }

// The fingers behind the middle one go with it.
bool opens(std::string_view limb) { return limb == "middle" || limb == "ring" || limb == "little"; }

class Poser {
public:
    Poser(const Plate& art, const HandPose& pose) : m_art(art), m_right(pose.hand == Side::Right)
    {
        m_drawnWrist = pointOf(art, "joint.palm");
        m_wrist = m_right ? mirrored(pose.wrist) : pose.wrist;
        const Point fork = pointOf(art, "landmark.fork");
        const Point tip = pointOf(art, "landmark.middle-tip");
        const Point drawnAxis = fork - m_drawnWrist;
        const Point axis = m_right ? mirrored(pose.fork) - mirrored(pose.wrist) : pose.fork - pose.wrist;
        m_size = length(axis) / length(drawnAxis);
        m_turn = angleBetween(drawnAxis, axis);
        // Drawn opening to wanted opening: positive turns the middle finger away from the index.
        const double drawn = std::abs(angleBetween(drawnAxis, tip - fork));
        m_open = pose.opening.value() * std::numbers::pi / 180.0 - drawn;
    }

    [[nodiscard]] Point placed(int limb, Point p) const
    {
        const Limb& finger = m_art.limbs[static_cast<std::size_t>(limb)];
        const Point own = finger.joint + turned(p - finger.joint, opens(finger.name) ? m_open : 0.0);
        const Point at = m_wrist + turned(own - m_drawnWrist, m_turn) * m_size;
        return m_right ? mirrored(at) : at;
    }

private:
    const Plate& m_art;
    bool m_right;
    Point m_wrist;       // of the pose, mirrored for a right hand
    Point m_drawnWrist;  // looked up once: there are thousands of points
    double m_size = 1.0;
    double m_turn = 0.0;
    double m_open = 0.0;
};

// Every point of a hand's drawing, moved.
MovedInk placedInk(const Plate& art, const std::function<Point(int limb, Point)>& placed)
{
    MovedInk ink;
    for (Gradient gradient : art.gradients) {
        gradient.from = placed(gradient.limb, gradient.from);
        gradient.to = placed(gradient.limb, gradient.to);
        ink.gradients.push_back(std::move(gradient));
    }
    std::vector<Point> all;
    for (std::size_t s = 0; s < art.structures.size(); ++s) {
        const Structure& structure = art.structures[s];
        for (const InkShape& shape : structure.shapes) {
            if (shape.cue != Cue::Always)
                continue;
            MovedShape out{static_cast<int>(s), shape.rings,   shape.tone,
                           shape.gradient,      shape.opacity, shape.penStroke};
            for (Ring& ring : out.rings) {
                for (Point& p : ring.points)
                    p = placed(structure.limb, p);
                all.insert(all.end(), ring.points.begin(), ring.points.end());
            }
            ink.shapes.push_back(std::move(out));
        }
    }
    if (!all.empty())
        ink.paper = boundsOf(all);
    return ink;
}

}  // namespace posed_detail

using namespace posed_detail;

MovedInk posedHand(const Plate& art, const HandPose& pose)
{
    const Poser poser(art, pose);
    return placedInk(art, [&](int limb, Point p) { return poser.placed(limb, p); });
}

MovedInk posedFingers(const Plate& art, const LaidFingers& fingers, Cm fingerWidth)
{
    // Drawn with the fingers up; a left hand laid across an arm points to the viewer's left.
    const Point upper = pointOf(art, "landmark.upper-edge");
    const double drawnBreadth = distance(upper, pointOf(art, "landmark.lower-edge"));
    const double size = fingers.count * fingerWidth.value() / drawnBreadth;
    const bool right = fingers.hand == Side::Right;
    const double turn = fingers.turn.value() * std::numbers::pi / 180.0;
    const double quarter = std::numbers::pi / 2.0;
    return placedInk(art, [&](int, Point p) {
        const Point laid = turned(p - upper, quarter) * size;
        return fingers.top + turned(right ? mirrored(laid) : laid, turn);
    });
}

}  // namespace fb
