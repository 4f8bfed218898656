// What can be asked of a chain of cubic pieces.
#pragma once

#include <vector>

#include "core/geometry/cubic.h"
#include "core/plate/plate.h"

namespace fb {

[[nodiscard]] std::size_t pieceCount(const Ring& ring);
[[nodiscard]] Cubic piece(const Ring& ring, std::size_t index);

// The same curve with every piece's handle polygon at most `longest` cm.
[[nodiscard]] Ring cut(const Ring& ring, double longest);

// Points along the ring, `perPiece` to a piece, the last knot left out when it is closed.
[[nodiscard]] std::vector<Point> flattened(const Ring& ring, int perPiece = 8);

// Even-odd test against the flattened rings together.
[[nodiscard]] bool covers(const std::vector<Ring>& rings, Point p);

}  // namespace fb
