#include "tests/support/shipped.h"

namespace fb {

const Library& shippedLibrary()
{
    static const auto library = Library::load().value();
    return *library;
}

}  // namespace fb
