#include "core/site/target.h"

#include <utility>

namespace fb {

Target::Target(Site of, Polygon shownRegion, Point shownIdeal, Polygon skinRegion, Point skinIdeal,
               Surface on)
    : site(of),
      region(std::move(shownRegion)),
      ideal(shownIdeal),
      regionSkin(std::move(skinRegion)),
      idealSkin(skinIdeal),
      surface(std::move(on))
{
}

Point Target::toSkin(Point viewer) const
{
    return surface.toSkin(side == Side::Left ? mirrored(viewer) : viewer);
}

Point Target::toViewer(Point skin) const
{
    const Point frame = surface.toFrame(skin);
    return side == Side::Left ? mirrored(frame) : frame;
}

}  // namespace fb
