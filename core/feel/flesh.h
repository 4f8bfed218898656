// What lies under the skin where no bone is near: muscle, or nothing but fat; and how much fat.
#pragma once

#include <vector>

#include "core/basics/units.h"
#include "core/site/locate.h"

namespace fb {

class Flesh {
public:
    // All that is needed is copied.
    Flesh(const Plate& plate, const BodyMap& map, const Proportions& proportions, const Patient& patient);

    // Skin and fat of the limb (by number), mm: that of the site whose flesh it is.
    [[nodiscard]] Mm fat(int limb) const { return m_limbs[static_cast<std::size_t>(limb)].fat; }
    // Right-sided frame, cm. Arm, shoulder and leg are muscle all over; of the pelvis the muscles
    // the plate names, and the buttock: what lies to the foot of the anterior superior spine and
    // behind it, from the front outside it. Belly, flank and loin are soft.
    [[nodiscard]] bool isMuscle(int limb, Point frame) const;

private:
    struct OneLimb {
        Mm fat;
        bool muscle = true;
    };
    std::vector<OneLimb> m_limbs;
    std::vector<Polygon> m_muscles;
    Point m_spine;
};

}  // namespace fb
