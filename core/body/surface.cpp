#include "core/body/surface.h"

namespace fb {

Point Surface::toSkin(Point frame) const
{
    if (const CrossSection* section = arm())
        return section->toSkin(frame);
    if (const ThighSurface* round = thigh())
        return round->limb.toSkin(round->sight, frame);
    return {frame.y, -frame.x};
}

Point Surface::toFrame(Point skin) const
{
    if (const CrossSection* section = arm())
        return section->toFrame(skin);
    if (const ThighSurface* round = thigh())
        return round->limb.toFrame(round->sight, skin);
    return {-skin.y, skin.x};
}

}  // namespace fb
