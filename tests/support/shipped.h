// What ships inside the program, read once for all tests.
#pragma once

#include "app/doors/library.h"

namespace fb {

[[nodiscard]] const Library& shippedLibrary();

}  // namespace fb
