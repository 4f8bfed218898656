// One drag over a plate, measured move by move: from the mouse event to the end of the repaint it causes.
#pragma once

#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QTextStream>
#include <QThread>
#include <algorithm>
#include <cmath>
#include <ctime>
#include <functional>
#include <vector>

#include "app/canvas/plate_view.h"

namespace fb::bench {

inline constexpr int kMoves = 300;

inline void waitFor(const std::function<bool()>& done)
{
    QElapsedTimer clock;
    clock.start();
    while (!done() && clock.elapsed() < 20000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(2);
    }
}

inline void send(PlateView& view, QEvent::Type type, QPointF at)
{
    const bool moves = type == QEvent::MouseMove;
    QMouseEvent event(type, at, view.mapToGlobal(at), moves ? Qt::NoButton : Qt::LeftButton,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&view, &event);
}

// Of the thread that asks.
inline double computedMs()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

inline double percentile(std::vector<double> times, double share)
{
    std::ranges::sort(times);
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

// Counts the paintings that really took place, and how much of the view they covered.
class PaintCounter : public QObject {
public:
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint) {
            ++painted;
            for (const QRect& rect : static_cast<QPaintEvent*>(event)->region())
                area += static_cast<double>(rect.width()) * rect.height();
        }
        return false;
    }
    int painted = 0;
    double area = 0.0;  // pixels
};

inline void tellTimes(const char* name, const std::vector<double>& times)
{
    QTextStream(stdout) << QStringLiteral("  %1 %2 %3 %4")
                               .arg(QLatin1StringView(name))
                               .arg(percentile(times, 0.5), 6, 'f', 2)
                               .arg(percentile(times, 0.95), 6, 'f', 2)
                               .arg(percentile(times, 1.0), 6, 'f', 2);
}

// A circle from there and round again, thrice or so.
inline void measureDrag(PlateView& view, const char* what, QPointF from, double radius)
{
    PaintCounter counter;
    std::vector<double> times, computed;
    QElapsedTimer clock;
    send(view, QEvent::MouseButtonPress, from);
    QCoreApplication::processEvents();
    view.installEventFilter(&counter);
    for (int i = 1; i <= kMoves; ++i) {
        const double angle = 0.05 * i;
        const QPointF at = from + QPointF(std::sin(angle), std::cos(angle) - 1.0) * radius;
        const double before = computedMs();
        clock.start();
        send(view, QEvent::MouseMove, at);
        QCoreApplication::processEvents();
        computed.push_back(computedMs() - before);
        times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
        QThread::msleep(4);
    }
    view.removeEventFilter(&counter);
    send(view, QEvent::MouseButtonRelease, view.rect().center());
    clock.start();
    waitFor([&view] { return view.isHeldSharp(); });
    const auto sharp = clock.elapsed();
    QTextStream(stdout) << QStringLiteral("  %1").arg(QLatin1StringView(what), -22);
    tellTimes("wall", times);
    tellTimes("computing", computed);
    const double all = static_cast<double>(view.width()) * view.height() * std::max(1, counter.painted);
    QTextStream(stdout) << QStringLiteral("  painted %1 of %2, %3 % of the plate, sharp after %4\n")
                               .arg(counter.painted)
                               .arg(kMoves)
                               .arg(100.0 * counter.area / all, 0, 'f', 0)
                               .arg(sharp);
}

}  // namespace fb::bench
