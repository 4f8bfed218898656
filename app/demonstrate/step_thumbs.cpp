#include "app/demonstrate/step_thumbs.h"

#include <QPainter>

#include "app/canvas/held_layer.h"
#include "app/canvas/ink_worker.h"
#include "app/canvas/press_painter.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace step_thumbs_detail {

// Painted larger and made smaller: lines of a large picture become fine ones of a small one.
constexpr double kLarger = 2.0;

// An area widened to a shape, about its middle.
QRectF shaped(const QRectF& area, QSizeF shape)
{
    const double wanted = shape.width() / shape.height();
    QSizeF size = area.size();
    if (size.width() < wanted * size.height())
        size.setWidth(wanted * size.height());
    else
        size.setHeight(size.width() / wanted);
    QRectF whole(QPointF(), size);
    whole.moveCenter(area.center());
    return whole;
}

// A frame in which `area` fills the picture to its edges: the margin of a frame lies outside.
ViewFrame filledFrame(const QRectF& area, QSizeF picture)
{
    constexpr double kOut = ViewFrame::kMargin;
    const QRectF sheet(QPointF(-kOut, -kOut), picture + QSizeF(2 * kOut, 2 * kOut));
    return ViewFrame::whole(sheet, area);
}

Scene wordless(Scene scene)
{
    for (SceneShape& shape : scene) {
        shape.label.clear();
        shape.description.clear();
    }
    scene.removeIf([](const SceneShape& shape) { return shape.points.isEmpty(); });
    return scene;
}

std::shared_ptr<const Plate> art(const std::shared_ptr<const Library>& library, View view)
{
    if (!library)
        return nullptr;
    const auto plate = library->plate(view);
    return plate ? *plate : nullptr;
}

std::optional<Held> heldIn(const LectureLook& look, const std::shared_ptr<const Library>& library)
{
    if (look.hand)
        return heldOf(HandLook{art(library, View::OpenHand), *look.hand});
    if (look.fingers)
        return heldOf(
            FingersLook{art(library, look.fingers->count == 2 ? View::TwoFingers : View::ThreeFingers),
                        *look.fingers, look.fingerCm});
    return std::nullopt;
}

QImage paintStep(const ThumbAsk& ask, const LectureLook& look, const QImage& ground, const ViewFrame& frame,
                 const std::atomic_bool& cancelled)
{
    QImage picture = ground;
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF paper(QPointF(), QSizeF(ground.size()) / ground.devicePixelRatio());
    const QTransform toPixels = frame.cmToWidget();
    if (const auto held = heldIn(look, ask.library)) {
        const double fineness = frame.pixelsPerCm() * ground.devicePixelRatio();
        if (const auto layer = madeLayer(*held, ask.scheme, fineness, true, cancelled))
            paintHeld(painter, laid(*layer, *held), toPixels);
    }
    paintScene(painter, wordless(look.scene), ask.scheme, toPixels, 1.0, paper);
    if (look.press) {
        PressLook press = *look.press;
        press.words.clear();
        paintPress(painter, press, PressPlace{frame.toWidget(press.cm), frame.pixelsPerCm(), paper, 1.0},
                   ask.scheme);
    }
    painter.end();
    QImage small = picture.scaled(ask.size * ask.pixelRatio, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    small.setDevicePixelRatio(ask.pixelRatio);
    return small;
}

}  // namespace step_thumbs_detail

bool sameThumbs(const ThumbAsk& a, const ThumbAsk& b)
{
    return a.body == b.body && a.policy == b.policy && a.library == b.library && a.steps == b.steps &&
           a.layers == b.layers && a.scheme == b.scheme && a.size == b.size && a.pixelRatio == b.pixelRatio;
}

std::vector<QImage> paintThumbs(const ThumbAsk& ask, const std::atomic_bool& cancelled)
{
    using namespace step_thumbs_detail;
    std::vector<QImage> all;
    if (!ask.body || !ask.policy || ask.steps.empty() || ask.size.isEmpty())
        return all;
    const LectureLook first = lookOf(*ask.body, *ask.policy, ask.steps, 0);
    const QSizeF large = QSizeF(ask.size) * kLarger;
    const ViewFrame frame = filledFrame(shaped(first.area, large), large);
    InkJob job;
    job.picture = ask.body->picture;
    job.frame = frame;
    job.pixelRatio = ask.pixelRatio;
    job.scheme = ask.scheme;
    job.layers = ask.layers;
    job.preview = true;  // one thread: the large picture comes first
    const auto whole = paintedImage(job, ReadyInk(*job.picture, ReadyInk::Rows::None), cancelled);
    if (!whole)
        return {};
    const QRectF middle(QPointF(ViewFrame::kMargin, ViewFrame::kMargin) * ask.pixelRatio,
                        large * ask.pixelRatio);
    QImage ground = whole->copy(middle.toAlignedRect());
    ground.setDevicePixelRatio(ask.pixelRatio);
    for (int step = 0; step < static_cast<int>(ask.steps.size()); ++step) {
        if (cancelled)
            return {};
        all.push_back(
            paintStep(ask, lookOf(*ask.body, *ask.policy, ask.steps, step), ground, frame, cancelled));
    }
    return all;
}

}  // namespace fb
