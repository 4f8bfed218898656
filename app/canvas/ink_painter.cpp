#include "app/canvas/ink_painter.h"

#include <QBrush>
#include <QLinearGradient>
#include <QPaintEngine>
#include <QPainter>
#include <QPolygonF>
#include <QRadialGradient>
#include <algorithm>
#include <cmath>
#include <map>

namespace fb {

namespace ink_detail {

inline constexpr double kFaint = 0.15;         // opacity of the steps a soft shade is piled up of
inline constexpr double kContourLength = 4.0;  // cm: a pen stroke this long bounds a form

QPointF at(Point p) { return {p.x, p.y}; }

// The place of its first element.
int addRing(QPainterPath& path, const Ring& ring)
{
    path.moveTo(at(ring.points[0]));
    const int start = path.elementCount() - 1;
    for (std::size_t i = 3; i < ring.points.size(); i += 3)
        path.cubicTo(at(ring.points[i - 2]), at(ring.points[i - 1]), at(ring.points[i]));
    if (ring.closed)
        path.closeSubpath();
    return start;
}

struct Measure {
    double area = 0.0;
    double perimeter = 0.0;
};

// By the polygon of the knots: near enough to tell a fine line from a stout one.
Measure measured(const std::vector<Ring>& rings)
{
    Measure sum;
    for (const Ring& ring : rings) {
        for (std::size_t i = 0; i + 3 < ring.points.size(); i += 3) {
            sum.area += cross(ring.points[i], ring.points[i + 3]) / 2.0;
            sum.perimeter += distance(ring.points[i], ring.points[i + 3]);
        }
    }
    sum.area = std::abs(sum.area);
    return sum;
}

QBrush washOf(const Gradient& gradient, const std::vector<QColor>& tones)
{
    QLinearGradient linear(at(gradient.from), at(gradient.to));
    QRadialGradient radial(at(gradient.from), distance(gradient.from, gradient.to));
    QGradient& made = gradient.radial ? static_cast<QGradient&>(radial) : static_cast<QGradient&>(linear);
    for (const GradientStop& stop : gradient.stops) {
        QColor colour = tones[static_cast<std::size_t>(stop.tone)];
        colour.setAlphaF(static_cast<float>(stop.opacity));
        made.setColorAt(stop.offset, colour);
    }
    return QBrush(made);
}

bool isShown(const ReadyInk::Shape& shape, const InkManner& manner)
{
    const bool skin = manner.layers.contains(Layer::Skin);
    switch (shape.layer) {
    case Layer::Bone:
    case Layer::Vessel:
    case Layer::Nerve:
    case Layer::Muscle: return !skin && manner.layers.contains(shape.layer);
    case Layer::Surface: return skin;
    case Layer::Skin:
    case Layer::Cloth: return manner.layers.contains(shape.layer);
    }
    return false;
}

// Everything one run over the shapes needs.
struct Run {
    const ReadyInk& ink;
    const std::vector<QColor>& tones;
    const InkManner& manner;
    double scale = 1.0;   // device pixels per cm
    bool chords = false;  // pixels want chords, files want the true curves
    QRectF visible;       // cm; empty: everything

    [[nodiscard]] bool skips(const ReadyInk::Shape& shape) const
    {
        if (!visible.isEmpty() && !visible.intersects(shape.bounds))
            return true;
        return shape.width > 0.0 && !shape.contour && shape.width * scale < manner.leastHatchPx;
    }

