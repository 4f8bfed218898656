// Geometry in tests is text: polygon("0,0 10,0 10,10"), and failures print the same back.
#pragma once

#include <ostream>
#include <sstream>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"

namespace fb {

inline void PrintTo(const Point& p, std::ostream* out) { *out << p.x << ',' << p.y; }

inline void PrintTo(const Polygon& polygon, std::ostream* out)
{
    for (const Point p : polygon.corners()) {
        PrintTo(p, out);
        *out << ' ';
    }
}

namespace test {

inline std::vector<Point> points(const std::string& text)
{
    std::istringstream in(text);
    std::vector<Point> list;
    for (Point p; in >> p.x && in.ignore(1, ',') && in >> p.y;)
        list.push_back(p);
    return list;
}

inline Polygon polygon(const std::string& text) { return Polygon::make(points(text)).value(); }

}  // namespace test
}  // namespace fb
