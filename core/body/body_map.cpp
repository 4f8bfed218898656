#include "core/body/body_map.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/body/level_rule.h"

namespace fb {

LimbFrame LimbFrame::at(Point joint, Degrees angle)
{
    const double turn = angle.value() * std::numbers::pi / 180.0;
    return {joint, {std::sin(turn), -std::cos(turn)}, {std::cos(turn), std::sin(turn)}};
}

namespace body_map_detail {

std::vector<LevelRow> drawnRows(const Limb& limb)
{
    std::vector<LevelRow> rows;
    for (const Level& level : limb.levels) {
        rows.push_back({level.along.value(),
                        {level.skinBack.value(), level.boneBack.value(), level.boneFront.value(),
                         level.skinFront.value()}});
    }
    return rows;
}

}  // namespace body_map_detail

Result<BodyMap> BodyMap::make(const Plate& plate, const BodyMeasures& reference, const BodyMeasures& patient)
{
    BodyMap map;
    std::vector<int> order;  // parents before children
    while (order.size() < plate.limbs.size()) {
        const std::size_t before = order.size();
        for (int i = 0; i < static_cast<int>(plate.limbs.size()); ++i) {
            const int parent = plate.limbs[static_cast<std::size_t>(i)].parent;
            const auto placed = [&](int limb) {
                return std::find(order.begin(), order.end(), limb) != order.end();
            };
            if (!placed(i) && (parent < 0 || placed(parent)))
                order.push_back(i);
        }
        if (order.size() == before)
            return fault(Problem::PlateDisordered, std::string(wordOf(plate.view)), "data-parent");
    }

    const BodyMeasures skeleton = skeletonOf(reference, patient);
    std::vector<std::optional<OneLimb>> limbs(plate.limbs.size());
    for (const int i : order) {
        const Limb& limb = plate.limbs[static_cast<std::size_t>(i)];
        const auto drawn = body_map_detail::drawnRows(limb);
        auto flesh = LimbMap::make(drawn, patientLevels(limb, plate.azimuth, reference, patient));
        auto bone = LimbMap::make(drawn, patientLevels(limb, plate.azimuth, reference, skeleton));
        if (!flesh || !bone)
            return fault(Problem::PlateDisordered, std::string(wordOf(plate.view)), limb.name);
        const LimbFrame here = LimbFrame::at(limb.joint, limb.angle);
        Point joint = limb.joint;
        if (limb.parent >= 0) {
            const OneLimb& parent = *limbs[static_cast<std::size_t>(limb.parent)];
            joint = parent.patient.toFrame(parent.bone.toPatient(parent.drawn.toLocal(limb.joint)));
        }
        limbs[static_cast<std::size_t>(i)] =
            OneLimb{std::move(*flesh), std::move(*bone), here, LimbFrame::at(joint, limb.angle)};
    }
    for (auto& limb : limbs)
        map.m_limbs.push_back(std::move(*limb));
    map.m_reference = reference;
    map.m_patient = patient;
    map.shiftToOrigin(plate);
    return map;
}

std::vector<LimbMap> BodyMap::muscleMaps(const Plate& plate) const
{
    const BodyMeasures muscle = muscleOf(m_reference, m_patient);
    std::vector<LimbMap> maps;
    for (std::size_t i = 0; i < plate.limbs.size(); ++i) {
        const Limb& limb = plate.limbs[i];
        maps.push_back(LimbMap::make(body_map_detail::drawnRows(limb),
                                     patientLevels(limb, plate.azimuth, m_reference, muscle))
                           .value_or(m_limbs[i].map));
    }
    return maps;
}

void BodyMap::shiftToOrigin(const Plate& plate)
{
    const auto first = plate.points.find(firstLandmark(plate.view));
    if (first == plate.points.end())
        return;
    const Point shift = boneToPatient(first->second.limb, first->second.at);
    for (OneLimb& limb : m_limbs)
        limb.patient.joint = limb.patient.joint - shift;
}

Point BodyMap::toPatient(int limb, Point plate) const
{
    const OneLimb& one = m_limbs[static_cast<std::size_t>(limb)];
    return one.patient.toFrame(one.map.toPatient(one.drawn.toLocal(plate)));
}

Point BodyMap::boneToPatient(int limb, Point plate) const
{
    const OneLimb& one = m_limbs[static_cast<std::size_t>(limb)];
    return one.patient.toFrame(one.bone.toPatient(one.drawn.toLocal(plate)));
}

Point BodyMap::toPlate(int limb, Point patient) const
{
    const OneLimb& one = m_limbs[static_cast<std::size_t>(limb)];
    return one.drawn.toFrame(one.map.toDrawn(one.patient.toLocal(patient)));
}

}  // namespace fb
