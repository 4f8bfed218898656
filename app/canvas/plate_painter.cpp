#include "app/canvas/plate_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/canvas/scene_layer.h"
#include "app/canvas/tool_painter.h"
#include "app/look/type.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace face_detail {

inline constexpr double kRim = 7.0;  // of the window around the sheet
inline constexpr double kMarkReach = 13.0;
inline constexpr double kLoupeRadius = 88.0;
inline constexpr double kLoupeZoom = 2.6;

QColor faded(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

double weightOf(double textScale) { return 0.5 + 0.5 * heldTextScale(textScale); }

// Four bars, the corner points left out, as an edge that was filed round would press.
void frame(QPainter& painter, const QRectF& outer, double width, const QColor& colour)
{
    const double w = width;
    painter.fillRect(QRectF(outer.left() + w, outer.top(), outer.width() - 2 * w, w), colour);
    painter.fillRect(QRectF(outer.left() + w, outer.bottom() - w, outer.width() - 2 * w, w), colour);
    painter.fillRect(QRectF(outer.left(), outer.top() + w, w, outer.height() - 2 * w), colour);
    painter.fillRect(QRectF(outer.right() - w, outer.top() + w, w, outer.height() - 2 * w), colour);
}

void paintSheet(QPainter& painter, const PlateFace& face)
{
    const QRectF sheet = face.frame.sheet();
    if (!face.drawn || face.drawn->job.frame != face.frame) {
        painter.fillRect(sheet, face.scheme.paper);
        if (face.hasPicture)
            paintPlateMark(painter, face.frame.cmToWidget().mapRect(face.frame.picture()), face.scheme, 1.0);
    }
    if (!face.drawn)
        return;
    const ViewFrame& was = face.drawn->job.frame;
    if (was == face.frame) {
        painter.drawImage(sheet.topLeft(), face.drawn->image);
        return;
    }
    // A drawing of another frame stands in, moved and stretched, until the right one comes.
    const QRectF now(face.frame.toWidget(was.toCm(was.sheet().topLeft())),
                     face.frame.toWidget(was.toCm(was.sheet().bottomRight())));
    painter.setRenderHint(QPainter::SmoothPixmapTransform, was.pixelsPerCm() != face.frame.pixelsPerCm());
    painter.drawImage(now, face.drawn->image);
}

void paintPlaceholder(QPainter& painter, const PlateFace& face)
{
    painter.setFont(fontOf(Type::PlateLabel, face.textScale));
    painter.setPen(face.scheme.quietInk);
    painter.drawText(face.frame.sheet().adjusted(24, 24, -24, -24),
                     static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap, face.placeholder);
}

// Above the place if there is room, else below, and always within the sheet.
QPointF loupeMiddle(const PlateFace& face, double radius)
{
    const QRectF sheet = face.frame.sheet().adjusted(radius + 4, radius + 4, -radius - 4, -radius - 4);
    const double lift = radius + 46.0;
    QPointF middle = *face.loupe - QPointF(0, lift);
    if (middle.y() < sheet.top())
        middle = *face.loupe + QPointF(0, lift);
    return {std::clamp(middle.x(), sheet.left(), std::max(sheet.left(), sheet.right())),
            std::clamp(middle.y(), sheet.top(), std::max(sheet.top(), sheet.bottom()))};
}

Scene withoutLabels(Scene scene)
{
    for (SceneShape& shape : scene)
        shape.label.clear();
    return scene;
}

// The place enlarged, painted anew rather than stretched, so that its lines stay fine.
QImage loupeImage(const PlateFace& face, double radius)
{
    const double ratio = face.drawn->image.devicePixelRatio();
    const int side = static_cast<int>(std::ceil(2.0 * radius));
    QImage image(QSize(side, side) * std::max(1.0, ratio), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(std::max(1.0, ratio));
    image.fill(face.scheme.paper);
    QPainter painter(&image);
    painter.setClipRect(QRectF(0, 0, side, side));
    QTransform enlarged =
        face.frame.cmToWidget() * QTransform::fromTranslate(-face.loupe->x(), -face.loupe->y()) *
        QTransform::fromScale(kLoupeZoom, kLoupeZoom) * QTransform::fromTranslate(side / 2.0, side / 2.0);
    const InkJob& job = face.drawn->job;
    const std::atomic_bool never = false;
    const auto tones = toneColours(*job.picture->plate, face.scheme, job.picture->skinTone);
    static_cast<void>(
        paintInk(painter, *face.drawn->ready, tones, InkManner{enlarged, job.layers, 0.5, QColor()}, never));
    paintScene(painter, withoutLabels(face.scene), face.scheme, enlarged, face.textScale,
               QRectF(0, 0, side, side));
    return image;
}

void paintLoupe(QPainter& painter, const PlateFace& face)
{
    const double radius = kLoupeRadius * weightOf(face.textScale);
    const QPointF middle = loupeMiddle(face, radius);
    const QImage image = loupeImage(face, radius);
    painter.setPen(Qt::NoPen);
    QBrush glass(image);
    glass.setTransform(QTransform::fromTranslate(middle.x() - radius, middle.y() - radius));
    painter.setBrush(glass);
    painter.drawEllipse(middle, radius, radius);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(face.scheme.paper, 6.0));
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(QPen(face.scheme.ink, 1.6));
    painter.drawEllipse(middle, radius + 2.4, radius + 2.4);
    painter.setPen(QPen(face.scheme.ink, 0.8));
    painter.drawEllipse(middle, radius - 2.4, radius - 2.4);
    paintMark(painter, middle, face.scheme, face.textScale);
}

void paintRim(QPainter& painter, const PlateFace& face)
{
    const QRectF sheet = face.frame.sheet();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(face.scheme.line, 1.0));
    painter.drawRect(sheet.adjusted(0, 0, -1, -1));
    if (!face.focused)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(face.scheme.focus, 3.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(sheet.adjusted(-3.0, -3.0, 3.0, 3.0));
}

}  // namespace face_detail

