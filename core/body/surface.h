// The surface a target lies on, whatever the site: skin round the arm, skin round the thigh,
// or the plane of the hip. In every one of them (s, y) means the same: s to the front, y up
// the body, centimetres, right-sided.
#pragma once

#include <variant>

#include "core/body/cross_section.h"
#include "core/body/round_limb.h"
#include "core/geometry/point.h"

namespace fb {

// A thigh as one view sees it.
struct ThighSurface {
    RoundLimb limb;
    LimbSight sight{};
};

// The hip's picture itself: head to the viewer's left, front of the body up.
struct HipPlane {};

class Surface {
public:
    Surface(CrossSection arm) : m_kind(std::move(arm)) {}      // NOLINT(google-explicit-constructor)
    Surface(ThighSurface thigh) : m_kind(std::move(thigh)) {}  // NOLINT(google-explicit-constructor)
    Surface(HipPlane hip) : m_kind(hip) {}                     // NOLINT(google-explicit-constructor)

    // frame: the plate's right-sided frame.
    [[nodiscard]] Point toSkin(Point frame) const;
    [[nodiscard]] Point toFrame(Point skin) const;
    // Whether a centimetre here is one of skin, or one of the plane.
    [[nodiscard]] bool isSkin() const { return !std::holds_alternative<HipPlane>(m_kind); }
    [[nodiscard]] const CrossSection* arm() const { return std::get_if<CrossSection>(&m_kind); }
    [[nodiscard]] const ThighSurface* thigh() const { return std::get_if<ThighSurface>(&m_kind); }

private:
    std::variant<CrossSection, ThighSurface, HipPlane> m_kind;
};

}  // namespace fb
