#include "core/body/anchor.h"

#include "core/body/moved_ink.h"

namespace fb {

namespace anchor_detail {

Point turnedRound(Side side, Point p) { return side == Side::Left ? mirrored(p) : p; }

}  // namespace anchor_detail

std::optional<Anchor> anchorOf(const Plate& plate, const BodyMap& map, Side side, Point viewer)
{
    const int limb = isFinite(viewer) ? limbAt(plate, map, side, viewer) : -1;
    if (limb < 0)
        return std::nullopt;
    return Anchor{limb, map.toPlate(limb, anchor_detail::turnedRound(side, viewer))};
}

Point placeOf(const Anchor& anchor, const BodyMap& map, Side side)
{
    return anchor_detail::turnedRound(side, map.toPatient(anchor.limb, anchor.plate));
}

}  // namespace fb
