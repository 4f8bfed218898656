// Every step of a demonstration as a small picture without words, painted from the same looks as the large
// one: the drawing once, each step's shapes, hand, fingers and fingertip over it. Values; for any thread.
#pragma once

#include <QImage>
#include <atomic>
#include <memory>
#include <vector>

#include "app/doors/library.h"
#include "app/lecture/lecture_look.h"

namespace fb {

struct ThumbAsk {
    std::shared_ptr<const LectureBody> body;
    std::shared_ptr<const Policy> policy;
    std::shared_ptr<const Library> library;  // of the hands' art; null: none is painted
    std::vector<LectureStep> steps;
    QSet<Layer> layers;
    Scheme scheme;
    QSize size;  // device-independent pixels
    double pixelRatio = 1.0;
};

// Whether both give the same pictures.
[[nodiscard]] bool sameThumbs(const ThumbAsk& a, const ThumbAsk& b);

// One a step, in their order; none when cancelled.
[[nodiscard]] std::vector<QImage> paintThumbs(const ThumbAsk& ask, const std::atomic_bool& cancelled);

}  // namespace fb
