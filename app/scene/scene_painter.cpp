#include "app/scene/scene_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/type.h"
#include "app/scene/sign_paths.h"

namespace fb {

namespace scene_detail {

// What the strokes of one painting share.
class Hand {
public:
    Hand(QPainter& painter, const Scheme& scheme, double textScale)
        : m_painter(painter),
          m_scheme(scheme),
          m_weight(0.5 + 0.5 * heldTextScale(textScale))
    {
        m_bold = scheme.kind == PaletteKind::Projector ? 1.35 : 1.0;
    }

    void shape(const SceneShape& shape, const QPolygonF& outline)
    {
        if (outline.isEmpty())
            return;
        const QColor colour = m_scheme.of(shape.role);
        switch (shape.role) {
        case Role::Strike: return area(outline, colour);
        case Role::Region: return region(outline, colour);
        case Role::Near: return near(shape, outline, colour);
        case Role::Construction:
            return shape.figure == Figure::Point ? dot(outline.first(), colour, 2.4)
                                                 : edged(shape, outline, colour, {9, 3, 1.2, 3}, 1.3);
        case Role::Field: return field(outline, colour);
        case Role::Yours: return yours(shape, outline, colour);
        case Role::Newest: return newest(shape, outline, colour);
        case Role::Arrow: return arrow(outline, colour);
        case Role::Ideal: return ideal(outline.first(), colour);
        case Role::Other: return lozenge(outline.first(), colour);
        case Role::Landmark: return landmark(shape, outline, colour);
        case Role::MarkOnTarget: return verdict(outline.first(), Icon::OnTarget, colour);
        case Role::MarkAcceptable: return verdict(outline.first(), Icon::Acceptable, colour);
        case Role::MarkOffTarget: return verdict(outline.first(), Icon::OffTarget, colour);
        case Role::MarkUnsafe: return verdict(outline.first(), Icon::Unsafe, colour);
        }
    }

    void label(const PlacedLabel& placed, Role role)
    {
        if (placed.box.isEmpty())
            return;
        const QColor colour = m_scheme.of(role);
        const LabelKind kind = placed.ask.kind;
        if (kind == LabelKind::Word || placed.onBody)
            m_painter.fillRect(placed.box.adjusted(1, 1, -1, -1), veil(0.8));
        if (kind == LabelKind::Plaque) {
            m_painter.setPen(QPen(colour, 1.0));
            m_painter.setBrush(m_scheme.paper);
            m_painter.drawRect(placed.box.adjusted(0.5, 0.5, -0.5, -0.5));
        }
        m_painter.setFont(placed.ask.font);
        haloed(placed.box.adjusted(3, 2, -3, -2), placed.alignment, placed.ask.text, colour);
    }

