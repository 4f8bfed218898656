#include "core/site/places.h"

#include <algorithm>

#include "core/plate/ring.h"

namespace fb {

namespace places_detail {

constexpr std::string_view kLandmarkPrefix = "landmark.";
constexpr int kOutlineRows = 10;  // points along an outline

}  // namespace places_detail

using namespace places_detail;

std::string publicName(std::string_view landmark)
{
    if (landmark == "landmark.acromion.lateral")
        return "acromion";
    std::string name(landmark.substr(kLandmarkPrefix.size()));
    std::ranges::replace_if(
        name, [](char c) { return c == '.' || c == '-'; }, '_');
    return name;
}

std::vector<Point> domeOf(const std::vector<Point>& line)
{
    std::vector<Point> dome;
    for (const Point p : line) {
        const auto dents = [&] {
            const Point a = dome[dome.size() - 2];
            const Point b = dome.back();
            return cross(b - a, p - b) <= 0.0;
        };
        while (dome.size() >= 2 && dents())
            dome.pop_back();
        dome.push_back(p);
    }
    return dome;
}

Point Places::landmark(std::string_view id) const
{
    constexpr std::string_view kFold = "landmark.axilla.";
    const NamedPoint& point = m_plate.points.find(id)->second;
    return id.starts_with(kFold) ? m_map.toPatient(point.limb, point.at)
                                 : m_map.boneToPatient(point.limb, point.at);
}

std::vector<Point> Places::boneLine(std::string_view id) const
{
    const NamedPath& line = m_plate.lines.find(id)->second;
    std::vector<Point> points = flattened(line.ring, 2);
    for (Point& p : points)
        p = m_map.boneToPatient(line.limb, p);
    return points;
}

Polygon Places::boneArea(std::string_view id) const
{
    const NamedPath& area = m_plate.areas.find(id)->second;
    std::vector<Point> corners = flattened(area.ring, 2);
    for (Point& p : corners)
        p = m_map.boneToPatient(area.limb, p);
    const Polygon none = Polygon::rectangle(-0.1, 0.1, 0.0, 0.1);
    return Polygon::make(std::move(corners)).value_or(none);
}

Places::Outline Places::outline(std::string_view limb, std::string_view from, std::string_view to) const
{
    const int index = m_plate.limbNamed(limb);
    const LimbMap& map = m_map.limbMap(index);
    const auto& levels = m_plate.limbs[static_cast<std::size_t>(index)].levels;
    const auto along = [&](std::string_view name) {
        const auto level = std::ranges::find(levels, name, &Level::name);
        return map.patientLevels()[static_cast<std::size_t>(level - levels.begin())].along;
    };
    Outline drawn;
    for (int row = 0; row <= kOutlineRows; ++row) {
        const double t = along(from) + (along(to) - along(from)) * row / kOutlineRows;
        const EdgeRow edges = map.patientEdges(t);
        drawn.back.push_back(m_map.limbFrame(index).toFrame({edges.front(), t}));
        drawn.front.push_back(m_map.limbFrame(index).toFrame({edges.back(), t}));
    }
    return drawn;
}

}  // namespace fb
