// Where on an area there is room: for its word, and for the end of a leader that points at it.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <QVector>
#include <functional>
#include <optional>

namespace fb {

// A box of a size whose corners lie on the area and on none of those over it: the nearest to its
// middle, stepping up and down and then aside, that isFree accepts. nullopt: there is none.
[[nodiscard]] std::optional<QRectF> roomWithin(const QPolygonF& area, const QVector<QPolygonF>& over,
                                               const QSizeF& size,
                                               const std::function<bool(const QRectF&)>& isFree);

// The middle of what the paper shows of an area where that lies on it, else the middle of the
// area's longest upright.
[[nodiscard]] QPointF placeOn(const QPolygonF& area, const QRectF& paper);

// A box moved onto the paper, by as little as it takes.
[[nodiscard]] QRectF heldOn(const QRectF& paper, QRectF box);

// Whether a box keeps clear of all that is taken: so far apart beside it, a pixel above and below.
[[nodiscard]] bool isFreeOf(const QRectF& box, const QVector<QRectF>& taken, double apart);

// The free place on the paper for a box that would rather stand where it is: the nearest above or below, then
// to either side, then any. nullopt: there is none.
[[nodiscard]] std::optional<QRectF> freePlace(const QRectF& wish, const QRectF& paper,
                                              const QVector<QRectF>& taken, double apart);

}  // namespace fb
