// App: a new patient's plate, feedback on a mark, request lines. Each picture also as a ratio to
// QSvgRenderer painting the same layers of the unmoved plate, parsed beforehand, in the same run.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <chrono>
#include <sstream>

#include "app/canvas/ink_worker.h"
#include "app/canvas/plate_painter.h"
#include "app/cli/commands.h"
#include "app/doors/library.h"
#include "app/scene/target_scene.h"
#include "core/session/request.h"

namespace fb {

namespace app_bench_detail {

using Clock = std::chrono::steady_clock;

double millisecondsSince(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

const Library& library()
{
    static const std::shared_ptr<const Library> shipped = Library::load().value();
    return *shipped;
}

QSize sheetSize(std::int64_t height) { return height == 2160 ? QSize(3840, 2160) : QSize(1920, 1080); }

const QSet<Layer> kAll(kLayers.begin(), kLayers.end());

std::shared_ptr<const Picture> pictureOf(const Request& request)
{
    const Atlas atlas = library().atlas().value();
    auto plate = library().plate(request.view).value();
    const BodyMap map = bodyMap(atlas, request.view, request.patient).value();
    return std::make_shared<Picture>(
        Picture{plate, movedInk(*plate, map, request.patient), request.skinTone});
}

QRectF paperOf(const Picture& picture)
{
    const Bounds paper = picture.ink.paper;
    return {QPointF(paper.low.x, paper.low.y), QPointF(paper.high.x, paper.high.y)};
}

InkJob jobOf(std::shared_ptr<const Picture> picture, QSize size)
{
    const ViewFrame frame = ViewFrame::whole(QRectF(QPointF(), QSizeF(size)), paperOf(*picture));
    return {std::move(picture), frame, 1.0, schemeOf(PaletteKind::Light), kAll, false};
}

// The layers a picture with its skin on shows, as QtSvg paints them.
double svgMilliseconds(QSvgRenderer& renderer, QSize size)
{
    const auto start = Clock::now();
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = renderer.viewBoxF();
    const double scale = std::min(size.width() / box.width(), size.height() / box.height());
    for (const char* id : {"skin", "surface", "cloth"}) {
        const QString layer = QString::fromLatin1(id);
        const QRectF from = renderer.boundsOnElement(layer);
        renderer.render(&painter, layer, QRectF(from.topLeft() * scale, from.size() * scale));
    }
    painter.end();
    benchmark::DoNotOptimize(image.constBits());
    return millisecondsSince(start);
}

QSvgRenderer& unmovedPlate()
{
    static QSvgRenderer renderer(
        QStringLiteral(FINGERBREADTH_SOURCE_DIR "/resources/plates/shoulder-side.svg"));
    return renderer;
}

struct Ratio {
    double ours = 0.0;
    double theirs = 0.0;

    void report(benchmark::State& state) const
    {
        const auto rounds = static_cast<double>(state.iterations());
        state.counters["ours_ms"] = ours / rounds;
        state.counters["svg_ms"] = theirs / rounds;
        state.counters["ratio"] = ours / theirs;
    }
};

}  // namespace app_bench_detail

using namespace app_bench_detail;

// From a request to an image, as the canvas's worker makes it: body map, moved ink, paths, paint.
static void newPatientToPaintedPlate(benchmark::State& state)
{
    const QSize size = sheetSize(state.range(0));
    const std::atomic_bool never = false;
    Ratio ratio;
    int number = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const auto picture = pictureOf(requestFrom(1, number++));
        const ReadyInk ready(*picture);
        benchmark::DoNotOptimize(paintedImage(jobOf(picture, size), ready, never));
        const double ours = millisecondsSince(start);
        ratio.ours += ours;
        ratio.theirs += svgMilliseconds(unmovedPlate(), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(newPatientToPaintedPlate)->Arg(1080)->Arg(2160)->UseManualTime()->Unit(benchmark::kMillisecond);

// Everything of it that is painting.
static void readyInkToPaintedPlate(benchmark::State& state)
{
    const QSize size = sheetSize(state.range(0));
    const std::atomic_bool never = false;
    const auto picture = pictureOf(requestFrom(1, 0));
    const ReadyInk ready(*picture);
    Ratio ratio;
    for (auto _ : state) {
        const auto start = Clock::now();
        benchmark::DoNotOptimize(paintedImage(jobOf(picture, size), ready, never));
        const double ours = millisecondsSince(start);
        ratio.ours += ours;
        ratio.theirs += svgMilliseconds(unmovedPlate(), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(readyInkToPaintedPlate)->Arg(1080)->Arg(2160)->UseManualTime()->Unit(benchmark::kMillisecond);

// On the UI thread: which limb, the grade, the scene, and the whole face of the plate painted
// over the drawing that is already there.
static void markToPaintedFeedback(benchmark::State& state)
{
    const QSize size = sheetSize(state.range(0));
    const std::atomic_bool never = false;
    const Request request = requestFrom(1, 0);
    const Policy& policy = library().defaultPolicy();
    const Atlas atlas = library().atlas().value();
    const BodyMap map = bodyMap(atlas, request.view, request.patient).value();
    const Target target =
        locate(atlas, policy, request.patient, policy.convention(request.site), request.view).value();
    const auto picture = pictureOf(request);
    const auto ready = std::make_shared<const ReadyInk>(*picture);
    const InkJob job = jobOf(picture, size);
    PlateFace face;
    face.widget = QRectF(QPointF(), QSizeF(size));
    face.frame = job.frame;
    face.scheme = job.scheme;
    face.hasPicture = true;
    face.drawn = InkResult{job, ready, paintedImage(job, *ready, never).value()};
    QImage screen(size, QImage::Format_RGB32);
    Ratio ratio;
    int round = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const Point mark = target.ideal + Point{0.1 * (round % 20) - 1.0, 0.2 * (round % 11) - 1.0};
        ++round;
        const auto limb = markedLimb(atlas.plate(request.view), map, request.patient.side(), mark);
        const Grade grade = gradeMark(target, policy, mark, limb.value_or(MarkedLimb::Arm));
        face.mark = QPointF(mark.x, mark.y);
        face.scene = gradedScene(target, mark, grade);
        QPainter painter(&screen);
        paintFace(painter, face);
        painter.end();
        const double ours = millisecondsSince(start);
        ratio.ours += ours;
        ratio.theirs += svgMilliseconds(unmovedPlate(), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(markToPaintedFeedback)->Arg(1080)->Arg(2160)->UseManualTime()->Unit(benchmark::kMillisecond);

// `locate --json -`, in the process: from request lines to answer lines.
static void requestLines(benchmark::State& state)
{
    constexpr int kLines = 1000;
    std::ostringstream lines;
    for (int number = 0; number < kLines; ++number) {
        const Patient patient = requestFrom(1, number).patient;
        lines << R"({"site": "deltoid", "side": ")" << wordOf(patient.side()) << R"(", "age": ")"
              << patient.ageYears() << R"(y", "sex": ")" << wordOf(patient.sex()) << R"(", "stature": )"
              << patient.stature().value() << R"(, "weight": )" << patient.weight().value() << "}\n";
    }
    Arguments common;
    common.command = Command::Locate;
    common.json = true;
    common.lines = true;
    for (auto _ : state) {
        std::istringstream in(lines.str());
        std::ostringstream out;
        const LineCount count = answerLines(common, library(), in, out).value();
        if (count.answered != kLines)
            state.SkipWithError("a line was not answered");
        benchmark::DoNotOptimize(out.str().size());
    }
    state.SetItemsProcessed(state.iterations() * kLines);
}
BENCHMARK(requestLines)->Unit(benchmark::kMillisecond);

}  // namespace fb

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
