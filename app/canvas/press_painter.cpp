#include "app/canvas/press_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/canvas/plaque.h"
#include "app/look/type.h"

namespace fb {

namespace press_detail {

inline constexpr double kLeastPad = 12.0;  // pixels: a finger smaller than that is ringed as if it were not
inline constexpr double kBroadest = 2.2;   // how much broader than usual its pen may get
inline constexpr double kFingerTilt = -34.0;  // degrees from upright, to the viewer's left
inline constexpr double kWordsWidest = 168.0;

QColor faded(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

double weightOf(double textScale) { return 0.5 + 0.5 * heldTextScale(textScale); }

// Radii from the middle of the pad, pixels.
struct Rings {
    double weight;  // of all strokes: a large ring is drawn with a broader pen
    QVector<double> radii;

    Rings(const PressLook& press, const PressPlace& place) : weight(weightOf(place.textScale))
    {
        const double pad = std::max(press.fingerCm * place.pixelsPerCm / 2.0, kLeastPad * weight);
        weight = std::clamp(pad / kLeastPad, weight, kBroadest * weight);
        switch (press.firmness) {
        case Firmness::Soft: radii = {2.15 * pad}; break;
        case Firmness::Firm: radii = {1.65 * pad}; break;
        case Firmness::Hard: radii = {pad, pad + 6.5 * weight}; break;
        }
    }
    [[nodiscard]] double rim() const { return radii.last(); }
    [[nodiscard]] double reach() const { return rim() + std::max(11.0 * weight, 0.3 * rim()) + 4.0 * weight; }
};

// A fingertip from behind, one breadth wide, the middle of its pad at the origin, its tip up.
QPainterPath fingerPath()
{
    QPainterPath path(QPointF(-0.53, 1.75));
    path.cubicTo(-0.51, 1.3, -0.46, 1.05, -0.47, 0.7);
    path.cubicTo(-0.52, 0.3, -0.53, 0.0, -0.45, -0.27);
    path.cubicTo(-0.37, -0.52, -0.2, -0.64, 0.0, -0.64);
    path.cubicTo(0.2, -0.64, 0.37, -0.52, 0.45, -0.27);
    path.cubicTo(0.53, 0.0, 0.52, 0.3, 0.47, 0.7);
    path.cubicTo(0.46, 1.05, 0.51, 1.3, 0.53, 1.75);
    return path;
}

QPainterPath nailAndCreases()
{
    QPainterPath path(QPointF(-0.27, -0.06));
    path.cubicTo(-0.31, -0.28, -0.27, -0.45, -0.2, -0.5);
    path.cubicTo(-0.1, -0.57, 0.1, -0.57, 0.2, -0.5);
    path.cubicTo(0.27, -0.45, 0.31, -0.28, 0.27, -0.06);
    path.cubicTo(0.18, 0.07, -0.18, 0.07, -0.27, -0.06);
    for (const double y : {0.74, 0.86}) {
        path.moveTo(-0.3, y);
        path.cubicTo(-0.1, y + 0.06, 0.1, y + 0.06, 0.3, y);
    }
    return path;
}

QTransform fingerToWidget(const PressLook& press, const PressPlace& place)
{
    const double breadth = press.fingerCm * place.pixelsPerCm;
    return QTransform::fromScale(breadth, breadth) * QTransform().rotate(kFingerTilt) *
           QTransform::fromTranslate(place.at.x(), place.at.y());
}

void paintFinger(QPainter& painter, const PressLook& press, const PressPlace& place, const Scheme& scheme)
{
    const QTransform toWidget = fingerToWidget(press, place);
    const double weight = weightOf(place.textScale);
    const auto fading = [&](const QColor& colour, double alpha) {
        QLinearGradient gradient(toWidget.map(QPointF(0, -0.64)), toWidget.map(QPointF(0, 1.75)));
        gradient.setColorAt(0, faded(colour, alpha));
        gradient.setColorAt(0.5, faded(colour, alpha));
        gradient.setColorAt(1, faded(colour, 0));
        return gradient;
    };
    const QPainterPath outline = toWidget.map(fingerPath());
    painter.fillPath(outline, fading(scheme.paper, 0.3));
    painter.strokePath(outline, QPen(QBrush(fading(scheme.paper, 0.55)), 3.0 * weight));
    painter.strokePath(outline, QPen(QBrush(fading(scheme.ink, 0.75)), 1.2 * weight));
    painter.strokePath(toWidget.map(nailAndCreases()), QPen(QBrush(fading(scheme.ink, 0.5)), 0.9 * weight));
}

void addArc(QPainterPath& path, QPointF at, double radius, double from, double sweep)
{
    const QRectF box(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
    path.arcMoveTo(box, from);
    path.arcTo(box, from, sweep);
}

// One ring as its arcs; degrees counter-clockwise from the right.
QPainterPath ringPath(const PressLook& press, QPointF at, double radius)
{
    constexpr double kGapAt = 296.0;  // of what is felt dully: below, right of the finger
    constexpr double kGap = 46.0;
    constexpr int kPieces = 5;
    constexpr double kLoose = 0.07;  // the pieces of a soft ring lie now within it, now without
    QPainterPath path;
    const bool dull = press.clearness == Clearness::Dull;
    if (press.firmness != Firmness::Soft) {
        addArc(path, at, radius, dull ? kGapAt + kGap / 2 : 0.0, dull ? 360.0 - kGap : 360.0);
        return path;
    }
    for (int piece = 0; piece < kPieces; ++piece)
        if (!dull || piece != 4)
            addArc(path, at, radius * (1.0 + (piece % 2 == 0 ? kLoose : -kLoose)), 12.0 + piece * 72.0, 48.0);
    return path;
}

// Dots stand closer on a firm ring than on a soft one, which stays loose.
QPainterPath dottedPath(const PressLook& press, QPointF at, double radius, double weight)
{
    const double apart = (press.firmness == Firmness::Soft ? 13.0 : 8.0) * weight;
    const double dot = (press.firmness == Firmness::Soft ? 2.0 : 1.7) * weight;
    const int count = std::max(8, static_cast<int>(2.0 * std::numbers::pi * radius / apart));
    QPainterPath path;
    for (int i = 0; i < count; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / count;
        path.addEllipse(at + QPointF(std::cos(angle), std::sin(angle)) * radius, dot, dot);
    }
    return path;
}

class RingHand {
public:
    RingHand(QPainter& painter, const PressLook& press, const PressPlace& place, const Scheme& scheme)
        : m_painter(painter),
          m_press(press),
          m_place(place),
          m_scheme(scheme),
          m_rings(press, place)
    {
        const double bold = scheme.kind == PaletteKind::Projector ? 1.25 : 1.0;
        m_line = (press.clearness == Clearness::Plain ? 3.2 : 1.9) * m_rings.weight * bold;
    }

    void paint()
    {
        for (const double radius : m_rings.radii) {
            if (m_press.clearness == Clearness::Faint)
                fill(dottedPath(m_press, m_place.at, radius, m_rings.weight));
            else
                stroke(ringPath(m_press, m_place.at, radius), m_line, Qt::FlatCap);
        }
        switch (m_press.shape) {
        case BoneShape::None: break;
        case BoneShape::Point: dot(); break;
        case BoneShape::Edge: ridge(); break;
        case BoneShape::Broad: hatching(); break;
        }
        tick();
    }

private:
    // Centimetres have y up, widgets have it down.
    static QPointF onWidget(QPointF way) { return {way.x(), -way.y()}; }

    void stroke(const QPainterPath& path, double width, Qt::PenCapStyle cap)
    {
        m_painter.strokePath(path, QPen(faded(m_scheme.paper, 0.88), width + 3.2 * m_rings.weight,
                                        Qt::SolidLine, Qt::RoundCap));
        m_painter.strokePath(path, QPen(m_scheme.ink, width, Qt::SolidLine, cap));
    }

    void fill(const QPainterPath& path)
    {
        m_painter.strokePath(path, QPen(faded(m_scheme.paper, 0.88), 2.8 * m_rings.weight));
        m_painter.fillPath(path, m_scheme.ink);
    }

    void dot()
    {
        const double radius = (m_press.clearness == Clearness::Plain ? 4.6 : 3.4) * m_rings.weight;
        QPainterPath path;
        path.addEllipse(m_place.at, radius, radius);
        fill(path);
    }

    // Two lines side by side: one bar through a ring would read as a sign that forbids.
    void ridge()
    {
        const QPointF way = onWidget(m_press.along.value_or(QPointF(1, 0)));
        const QPointF across(-way.y(), way.x());
        const double reach = m_rings.reach() - 5.0 * m_rings.weight;
        QPainterPath path;
        for (const double side : {-1.0, 1.0}) {
            const QPointF middle = m_place.at + across * (side * 1.35 * m_line);
            path.moveTo(middle - way * reach);
            path.lineTo(middle + way * reach);
        }
        stroke(path, 0.85 * m_line, Qt::FlatCap);
    }

    void hatching()
    {
        const double within = 0.72 * m_rings.radii.first();
        const QPointF way = QPointF(1, -1) / std::numbers::sqrt2;
        const QPointF across(-way.y(), way.x());
        QPainterPath path;
        for (const double off : {-0.62, -0.21, 0.21, 0.62}) {
            const double half = within * std::sqrt(1.0 - off * off) * 0.85;
            const QPointF middle = m_place.at + across * (off * within);
            path.moveTo(middle - way * half);
            path.lineTo(middle + way * half);
        }
        stroke(path, 0.55 * m_line, Qt::FlatCap);
    }

    void tick()
    {
        if (!m_press.toward)
            return;
        const QPointF way = onWidget(*m_press.toward);
        const QPointF across(-way.y(), way.x());
        const double rim = m_rings.rim() + m_line / 2;
        const double length = std::max(11.0 * m_rings.weight, 0.3 * m_rings.rim());
        QPainterPath path(m_place.at + way * (rim + length));
        path.lineTo(m_place.at + way * rim + across * (0.42 * length));
        path.lineTo(m_place.at + way * rim - across * (0.42 * length));
        path.closeSubpath();
        fill(path);
    }

    QPainter& m_painter;
    const PressLook& m_press;
    const PressPlace& m_place;
    const Scheme& m_scheme;
    Rings m_rings;
    double m_line;
};

}  // namespace press_detail

QRectF ringBox(const PressLook& press, const PressPlace& place)
{
    const double reach = press_detail::Rings(press, place).reach();
    return {place.at.x() - reach, place.at.y() - reach, 2 * reach, 2 * reach};
}

QRectF pressWordsBox(const PressLook& press, const PressPlace& place, const QVector<QRectF>& taken,
                     Qt::LayoutDirection direction)
{
    if (press.words.isEmpty())
        return {};
    const double widest =
        std::min(press_detail::kWordsWidest * heldTextScale(place.textScale), place.paper.width());
    return placeBeside(ringBox(press, place),
                       plaqueSize(press.words, fontOf(Type::Body, place.textScale), widest), place.paper,
                       taken, direction);
}

QRectF pressBox(const PressLook& press, const PressPlace& place, const QVector<QRectF>& taken,
                Qt::LayoutDirection direction)
{
    const QRectF finger =
        press_detail::fingerToWidget(press, place).map(press_detail::fingerPath()).boundingRect();
    return ringBox(press, place) | finger.adjusted(-4, -4, 4, 4) |
           pressWordsBox(press, place, taken, direction);
}

void paintPress(QPainter& painter, const PressLook& press, const PressPlace& place, const Scheme& scheme,
                const QVector<QRectF>& taken)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    press_detail::paintFinger(painter, press, place, scheme);
    press_detail::RingHand(painter, press, place, scheme).paint();
    const QRectF words = pressWordsBox(press, place, taken, painter.layoutDirection());
    if (!words.isEmpty())
        paintPlaque(painter, words, press.words, fontOf(Type::Body, place.textScale), scheme);
    painter.restore();
}

}  // namespace fb