    [[nodiscard]] QBrush brushOf(const ReadyInk::Shape& shape) const
    {
        if (shape.gradient >= 0)
            return washOf(ink.gradients()[static_cast<std::size_t>(shape.gradient)], tones);
        return QBrush(tones[static_cast<std::size_t>(shape.tone)]);
    }
};

// The cubics of a path as the fewest chords that stay within a seventh of a pixel of it.
// Measured: the raster engine takes three times as long to break the curves by itself.
QPolygonF chords(const QPainterPath& path, qsizetype first, double scale)
{
    QPolygonF made;
    for (int i = static_cast<int>(first); i < path.elementCount(); ++i) {
        const QPainterPath::Element& e = path.elementAt(i);
        if (e.isMoveTo() && i > first)
            break;
        if (!e.isCurveTo()) {
            made.push_back(e);
            continue;
        }
        const QPointF a = made.back();
        const QPointF b = e;
        const QPointF c = path.elementAt(++i);
        const QPointF d = path.elementAt(++i);
        const QPointF bendA = a - 2 * b + c;
        const QPointF bendB = b - 2 * c + d;
        const double bend =
            std::max(std::hypot(bendA.x(), bendA.y()), std::hypot(bendB.x(), bendB.y())) * scale;
        const int pieces = std::clamp(static_cast<int>(std::ceil(std::sqrt(5.0 * bend))), 1, 64);
        for (int k = 1; k < pieces; ++k) {
            const double t = static_cast<double>(k) / pieces;
            const double u = 1.0 - t;
            made.push_back(a * (u * u * u) + b * (3 * u * u * t) + c * (3 * u * t * t) + d * (t * t * t));
        }
        made.push_back(d);
    }
    return made;
}

void fill(QPainter& painter, const ReadyInk::Shape& shape, const QBrush& brush, const Run& run)
{
    if (!run.chords) {
        painter.fillPath(shape.path, brush);
        return;
    }
    // The border of a faint tint is fainter than a pixel's corner can show.
    painter.setRenderHint(QPainter::Antialiasing, shape.width > 0.0 || shape.opacity > kFaint);
    painter.setBrush(brush);
    if (shape.starts.size() == 1) {
        painter.drawPolygon(chords(shape.path, 0, run.scale), Qt::WindingFill);
        return;
    }
    QPainterPath broken;
    broken.setFillRule(Qt::WindingFill);
    for (const qsizetype start : shape.starts)
        broken.addPolygon(chords(shape.path, start, run.scale));
    painter.fillPath(broken, brush);
}

bool paintShown(QPainter& painter, const Run& run, const std::atomic_bool& cancelled)
{
    for (const ReadyInk::Shape& shape : run.ink.shapes()) {
        if (cancelled.load(std::memory_order_relaxed))
            return false;
        if (!isShown(shape, run.manner) || run.skips(shape))
            continue;
        painter.setOpacity(shape.opacity);
        fill(painter, shape, run.brushOf(shape), run);
    }
    painter.setOpacity(1.0);
    return true;
}

void paintGhost(QPainter& painter, const Run& run)
{
    if (!run.manner.ghost.isValid() || run.manner.layers.contains(Layer::Skin))
        return;
    for (const ReadyInk::Shape& shape : run.ink.shapes())
        if (shape.layer == Layer::Skin && shape.contour && !run.skips(shape))
            fill(painter, shape, run.manner.ghost, run);
}

std::vector<QRectF> rowsOf(const std::vector<ReadyInk::Shape>& shapes)
{
    std::map<int, std::pair<double, double>> rows;
    for (const ReadyInk::Shape& shape : shapes) {
        if (shape.layer != Layer::Skin && shape.layer != Layer::Cloth)
            continue;
        for (int i = 0; i < shape.path.elementCount(); ++i) {
            const QPointF p = shape.path.elementAt(i);
            const auto [row, isNew] =
                rows.try_emplace(static_cast<int>(std::floor(p.y() / ReadyInk::kRowCm)), p.x(), p.x());
            row->second = {std::min(row->second.first, p.x()), std::max(row->second.second, p.x())};
        }
    }
    std::vector<QRectF> made;
    made.reserve(rows.size());
    for (const auto& [row, ends] : rows)
        made.emplace_back(ends.first, row * ReadyInk::kRowCm, ends.second - ends.first, ReadyInk::kRowCm);
    return made;
}

}  // namespace ink_detail

ReadyInk::ReadyInk(const Picture& picture, Rows rows) : m_gradients(picture.ink.gradients)
{
    m_shapes.reserve(picture.ink.shapes.size());
    for (const MovedShape& moved : picture.ink.shapes) {
        Shape shape;
        shape.path.setFillRule(Qt::WindingFill);
        for (const Ring& ring : moved.rings) {
            const int start = ink_detail::addRing(shape.path, ring);
            // Of a ring drawn on one spot a path keeps only where it began, and the next begins there.
            if (shape.path.elementCount() > start + 1)
                shape.starts.push_back(start);
        }
        shape.bounds = shape.path.controlPointRect();
        shape.layer = picture.plate->structures[static_cast<std::size_t>(moved.structure)].layer;
        shape.tone = moved.tone;
        shape.gradient = moved.gradient;
        shape.opacity = moved.opacity;
        if (moved.penStroke) {
            const ink_detail::Measure m = ink_detail::measured(moved.rings);
            // A stroke that tapers to both ends is half again as wide in its middle as on average.
            shape.width = m.perimeter > 0.0 ? 3.0 * m.area / m.perimeter : 0.0;
            shape.contour = m.perimeter / 2.0 >= ink_detail::kContourLength;
        }
        m_shapes.push_back(std::move(shape));
    }
    if (rows == Rows::Kept)
        m_silhouette = ink_detail::rowsOf(m_shapes);
}

bool paintInk(QPainter& painter, const ReadyInk& ink, const std::vector<QColor>& tones,
              const InkManner& manner, const std::atomic_bool& cancelled)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setTransform(manner.cmToDevice, true);
    const QTransform whole = painter.combinedTransform();
    const bool raster = painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::Raster;
    ink_detail::Run run{ink, tones, manner, std::sqrt(std::abs(whole.determinant())), raster, {}};
    if (painter.hasClipping())
        run.visible = painter.clipBoundingRect();
    const bool done = ink_detail::paintShown(painter, run, cancelled);
    if (done)
        ink_detail::paintGhost(painter, run);
    painter.restore();
    return done;
}

bool paintInk(QPainter& painter, const Picture& picture, const std::vector<QColor>& tones,
              const QTransform& cmToDevice, const QSet<Layer>& layers, double leastHatchPx,
              const std::atomic_bool& cancelled)
{
    return paintInk(painter, ReadyInk(picture), tones, InkManner{cmToDevice, layers, leastHatchPx, QColor()},
                    cancelled);
}

}  // namespace fb
