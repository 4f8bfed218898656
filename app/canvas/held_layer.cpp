#include "app/canvas/held_layer.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/canvas/hand_painter.h"
#include "app/look/type.h"
#include "core/hand/posed_hand.h"

namespace fb {

namespace held_detail {

inline constexpr double kDegree = std::numbers::pi / 180.0;
inline constexpr double kMostPixels = 5e6;         // of a layer; one seen closer is stretched
inline constexpr double kMostQuickPixels = 1.2e5;  // of one that is drawn while fingers open
inline constexpr double kFaint = 0.15;             // opacity of the steps a soft shade is piled up of
inline constexpr std::size_t kSteps = 3;           // that a quick layer paints as one
inline constexpr double kSame = 1e-4;              // cm, degrees
inline constexpr double kPad = 2.0;                // image pixels around the ink

Point turnedAbout(Point p, double degrees)
{
    const double c = std::cos(degrees * kDegree);
    const double s = std::sin(degrees * kDegree);
    return {p.x * c - p.y * s, p.x * s + p.y * c};
}

bool sameNumber(double a, double b) { return std::abs(a - b) < kSame; }

HandPose movedAndTurned(HandPose pose, Point by, double degrees)
{
    for (Point* p : {&pose.wrist, &pose.fork, &pose.indexTip, &pose.middleTip})
        *p = turnedAbout(*p + by, degrees);
    return pose;
}

double levelTurn(const FingersLook& look) { return look.fingers.turn.value(); }

bool samePose(const HandPose& a, const HandPose& b)
{
    return a.hand == b.hand && sameNumber(a.opening.value(), b.opening.value()) &&
           sameNumber(length(a.fork - a.wrist), length(b.fork - b.wrist));
}

bool sameFingers(const FingersLook& a, const FingersLook& b)
{
    return a.fingers.count == b.fingers.count && a.fingers.hand == b.fingers.hand &&
           sameNumber(a.fingerCm, b.fingerCm);
}

QPointF toQt(Point p) { return {p.x, p.y}; }

bool isStep(const MovedShape& shape)
{
    return !shape.penStroke && shape.gradient < 0 && shape.opacity < kFaint;
}

// Measured: nine tenths of the shapes of a hand are steps of its soft shades. Some that lie on each other
// become their middle one, as dark as all of them.
MovedInk thinned(MovedInk ink)
{
    std::vector<MovedShape> kept;
    for (std::size_t i = 0; i < ink.shapes.size();) {
        const MovedShape& first = ink.shapes[i];
        const auto goesOn = [&first](const MovedShape& shape) {
            return isStep(shape) && shape.structure == first.structure && shape.tone == first.tone;
        };
        std::size_t count = 1;
        double clear = 1.0 - first.opacity;
        while (isStep(first) && count < kSteps && i + count < ink.shapes.size() &&
               goesOn(ink.shapes[i + count]))
            clear *= 1.0 - ink.shapes[i + count++].opacity;
        kept.push_back(std::move(ink.shapes[i + count / 2]));
        kept.back().opacity = 1.0 - clear;  // of one that is alone its own
        i += count;
    }
    ink.shapes = std::move(kept);
    return ink;
}

}  // namespace held_detail

std::optional<Held> heldOf(const HandLook& look)
{
    if (!look.art)
        return std::nullopt;
    const Point axis = look.pose.fork - look.pose.wrist;
    const double turn = std::atan2(axis.y, axis.x) / held_detail::kDegree;
    return Held{look.art, held_detail::movedAndTurned(look.pose, look.pose.wrist * -1.0, -turn),
                held_detail::toQt(look.pose.wrist), turn};
}

std::optional<Held> heldOf(const FingersLook& look)
{
    if (!look.art)
        return std::nullopt;
    Held held{look.art, look, held_detail::toQt(look.fingers.top), held_detail::levelTurn(look)};
    auto& form = std::get<FingersLook>(held.form);
    form.fingers.top = {};
    form.fingers.turn = Degrees{0.0};
    return held;
}

bool sameForm(const Held& a, const Held& b)
{
    if (a.art != b.art || a.form.index() != b.form.index())
        return false;
    if (const auto* pose = std::get_if<HandPose>(&a.form))
        return held_detail::samePose(*pose, std::get<HandPose>(b.form));
    return held_detail::sameFingers(std::get<FingersLook>(a.form), std::get<FingersLook>(b.form));
}

bool sameTurn(const Held& a, const Held& b) { return held_detail::sameNumber(a.turn, b.turn); }

MovedInk inkOf(const Held& held)
{
    if (const auto* pose = std::get_if<HandPose>(&held.form))
        return posedHand(*held.art, held_detail::movedAndTurned(*pose, {}, held.turn));
    FingersLook look = std::get<FingersLook>(held.form);
    look.fingers.turn = Degrees{held.turn};
    return posedFingers(*held.art, look.fingers, Cm{look.fingerCm});
}

std::optional<HeldLayer> madeLayer(const Held& held, const Scheme& scheme, double pixelsPerCm, bool quick,
                                   const std::atomic_bool& cancelled)
{
    using namespace held_detail;
    HeldLayer layer{held, scheme, pixelsPerCm, quick, {}, {}};
    const ReadyInk ink(Picture{held.art, quick ? thinned(inkOf(held)) : inkOf(held), 0},
                       ReadyInk::Rows::None);
    const QRectF bounds = inkBounds(ink);
    const double area = std::max(1e-6, bounds.width() * bounds.height());
    const double fineness = std::min(pixelsPerCm * (quick ? 0.5 : 1.0),
                                     std::sqrt((quick ? kMostQuickPixels : kMostPixels) / area));
    const QSize size(static_cast<int>(std::ceil(bounds.width() * fineness + 2 * kPad)),
                     static_cast<int>(std::ceil(bounds.height() * fineness + 2 * kPad)));
    // The bounds' upper edge (largest y) is the image's first row.
    const QTransform cmToPixel = QTransform::fromTranslate(-bounds.left(), -bounds.bottom()) *
                                 QTransform::fromScale(fineness, -fineness) *
                                 QTransform::fromTranslate(kPad, kPad);
    auto image = handLayer(ink, toneColours(*held.art, scheme, 0), cmToPixel, size, cancelled);
    if (!image)
        return std::nullopt;
    layer.image = std::move(*image);
    layer.toOwn = cmToPixel.inverted();
    return layer;
}

HeldImage laid(const HeldLayer& layer, const Held& now)
{
    QTransform toCm = layer.toOwn;
    if (!sameTurn(now, layer.held))
        toCm *= QTransform().rotate(now.turn - layer.held.turn);
    return {layer.image, toCm * QTransform::fromTranslate(now.at.x(), now.at.y())};
}

void paintHeld(QPainter& painter, const HeldImage& held, const QTransform& cmToWidget)
{
    constexpr double kNear = 1e-9;
    const QTransform toWidget = held.toCm * cmToWidget;
    const QTransform device = painter.deviceTransform();
    const QTransform whole = toWidget * device;
    const bool copies = std::abs(whole.m11() - 1) < kNear && std::abs(whole.m22() - 1) < kNear &&
                        std::abs(whole.m12()) < kNear && std::abs(whole.m21()) < kNear;
    painter.save();
    if (copies) {
        const QTransform placed = QTransform::fromTranslate(std::round(whole.dx()), std::round(whole.dy()));
        painter.setTransform(placed * device.inverted(), true);
    } else {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.setTransform(toWidget, true);
    }
    painter.drawImage(QPointF(), held.image);
    painter.restore();
}

namespace held_detail {

// Tip, knuckle end, knuckle end, tip of every finger's two edges, widget.
QPainterPath outlinesPath(const FingersLook& look, const QTransform& cmToWidget)
{
    const bool left = look.fingers.hand == Side::Left;
    QPainterPath path;
    for (int finger = 0; finger < look.fingers.count; ++finger) {
        const auto upper = edgeLine(look.fingers, Cm{look.fingerCm}, finger);
        const auto lower = edgeLine(look.fingers, Cm{look.fingerCm}, finger + 1);
        const QPointF tipUpper = cmToWidget.map(toQt(upper[left ? 0 : 1]));
        const QPointF tipLower = cmToWidget.map(toQt(lower[left ? 0 : 1]));
        const QPointF rootUpper = cmToWidget.map(toQt(upper[left ? 1 : 0]));
        const QPointF rootLower = cmToWidget.map(toQt(lower[left ? 1 : 0]));
        const QPointF out = (tipUpper - rootUpper) / 6.0;
        path.moveTo(rootUpper);
        path.lineTo(tipUpper - out);
        path.cubicTo(tipUpper + out * 0.35, tipLower + out * 0.35, tipLower - out);
        path.lineTo(rootLower);
    }
    return path;
}

}  // namespace held_detail

QRectF outlinesBox(const FingersLook& look)
{
    const QRectF lines = held_detail::outlinesPath(look, {}).boundingRect();
    return lines.adjusted(-look.fingerCm, -look.fingerCm, look.fingerCm, look.fingerCm);
}

void paintFingerOutlines(QPainter& painter, const FingersLook& look, const Scheme& scheme,
                         const QTransform& cmToWidget, double textScale)
{
    const QPainterPath path = held_detail::outlinesPath(look, cmToWidget);
    const double weight = 0.5 + 0.5 * heldTextScale(textScale);
    QColor veil = scheme.paper;
    veil.setAlphaF(0.35F);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(path, veil);
    veil.setAlphaF(0.8F);
    painter.strokePath(path, QPen(veil, 4.6 * weight, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.strokePath(path, QPen(scheme.ink, 1.8 * weight, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.restore();
}

}  // namespace fb
