// Where a name stands on the plate of a demonstration: beside what it names and tied to it by a leader, clear
// of it, of the hand that is laid, of the target region and of the lines of the construction; as near as that
// allows. Lengths are the painter's.
#pragma once

#include <QPolygonF>
#include <optional>

#include "app/scene/label_placement.h"

namespace fb {

// What a name keeps clear of.
struct NameGround {
    struct Bar {
        QPointF from, to;
        double half = 0.0;
    };
    QRectF paper;
    QVector<QRectF> taken;     // never covered
    QVector<Bar> laid;         // hand and fingers
    QVector<QPolygonF> areas;  // closed
    QVector<QPolygonF> lines;  // open
};

// A name by its kind: Name, of a point; Plaque, of a line; Word, of an area. Of several places as good the
// one nearest to the middle of what is named. nullopt: what is named is not on the paper, or no place is
// free.
[[nodiscard]] std::optional<PlacedLabel> placeName(const LabelAsk& ask, const NameGround& ground);

}  // namespace fb