QRectF sheetOf(const QRectF& widget)
{
    const double rim = face_detail::kRim;
    return widget.adjusted(rim, rim, -rim, -rim);
}

QRectF markBox(QPointF widget, double textScale)
{
    const double reach = face_detail::kMarkReach * face_detail::weightOf(textScale) + 2.0;
    return {widget.x() - reach, widget.y() - reach, 2.0 * reach, 2.0 * reach};
}

void paintPlateMark(QPainter& painter, const QRectF& plate, const Scheme& scheme, double scale)
{
    const bool dark = scheme.isDark();
    const double w = std::max(1.0, std::round(scale));
    const QRectF edge = plate.toAlignedRect();
    painter.fillRect(edge, face_detail::faded(scheme.ink, dark ? 0.018 : 0.016));
    face_detail::frame(painter, edge.adjusted(-3 * w, -3 * w, 3 * w, 3 * w), 2 * w,
                       face_detail::faded(dark ? scheme.ink : QColor(Qt::white), dark ? 0.06 : 0.6));
    face_detail::frame(painter, edge.adjusted(-w, -w, w, w), w,
                       face_detail::faded(scheme.ink, dark ? 0.32 : 0.24));
    face_detail::frame(painter, edge, 3 * w, face_detail::faded(scheme.ink, dark ? 0.05 : 0.045));
}

void paintMark(QPainter& painter, QPointF at, const Scheme& scheme, double textScale)
{
    const double w = face_detail::weightOf(textScale) * (scheme.kind == PaletteKind::Projector ? 1.2 : 1.0);
    const double reach = face_detail::kMarkReach * 0.71 * w;
    QPainterPath strokes;
    for (const QPointF way : {QPointF(1, 1), QPointF(1, -1), QPointF(-1, 1), QPointF(-1, -1)}) {
        strokes.moveTo(at + way * (0.36 * reach));
        strokes.lineTo(at + way * reach);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.strokePath(strokes,
                       QPen(face_detail::faded(scheme.paper, 0.92), 6.0 * w, Qt::SolidLine, Qt::RoundCap));
    painter.setPen(Qt::NoPen);
    painter.setBrush(face_detail::faded(scheme.paper, 0.92));
    painter.drawEllipse(at, 4.2 * w, 4.2 * w);
    painter.strokePath(strokes, QPen(scheme.ink, 2.4 * w, Qt::SolidLine, Qt::FlatCap));
    painter.setBrush(scheme.danger);
    painter.drawEllipse(at, 2.0 * w, 2.0 * w);
    painter.restore();
}

void paintCrosshair(QPainter& painter, QPointF at, const QRectF& sheet, const Scheme& scheme,
                    double textScale)
{
    const double w = face_detail::weightOf(textScale);
    const double gap = 7.0 * w;
    const double arm = 44.0 * w;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(sheet, Qt::IntersectClip);
    QPainterPath far;
    QPainterPath near;
    const double reach = sheet.width() + sheet.height();
    for (const QPointF way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
        near.moveTo(at + way * gap);
        near.lineTo(at + way * arm);
        far.moveTo(at + way * arm);
        far.lineTo(at + way * reach);
    }
    painter.strokePath(far, QPen(face_detail::faded(scheme.focus, 0.4), 1.0));
    painter.strokePath(near, QPen(face_detail::faded(scheme.paper, 0.85), 4.4 * w));
    painter.strokePath(near, QPen(scheme.focus, 2.0 * w));
    painter.restore();
}

void paintFace(QPainter& painter, const PlateFace& face)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF sheet = face.frame.sheet();
    painter.fillRect(face.widget, face.scheme.window);
    painter.save();
    painter.setClipRect(sheet);
    face_detail::paintSheet(painter, face);
    if (!face.hasPicture) {
        face_detail::paintPlaceholder(painter, face);
    } else {
        paintLaid(painter, face);
        paintFaceScene(painter, face);
        paintToolsOver(painter, face);
        if (face.mark)
            paintMark(painter, face.frame.toWidget(*face.mark), face.scheme, face.textScale);
        if (face.crosshair)
            paintCrosshair(painter, face.frame.toWidget(*face.crosshair), sheet, face.scheme, face.textScale);
        if (face.loupe && face.drawn)
            face_detail::paintLoupe(painter, face);
    }
    painter.restore();
    face_detail::paintRim(painter, face);
}

}  // namespace fb
