// A fingertip pressed on the skin, and a ring whose shape tells what it feels; colour tells nothing.
//
//   Soft   a wide ring, loose and broken       Point  a dot in the middle
//   Firm   one plain ring                      Edge   two lines through the ring, the way the edge runs
//   Hard   two tight rings                     Broad  short hatching within
//
// A tick on the rim looks to where bone lies beside the finger. What is felt dully is drawn lighter with a
// gap; what is felt faintly, in dots.
#pragma once

#include <QRectF>
#include <QVector>

#include "app/canvas/plate_tool.h"
#include "app/look/palette.h"

class QPainter;

namespace fb {

// Where a press lies on a sheet.
struct PressPlace {
    QPointF at;                // its middle, pixels
    double pixelsPerCm = 1.0;  // the finger is drawn at true scale
    QRectF paper;              // which its words do not leave
    double textScale = 1.0;
};

// All of the ring with ridge and tick, pixels.
[[nodiscard]] QRectF ringBox(const PressLook& press, const PressPlace& place);
// Where the words stand; empty without words. taken: what they keep clear of where they can.
[[nodiscard]] QRectF pressWordsBox(const PressLook& press, const PressPlace& place,
                                   const QVector<QRectF>& taken, Qt::LayoutDirection direction);
// All that is painted: finger, ring and words.
[[nodiscard]] QRectF pressBox(const PressLook& press, const PressPlace& place, const QVector<QRectF>& taken,
                              Qt::LayoutDirection direction);

// Words stand on the side the painter's layout direction reads to.
void paintPress(QPainter& painter, const PressLook& press, const PressPlace& place, const Scheme& scheme,
                const QVector<QRectF>& taken = {});

}  // namespace fb
