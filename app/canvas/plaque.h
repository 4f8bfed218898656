// A small framed label beside a thing on the plate: where it finds room, and its painting.
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <QVector>

#include "app/look/palette.h"

class QPainter;

namespace fb {

// Room for a text in at most `widest` pixels, frame and padding included.
[[nodiscard]] QSizeF plaqueSize(const QString& text, const QFont& font, double widest);

// Beside a thing: on the side a reader's eye goes to first, else on the other, below or above. Never over
// the thing and never off the paper as long as the paper has room; over as little as it can of what is taken.
[[nodiscard]] QRectF placeBeside(const QRectF& thing, const QSizeF& size, const QRectF& paper,
                                 const QVector<QRectF>& taken, Qt::LayoutDirection direction);

void paintPlaque(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
                 const Scheme& scheme);

}  // namespace fb
