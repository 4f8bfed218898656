// A plate as it is drawn for one patient: named points and lines moved with the bones, and the
// edges of its levels. Right-sided frame, cm.
#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/plate/ring.h"
#include "tests/published/outside_row.h"

namespace fb::test {

[[nodiscard]] inline Patient referenceBodyOf(View view)
{
    const ReferenceBody& r = plateOf(view).reference;
    return adult(r.sex, r.stature.value(), r.weight.value(), Side::Right, r.ageYears);
}

class MovedPlate {
public:
    explicit MovedPlate(View view) : MovedPlate(view, referenceBodyOf(view)) {}
    MovedPlate(View view, const Patient& patient)
        : m_plate(plateOf(view)),
          m_map(bodyMap(atlas(), view, patient).value())
    {
    }

    [[nodiscard]] Point point(const std::string& name) const
    {
        const NamedPoint& point = m_plate.points.at(name);
        return m_map.boneToPatient(point.limb, point.at);
    }
    [[nodiscard]] Point landmark(const std::string& name) const { return point("landmark." + name); }
    // In small chords, as drawn from first to last.
    [[nodiscard]] std::vector<Point> line(const std::string& name) const
    {
        const NamedPath& path = m_plate.lines.at("line." + name);
        std::vector<Point> points = flattened(path.ring, 8);
        for (Point& p : points)
            p = m_map.boneToPatient(path.limb, p);
        return points;
    }
    // A place of the drawing, moved with the bones of a limb.
    [[nodiscard]] Point moved(const std::string& limb, Point drawn) const
    {
        return m_map.boneToPatient(m_plate.limbNamed(limb), drawn);
    }
    [[nodiscard]] LevelRow level(const std::string& limbName, const std::string& name) const
    {
        const int limb = m_plate.limbNamed(limbName);
        const auto& levels = m_plate.limbs[static_cast<std::size_t>(limb)].levels;
        for (std::size_t i = 0; i < levels.size(); ++i) {
            if (levels[i].name == name)
                return m_map.limbMap(limb).patientLevels()[i];
        }
        throw std::out_of_range(limbName + " " + name);
    }
    // Skin to skin across a level.
    [[nodiscard]] double width(const std::string& limb, const std::string& name) const
    {
        const EdgeRow edges = level(limb, name).edges;
        return edges[3] - edges[0];
    }
    [[nodiscard]] const Plate& plate() const { return m_plate; }

private:
    const Plate& m_plate;
    BodyMap m_map;
};

// Where a line first crosses the way from a to b, as a share of that way; an exception when it
// does not.
[[nodiscard]] inline double shareCrossed(const std::vector<Point>& line, Point a, Point b)
{
    const Point way = b - a;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point step = line[i + 1] - line[i];
        const double slope = cross(way, step);
        if (slope == 0.0)
            continue;
        const double share = cross(line[i] - a, step) / slope;
        const double along = cross(line[i] - a, way) / slope;
        if (share >= 0.0 && share <= 1.0 && along >= 0.0 && along <= 1.0)
            return share;
    }
    throw std::out_of_range("the lines do not cross");
}

// How far along a line the place of it lies that is nearest to a point.
[[nodiscard]] inline double wayTo(const std::vector<Point>& line, Point target)
{
    double way = 0.0;
    double best = 1e9;
    double found = 0.0;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point step = line[i + 1] - line[i];
        const double size = length(step);
        const double t = size > 0.0 ? std::clamp(dot(target - line[i], step) / (size * size), 0.0, 1.0) : 0.0;
        const double away = distance(target, lerp(line[i], line[i + 1], t));
        if (away < best) {
            best = away;
            found = way + t * size;
        }
        way += size;
    }
    return found;
}

}  // namespace fb::test
