// Why not there: what a show-only view is opened for, told beside the picture. Own words of published
// findings, with their hedges and without their numbers.
#pragma once

#include <QString>

#include "core/basics/enums.h"

namespace fb {

// Both empty for a view that shows nothing to stay away from.
[[nodiscard]] QString whyNotTitle(View view);
[[nodiscard]] QString whyNotText(View view);  // a few sentences

}  // namespace fb
