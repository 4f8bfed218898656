// A demonstration in motion, end to end: presenter, bodies made in their thread, drawings painted in theirs,
// and a view on screen that repaints.
//
//   bench_lecture [HEIGHT ...]       default 1080 2160; one row a site
//   bench_lecture --steps [HEIGHT]   nothing but the changes of steps, in every view and palette
//   bench_lecture --hour             memory over an hour's lecture: 3600 steps, 600 drags of a slider
//
// Frames: bodies that were painted in a second while a slider moves without rest. Sharp: from letting go to
// the painted sharp picture. Step: from a key to the end of the repaint it causes; drawn: until its hand lies
// there sharp. UI: the window's thread painting one frame, its own computing time. Computing: of all threads
// together, for one frame; a busy machine does not stretch it. What the window waits for in the pool is not
// UI.
#include <QApplication>
#include <QFile>
#include <QTest>
#include <QTextStream>

#include "tests/bench/lecture_measure.h"

namespace fb {

namespace lecture_bench_detail {

struct StepTimes {
    std::vector<double> painted, drawn;
    int slowest = 0;  // step
};

// Every step of a site, each with its animation and each as it rests.
StepTimes throughSteps(Lecture& lecture)
{
    StepTimes times;
    for (const bool calm : {true, false}) {
        lecture.presenter.setCalm(calm);
        lecture.presenter.goTo(0);
        waitFor([&] { return lecture.view.isSharp(); });
        const auto count = static_cast<int>(lecture.presenter.state().steps.size());
        for (int i = 1; i < count; ++i) {
            const int before = lecture.view.painted;
            QElapsedTimer clock;
            clock.start();
            press(lecture.view, Qt::Key_PageDown);
            waitFor([&] { return lecture.view.painted > before; });
            times.painted.push_back(elapsedMs(clock));
            if (times.painted.back() >= percentile(times.painted, 1.0))
                times.slowest = i;
            waitFor([&] { return lecture.view.isSharp() && lecture.view.isPaintedSharp; });
            if (calm)
                times.drawn.push_back(elapsedMs(clock));
        }
    }
    return times;
}

void tellSteps(const StepTimes& steps, const QString& of)
{
    QTextStream(stdout) << QStringLiteral("  %1 steps: painted %2 (most %3, step %6), drawn %4 (most %5)\n")
                               .arg(of, -16)
                               .arg(percentile(steps.painted, 0.5), 5, 'f', 1)
                               .arg(percentile(steps.painted, 1.0), 5, 'f', 1)
                               .arg(percentile(steps.drawn, 0.5), 5, 'f', 1)
                               .arg(percentile(steps.drawn, 1.0), 5, 'f', 1)
                               .arg(steps.slowest);
}

void measure(Lecture& lecture, Site site)
{
    lecture.open(site);
    const StepTimes steps = throughSteps(lecture);
    QTextStream out(stdout);
    // At the start with nothing laid on the body, and at the fullest step.
    for (const int step : {0, static_cast<int>(lecture.presenter.state().steps.size()) / 2}) {
        lecture.presenter.setCalm(true);
        lecture.presenter.goTo(step);
        waitFor([&] { return lecture.view.isSharp(); });
        lecture.view.bodies = 0;
        lecture.view.times.clear();
        constexpr int kMs = 4000;
        const double before = computedMs(CLOCK_PROCESS_CPUTIME_ID);
        lecture.drag(kMs);
        const double computed =
            (computedMs(CLOCK_PROCESS_CPUTIME_ID) - before) / std::max(1, lecture.view.bodies);
        const double frames = lecture.view.bodies * 1000.0 / kMs;
        const std::vector<double> times = lecture.view.times;
        std::vector<double> sharp;
        for (int i = 0; i < 7; ++i) {
            lecture.drag(200);
            sharp.push_back(lecture.letGo());
        }
        out << QStringLiteral(
                   "  %1 step %2: %3 frames/s, computing %8, UI %4 (95 %: %5), sharp %6 (most %7)\n")
                   .arg(QLatin1StringView(wordOf(site).data()), -16)
                   .arg(step, 2)
                   .arg(frames, 5, 'f', 1)
                   .arg(percentile(times, 0.5), 5, 'f', 1)
                   .arg(percentile(times, 0.95), 5, 'f', 1)
                   .arg(percentile(sharp, 0.5), 5, 'f', 0)
                   .arg(percentile(sharp, 1.0), 5, 'f', 0)
                   .arg(computed, 5, 'f', 1);
    }
    tellSteps(steps, {});
}

// In the first second after a site is opened its words are made ready: who jumps into it by then waits
// longer.
constexpr int kReadyMs = 1000;

void everyStep(const std::shared_ptr<const Library>& library, QSize size)
{
    for (const PaletteKind palette : kPaletteKinds) {
        for (const Site site : {Site::Deltoid, Site::VastusLateralis, Site::Ventrogluteal}) {
            Lecture lecture(library, size);
            lecture.view.setScheme(schemeOf(palette));
            lecture.open(site);
            const View asked = lecture.presenter.state().view;
            for (const View view : {asked, companionOf(asked)}) {
                lecture.presenter.setView(view);
                waitFor([&] {
                    const auto& shown = lecture.presenter.state().shown;
                    return shown->ask.view == view && lecture.view.isSharp() && lecture.view.isPaintedSharp;
                });
                QTest::qWait(kReadyMs);
                tellSteps(throughSteps(lecture), QString::fromLatin1(wordOf(view).data()) + ", palette " +
                                                     QString::number(static_cast<int>(palette)));
            }
        }
    }
}

// Of this process, MB.
double residentMb()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0.0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmRSS:"))
            return line.mid(6).trimmed().split(' ').front().toDouble() / 1024.0;
    return 0.0;
}

// 3600 steps and 600 drags, ten minutes' worth between two rows.
void hour(const std::shared_ptr<const Library>& library)
{
    Lecture lecture(library, {1920, 1080});
    lecture.presenter.setCalm(true);
    QTextStream out(stdout);
    constexpr int kRows = 6;
    for (int row = 0; row <= kRows; ++row) {
        for (int i = 0; row > 0 && i < 600; ++i) {
            if (i % 50 == 0)
                lecture.open(static_cast<Site>(i / 50 % 3));
            const auto& state = lecture.presenter.state();
            press(lecture.view,
                  state.step + 1 == static_cast<int>(state.steps.size()) ? Qt::Key_Home : Qt::Key_PageDown);
            QCoreApplication::processEvents(QEventLoop::AllEvents, 4);
            if (i % 6 == 0) {
                lecture.drag(30);
                static_cast<void>(lecture.letGo());
            }
        }
        if (row == 0)
            lecture.open(Site::Deltoid);
        out << QStringLiteral("  after %1 steps and %2 drags: %3 MB\n")
                   .arg(row * 600, 4)
                   .arg(row * 100, 3)
                   .arg(residentMb(), 0, 'f', 0);
        out.flush();
    }
}

}  // namespace lecture_bench_detail

}  // namespace fb

int main(int argc, char** argv)
{
    using namespace fb::lecture_bench_detail;
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const auto library = fb::Library::load().value();
    QStringList asked = QApplication::arguments().mid(1);
    if (asked.contains(QStringLiteral("--hour"))) {
        hour(library);
        return 0;
    }
    const bool onlySteps = asked.removeAll(QStringLiteral("--steps")) > 0;
    std::vector<int> heights{1080, 2160};
    if (!asked.isEmpty())
        heights.clear();
    for (const QString& height : asked)
        heights.push_back(height.toInt());
    for (const int height : heights) {
        QTextStream(stdout) << height * 16 / 9 << "x" << height << "\n";
        if (onlySteps) {
            everyStep(library, {height * 16 / 9, height});
            continue;
        }
        Lecture lecture(library, {height * 16 / 9, height});
        for (const fb::Site site : {fb::Site::Deltoid, fb::Site::VastusLateralis, fb::Site::Ventrogluteal})
            measure(lecture, site);
    }
    return 0;
}
