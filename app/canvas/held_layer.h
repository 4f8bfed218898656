// What a learner lays on the body, a hand or fingers, drawn ahead into an image of its own: moved and
// turned it is only laid anew, not drawn anew.
#pragma once

#include <QImage>
#include <QTransform>
#include <atomic>
#include <memory>
#include <optional>
#include <variant>

#include "app/canvas/plate_tool.h"
#include "app/look/palette.h"
#include "core/body/moved_ink.h"

class QPainter;

namespace fb {

// A thing at the origin, not turned (a hand's wrist, its fork on +x; the middle of the fingers' upper
// edge, level), and where it lies.
struct Held {
    std::shared_ptr<const Plate> art;
    std::variant<HandPose, FingersLook> form;
    QPointF at;         // cm: where its origin lies
    double turn = 0.0;  // degrees, counter-clockwise
};

// Without art there is nothing to draw: nullopt.
[[nodiscard]] std::optional<Held> heldOf(const HandLook& look);
[[nodiscard]] std::optional<Held> heldOf(const FingersLook& look);
// Whether one is the other, moved or turned.
[[nodiscard]] bool sameForm(const Held& a, const Held& b);
[[nodiscard]] bool sameTurn(const Held& a, const Held& b);
// Its ink about its origin, turned.
[[nodiscard]] MovedInk inkOf(const Held& held);

struct HeldLayer {
    Held held;  // as it was when it was drawn
    Scheme scheme;
    double pixelsPerCm = 1.0;  // wished for; a very large image is drawn less fine
    bool quick = false;        // half as fine and its shades in fewer steps, for a moment
    QImage image;              // premultiplied, see-through
    QTransform toOwn;          // image pixels to cm about the origin, turned as held was
};

// nullopt when cancelled.
[[nodiscard]] std::optional<HeldLayer> madeLayer(const Held& held, const Scheme& scheme, double pixelsPerCm,
                                                 bool quick, const std::atomic_bool& cancelled);

// A layer laid where a thing is now.
struct HeldImage {
    QImage image;
    QTransform toCm;  // image pixels to the viewer's frame
    [[nodiscard]] QRectF box() const { return toCm.mapRect(QRectF(image.rect())); }  // cm
};

[[nodiscard]] HeldImage laid(const HeldLayer& layer, const Held& now);

// One image pixel on one of the device is copied to whole pixels; everything else is smoothed.
void paintHeld(QPainter& painter, const HeldImage& held, const QTransform& cmToWidget);

// Fingers without art: the lines between and beside them, the outer two joined by their tips.
[[nodiscard]] QRectF outlinesBox(const FingersLook& look);  // cm
void paintFingerOutlines(QPainter& painter, const FingersLook& look, const Scheme& scheme,
                         const QTransform& cmToWidget, double textScale);

}  // namespace fb
