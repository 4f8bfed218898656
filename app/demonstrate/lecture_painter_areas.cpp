#include "app/demonstrate/lecture_painter_areas.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "app/look/icons.h"
#include "app/scene/sign_paths.h"

namespace fb {

namespace lecture_areas_detail {

constexpr double kWeight = 1.5;  // of all strokes, as paintScene() has it at the largest text

QColor faded(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

// One piece of a ruling that goes on in all directions: a line from corner to corner, and its ends in the
// corners beside it. rises: to the viewer's right.
QImage tileOf(QSize size, double width, const QColor& colour, bool rises, const QColor& tint)
{
    QImage tile(size, QImage::Format_ARGB32_Premultiplied);
    tile.fill(Qt::transparent);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing);
    // See-through lines that meet would be darker there: drawn full, then faded as one.
    painter.setPen(QPen(faded(colour, 1.0), width));
    const QPointF along(size.width(), rises ? -size.height() : size.height());
    const QPointF start(0, rises ? size.height() : 0);
    for (const int shift : {-1, 0, 1}) {
        const QPointF from = start + QPointF(shift * size.width(), 0);
        painter.drawLine(from - along, from + 2 * along);
    }
    painter.setCompositionMode(QPainter::CompositionMode_DestinationIn);
    painter.fillRect(tile.rect(), faded(Qt::black, colour.alphaF()));
    painter.setCompositionMode(QPainter::CompositionMode_DestinationOver);
    painter.fillRect(tile.rect(), tint);
    return tile;
}

struct Ruling {
    double degrees = 0.0;  // from level; negative falls to the viewer's right
    double spacing = 0.0;  // units
    double width = 0.0;    // units
};

constexpr Ruling kOfStrikes{45.0, 13.0 * kWeight, 1.2};
constexpr Ruling kOfRegions{-30.0, 4.2 * kWeight, 1.0};

class Areas {
public:
    Areas(QPainter& painter, const Scheme& scheme, double unit)
        : m_painter(painter),
          m_scheme(scheme),
          m_unit(unit),
          m_bold(scheme.kind == PaletteKind::Projector ? 1.35 : 1.0),
          m_fineness(painter.device()->devicePixelRatioF())
    {
    }

    void strike(const QPolygonF& outline)
    {
        const QColor colour = m_scheme.of(Role::Strike);
        const QPainterPath path = closedPath(outline);
        const QColor tint = layered(veil(0.2), faded(colour, 0.08));
        // Of two that lie over each other the first is ruled, as the first is asked. What is ruled is tinted
        // in the same go, and steps at an edge lie under the outline: both are a third of the time on a tall
        // screen.
        m_painter.setRenderHint(QPainter::Antialiasing, false);
        m_painter.fillPath(path.subtracted(m_struck), ruled(kOfStrikes, faded(colour, 0.55), tint));
        m_painter.fillPath(path.intersected(m_struck), tint);
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.strokePath(path, pen(faded(colour, 0.7), 1.2));
        m_struck = m_struck.united(path);
    }

    void near(const QPolygonF& outline)
    {
        const QColor colour = m_scheme.of(Role::Near);
        const QPainterPath path = closedPath(outline);
        m_painter.setRenderHint(QPainter::Antialiasing, false);
        m_painter.fillPath(path, faded(colour, 0.07));
        m_painter.setRenderHint(QPainter::Antialiasing);
        QPen dotted = pen(colour, 1.9);
        dotted.setDashPattern({0.1, 2.6});
        haloed(path, dotted, 0.38);
    }

