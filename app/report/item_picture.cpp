#include "app/report/item_picture.h"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <atomic>

#include "app/canvas/plate_painter.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace item_picture_detail {

constexpr double kRoom = 2.5;    // cm about target and mark
constexpr double kLeast = 19.0;  // cm, the shorter side: enough of the body to know it by
constexpr double kPale = 0.55;   // how much of the drawing's own darkness is kept
constexpr int kPaperSkin = 0;    // on paper every skin is the paper's: what is drawn over it must be seen

// cm, which grow upward, to a rectangle whose units grow downward.
QTransform cmTo(const QRectF& area, const QRectF& at)
{
    QTransform transform;
    transform.translate(at.left(), at.bottom());
    transform.scale(at.width() / area.width(), -at.height() / area.height());
    transform.translate(-area.left(), -area.top());
    return transform;
}

// A thing that lies outside the picture would drag its label to the rim.
Scene within(const Scene& scene, const QRectF& area)
{
    Scene seen;
    for (const SceneShape& shape : scene) {
        const bool isPoint = shape.figure == Figure::Point;
        if (!shape.points.isEmpty() && (!isPoint || area.contains(shape.points.front())))
            seen.push_back(shape);
    }
    return seen;
}

}  // namespace item_picture_detail

Scheme paperScheme()
{
    Scheme scheme = schemeOf(PaletteKind::Light);
    scheme.paper = scheme.window = Qt::white;
    scheme.ink = scheme.accent = Qt::black;
    scheme.quietInk = QColor(0x45, 0x45, 0x45);
    scheme.line = QColor(0x9a, 0x9a, 0x9a);
    return scheme;
}

QRectF itemArea(const Target& target, const std::optional<Point>& mark, double widthToHeight)
{
    using namespace item_picture_detail;
    QPolygonF seen{QPointF(target.ideal.x, target.ideal.y)};
    for (const Point corner : target.region.corners())
        seen.push_back({corner.x, corner.y});
    if (mark)
        seen.push_back({mark->x, mark->y});
    QRectF area = seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom);
    const double height =
        std::max({area.height(), area.width() / widthToHeight, kLeast, kLeast / widthToHeight});
    const QPointF middle = area.center();
    area.setSize({height * widthToHeight, height});
    area.moveCenter(middle);
    return area;
}

QImage itemInk(const Picture& picture, const QRectF& area, QSize pixels)
{
    using namespace item_picture_detail;
    static const std::atomic_bool kNeverCancelled{false};
    QImage image(pixels, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    (void)paintInk(painter, picture, toneColours(*picture.plate, paperScheme(), kPaperSkin),
                   cmTo(area, QRectF(QPointF(), QSizeF(pixels))), {Layer::Skin, Layer::Cloth}, 0.7,
                   kNeverCancelled);
    painter.fillRect(image.rect(), QColor::fromRgbF(1.0F, 1.0F, 1.0F, static_cast<float>(1.0 - kPale)));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

void paintItem(QPainter& painter, const QRectF& at, const QImage& ink, const QRectF& area, const Scene& scene,
               const std::optional<Point>& mark)
{
    using namespace item_picture_detail;
    constexpr double kMarkRoom = 14.0;
    const Scheme scheme = paperScheme();
    const QTransform toPaper = cmTo(area, at);
    QVector<QRectF> taken;
    std::optional<QPointF> needle;
    if (mark) {
        needle = toPaper.map(QPointF(mark->x, mark->y));
        taken.push_back({*needle - QPointF(kMarkRoom, kMarkRoom), QSizeF(2.0 * kMarkRoom, 2.0 * kMarkRoom)});
    }
    painter.save();
    painter.setClipRect(at);
    painter.drawImage(at, ink);
    paintScene(painter, within(scene, area), scheme, toPaper, 1.0, at, taken);
    if (needle)
        paintMark(painter, *needle, scheme, 1.0);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(scheme.line, 1.0));
    painter.drawRect(at);
}

}  // namespace fb
