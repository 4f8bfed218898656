// What a screen reader says of the picture of a demonstration.
#pragma once

#include <QString>

#include "app/demonstrate/lecture_face.h"
#include "app/lecture/lecture_state.h"

namespace fb {

struct LectureVoice {
    QString name;         // which step
    QString description;  // what is seen and done
};

// face: what the state asks for.
[[nodiscard]] LectureVoice voiceOf(const LectureState& state, const LectureFace& face);

}  // namespace fb
