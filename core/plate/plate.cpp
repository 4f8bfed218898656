#include "core/plate/plate.h"

namespace fb {

int Plate::limbNamed(std::string_view name) const
{
    for (std::size_t i = 0; i < limbs.size(); ++i) {
        if (limbs[i].name == name)
            return static_cast<int>(i);
    }
    return -1;
}

}  // namespace fb
