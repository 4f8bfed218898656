// What a screen reader is told of a plate: only what is painted, each with its place on the
// widget. Places are spoken from the middle of the picture, so that nothing is given away.
#pragma once

#include <QRect>
#include <QString>
#include <QVector>

#include "app/canvas/plate_painter.h"

namespace fb {

struct SpokenItem {
    QString words;
    QRect box;  // widget

    friend bool operator==(const SpokenItem&, const SpokenItem&) = default;
};

// In this order: crosshair, mark, the shapes of the scene that have words.
[[nodiscard]] QVector<SpokenItem> spokenItems(const PlateFace& face);

}  // namespace fb
