// The part of SVG a plate may use. Everything else is refused, by element and by attribute,
// so that a file from outside can carry no script, link, entity or style, and so that every
// renderer draws it alike.
#pragma once

#include <pugixml.hpp>
#include <string>

#include "core/basics/problem.h"

namespace fb {

// PlateForbidden naming the element or attribute, PlateNotReadable when the root is no svg.
[[nodiscard]] Result<bool> checkSubset(const pugi::xml_document& document, const std::string& file);

}  // namespace fb
