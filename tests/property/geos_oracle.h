// GEOS (the C interface with its own context) as an independent judge of our geometry.
#pragma once

#include <geos_c.h>

#include <memory>
#include <utility>
#include <vector>

#include "core/geometry/polygon.h"

namespace fb::test {

class GeosContext {
public:
    GeosContext() : m_handle(GEOS_init_r()) {}
    ~GeosContext() { GEOS_finish_r(m_handle); }
    GeosContext(const GeosContext&) = delete;
    GeosContext& operator=(const GeosContext&) = delete;
    [[nodiscard]] GEOSContextHandle_t get() const { return m_handle; }

private:
    GEOSContextHandle_t m_handle;
};

[[nodiscard]] inline GEOSContextHandle_t geos()
{
    static const GeosContext context;
    return context.get();
}

struct GeosDeleter {
    void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(geos(), geometry); }
    void operator()(const GEOSPreparedGeometry* prepared) const
    {
        GEOSPreparedGeom_destroy_r(geos(), prepared);
    }
};

using GeosGeometry = std::unique_ptr<GEOSGeometry, GeosDeleter>;
using GeosPrepared = std::unique_ptr<const GEOSPreparedGeometry, GeosDeleter>;

[[nodiscard]] inline GeosGeometry geosPoint(Point p)
{
    return GeosGeometry(GEOSGeom_createPointFromXY_r(geos(), p.x, p.y));
}

[[nodiscard]] inline GeosGeometry geosPolygon(const std::vector<Point>& corners)
{
    GEOSCoordSequence* ring = GEOSCoordSeq_create_r(geos(), static_cast<unsigned>(corners.size() + 1), 2);
    for (unsigned i = 0; i <= corners.size(); ++i) {
        const Point p = corners[i % corners.size()];
        GEOSCoordSeq_setXY_r(geos(), ring, i, p.x, p.y);
    }
    return GeosGeometry(
        GEOSGeom_createPolygon_r(geos(), GEOSGeom_createLinearRing_r(geos(), ring), nullptr, 0));
}

// One polygon as GEOS sees it: the answers to compare ours with.
class GeosOracle {
public:
    explicit GeosOracle(const Polygon& polygon)
        : m_area(geosPolygon(polygon.corners())),
          m_border(GEOSBoundary_r(geos(), m_area.get())),
          m_preparedArea(GEOSPrepare_r(geos(), m_area.get())),
          m_preparedBorder(GEOSPrepare_r(geos(), m_border.get()))
    {
    }

    [[nodiscard]] bool isValid() const { return GEOSisValid_r(geos(), m_area.get()) == 1; }
    [[nodiscard]] double distanceToBorder(Point p) const
    {
        double away = 0.0;
        const GeosGeometry point = geosPoint(p);
        GEOSPreparedDistance_r(geos(), m_preparedBorder.get(), point.get(), &away);
        return away;
    }
    // Inside or on the border, exactly.
    [[nodiscard]] bool covers(Point p) const
    {
        const GeosGeometry point = geosPoint(p);
        return GEOSPreparedCovers_r(geos(), m_preparedArea.get(), point.get()) == 1;
    }
    [[nodiscard]] const GEOSGeometry* area() const { return m_area.get(); }

private:
    GeosGeometry m_area;
    GeosGeometry m_border;
    GeosPrepared m_preparedArea;
    GeosPrepared m_preparedBorder;
};

// Area of what is in one but not in the other.
[[nodiscard]] inline double geosDifference(const GEOSGeometry* a, const GEOSGeometry* b)
{
    const GeosGeometry apart(GEOSSymDifference_r(geos(), a, b));
    double area = 0.0;
    GEOSArea_r(geos(), apart.get(), &area);
    return area;
}

// How far ours is from GEOS at a point: the sign and the distance together. A point within the
// tolerance of the border may be said to be on it.
[[nodiscard]] inline double geosDisagreement(const Polygon& ours, const GeosOracle& theirs, Point p)
{
    const double away = theirs.distanceToBorder(p);
    const double expected = theirs.covers(p) ? -away : away;
    return std::abs(ours.signedDistance(p) - expected);
}

[[nodiscard]] inline bool geosAgreesOnContainment(const Polygon& ours, const GeosOracle& theirs, Point p)
{
    return ours.contains(p) == (theirs.covers(p) || theirs.distanceToBorder(p) <= kBorderTolerance);
}

}  // namespace fb::test
