#include "app/demonstrate/pane_painter.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <cstring>

#include "app/demonstrate/pool_painting.h"
#include "app/lecture/lecture_bones.h"

namespace fb {

namespace pane_painter_detail {

inline constexpr double kQuickShare = 0.5;       // of the fineness, at most
inline constexpr double kMostQuickPixels = 5e5;  // of a plate that is painted while something moves

InkJob inkJobOf(const PaneJob& job)
{
    InkJob ink;
    ink.picture = job.pane.body->picture;
    ink.frame = job.frame;
    ink.pixelRatio = job.pixelRatio;
    ink.scheme = job.scheme;
    ink.layers = job.layers;
    return ink;
}

bool sameBody(const InkJob& a, const InkJob& b)
{
    return a.picture == b.picture && a.frame == b.frame && a.scheme == b.scheme && a.layers == b.layers;
}

// Only the plate costs time, not the paper round it.
double quickRatio(const InkJob& job)
{
    const QRectF plate = job.frame.cmToWidget().mapRect(job.frame.picture()) & job.frame.sheet();
    const double pixels = std::max(1.0, plate.width() * plate.height());
    return std::min(job.pixelRatio * kQuickShare, std::sqrt(kMostQuickPixels / pixels));
}

std::optional<Held> heldOf(const PaneJob& job)
{
    const LectureLook& look = job.pane.look;
    if (!job.library || (!look.hand && !look.fingers))
        return std::nullopt;
    if (look.hand) {
        const auto art = job.library->plate(View::OpenHand);
        return fb::heldOf(HandLook{art.value_or(nullptr), *look.hand});
    }
    const auto art = job.library->plate(look.fingers->count == 2 ? View::TwoFingers : View::ThreeFingers);
    return fb::heldOf(FingersLook{art.value_or(nullptr), *look.fingers, look.fingerCm});
}

double fineness(const PaneJob& job) { return job.frame.pixelsPerCm() * job.pixelRatio; }

QTransform cmToSheet(const ViewFrame& frame)
{
    return frame.cmToWidget() * QTransform::fromTranslate(-frame.sheet().left(), -frame.sheet().top());
}

QSize pixelsOf(const InkJob& job)
{
    const QSizeF sheet = job.frame.sheet().size() * job.pixelRatio;
    return {static_cast<int>(std::ceil(sheet.width())), static_cast<int>(std::ceil(sheet.height()))};
}

QImage paintedInPool(const InkJob& job, const ReadyInk& ink)
{
    QImage image;
    paintInPool([&] {
        const std::atomic_bool never = false;
        image = *paintedImage(job, ink, never);
    });
    return image;
}

// Under the skin: where it is peeled off they are seen anyway.
std::vector<std::string> bonesOf(const PaneJob& job)
{
    return job.layers.contains(Layer::Skin) ? job.pane.look.bones : std::vector<std::string>();
}

// Before any hand, which then covers them.
void layBones(QImage& image, const PaneJob& job)
{
    LectureLook found;
    found.bones = bonesOf(job);
    QPainter painter(&image);
    paintBones(painter, *job.pane.body, found, job.scheme, cmToSheet(job.frame));
}

}  // namespace pane_painter_detail

bool sameDrawing(const PaneJob& a, const PaneJob& b)
{
    return a.pane.body->picture == b.pane.body->picture && a.pane.look.hand == b.pane.look.hand &&
           a.pane.look.fingers == b.pane.look.fingers && a.pane.look.fingerCm == b.pane.look.fingerCm &&
           a.pane.look.bones == b.pane.look.bones && a.frame == b.frame && a.pixelRatio == b.pixelRatio &&
           a.scheme == b.scheme && a.layers == b.layers && a.library == b.library && a.moving == b.moving;
}

// Measured: to be given the pages of a new image takes longer than to paint a coarse one over them.
QImage PanePainter::canvas(const QSize& size)
{
    std::erase_if(m_canvases, [&size](const QImage& each) { return each.size() != size; });
    const auto idle = std::ranges::find_if(m_canvases, &QImage::isDetached);
    if (idle == m_canvases.end())
        return {size, QImage::Format_RGB32};
    QImage taken = std::move(*idle);
    m_canvases.erase(idle);
    return taken;
}

QImage PanePainter::copied(const QImage& image)
{
    QImage made = canvas(image.size());
    made.setDevicePixelRatio(image.devicePixelRatio());
    std::memcpy(made.bits(), image.constBits(), static_cast<std::size_t>(image.sizeInBytes()));
    return made;
}

// As large as a sharp image of the job.
QImage PanePainter::enlarged(QImage small, const InkJob& job)
{
    QImage image = canvas(pane_painter_detail::pixelsOf(job));
    image.setDevicePixelRatio(1.0);
    small.setDevicePixelRatio(1.0);
    QPainter painter(&image);
    painter.setCompositionMode(QPainter::CompositionMode_Source);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(QRectF(QPointF(), QSizeF(image.size())), small);
    painter.end();
    image.setDevicePixelRatio(job.pixelRatio);
    return image;
}

std::shared_ptr<const ReadyInk> PanePainter::readyOf(const std::shared_ptr<const Picture>& picture)
{
    if (m_readyFor != picture) {
        m_ready = std::make_shared<const ReadyInk>(*picture);
        m_readyFor = picture;
    }
    return m_ready;
}

bool PanePainter::hasSharp(const PaneJob& job) const
{
    return m_sharp && pane_painter_detail::sameBody(m_sharp->job, pane_painter_detail::inkJobOf(job)) &&
           m_sharp->job.pixelRatio == job.pixelRatio;
}

bool PanePainter::hasSharpHand(const Held& held, const PaneJob& job) const
{
    return m_layer && !m_layer->quick && m_layer->scheme == job.scheme &&
           m_layer->pixelsPerCm == pane_painter_detail::fineness(job) && sameForm(m_layer->held, held) &&
           sameTurn(m_layer->held, held);
}

bool PanePainter::isSlow(const PaneJob& job) const
{
    const auto held = pane_painter_detail::heldOf(job);
    return job.moving || !hasSharp(job) || (held && !hasSharpHand(*held, job));
}

InkResult PanePainter::quick(const PaneJob& job)
{
    using namespace pane_painter_detail;
    InkJob ink = inkJobOf(job);
    if (hasSharp(job))
        return resultOf(ink, *m_sharp, job);
    ink.preview = true;
    if (m_quick && sameBody(m_quick->job, ink) && m_quick->job.pixelRatio == job.pixelRatio &&
        m_quick->bones == bonesOf(job))
        return resultOf(ink, *m_quick, job);
    InkJob coarse = ink;
    coarse.pixelRatio = quickRatio(ink);
    QImage small = paintedInPool(coarse, *readyOf(ink.picture));
    layBones(small, job);
    QImage image = enlarged(std::move(small), ink);
    m_sharp.reset();
    m_boned.reset();
    m_quick.reset();
    // Under a hand a body that moves is not kept: to copy it takes longer than to lay the hand.
    if (const auto held = heldOf(job)) {
        drawHand(*held, job);
        layHand(image, *held, job.frame);
    } else {
        m_quick = Body{ink, image, bonesOf(job)};
    }
    m_canvases.push_back(image);
    return {ink, m_ready, image};
}

std::optional<InkResult> PanePainter::sharp(const PaneJob& job, const std::atomic_bool& cancelled)
{
    using namespace pane_painter_detail;
    const InkJob ink = inkJobOf(job);
    if (!hasSharp(job)) {
        auto image = paintedImage(ink, *readyOf(ink.picture), cancelled);
        if (!image)
            return std::nullopt;
        m_sharp = Body{ink, *std::move(image), {}};
        m_quick.reset();
        m_boned.reset();
    }
    const auto held = heldOf(job);
    if (held && !hasSharpHand(*held, job)) {
        auto layer = madeLayer(*held, job.scheme, fineness(job), false, cancelled);
        if (!layer)
            return std::nullopt;
        m_layer = std::move(layer);
    }
    InkResult result = resultOf(ink, *m_sharp, job);
    // At rest nothing is kept for the next motion.
    m_canvases.clear();
    return result;
}

// A hand that keeps its form is drawn in full once and then moved; one whose fingers open, or that grows with
// a body, is drawn anew for every frame, quickly.
void PanePainter::drawHand(const Held& held, const PaneJob& job)
{
    const std::atomic_bool never = false;
    const double fineness = pane_painter_detail::fineness(job);
    const bool isOfNow = m_layer && m_layer->scheme == job.scheme && m_layer->pixelsPerCm == fineness &&
                         sameForm(m_layer->held, held);
    if (!isOfNow)
        m_layer = madeLayer(held, job.scheme, fineness, true, never);
    else if (m_layer->quick && hasSharp(job))
        m_layer = madeLayer(held, job.scheme, fineness, false, never);
}

void PanePainter::layHand(QImage& image, const Held& held, const ViewFrame& frame) const
{
    QPainter painter(&image);
    paintHeld(painter, laid(*m_layer, held), pane_painter_detail::cmToSheet(frame));
}

// Kept until other bones are found: a hand on its way is laid over the same ones.
const QImage& PanePainter::withBones(const Body& body, const PaneJob& job)
{
    const auto bones = pane_painter_detail::bonesOf(job);
    if (bones == body.bones)
        return body.image;
    if (!m_boned || m_boned->bones != bones) {
        m_boned = Body{body.job, body.image.copy(), bones};
        pane_painter_detail::layBones(m_boned->image, job);
    }
    return m_boned->image;
}

InkResult PanePainter::resultOf(const InkJob& job, const Body& body, const PaneJob& asked)
{
    using namespace pane_painter_detail;
    const QImage& drawn = withBones(body, asked);
    InkResult result{job, readyOf(job.picture), drawn, nullptr};
    const auto held = heldOf(asked);
    if (!held)
        return result;
    drawHand(*held, asked);
    if (m_layer->quick || !sameTurn(m_layer->held, *held))
        result.job.preview = true;
    result.image = copied(drawn);
    layHand(result.image, *held, job.frame);
    m_canvases.push_back(result.image);
    return result;
}

}  // namespace fb
