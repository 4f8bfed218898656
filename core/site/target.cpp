#include "core/site/target.h"

namespace fb {

Point Target::toSkin(Point viewer) const
{
    return section.toSkin(side == Side::Left ? mirrored(viewer) : viewer);
}

Point Target::toViewer(Point skin) const
{
    const Point frame = section.toFrame(skin);
    return side == Side::Left ? mirrored(frame) : frame;
}

}  // namespace fb
