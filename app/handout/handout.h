// What a demonstration leaves in people's hands: one step as a picture, a whole site as a page of steps, and
// a blank page to practise on with its key on page two. Painted away from the window's thread, on white
// paper.
#pragma once

#include <QPageSize>
#include <QString>
#include <vector>

#include "app/doors/speaker_notes.h"
#include "app/lecture/lecture_look.h"

namespace fb {

enum class PictureKind { Pdf, Svg, Png };

struct HandoutAsk {
    LectureBody body;
    Policy policy;
    std::shared_ptr<const Library> library;  // of the hand's art
    std::vector<LectureStep> steps;
    Qt::LayoutDirection direction = Qt::LeftToRight;
};

// One step as it rests, with heading, caption, source and caution. OutputNotWritable names the file.
[[nodiscard]] Result<bool> writeStep(const HandoutAsk& ask, int step, PictureKind kind, const QString& file);

// One page: the patient, every step of finding the site as a small plate with its caption, what lies around,
// the convention's rule and sources, the caution. Vector, fonts embedded.
[[nodiscard]] Result<bool> writeHandout(const HandoutAsk& ask, const QString& file,
                                        QPageSize::PageSizeId paper);
// Page one: the bare plate, large, with the order and lines to write on; page two: the key.
[[nodiscard]] Result<bool> writeBlankHandout(const HandoutAsk& ask, const QString& file,
                                             QPageSize::PageSizeId paper);

}  // namespace fb
