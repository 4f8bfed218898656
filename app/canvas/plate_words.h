// What a screen reader is told of a plate: only what is painted, each with its place on the
// widget. Places are spoken from the middle of the picture, so that nothing is given away.
#pragma once

#include <QRect>
#include <QString>
#include <QVector>

#include "app/canvas/plate_painter.h"

namespace fb {

enum class SpokenKind { Crosshair, Mark, Press, Handle, CurrentHandle, Flag, Shape };

struct SpokenItem {
    QString words;
    QRect box;  // widget
    SpokenKind kind = SpokenKind::Shape;

    friend bool operator==(const SpokenItem&, const SpokenItem&) = default;
};

// In this order: crosshair, mark, press, handles, flags, the shapes of the scene that have words. The
// current handle tells where it is.
[[nodiscard]] QVector<SpokenItem> spokenItems(const PlateFace& face);

}  // namespace fb
