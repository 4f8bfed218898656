#include "app/demonstrate/pane_ink.h"

#include <QMetaObject>
#include <utility>

namespace fb {

PaneInk::PaneInk(QObject* parent)
    : QObject(parent),
      m_thread([this](const std::stop_token& stop) { work(stop); })
{
}

PaneInk::~PaneInk()
{
    m_thread.request_stop();
    m_cancel = true;
    m_thread.join();
}

void PaneInk::request(const PaneJob& job)
{
    const std::lock_guard lock(m_mutex);
    m_next = job;
    ++m_number;
    m_cancel = true;
    m_wake.notify_all();
}

void PaneInk::forget()
{
    const std::lock_guard lock(m_mutex);
    m_next.reset();
    m_oldestWanted = ++m_number;
    m_cancel = true;
}

void PaneInk::work(const std::stop_token& stop)
{
    PanePainter painter;
    for (;;) {
        PaneJob job;
        quint64 number = 0;
        {
            std::unique_lock lock(m_mutex);
            if (!m_wake.wait(lock, stop, [this] { return m_next.has_value(); }) || stop.stop_requested())
                return;
            job = *std::exchange(m_next, std::nullopt);
            number = m_number;
            m_cancel = false;
        }
        if (painter.isSlow(job))
            deliver(job, painter.quick(job), number);
        if (stop.stop_requested() || job.moving)
            continue;
        if (const auto sharp = painter.sharp(job, m_cancel))
            deliver(job, *sharp, number);
    }
}

void PaneInk::deliver(const PaneJob& job, const InkResult& result, quint64 number)
{
    const auto tell = [this, job, result, number] {
        {
            const std::lock_guard lock(m_mutex);
            if (number < m_oldestWanted)
                return;
        }
        Q_EMIT painted({job, result});
    };
    QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
}

}  // namespace fb