    void region(const QPolygonF& outline)
    {
        const QColor colour = m_scheme.of(Role::Region);
        const QPainterPath path = closedPath(outline);
        m_painter.fillPath(path, veil(0.34));
        m_painter.fillPath(path, ruled(kOfRegions, faded(colour, 0.8)));
        haloed(path, pen(colour, 2.2), 0.85);
    }

private:
    [[nodiscard]] QColor veil(double alpha) const { return faded(m_scheme.paper, alpha); }
    [[nodiscard]] QPen pen(const QColor& colour, double width) const
    {
        return {colour, width * kWeight * m_bold * m_unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
    }
    void haloed(const QPainterPath& path, const QPen& line, double halo)
    {
        m_painter.strokePath(
            path, QPen(veil(halo), line.widthF() + 2.0 * m_unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.strokePath(path, line);
    }

    [[nodiscard]] QBrush ruled(const Ruling& ruling, const QColor& colour,
                               const QColor& tint = Qt::transparent) const
    {
        const double pixels = m_unit * m_fineness;
        const double angle = std::abs(ruling.degrees) * std::numbers::pi / 180.0;
        const QSize size(
            std::max(2, static_cast<int>(std::lround(ruling.spacing * pixels / std::sin(angle)))),
            std::max(2, static_cast<int>(std::lround(ruling.spacing * pixels / std::cos(angle)))));
        QBrush brush(
            tileOf(size, std::max(1.0, ruling.width * m_bold * pixels), colour, ruling.degrees < 0.0, tint));
        brush.setTransform(QTransform::fromScale(1.0 / m_fineness, 1.0 / m_fineness));
        return brush;
    }

    QPainter& m_painter;
    const Scheme& m_scheme;
    double m_unit;
    double m_bold;
    double m_fineness;  // device pixels to a pixel of the picture
    QPainterPath m_struck;
};

Icon signOf(Role role)
{
    switch (role) {
    case Role::MarkOnTarget: return Icon::OnTarget;
    case Role::MarkAcceptable: return Icon::Acceptable;
    case Role::MarkOffTarget: return Icon::OffTarget;
    default: return Icon::Unsafe;
    }
}

}  // namespace lecture_areas_detail

bool isArea(const SceneShape& shape)
{
    return shape.figure == Figure::Closed &&
           (shape.role == Role::Strike || shape.role == Role::Near || shape.role == Role::Region);
}

bool isVerdict(const SceneShape& shape)
{
    static constexpr std::array kVerdicts{Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget,
                                          Role::MarkUnsafe};
    return std::ranges::find(kVerdicts, shape.role) != kVerdicts.end();
}

void paintAreas(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToPixels,
                double unit)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    lecture_areas_detail::Areas areas(painter, scheme, unit);
    for (const Role role : {Role::Strike, Role::Near, Role::Region}) {
        for (const SceneShape& shape : scene) {
            if (shape.role != role || !isArea(shape) || shape.points.isEmpty())
                continue;
            const QPolygonF outline = cmToPixels.map(QPolygonF(shape.points));
            if (role == Role::Strike)
                areas.strike(outline);
            else if (role == Role::Near)
                areas.near(outline);
            else
                areas.region(outline);
        }
    }
    painter.restore();
}

void paintVerdicts(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToPixels,
                   double unit)
{
    constexpr double kSign = 27.0;   // units
    constexpr double kSmall = 19.0;  // of many, or they would hide the region they are read against
    constexpr qsizetype kFew = 8;
    constexpr double kDisc = 0.64;  // radius of the paper under it, in breadths of the sign
    const double size = unit * (std::count_if(scene.begin(), scene.end(), isVerdict) > kFew ? kSmall : kSign);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const SceneShape& shape : scene) {
        if (!isVerdict(shape) || shape.points.isEmpty())
            continue;
        const QPointF at = cmToPixels.map(shape.points.front());
        painter.setPen(Qt::NoPen);
        painter.setBrush(lecture_areas_detail::faded(scheme.paper, 0.88));
        painter.drawEllipse(at, size * kDisc, size * kDisc);
        paintIcon(painter, lecture_areas_detail::signOf(shape.role), scheme.of(shape.role),
                  QRectF(at - QPointF(size, size) / 2.0, QSizeF(size, size)));
    }
    painter.restore();
}

}  // namespace fb
