// What is drawn over a plate: shapes with a role and a label, and nothing that knows anatomy.
// Coordinates are centimetres in the viewer's frame (+x right, +y up).
#pragma once

#include <QPointF>
#include <QString>
#include <QVector>

#include "app/look/palette.h"

namespace fb {

enum class Figure { Point, Line, Closed };

struct SceneShape {
    Role role{};
    Figure figure{};
    QVector<QPointF> points;  // none: the label is listed in the margin and gives no place away
    QString label;            // painted beside the shape; empty: nothing painted
    QString description;      // for a screen reader; empty: the label
};

using Scene = QVector<SceneShape>;

// What a screen reader says of a shape: its description, else its label, else nothing.
[[nodiscard]] inline QString spoken(const SceneShape& shape)
{
    return shape.description.isEmpty() ? shape.label : shape.description;
}

}  // namespace fb