    // A hairline from the label to its shape; on an area it ends in a dot.
    void leader(const PlacedLabel& placed, Role role)
    {
        if (placed.box.isEmpty() || !placed.hasLeader)
            return;
        const QColor colour = m_scheme.of(role);
        const bool onArea = placed.ask.kind != LabelKind::Name;
        QLineF line(leaderStart(placed), placed.anchor);
        if (line.length() < 8)
            return;
        if (!onArea)
            line.setLength(line.length() - 5.0 * m_weight);
        QPainterPath path(line.p1());
        path.lineTo(line.p2());
        stroke(path, pen(colour, 0.8), 0.6);
        if (onArea)
            dot(placed.anchor, colour, 1.6);
    }

private:
    static QColor faded(QColor colour, double alpha)
    {
        colour.setAlphaF(static_cast<float>(alpha));
        return colour;
    }
    [[nodiscard]] QColor veil(double alpha) const { return faded(m_scheme.paper, alpha); }
    [[nodiscard]] QPen pen(const QColor& colour, double width) const
    {
        return {colour, width * m_weight * m_bold, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
    }

    // Of rulings. Measured: past one unit every line is filled as a figure, twenty times as slow.
    [[nodiscard]] QPen hairline(const QColor& colour, double width) const
    {
        QPen line = pen(colour, width);
        line.setWidthF(std::min(1.0, line.widthF()));
        return line;
    }

    void stroke(const QPainterPath& path, const QPen& line, double halo = 0.65)
    {
        QPen under(veil(halo), line.widthF() + 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        m_painter.strokePath(path, under);
        m_painter.strokePath(path, line);
    }

    static QPainterPath pathOf(const SceneShape& shape, const QPolygonF& outline)
    {
        return shape.figure == Figure::Closed ? closedPath(outline) : openPath(outline);
    }

    // Of two that lie over each other the first is ruled, as the first is asked.
    void area(const QPolygonF& outline, QColor colour)
    {
        const QPainterPath path = closedPath(outline);
        m_painter.fillPath(path, layered(veil(0.2), faded(colour, 0.05)));
        const QColor line = faded(colour, 0.5);
        m_painter.setPen(hairline(line, 0.9));
        m_painter.drawLines(ruled(outline, 45.0, 13.0 * m_weight, m_struck));
        m_painter.strokePath(path, pen(line, 0.9));
        m_struck.push_back(outline);
    }

    void region(const QPolygonF& outline, QColor colour)
    {
        const QPainterPath path = closedPath(outline);
        m_painter.fillPath(path, veil(0.34));
        m_painter.setPen(hairline(faded(colour, 0.8), 0.7));
        m_painter.drawLines(ruled(outline, -30.0, 4.2 * m_weight));
        stroke(path, pen(colour, 2.2), 0.85);
    }

    void edged(const SceneShape& shape, const QPolygonF& outline, const QColor& colour,
               const QVector<qreal>& dashes, double width)
    {
        if (outline.size() < 2)
            return dot(outline.first(), colour, 2.4);
        QPen line = pen(colour, width);
        line.setDashPattern(dashes);
        if (shape.role == Role::Construction)
            line.setCapStyle(Qt::FlatCap);
        stroke(pathOf(shape, outline), line, 0.38);
    }

    void near(const SceneShape& shape, const QPolygonF& outline, const QColor& colour)
    {
        if (shape.figure == Figure::Closed)
            m_painter.fillPath(pathOf(shape, outline), faded(colour, 0.07));
        edged(shape, outline, colour, {0.1, 2.6}, 1.9);
    }

    void field(const QPolygonF& outline, const QColor& colour)
    {
        const QPainterPath path = closedPath(outline);
        m_painter.fillPath(path, veil(0.16));
        m_painter.setPen(hairline(faded(colour, 0.6), 0.7));
        m_painter.drawLines(ruled(outline, 60.0, 8.0 * m_weight));
    }

    // A plain line that ends, or turns its corners, in open squares: what a learner has set.
    void yours(const SceneShape& shape, const QPolygonF& outline, const QColor& colour)
    {
        constexpr qsizetype kCorners = 4;
        if (outline.size() > 1)
            stroke(pathOf(shape, outline), pen(colour, 1.5), 0.6);
        QPolygonF ends{outline.first(), outline.last()};
        if (shape.figure == Figure::Closed)
            ends = outline.size() <= kCorners ? outline : QPolygonF();
        for (const QPointF at : ends) {
            const QPainterPath square = squareAt(at, 3.2 * m_weight);
            m_painter.fillPath(square, veil(0.9));
            m_painter.strokePath(square, pen(colour, 1.3));
        }
    }

    // What has just been set: a heavy line, or a dot in a ring.
    void newest(const SceneShape& shape, const QPolygonF& outline, const QColor& colour)
    {
        if (outline.size() > 1)
            return stroke(pathOf(shape, outline), pen(colour, 2.8), 0.8);
        QPainterPath ring;
        ring.addEllipse(outline.first(), 9.0 * m_weight, 9.0 * m_weight);
        stroke(ring, pen(colour, 1.6), 0.9);
        dot(outline.first(), colour, 3.6);
    }

    void dot(QPointF at, const QColor& colour, double radius)
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(veil(0.9));
        m_painter.drawEllipse(at, (radius + 1.7) * m_weight, (radius + 1.7) * m_weight);
        m_painter.setBrush(colour);
        m_painter.drawEllipse(at, radius * m_weight, radius * m_weight);
    }

    void landmark(const SceneShape& shape, const QPolygonF& outline, const QColor& colour)
    {
        if (shape.figure == Figure::Point || outline.size() < 2)
            return dot(outline.first(), colour, 3.1);
        stroke(pathOf(shape, outline), pen(colour, 1.1));
    }

    void ideal(QPointF at, const QColor& colour)
    {
        stroke(crossedRingAt(at, 6.5 * m_weight, 11.5 * m_weight), pen(colour, 1.7), 0.95);
    }

    // An earlier mark wears the shape of its verdict on a disc of paper.
    void verdict(QPointF at, Icon icon, const QColor& colour)
    {
        const int size = qRound(18.0 * m_weight);
        const double disc = size * 0.64;
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(veil(0.85));
        m_painter.drawEllipse(at, disc, disc);
        const double ratio = m_painter.device()->devicePixelRatioF();
        m_painter.drawPixmap(at - QPointF(size, size) / 2.0, pixmapFor(icon, colour, size, ratio));
    }

    void lozenge(QPointF at, const QColor& colour)
    {
        const QPainterPath path = lozengeAt(at, 6.5 * m_weight);
        m_painter.fillPath(path, veil(0.75));
        stroke(path, pen(colour, 1.6), 0.9);
    }

    // From the mark to just short of the ideal point's ring.
    void arrow(const QPolygonF& outline, const QColor& colour)
    {
        const ArrowPaths paths =
            arrowAlong(QLineF(outline.first(), outline.last()), 9.0 * m_weight, 12.0 * m_weight);
        if (paths.head.isEmpty())
            return;
        stroke(paths.shaft, pen(colour, 1.8), 0.9);
        m_painter.strokePath(paths.head, QPen(veil(0.9), 2.4));
        m_painter.fillPath(paths.head, colour);
    }

    // Letters with a rim of paper, so that they can be read on any ink beneath.
    void haloed(const QRectF& box, Qt::Alignment alignment, const QString& text, const QColor& colour)
    {
        const int flags = static_cast<int>(alignment | Qt::AlignAbsolute) | Qt::TextWordWrap;
        m_painter.setPen(veil(0.5));
        for (const QPointF shift : {QPointF(-1.2, 0), QPointF(1.2, 0), QPointF(0, -1.2), QPointF(0, 1.2),
                                    QPointF(-1, -1), QPointF(1, 1), QPointF(-1, 1), QPointF(1, -1)})
            m_painter.drawText(box.translated(shift), flags, text);
        m_painter.setPen(colour);
        m_painter.drawText(box, flags, text);
    }

    QPainter& m_painter;
    const Scheme& m_scheme;
    double m_weight;
    double m_bold;
    QVector<QPolygonF> m_struck;  // areas painted so far
};

}  // namespace scene_detail

void paintScene(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToDevice,
                double textScale, const QRectF& paper, const QVector<QRectF>& taken,
                const LabelShyness& shyness)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    scene_detail::Hand hand(painter, scheme, textScale);
    for (const Role role : {Role::Strike, Role::Near, Role::Region, Role::Field, Role::Construction,
                            Role::Yours, Role::Newest, Role::Landmark, Role::Other, Role::Arrow, Role::Ideal,
                            Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget, Role::MarkUnsafe})
        for (const SceneShape& shape : scene)
            if (shape.role == role)
                hand.shape(shape, cmToDevice.map(QPolygonF(shape.points)));
    const QRectF sheet = paper.isEmpty() ? QRectF(painter.window()) : paper;
    const QVector<PlacedLabel> placed = sceneLabels(scene, cmToDevice, textScale, sheet, taken, shyness);
    QVector<Role> roles;
    for (const SceneShape& shape : scene)
        if (!shape.label.isEmpty())
            roles.push_back(shape.role);
    // Leaders first, so that none runs through a word.
    for (qsizetype i = 0; i < placed.size(); ++i)
        hand.leader(placed[i], roles[i]);
    for (qsizetype i = 0; i < placed.size(); ++i)
        hand.label(placed[i], roles[i]);
    painter.restore();
}

}  // namespace fb
