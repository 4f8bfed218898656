// The whole body map of one plate for one patient: its limbs, hung on each other at joints.
//
// Works in the plate's own (right-sided) frame, cm; whoever shows a left side mirrors the
// result. Mapping the reference body is the identity.
#pragma once

#include <vector>

#include "core/basics/problem.h"
#include "core/body/limb_map.h"
#include "core/body/proportions.h"
#include "core/plate/plate.h"

namespace fb {

// Where a limb lies: local (across, along) to the frame and back.
struct LimbFrame {
    Point joint;
    Point axis;    // unit vector along the limb
    Point across;  // unit vector square to it

    [[nodiscard]] static LimbFrame at(Point joint, Degrees angle);
    [[nodiscard]] Point toFrame(Point local) const { return joint + across * local.x + axis * local.y; }
    [[nodiscard]] Point toLocal(Point frame) const
    {
        return {dot(frame - joint, across), dot(frame - joint, axis)};
    }
};

class BodyMap {
public:
    // PlateDisordered when the plate's levels or edges do not make a map.
    [[nodiscard]] static Result<BodyMap> make(const Plate& plate, const BodyMeasures& reference,
                                              const BodyMeasures& patient);

    // Skin and flesh, and back.
    [[nodiscard]] Point toPatient(int limb, Point plate) const;
    [[nodiscard]] Point toPlate(int limb, Point patient) const;
    // Bones, bony landmarks and joints: moved by stature, sex and age alone. At a level's own
    // bone edges the two agree across; fat moves the skin and never what is moved by this.
    [[nodiscard]] Point boneToPatient(int limb, Point plate) const;

    [[nodiscard]] const LimbMap& limbMap(int limb) const
    {
        return m_limbs[static_cast<std::size_t>(limb)].map;
    }
    // Where the patient's limb lies.
    [[nodiscard]] const LimbFrame& limbFrame(int limb) const
    {
        return m_limbs[static_cast<std::size_t>(limb)].patient;
    }
    // Muscle of every limb, between bone and skin, in the limb's own coordinates.
    [[nodiscard]] std::vector<LimbMap> muscleMaps(const Plate& plate) const;
    [[nodiscard]] int limbCount() const { return static_cast<int>(m_limbs.size()); }

private:
    struct OneLimb {
        LimbMap map;
        LimbMap bone;
        LimbFrame drawn;
        LimbFrame patient;
    };
    void shiftToOrigin(const Plate& plate);

    std::vector<OneLimb> m_limbs;
    BodyMeasures m_reference;
    BodyMeasures m_patient;
};

}  // namespace fb
