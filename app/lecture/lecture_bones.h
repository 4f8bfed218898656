// The bones of a hip that have been found, as the plate draws them, faintly under the skin: a close-up shows
// little else of them, and the room has to see where a crest runs.
#pragma once

#include <QTransform>
#include <string>
#include <vector>

#include "app/lecture/lecture_body.h"
#include "app/lecture/lecture_look.h"

class QPainter;

namespace fb {

// Structures of the plate, by the landmarks that are named by then: none before, none of other sites.
[[nodiscard]] std::vector<std::string> bonesFound(const LectureBody& body, const LectureStep& step);

// Contours and a breath of wash, under the hand where one is laid; some milliseconds.
void paintBones(QPainter& painter, const LectureBody& body, const LectureLook& look, const Scheme& scheme,
                const QTransform& cmToDevice);

}  // namespace fb
