// App: a new patient's plate and feedback on a mark. Each picture also as a ratio to
// QSvgRenderer painting the same layers of the unmoved plate, parsed beforehand, in the same run.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>
#include <chrono>
#include <map>
#include <memory>

#include "app/canvas/hand_painter.h"
#include "app/canvas/ink_worker.h"
#include "app/canvas/plate_painter.h"
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

View viewAt(benchmark::State& state)
{
    const View view = kViews[static_cast<std::size_t>(state.range(0))];
    state.SetLabel(std::string(wordOf(view)));
    return view;
}

void everyViewAtBothHeights(benchmark::internal::Benchmark* bench)
{
    for (std::size_t view = 0; view < kViews.size(); ++view) {
        for (const int height : {1080, 2160})
            bench->Args({static_cast<std::int64_t>(view), height});
    }
}

void askedViewsAtBothHeights(benchmark::internal::Benchmark* bench)
{
    for (std::size_t view = 0; view < kViews.size(); ++view) {
        const auto asked = askedViews(siteOf(kViews[view]));
        if (std::ranges::find(asked, kViews[view]) == asked.end())
            continue;
        for (const int height : {1080, 2160})
            bench->Args({static_cast<std::int64_t>(view), height});
    }
}

// A request of a view, shown in that view and no other.
Request requestIn(View view, int number)
{
    Request request = requestFrom(1, number, {SiteSet::only(siteOf(view)), false});
    request.view = view;
    return request;
}

std::shared_ptr<const Picture> pictureOf(const Request& request)
{
    const Atlas atlas = library().atlas(request.view).value();
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
    return {std::move(picture), nullptr, frame, 1.0, schemeOf(PaletteKind::Light), kAll, false};
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

QSvgRenderer& unmovedPlate(View view)
{
    static std::map<View, std::unique_ptr<QSvgRenderer>> renderers;
    auto& renderer = renderers[view];
    if (!renderer) {
        const std::string_view word = wordOf(view);
        renderer = std::make_unique<QSvgRenderer>(
            QStringLiteral(FINGERBREADTH_SOURCE_DIR "/resources/plates/%1.svg")
                .arg(QLatin1StringView(word.data(), static_cast<qsizetype>(word.size()))));
    }
    return *renderer;
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
    const View view = viewAt(state);
    const QSize size = sheetSize(state.range(1));
    const std::atomic_bool never = false;
    Ratio ratio;
    int number = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const auto picture = pictureOf(requestIn(view, number++));
        const ReadyInk ready(*picture);
        benchmark::DoNotOptimize(paintedImage(jobOf(picture, size), ready, never));
        const double ours = millisecondsSince(start);
        ratio.ours += ours;
        ratio.theirs += svgMilliseconds(unmovedPlate(view), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(newPatientToPaintedPlate)
    ->Apply(everyViewAtBothHeights)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond);

// Everything of it that is painting.
static void readyInkToPaintedPlate(benchmark::State& state)
{
    const View view = viewAt(state);
    const QSize size = sheetSize(state.range(1));
    const std::atomic_bool never = false;
    const auto picture = pictureOf(requestIn(view, 0));
    const ReadyInk ready(*picture);
    Ratio ratio;
    for (auto _ : state) {
        const auto start = Clock::now();
        benchmark::DoNotOptimize(paintedImage(jobOf(picture, size), ready, never));
        const double ours = millisecondsSince(start);
        ratio.ours += ours;
        ratio.theirs += svgMilliseconds(unmovedPlate(view), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(readyInkToPaintedPlate)
    ->Apply(everyViewAtBothHeights)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond);

// The same with the hand of the ventrogluteal site laid over it, as after a grade.
static void readyInkWithItsHand(benchmark::State& state)
{
    const QSize size = sheetSize(state.range(0));
    const std::atomic_bool never = false;
    const Request request = requestIn(View::HipSide, 0);
    const Policy& policy = library().defaultPolicy();
    const Target target = locate(library().atlas(request.view).value(), policy, request.patient,
                                 policy.convention(request.site), request.view)
                              .value();
    const auto hand = handPicture(library().plate(View::OpenHand).value(), target.hand);
    const auto picture = pictureOf(request);
    const ReadyInk ready(*picture);
    InkJob job = jobOf(picture, size);
    job.hand = hand;
    for (auto _ : state) {
        const ReadyInk laid(*hand);
        benchmark::DoNotOptimize(paintedImage(job, ready, never, &laid));
    }
}
BENCHMARK(readyInkWithItsHand)->Arg(1080)->Arg(2160)->UseRealTime()->Unit(benchmark::kMillisecond);

// On the UI thread: which limb, the grade, the scene, and the whole face of the plate painted
// over the drawing that is already there.
static void markToPaintedFeedback(benchmark::State& state)
{
    const View view = viewAt(state);
    const QSize size = sheetSize(state.range(1));
    const std::atomic_bool never = false;
    const Request request = requestIn(view, 0);
    const Policy& policy = library().defaultPolicy();
    const Atlas atlas = library().atlas(view).value();
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
        ratio.theirs += svgMilliseconds(unmovedPlate(view), size);
        state.SetIterationTime(ours / 1000.0);
    }
    ratio.report(state);
}
BENCHMARK(markToPaintedFeedback)
    ->Apply(askedViewsAtBothHeights)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond);

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
