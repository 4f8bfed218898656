#include "core/body/limb_map.h"

#include <algorithm>
#include <utility>

namespace fb {

namespace limb_map_detail {

// Where a height falls between two levels: the lower index and a smooth weight of the upper.
struct Between {
    std::size_t index = 0;
    double weight = 0.0;
};

Between between(const std::vector<LevelRow>& rows, double along)
{
    if (along <= rows.front().along)
        return {0, 0.0};
    for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
        if (along < rows[i + 1].along) {
            const double t = (along - rows[i].along) / (rows[i + 1].along - rows[i].along);
            return {i, t * t * (3.0 - 2.0 * t)};
        }
    }
    return {rows.size() - 2, 1.0};
}

// A blend of two ordered rows with one weight is ordered with gaps no smaller.
EdgeRow blended(const std::vector<LevelRow>& rows, Between at)
{
    EdgeRow edges{};
    for (std::size_t e = 0; e < edges.size(); ++e)
        edges[e] = rows[at.index].edges[e] * (1.0 - at.weight) + rows[at.index + 1].edges[e] * at.weight;
    return edges;
}

std::array<double, 5> knots(const EdgeRow& edges) { return {edges[0], edges[1], 0.0, edges[2], edges[3]}; }

bool isOrdered(const EdgeRow& e) { return e[0] < e[1] && e[1] < 0.0 && 0.0 < e[2] && e[2] < e[3]; }

}  // namespace limb_map_detail

using namespace limb_map_detail;

EdgeRow spread(EdgeRow edges)
{
    edges[1] = std::min(edges[1], -kLeastGap);
    edges[2] = std::max(edges[2], kLeastGap);
    edges[0] = std::min(edges[0], edges[1] - kLeastGap);
    edges[3] = std::max(edges[3], edges[2] + kLeastGap);
    return edges;
}

std::optional<LimbMap> LimbMap::make(std::vector<LevelRow> drawn, std::vector<LevelRow> patient)
{
    if (drawn.size() != patient.size())
        return std::nullopt;
    const auto ordered = [](const LevelRow& row) { return isOrdered(row.edges); };
    if (!std::ranges::all_of(drawn, ordered) || !std::ranges::all_of(patient, ordered))
        return std::nullopt;
    std::vector<double> from;
    std::vector<double> to;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        from.push_back(drawn[i].along);
        to.push_back(patient[i].along);
    }
    const auto along = MonotoneCurve::make(from, to);
    if (!along)
        return std::nullopt;
    return LimbMap(std::move(drawn), std::move(patient), *along);
}

LimbMap::LimbMap(std::vector<LevelRow> drawn, std::vector<LevelRow> patient, MonotoneCurve along)
    : m_drawn(std::move(drawn)),
      m_patient(std::move(patient)),
      m_along(along)
{
}

MonotoneCurve LimbMap::acrossAt(double drawnAlong) const
{
    const Between at = between(m_drawn, drawnAlong);
    // Both rows are ordered, so the curve exists.
    return *MonotoneCurve::make(knots(blended(m_drawn, at)), knots(blended(m_patient, at)));
}

Point LimbMap::toPatient(Point drawn) const { return {acrossAt(drawn.y).at(drawn.x), m_along.at(drawn.y)}; }

Point LimbMap::toDrawn(Point patient) const
{
    const double along = m_along.inverse(patient.y);
    return {acrossAt(along).inverse(patient.x), along};
}

EdgeRow LimbMap::patientEdges(double patientAlong) const
{
    return blended(m_patient, between(m_drawn, m_along.inverse(patientAlong)));
}

}  // namespace fb
