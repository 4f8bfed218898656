#include "core/site/difference.h"

namespace fb {

TargetDifference differenceOf(const Target& first, const Target& second)
{
    return {Cm{rounded6(distance(first.ideal, second.ideal))},
            Cm{rounded6(first.idealSkin.y - second.idealSkin.y)},
            Cm{rounded6(second.idealSkin.x - first.idealSkin.x)}};
}

}  // namespace fb
