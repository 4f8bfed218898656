#include "app/canvas/ink_worker.h"

#include <QMetaObject>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/canvas/hand_painter.h"
#include "app/canvas/plate_painter.h"

namespace fb {

namespace worker_detail {

inline constexpr int kBands = 6;             // smaller shares, so that both threads end together
inline constexpr double kLeastHatch = 0.34;  // image pixels: fainter ones only grey the paper

struct Canvas {
    QImage image;
    QTransform cmToImage;
    QRectF plate;  // image pixels
};

Canvas canvasOf(const InkJob& job)
{
    const QRectF sheet = job.frame.sheet();
    const QSize size(std::max(1, static_cast<int>(std::ceil(sheet.width() * job.pixelRatio))),
                     std::max(1, static_cast<int>(std::ceil(sheet.height() * job.pixelRatio))));
    Canvas canvas;
    canvas.image = QImage(size, QImage::Format_RGB32);
    canvas.cmToImage = job.frame.cmToWidget() * QTransform::fromTranslate(-sheet.left(), -sheet.top()) *
                       QTransform::fromScale(job.pixelRatio, job.pixelRatio);
    canvas.plate = canvas.cmToImage.mapRect(job.frame.picture());
    return canvas;
}

// What all bands of one image are painted with.
struct Paints {
    const InkJob& job;
    const ReadyInk& ink;
    const ReadyInk* hand;
    std::vector<QColor> tones, handTones;
};

// One band is an image of its own over the rows of the whole.
bool paintBand(const Paints& paints, const Canvas& canvas, uchar* bits, int band,
               const std::atomic_bool& cancelled)
{
    const InkJob& job = paints.job;
    const int height = canvas.image.height();
    const int top = height * band / kBands;
    const int rows = height * (band + 1) / kBands - top;
    if (rows <= 0)
        return true;
    const qsizetype line = canvas.image.bytesPerLine();
    QImage part(bits + top * line, canvas.image.width(), rows, line, canvas.image.format());
    QPainter painter(&part);
    painter.translate(0, -top);
    painter.setClipRect(QRect(0, top, part.width(), rows));
    painter.fillRect(QRect(0, top, part.width(), rows), job.scheme.paper);
    paintPlateMark(painter, canvas.plate, job.scheme, job.pixelRatio);
    painter.setClipRect(canvas.plate, Qt::IntersectClip);
    QColor ghost = job.scheme.ink;
    ghost.setAlphaF(0.22F);
    return paintInk(painter, paints.ink, paints.tones,
                    InkManner{canvas.cmToImage, job.layers, kLeastHatch, ghost}, cancelled) &&
           (!paints.hand || paintHand(painter, *paints.hand, paints.handTones, canvas.cmToImage, cancelled));
}

}  // namespace worker_detail

std::optional<QImage> paintedImage(const InkJob& job, const ReadyInk& ink, const std::atomic_bool& cancelled,
                                   const ReadyInk* hand)
{
    worker_detail::Canvas canvas = worker_detail::canvasOf(job);
    worker_detail::Paints paints{job,
                                 ink,
                                 job.hand ? hand : nullptr,
                                 toneColours(*job.picture->plate, job.scheme, job.picture->skinTone),
                                 {}};
    if (paints.hand)
        paints.handTones = toneColours(*job.hand->plate, job.scheme, 0);
    uchar* bits = canvas.image.bits();
    std::atomic_int next = 0;
    std::atomic_bool done = true;
    const auto paintSome = [&] {
        for (int band = next++; band < worker_detail::kBands; band = next++)
            if (!worker_detail::paintBand(paints, canvas, bits, band, cancelled))
                done = false;
    };
    {
        std::jthread second;
        if (!job.preview && std::thread::hardware_concurrency() > 1)
            second = std::jthread(paintSome);
        paintSome();
    }
    if (!done)
        return std::nullopt;
    canvas.image.setDevicePixelRatio(job.pixelRatio);
    return canvas.image;
}

InkWorker::InkWorker(QObject* parent)
    : QObject(parent),
      m_thread([this](const std::stop_token& stop) { work(stop); })
{
}

InkWorker::~InkWorker()
{
    m_cancel = true;
    m_thread.request_stop();
    m_wake.notify_all();
    m_thread.join();
}

void InkWorker::request(const InkJob& job)
{
    const std::lock_guard lock(m_mutex);
    m_next = job;
    ++m_number;
    if (m_running && !m_runningPreview)
        m_cancel = true;
    m_wake.notify_all();
}

void InkWorker::forget()
{
    const std::lock_guard lock(m_mutex);
    m_next.reset();
    m_oldestWanted = ++m_number;
    m_cancel = true;
}

void InkWorker::work(const std::stop_token& stop)
{
    std::shared_ptr<const Picture> readyFor;
    std::shared_ptr<const ReadyInk> ready;
    std::shared_ptr<const Picture> handReadyFor;
    std::shared_ptr<const ReadyInk> hand;
    for (;;) {
        InkResult result;
        quint64 number = 0;
        {
            std::unique_lock lock(m_mutex);
            m_running = false;
            if (!m_wake.wait(lock, stop, [this] { return m_next.has_value(); }))
                return;
            result.job = *m_next;
            number = m_number;
            m_next.reset();
            m_running = true;
            m_runningPreview = result.job.preview;
            m_cancel = false;
        }
        if (readyFor != result.job.picture) {
            ready = std::make_shared<const ReadyInk>(*result.job.picture);
            readyFor = result.job.picture;
        }
        if (handReadyFor != result.job.hand) {
            hand = result.job.hand ? std::make_shared<const ReadyInk>(*result.job.hand) : nullptr;
            handReadyFor = result.job.hand;
        }
        result.ready = ready;
        result.hand = hand;
        if (const auto image = paintedImage(result.job, *ready, m_cancel, hand.get())) {
            result.image = *image;
            QMetaObject::invokeMethod(
                this, [this, result, number] { deliver(result, number); }, Qt::QueuedConnection);
        }
    }
}

void InkWorker::deliver(const InkResult& result, quint64 number)
{
    {
        const std::lock_guard lock(m_mutex);
        if (number < m_oldestWanted)
            return;
    }
    Q_EMIT painted(result);
}

}  // namespace fb
