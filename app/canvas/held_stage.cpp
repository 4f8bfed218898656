#include "app/canvas/held_stage.h"

#include <QMetaObject>
#include <QSemaphore>

namespace fb {

HeldStage::HeldStage(QObject* parent) : QObject(parent), m_scheme(schemeOf(PaletteKind::Light))
{
    m_pool.setMaxThreadCount(1);
    m_settle.setSingleShot(true);
    m_settle.setInterval(kSettleMs);
    connect(&m_settle, &QTimer::timeout, this, &HeldStage::askSharp);
}

HeldStage::~HeldStage()
{
    if (m_cancelled)
        *m_cancelled = true;
    m_pool.waitForDone();
}

void HeldStage::hold(std::optional<Held> held)
{
    const bool onlyMoved = m_held && held && sameForm(*m_held, *held) && sameTurn(*m_held, *held);
    m_held = std::move(held);
    if (!m_held) {
        m_layer.reset();
        m_settle.stop();
        return;
    }
    if (onlyMoved)
        return;
    if (!m_layer || !sameForm(m_layer->held, *m_held))
        drawQuick();
    if (!isSharp())
        m_settle.start();
}

void HeldStage::look(double devicePixelsPerCm, const Scheme& scheme)
{
    const bool recoloured = scheme != m_scheme;
    m_pixelsPerCm = devicePixelsPerCm;
    m_scheme = scheme;
    if (!m_held)
        return;
    if (recoloured)
        drawQuick();
    if (!isSharp())
        m_settle.start();
}

std::optional<HeldImage> HeldStage::image() const
{
    if (!m_held || !m_layer)
        return std::nullopt;
    return laid(*m_layer, *m_held);
}

bool HeldStage::isSharp() const
{
    return !m_held || (m_layer && !m_layer->quick && sameTurn(m_layer->held, *m_held) &&
                       m_layer->pixelsPerCm == m_pixelsPerCm && m_layer->scheme == m_scheme &&
                       sameForm(m_layer->held, *m_held));
}

// Measured: Qt shares every larger fill among the threads of its pool and waits for them, hundreds of times
// for one hand, but not when it is drawn in that pool: then half the time is enough. A busy pool is not
// waited for.
void HeldStage::drawQuick()
{
    QSemaphore done;
    const auto draw = [this, &done] {
        const std::atomic_bool never = false;
        m_layer = madeLayer(*m_held, m_scheme, m_pixelsPerCm, true, never);
        done.release();
    };
    if (!QThreadPool::globalInstance()->tryStart(draw))
        draw();
    done.acquire();
}

void HeldStage::askSharp()
{
    if (!m_held || isSharp())
        return;
    if (m_cancelled)
        *m_cancelled = true;
    m_cancelled = std::make_shared<std::atomic_bool>(false);
    m_pool.start(
        [this, held = *m_held, scheme = m_scheme, fineness = m_pixelsPerCm, cancelled = m_cancelled] {
            if (auto layer = madeLayer(held, scheme, fineness, false, *cancelled))
                QMetaObject::invokeMethod(
                    this, [this, made = *std::move(layer)] { take(made); }, Qt::QueuedConnection);
        });
}

void HeldStage::take(const HeldLayer& layer)
{
    if (!m_held || layer.scheme != m_scheme || !sameForm(layer.held, *m_held))
        return;
    m_layer = layer;
    Q_EMIT changed();
}

}  // namespace fb
