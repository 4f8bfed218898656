// A demonstration on screen that tells when and what it painted, for bench_lecture.
#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QTimer>
#include <algorithm>
#include <cmath>
#include <ctime>
#include <functional>
#include <memory>
#include <vector>

#include "app/demonstrate/lecture_view.h"
#include "app/lecture/body_worker.h"
#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace lecture_bench_detail {

inline double computedMs(clockid_t of = CLOCK_THREAD_CPUTIME_ID)
{
    timespec now{};
    clock_gettime(of, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

inline double elapsedMs(const QElapsedTimer& clock)
{
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

inline double percentile(std::vector<double> times, double share)
{
    if (times.empty())
        return 0.0;
    std::ranges::sort(times);
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

// Tells what it painted, and how long that took.
class WatchedView : public LectureView {
public:
    using LectureView::LectureView;

    int painted = 0;
    int bodies = 0;               // painted ones that were not the one of before
    bool isPaintedSharp = false;  // the last time
    std::vector<double> times;

protected:
    void paintEvent(QPaintEvent* event) override
    {
        const LectureFace shown = face();
        isPaintedSharp = isSharp();
        const double before = computedMs();
        LectureView::paintEvent(event);
        times.push_back(computedMs() - before);
        ++painted;
        if (shown.panes.empty() || !shown.panes.front().drawn)
            return;
        const auto picture = shown.panes.front().drawn->job.picture;
        bodies += picture != m_last;
        m_last = picture;
    }

private:
    std::shared_ptr<const Picture> m_last;
};

inline bool waitFor(const std::function<bool()>& done)
{
    QElapsedTimer clock;
    clock.start();
    while (!done() && clock.elapsed() < 20000)
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
    return done();
}

inline void press(QWidget& view, int key)
{
    QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
    QCoreApplication::sendEvent(&view, &event);
}

class Lecture {
public:
    Lecture(const std::shared_ptr<const Library>& library, QSize size)
        : presenter(bodies, m_clock),
          view(presenter, LectureView::For::Audience)
    {
        // Every tick of a timer would wake the wait.
        m_ticks.setInterval(2);
        m_ticks.start();
        presenter.useLibrary(library, library->defaultPolicy());
        view.setScheme(schemeOf(PaletteKind::Projector));
        view.resize(size);
        view.show();
    }

    void open(Site site)
    {
        presenter.openSite(site);
        waitFor([this, site] {
            return presenter.state().shown && siteOf(presenter.state().shown->ask.convention) == site &&
                   view.isSharp() && view.isPaintedSharp;
        });
    }

    // A slider to and fro, every 8 ms another value.
    void drag(int ms)
    {
        QElapsedTimer clock;
        clock.start();
        const BodyValues from = presenter.state().body;
        qint64 next = 0;
        while (clock.elapsed() < ms) {
            if (clock.elapsed() >= next) {
                BodyValues to = from;
                to.weightKg += 25.0 * std::sin(static_cast<double>(clock.elapsed()) / 400.0);
                presenter.setBody(to);
                next = clock.elapsed() + 8;
            }
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
        }
    }

    double letGo()
    {
        QElapsedTimer clock;
        clock.start();
        presenter.letGo();
        view.isPaintedSharp = false;
        waitFor([this] { return view.isPaintedSharp && view.isSharp(); });
        return elapsedMs(clock);
    }

private:
    SystemClock m_clock;
    QTimer m_ticks;

public:
    BodyWorker bodies;
    LecturePresenter presenter;
    WatchedView view;
};

}  // namespace lecture_bench_detail

}  // namespace fb
