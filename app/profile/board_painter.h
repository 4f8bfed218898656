// The drawing of a measure board: thin ink on paper, in the manner of a plate's construction.
#pragma once

#include <QRectF>
#include <array>

#include "app/profile/measure_board.h"

class QPainter;

namespace fb {

struct BoardLook {
    Laid laid{};
    QRectF figure;                 // see MeasureBoard::figure()
    double pixelsPerMm = 1.0;      // of the painter
    QString size;                  // what the figure measures, in words
    std::array<QString, 2> sides;  // what the left and the right side touch; may be empty
    double textScale = 1.0;
};

void paintBoard(QPainter& painter, const QRectF& paper, const BoardLook& look, const Scheme& scheme);

// Where a figure is taken hold of: of a card its corners, else the lower ends of its sides.
[[nodiscard]] std::vector<QPointF> gripsOf(Laid laid, const QRectF& figure);

}  // namespace fb
