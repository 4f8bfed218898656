// What of a picture changes when the speaker points elsewhere or the pen draws on: so much of it is painted
// anew, and not the whole plate for every move of a hand.
#pragma once

#include <QRegion>

#include "app/demonstrate/lecture_painter_page.h"

namespace fb {

// Pixels of the picture; never too little. page: of both faces, which differ in pointer and stroke being
// drawn alone.
[[nodiscard]] QRegion pointedArea(const LectureFace& before, const LectureFace& now, const LecturePage& page);

}  // namespace fb
