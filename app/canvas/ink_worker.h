// Paints a patient's drawing away from the UI thread. The newest request wins: a finished
// drawing nobody waits for any more is given up half way; a preview, once begun, is finished,
// so that something moves under a moving hand.
#pragma once

#include <QImage>
#include <QObject>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "app/canvas/ink_painter.h"
#include "app/canvas/view_frame.h"
#include "app/look/palette.h"

namespace fb {

struct InkJob {
    std::shared_ptr<const Picture> picture;
    std::shared_ptr<const Picture> hand;  // laid over it; null: none
    ViewFrame frame;                      // the image covers its sheet
    double pixelRatio = 1.0;              // image pixels per widget pixel; a preview has fewer
    Scheme scheme;
    QSet<Layer> layers;
    bool preview = false;
};

struct InkResult {
    InkJob job;
    std::shared_ptr<const ReadyInk> ready;
    QImage image;                                    // opaque: paper, plate mark, ink and hand
    std::shared_ptr<const ReadyInk> hand = nullptr;  // null: none
};

// The image of a job, painted in horizontal bands by up to two threads; nullopt when cancelled.
// hand: the job's, if it has one.
[[nodiscard]] std::optional<QImage> paintedImage(const InkJob& job, const ReadyInk& ink,
                                                 const std::atomic_bool& cancelled,
                                                 const ReadyInk* hand = nullptr);

class InkWorker : public QObject {
    Q_OBJECT

public:
    explicit InkWorker(QObject* parent = nullptr);
    ~InkWorker() override;

    void request(const InkJob& job);
    void forget();  // no request is of interest any more

Q_SIGNALS:
    // Emitted in the thread this object lives in, never for a request that was given up.
    void painted(const fb::InkResult& result);

private:
    void work(const std::stop_token& stop);
    void deliver(const InkResult& result, quint64 number);

    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::optional<InkJob> m_next;
    bool m_running = false;
    bool m_runningPreview = false;
    quint64 m_number = 0;
    quint64 m_oldestWanted = 0;
    std::atomic_bool m_cancel = false;
    std::jthread m_thread;  // last: it uses all of the above
};

}  // namespace fb
