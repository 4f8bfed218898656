#include "app/canvas/handle_painter.h"

#include <QLineF>
#include <QPainter>
#include <QPainterPath>

#include "app/canvas/plaque.h"
#include "app/look/type.h"

namespace fb {

namespace handle_detail {

inline constexpr double kHalf = 7.5;       // of a handle, pixels
inline constexpr double kCurrent = 1.25;   // how much larger the current one is
inline constexpr double kBrackets = 15.0;  // from its middle to the brackets' corners

double weightOf(double textScale) { return 0.5 + 0.5 * heldTextScale(textScale); }

// What is filled, and what is only a line.
struct Drawing {
    QPainterPath body;
    QPainterPath lines;
};

// About the origin, half as wide as `r`.
Drawing drawingOf(HandleShape shape, double r)
{
    Drawing made;
    switch (shape) {
    case HandleShape::Grip:
        made.body.addRoundedRect(QRectF(-r, -r, 2 * r, 2 * r), 0.35 * r, 0.35 * r);
        for (const double y : {-0.4, 0.0, 0.4}) {
            made.lines.moveTo(-0.5 * r, y * r);
            made.lines.lineTo(0.5 * r, y * r);
        }
        break;
    case HandleShape::Turn: {
        made.body.addEllipse(QPointF(), 0.72 * r, 0.72 * r);
        const QRectF arc(-1.3 * r, -1.3 * r, 2.6 * r, 2.6 * r);
        made.lines.arcMoveTo(arc, 20);
        made.lines.arcTo(arc, 20, 140);
        const QPointF end = made.lines.currentPosition();
        made.lines.lineTo(end + QPointF(-0.35 * r, -0.75 * r));
        made.lines.moveTo(end);
        made.lines.lineTo(end + QPointF(0.6 * r, -0.4 * r));
        break;
    }
    case HandleShape::Point:
        made.body.addPolygon(QPolygonF{{0, -1.2 * r}, {1.2 * r, 0}, {0, 1.2 * r}, {-1.2 * r, 0}});
        made.body.closeSubpath();
        break;
    case HandleShape::Line:
        made.body.addRoundedRect(QRectF(-1.5 * r, -0.42 * r, 3 * r, 0.84 * r), 0.3 * r, 0.3 * r);
        for (const double way : {-1.0, 1.0}) {
            made.lines.moveTo(-0.4 * r, way * 0.85 * r);
            made.lines.lineTo(0, way * 1.3 * r);
            made.lines.lineTo(0.4 * r, way * 0.85 * r);
        }
        break;
    }
    return made;
}

QPainterPath bracketsOf(double half)
{
    QPainterPath path;
    const double leg = 0.45 * half;
    for (const double x : {-1.0, 1.0}) {
        for (const double y : {-1.0, 1.0}) {
            path.moveTo(x * (half - leg), y * half);
            path.lineTo(x * half, y * half);
            path.lineTo(x * half, y * (half - leg));
        }
    }
    return path;
}

QPen penOf(const QColor& colour, double width)
{
    return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

void paintOne(QPainter& painter, HandleShape shape, QPointF at, bool current, bool focused,
              const Scheme& scheme, double weight)
{
    const Drawing drawing = drawingOf(shape, kHalf * weight * (current ? kCurrent : 1.0));
    painter.save();
    painter.translate(at);
    QPainterPath all = drawing.body;
    all.addPath(drawing.lines);
    if (current && focused)
        all.addPath(bracketsOf(kBrackets * weight));
    QColor halo = scheme.paper;
    halo.setAlphaF(0.92F);
    painter.strokePath(all, penOf(halo, 5.4 * weight));
    // A point stays open, so that what it points at is seen.
    if (shape == HandleShape::Point)
        halo.setAlphaF(0.35F);
    painter.fillPath(drawing.body, current && shape != HandleShape::Point ? scheme.accent : halo);
    const double line = (current ? 2.6 : 1.8) * weight;
    painter.strokePath(drawing.body, penOf(scheme.ink, line));
    const bool onBody = shape == HandleShape::Grip;
    painter.strokePath(drawing.lines, penOf(current && onBody ? scheme.accentInk : scheme.ink,
                                            onBody ? 1.4 * weight : line));
    if (shape == HandleShape::Point)
        painter.fillRect(QRectF(-1.2 * weight, -1.2 * weight, 2.4 * weight, 2.4 * weight), scheme.ink);
    if (current && focused)
        painter.strokePath(bracketsOf(kBrackets * weight), penOf(scheme.focus, 2.4 * weight));
    painter.restore();
}

struct Name {
    QRectF box;
    QString text;
};

// The current one's name first, then that of the one under the pointer.
QVector<Name> namesOf(const QVector<HandleLook>& handles, const HandlesPlace& place)
{
    QVector<Name> names;
    QVector<QRectF> taken;
    for (const HandleLook& handle : handles)
        taken.push_back(handleBox(place.cmToWidget.map(handle.cm), place.textScale));
    for (const int id : {place.current, place.hovered}) {
        const bool again = id == place.hovered && id == place.current && !names.isEmpty();
        for (const HandleLook& handle : handles) {
            const QRectF box = handleBox(place.cmToWidget.map(handle.cm), place.textScale);
            if (handle.id != id || again || handle.name.isEmpty() || !place.paper.intersects(box))
                continue;
            const QSizeF size =
                plaqueSize(handle.name, fontOf(Type::Small, place.textScale), 0.4 * place.paper.width());
            names.push_back({placeBeside(box, size, place.paper, taken, place.direction), handle.name});
            taken.push_back(names.last().box);
        }
    }
    return names;
}

}  // namespace handle_detail

int nearestHandle(const QVector<HandleLook>& handles, const QTransform& cmToWidget, QPointF at, double reach)
{
    int nearest = -1;
    double least = reach;
    for (const HandleLook& handle : handles) {
        const double away = QLineF(cmToWidget.map(handle.cm), at).length();
        if (away <= least) {
            least = away;
            nearest = handle.id;
        }
    }
    return nearest;
}

QRectF handleBox(QPointF at, double textScale)
{
    const double half = (handle_detail::kBrackets + 3.0) * handle_detail::weightOf(textScale);
    return {at.x() - half, at.y() - half, 2 * half, 2 * half};
}

QRectF handlesBox(const QVector<HandleLook>& handles, const HandlesPlace& place)
{
    QRectF box;
    for (const HandleLook& handle : handles)
        box |= handleBox(place.cmToWidget.map(handle.cm), place.textScale);
    for (const handle_detail::Name& name : handle_detail::namesOf(handles, place))
        box |= name.box;
    return box;
}

void paintHandles(QPainter& painter, const QVector<HandleLook>& handles, const HandlesPlace& place,
                  const Scheme& scheme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double weight = handle_detail::weightOf(place.textScale);
    for (const bool current : {false, true})
        for (const HandleLook& handle : handles)
            if ((handle.id == place.current) == current)
                handle_detail::paintOne(painter, handle.shape, place.cmToWidget.map(handle.cm), current,
                                        place.focused, scheme, weight);
    for (const handle_detail::Name& name : handle_detail::namesOf(handles, place))
        paintPlaque(painter, name.box, name.text, fontOf(Type::Small, place.textScale), scheme);
    painter.restore();
}

}  // namespace fb
