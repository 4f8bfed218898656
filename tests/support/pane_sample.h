// A pane as a view asks for it: one body and one step, with the frame it is seen in.
#pragma once

#include "tests/support/lecture_faces.h"

namespace fb::test {

[[nodiscard]] inline PaneJob paneJob(LectureState state, int step, QSizeF size = {640, 360},
                                     bool moving = false)
{
    state.step = step;
    const LectureFace face = plainFace(state, size);
    const QSet<Layer> all(kLayers.begin(), kLayers.end());
    return {face.panes.front(), frameOf(face, 0), 1.0, face.scheme, all, facesLibrary(), moving};
}

// The first convention whose site a hand is laid for, at the step that lays it.
[[nodiscard]] inline PaneJob handJob(QSizeF size = {640, 360})
{
    const LectureState state = stateOf(Convention::VentroglutealHand);
    return paneJob(state, buildOf(state, StepCode::LayPalm), size);
}

// The same with its hand so far away, on its way.
[[nodiscard]] inline PaneJob movedHand(PaneJob job, double cm)
{
    HandPose& pose = *job.pane.look.hand;
    for (Point* p : {&pose.wrist, &pose.fork, &pose.indexTip, &pose.middleTip})
        *p = *p + Point{cm, 0.0};
    job.moving = true;
    return job;
}

}  // namespace fb::test
