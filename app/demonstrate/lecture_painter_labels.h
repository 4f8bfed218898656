// The words on the plate of a demonstration: set larger and plainer than in practice, on paper of their own,
// so that the last row reads them on any skin. The words of what lies around stand inside it; what finds no
// place is left out, the least first; its area has a step of its own. Names stand beside what they name.
//
// Lengths are those of the painter, in which letters of these sizes are as large as kLeastLetter asks.
#pragma once

#include <QTransform>
#include <vector>

#include "app/lecture/lecture_look_hand.h"
#include "app/look/palette.h"
#include "app/scene/label_placement.h"
#include "app/scene/scene.h"

class QPainter;

namespace fb {

// So large that capitals are about as high in each of the three faces.
inline constexpr int kNamePixels = 31;
inline constexpr int kUprightPixels = 33;
inline constexpr int kPlainPixels = 27;

// On the plate (of names: italics, of areas: upright, spaced) and under it.
[[nodiscard]] QFont labelFont(bool isName);
// Of what holds a figure.
[[nodiscard]] QFont plainFont();

// How high its capitals are, as drawn: what a font says of itself can be a tenth more.
[[nodiscard]] double capitalOf(const QFont& font);

struct LectureLabel {
    PlacedLabel placed;
    QColor ink;
};

// taken: what no label covers. laid: the hand or fingers on the body, cm.
[[nodiscard]] QVector<LectureLabel> lectureLabels(const Scene& scene, const Scheme& scheme,
                                                  const QTransform& cmToDevice, const QRectF& paper,
                                                  const QVector<QRectF>& taken = {},
                                                  const std::vector<LaidBar>& laid = {});
void paintLabels(QPainter& painter, const QVector<LectureLabel>& labels, const Scheme& scheme,
                 Qt::LayoutDirection direction);

// The contrast of two opaque colours after WCAG 2, 1 to 21.
[[nodiscard]] double contrastOf(const QColor& a, const QColor& b);
// A colour for words on paper: the wished one where it reaches kLeastContrast, else the ink.
[[nodiscard]] QColor legible(const QColor& wished, const Scheme& scheme);

}  // namespace fb
