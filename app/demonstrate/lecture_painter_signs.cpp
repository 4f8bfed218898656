#include "app/demonstrate/lecture_painter_signs.h"

#include <QPainter>
#include <QPainterPath>
#include <atomic>
#include <cmath>

#include "app/demonstrate/lecture_painter_areas.h"
#include "app/lecture/lecture_bones.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace lecture_signs_detail {

constexpr double kPen = 5.0;
constexpr double kSpot = 78.0;  // radius of the spotlight
constexpr double kLens = 96.0;  // radius of the magnifier
constexpr double kRing = 15.0;  // radius of the pointer
constexpr double kEdge = 6.0;   // what lines and their smoothing reach beyond
constexpr double kLeastHatch = 0.5;

QColor faded(QColor colour, double alpha)
{
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

// A tap of the pen is a dot.
QPainterPath pathOf(const QPolygonF& line)
{
    QPainterPath path(line.first());
    for (qsizetype i = 1; i < line.size(); ++i)
        path.lineTo(line[i]);
    if (line.size() == 1)
        path.lineTo(line.first() + QPointF(0.01, 0));
    return path;
}

QPen penOf(const QColor& colour, double width, PenLine style)
{
    QPen pen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (style == PenLine::Dashed)
        // In widths of the pen: the same dashes for its edges as for its heart.
        pen.setDashPattern({3.0 * kPen / width, 2.6 * kPen / width});
    return pen;
}

// What was drawn, larger: anew, so that its lines stay fine; where a hand is laid, the picture that has it.
void paintEnlarged(QPainter& painter, const LectureFace& face, const QTransform& cmToPixels)
{
    const LecturePane& pane = face.panes.front();
    const InkJob& job = pane.drawn->job;
    if (pane.look.hand || pane.look.fingers) {
        const QRectF sheet = job.frame.sheet();
        const QRectF cm(job.frame.toCm(sheet.bottomLeft()), job.frame.toCm(sheet.topRight()));
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(cmToPixels.mapRect(cm), pane.drawn->image);
        return;
    }
    const std::atomic_bool never = false;
    const auto tones = toneColours(*job.picture->plate, face.scheme, job.picture->skinTone);
    static_cast<void>(paintInk(painter, *pane.drawn->ready, tones,
                               InkManner{cmToPixels, job.layers, kLeastHatch, QColor()}, never));
    if (job.layers.contains(Layer::Skin))
        paintBones(painter, *pane.body, pane.look, face.scheme, cmToPixels);
}

// unit: pixels of the image to a unit.
QImage lensImage(const LectureFace& face, const LensPlace& place, double unit)
{
    const int side = std::max(1, static_cast<int>(std::ceil(2.0 * kLens * unit)));
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(face.scheme.paper);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(image.rect());
    const QTransform enlarged = place.cmToUnits * QTransform::fromTranslate(-place.at.x(), -place.at.y()) *
                                QTransform::fromScale(face.magnification, face.magnification) *
                                QTransform::fromTranslate(kLens, kLens);
    const QTransform cmToPixels = enlarged * QTransform::fromScale(unit, unit);
    paintEnlarged(painter, face, cmToPixels);
    Scene scene = face.panes.front().look.scene + face.panes.front().extra;
    paintAreas(painter, scene, face.scheme, cmToPixels, unit);
    const Scene verdicts = scene;
    scene.removeIf([](const SceneShape& shape) { return isArea(shape) || isVerdict(shape); });
    for (SceneShape& shape : scene)
        shape.label.clear();
    painter.save();
    painter.scale(unit, unit);
    paintScene(painter, scene, face.scheme, enlarged, 2.0, QRectF(0, 0, 2 * kLens, 2 * kLens));
    painter.restore();
    paintVerdicts(painter, verdicts, face.scheme, cmToPixels, unit);
    return image;
}

}  // namespace lecture_signs_detail

void paintStroke(QPainter& painter, const QPolygonF& line, PenInk ink, PenLine style, const Scheme& scheme)
{
    using namespace lecture_signs_detail;
    if (line.isEmpty())
        return;
    const QPainterPath path = pathOf(line);
    if (ink == PenInk::First) {
        painter.strokePath(path, penOf(scheme.danger, kPen, style));
        return;
    }
    const QColor dark = scheme.isDark() ? scheme.paper : scheme.ink;
    const QColor light = scheme.isDark() ? scheme.ink : scheme.paper;
    painter.strokePath(path, penOf(dark, kPen + 5.0, style));
    painter.strokePath(path, penOf(light, kPen + 1.5, style));
    painter.strokePath(path, penOf(scheme.focus, kPen - 2.0, style));
}

void paintPointer(QPainter& painter, QPointF at, const Scheme& scheme)
{
    using namespace lecture_signs_detail;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(faded(scheme.paper, 0.92), 8.0));
    painter.drawEllipse(at, kRing, kRing);
    painter.setPen(QPen(scheme.ink, 3.4));
    painter.drawEllipse(at, kRing, kRing);
    painter.setPen(QPen(scheme.paper, 2.0));
    painter.setBrush(scheme.ink);
    painter.drawEllipse(at, 4.6, 4.6);
    painter.restore();
}

void paintSpotlight(QPainter& painter, QPointF at, const QRectF& plate, const Scheme& scheme)
{
    using namespace lecture_signs_detail;
    constexpr double kDim = 0.66;
    QPainterPath dimmed;
    dimmed.addRect(plate);
    QPainterPath circle;
    circle.addEllipse(at, kSpot, kSpot);
    painter.fillPath(dimmed.subtracted(circle), faded(schemeOf(PaletteKind::Dark).window, kDim));
    painter.strokePath(circle, QPen(scheme.paper, 2.0));
}

double penReach()
{
    using namespace lecture_signs_detail;
    return kPen + kEdge;
}

double pointerReach(LectureTool tool, bool spotlight)
{
    using namespace lecture_signs_detail;
    const double ofTool = tool == LectureTool::Magnifier ? kLens : kRing;
    return std::max(ofTool, spotlight ? kSpot : 0.0) + kEdge;
}

void paintLens(QPainter& painter, const LectureFace& face, const LensPlace& place)
{
    using namespace lecture_signs_detail;
    if (!face.panes.front().drawn)
        return;
    const double unit = place.unit * painter.device()->devicePixelRatioF();
    const QImage image = lensImage(face, place, unit);
    QBrush glass(image);
    glass.setTransform(QTransform::fromScale(1.0 / unit, 1.0 / unit) *
                       QTransform::fromTranslate(place.at.x() - kLens, place.at.y() - kLens));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setPen(Qt::NoPen);
    painter.setBrush(glass);
    painter.drawEllipse(place.at, kLens, kLens);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(face.scheme.paper, 7.0));
    painter.drawEllipse(place.at, kLens, kLens);
    painter.setPen(QPen(face.scheme.ink, 2.4));
    painter.drawEllipse(place.at, kLens + 2.6, kLens + 2.6);
    painter.setPen(QPen(face.scheme.ink, 1.2));
    painter.drawEllipse(place.at, kLens - 2.6, kLens - 2.6);
    painter.restore();
}

}  // namespace fb
