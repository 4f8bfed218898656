#include "core/feel/flesh.h"

#include <algorithm>

#include "core/body/fat.h"
#include "core/plate/ring.h"

namespace fb {

namespace flesh_detail {

constexpr std::string_view kMuscle = "area.muscle.";
constexpr std::string_view kPelvis = "pelvis";
constexpr std::string_view kSpine = "landmark.asis";

Site siteOfLimb(View view, std::string_view limb)
{
    if (siteOf(view) == Site::Deltoid)
        return Site::Deltoid;
    return limb == kPelvis ? Site::Ventrogluteal : Site::VastusLateralis;
}

}  // namespace flesh_detail

using namespace flesh_detail;

Flesh::Flesh(const Plate& plate, const BodyMap& map, const Proportions& proportions, const Patient& patient)
{
    for (const Limb& limb : plate.limbs)
        m_limbs.push_back(
            {fatOver(siteOfLimb(plate.view, limb.name), proportions, patient), limb.name != kPelvis});
    if (const auto spine = plate.points.find(kSpine); spine != plate.points.end())
        m_spine = map.boneToPatient(spine->second.limb, spine->second.at);
    const std::vector<LimbMap> muscle = map.muscleMaps(plate);
    for (auto area = plate.areas.lower_bound(kMuscle);
         area != plate.areas.end() && area->first.starts_with(kMuscle); ++area) {
        const int limb = area->second.limb;
        const Limb& drawn = plate.limbs[static_cast<std::size_t>(limb)];
        const LimbFrame frame = LimbFrame::at(drawn.joint, drawn.angle);
        std::vector<Point> corners = flattened(area->second.ring, 2);
        for (Point& p : corners)
            p = map.limbFrame(limb).toFrame(
                muscle[static_cast<std::size_t>(limb)].toPatient(frame.toLocal(p)));
        if (auto polygon = Polygon::make(std::move(corners)))
            m_muscles.push_back(std::move(*polygon));
    }
}

bool Flesh::isMuscle(int limb, Point frame) const
{
    const bool buttock = frame.x > m_spine.x && frame.y < m_spine.y;
    return buttock || m_limbs[static_cast<std::size_t>(limb)].muscle ||
           std::ranges::any_of(m_muscles, [&](const Polygon& muscle) { return muscle.contains(frame); });
}

}  // namespace fb
