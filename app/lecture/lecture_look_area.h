// Which part of a plate a demonstration looks at: around the site, wide enough for the construction and for
// what lies beside it.
#pragma once

#include <QRectF>

#include "core/site/target.h"

namespace fb {

// Centimetres of the viewer's frame, low corner first. It hangs on the site's first landmark and is of one
// size for all but the tallest and stoutest bodies, so that bones stay where they are while weight changes,
// and a short patient looks short beside a tall one. Laws: it holds the region, the ideal point, everything
// of the construction and the hand that is laid, on any body; a left side's is the mirror image of a right
// one's.
[[nodiscard]] QRectF lectureArea(const Target& target);

}  // namespace fb
