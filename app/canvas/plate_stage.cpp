#include "app/canvas/plate_stage.h"

#include "app/canvas/tool_painter.h"

namespace fb {

namespace stage_detail {

QRectF extentOf(const Bounds& bounds)
{
    return {bounds.low.x, bounds.low.y, bounds.high.x - bounds.low.x, bounds.high.y - bounds.low.y};
}

bool sameBody(const Picture* a, const Picture* b)
{
    return a && b && a->plate == b->plate && extentOf(a->ink.paper) == extentOf(b->ink.paper);
}

}  // namespace stage_detail

PlateStage::PlateStage(QObject* parent) : QObject(parent)
{
    m_face.scheme = schemeOf(PaletteKind::Light);
    m_layers = QSet<Layer>(kLayers.begin(), kLayers.end());
    m_settle.setSingleShot(true);
    m_settle.setInterval(kSettleMs);
    connect(&m_settle, &QTimer::timeout, this, [this] { ask(false); });
    connect(&m_worker, &InkWorker::painted, this, &PlateStage::take);
    connect(&m_tools, &PlateTools::heldChanged, this, [this] { Q_EMIT changedWithin(toolsBox(face())); });
    connect(&m_tools, &PlateTools::pressed, this, &PlateStage::pressed);
    connect(&m_tools, &PlateTools::lifted, this, &PlateStage::lifted);
    connect(&m_tools, &PlateTools::handleGrabbed, this, &PlateStage::handleGrabbed);
    connect(&m_tools, &PlateTools::handleMoved, this, &PlateStage::handleMoved);
    connect(&m_tools, &PlateTools::handleReleased, this, &PlateStage::handleReleased);
}

void PlateStage::setWidget(const QRectF& widget, double devicePixelRatio)
{
    if (widget == m_face.widget && devicePixelRatio == m_pixelRatio)
        return;
    m_face.widget = widget;
    m_pixelRatio = devicePixelRatio;
    m_face.frame = m_face.frame.resized(sheetOf(widget));
    lookAgain();
    ask(false);
    Q_EMIT changed();
}

void PlateStage::setTextScale(double textScale)
{
    m_face.textScale = textScale;
    Q_EMIT changed();
}

void PlateStage::setFocus(bool focused)
{
    m_face.focused = focused;
    Q_EMIT changed();
}

void PlateStage::setPicture(std::shared_ptr<const Picture> picture)
{
    if (picture == m_picture)
        return;
    const bool keeps = stage_detail::sameBody(m_picture.get(), picture.get());
    m_picture = std::move(picture);
    m_face.hasPicture = m_picture != nullptr;
    if (!keeps) {
        m_worker.forget();
        m_face.drawn.reset();
    }
    if (m_picture && !keeps) {
        m_face.frame = ViewFrame::whole(m_face.frame.sheet(), stage_detail::extentOf(m_picture->ink.paper));
        m_crosshair = m_face.frame.picture().center();
        lookAgain();
    }
    ask(false);
    Q_EMIT changed();
}

void PlateStage::setScene(const Scene& scene)
{
    if (sameScene(scene, m_face.scene))
        return;
    // What only moves under the labels is all there is to repaint.
    const bool isAll = !isLoose(m_face.scene) || !isLoose(scene);
    const QTransform toWidget = m_face.frame.cmToWidget();
    const QRectF box =
        looseBox(m_face.scene, toWidget, m_face.textScale) | looseBox(scene, toWidget, m_face.textScale);
    m_face.scene = scene;
    if (isAll)
        Q_EMIT changed();
    else
        Q_EMIT changedWithin(box);
}

void PlateStage::setMark(std::optional<QPointF> cm)
{
    m_face.mark = cm;
    if (cm)
        m_crosshair = *cm;
    Q_EMIT changed();
}

void PlateStage::setHand(std::shared_ptr<const Picture> hand)
{
    if (hand == m_hand)
        return;
    m_hand = std::move(hand);
    if (m_handShown)
        ask(false);
    Q_EMIT changed();
}

void PlateStage::setHandShown(bool shown)
{
    if (shown == m_handShown)
        return;
    m_handShown = shown;
    if (m_hand)
        ask(false);
    Q_EMIT changed();
}

void PlateStage::setLayers(const QSet<Layer>& layers)
{
    if (layers == m_layers)
        return;
    m_layers = layers;
    ask(false);
    Q_EMIT changed();
}

void PlateStage::setMarkable(bool markable)
{
    m_markable = markable;
    Q_EMIT changed();
}

void PlateStage::setScheme(const Scheme& scheme)
{
    if (scheme == m_face.scheme)
        return;
    m_face.scheme = scheme;
    m_face.drawn.reset();
    lookAgain();
    ask(false);
    Q_EMIT changed();
}

bool PlateStage::isOfNow(const InkJob& job) const
{
    return job.picture == m_picture && job.hand == shownHand() && job.scheme == m_face.scheme &&
           job.layers == m_layers;
}

bool PlateStage::isSharp() const
{
    return m_face.drawn && isOfNow(m_face.drawn->job) && !m_face.drawn->job.preview &&
           m_face.drawn->job.frame == m_face.frame;
}

PlateFace PlateStage::face() const
{
    PlateFace now = m_face;
    now.tools = m_tools.face();
    if (m_carried)
        now.mark = m_carried;
    if (showsCrosshair())
        now.crosshair = m_crosshair;
    return now;
}

void PlateStage::setFrame(const ViewFrame& frame)
{
    if (frame == m_face.frame)
        return;
    m_face.frame = frame;
    lookAgain();
    if (m_picture) {
        ask(true);
        m_settle.start();
    }
    Q_EMIT changed();
}

// A preview is half as fine and comes at once; the sharp drawing follows when all is still.
void PlateStage::ask(bool preview)
{
    if (!m_picture || m_face.frame.sheet().isEmpty())
        return;
    if (!preview && m_moving)
        return;
    InkJob job;
    job.picture = m_picture;
    job.hand = shownHand();
    job.frame = m_face.frame;
    job.pixelRatio = m_pixelRatio * (preview ? 0.5 : 1.0);
    job.scheme = m_face.scheme;
    job.layers = m_layers;
    job.preview = preview;
    m_worker.request(job);
}

void PlateStage::take(const InkResult& result)
{
    if (!isOfNow(result.job))
        return;
    if (result.job.preview && isSharp())
        return;
    m_face.drawn = result;
    Q_EMIT changed();
    if (isSharp())
        Q_EMIT sharpened();
}

}  // namespace fb
