// Core: one grade against GEOS over the same polygons in the same run, and patient to target.
#include <benchmark/benchmark.h>

#include <chrono>

#include "core/body/moved_ink.h"
#include "core/feel/feel.h"
#include "core/grade/grade.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test {

namespace core_bench_detail {

constexpr std::size_t kMarks = 4096;

// What is measured: every convention of every site, in every view it is asked in.
struct Asked {
    View view{};
    Convention convention{};
};

const std::vector<Asked>& asked()
{
    static const std::vector<Asked> all = [] {
        std::vector<Asked> list;
        for (const Site site : kSites) {
            for (const View view : askedViews(site)) {
                for (const Convention convention : conventionsOf(site))
                    list.push_back({view, convention});
            }
        }
        return list;
    }();
    return all;
}

Asked askedAt(benchmark::State& state)
{
    const Asked one = asked()[static_cast<std::size_t>(state.range(0))];
    state.SetLabel(std::string(wordOf(one.view)) + " " + std::string(wordOf(one.convention)));
    return one;
}

void everyAsked(benchmark::internal::Benchmark* bench)
{
    bench->DenseRange(0, static_cast<int>(asked().size()) - 1);
}

void everyView(benchmark::internal::Benchmark* bench)
{
    bench->DenseRange(0, static_cast<int>(kViews.size()) - 1);
}

void everyMarkableView(benchmark::internal::Benchmark* bench)
{
    for (std::size_t i = 0; i < kViews.size(); ++i) {
        if (plateOf(kViews[i]).markable)
            bench->Arg(static_cast<int>(i));
    }
}

View viewAt(benchmark::State& state)
{
    const View view = kViews[static_cast<std::size_t>(state.range(0))];
    state.SetLabel(std::string(wordOf(view)));
    return view;
}

// Marks about a site, as a class would set them: most near it, some far off.
std::vector<Point> marks(const Target& target)
{
    SeedStream stream(1);
    std::vector<Point> points;
    for (std::size_t i = 0; i < kMarks; ++i)
        points.push_back(target.ideal + pointIn(stream, {{-6.0, -9.0}, {6.0, 6.0}}));
    return points;
}

// What a grade asks of GEOS with everything prepared: is it in the region and how far from its
// border; which bone or strike covers it; how far off is every near structure.
class GeosGrader {
public:
    explicit GeosGrader(const Target& target) : m_region(target.regionSkin)
    {
        for (const Hazard& hazard : target.hazards)
            (hazard.kind == HazardKind::Near ? m_near : m_strikes).emplace_back(hazard.skin);
    }

    [[nodiscard]] double graded(const GEOSGeometry* point) const
    {
        double sum = distanceOf(m_region, point);
        for (const Prepared& strike : m_strikes)
            sum += covers(strike, point);
        for (const Prepared& near : m_near)
            sum += covers(near, point) ? 0.0 : distanceOf(near, point);
        return covers(m_region, point) ? -sum : sum;
    }

private:
    struct Prepared {
        explicit Prepared(const Polygon& polygon)
            : area(geosPolygon(polygon.corners())),
              border(GEOSBoundary_r(geos(), area.get())),
              preparedArea(GEOSPrepare_r(geos(), area.get())),
              preparedBorder(GEOSPrepare_r(geos(), border.get()))
        {
        }
        GeosGeometry area, border;
        GeosPrepared preparedArea, preparedBorder;
    };

    static bool covers(const Prepared& one, const GEOSGeometry* point)
    {
        return GEOSPreparedCovers_r(geos(), one.preparedArea.get(), point) == 1;
    }
    static double distanceOf(const Prepared& one, const GEOSGeometry* point)
    {
        double away = 0.0;
        GEOSPreparedDistance_r(geos(), one.preparedBorder.get(), point, &away);
        return away;
    }

    Prepared m_region;
    std::vector<Prepared> m_strikes;
    std::vector<Prepared> m_near;
};

double secondsSince(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace core_bench_detail

// Both in turn over the same 4096 marks; ratio below 1: ours is faster. Ours also lays the mark
// round the limb and finds the reason; GEOS gets its point ready made, already on the skin.
static void gradeAgainstGeos(benchmark::State& state)
{
    using namespace core_bench_detail;
    const Asked one = askedAt(state);
    const Target target =
        locate(atlas(), defaultPolicy(), sampledPatient(1, 0), one.convention, one.view).value();
    const GeosGrader grader(target);
    const std::vector<Point> viewer = marks(target);
    std::vector<GeosGeometry> skin;
    for (const Point mark : viewer) {
        const Point at = target.toSkin(mark);
        skin.push_back(geosPoint(at));
    }
    double ours = 0.0;
    double theirs = 0.0;
    for (auto _ : state) {
        auto start = std::chrono::steady_clock::now();
        for (const Point mark : viewer)
            benchmark::DoNotOptimize(gradeMark(target, defaultPolicy(), mark, MarkedLimb::Arm));
        const double a = secondsSince(start);
        start = std::chrono::steady_clock::now();
        for (const GeosGeometry& point : skin)
            benchmark::DoNotOptimize(grader.graded(point.get()));
        const double b = secondsSince(start);
        ours += a;
        theirs += b;
        state.SetIterationTime(a);
    }
    const double grades = static_cast<double>(state.iterations()) * kMarks;
    state.counters["grade_ns"] = 1e9 * ours / grades;
    state.counters["geos_ns"] = 1e9 * theirs / grades;
    state.counters["ratio"] = ours / theirs;
}
BENCHMARK(gradeAgainstGeos)
    ->Apply(core_bench_detail::everyAsked)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond);

static void patientToTarget(benchmark::State& state)
{
    const core_bench_detail::Asked one = core_bench_detail::askedAt(state);
    std::vector<Patient> patients;
    for (int number = 0; number < 1000; ++number)
        patients.push_back(sampledPatient(2, number));
    const Atlas plates = atlas();
    std::size_t next = 0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(
            locate(plates, defaultPolicy(), patients[next], one.convention, one.view).value());
        next = (next + 1) % patients.size();
    }
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(patientToTarget)->Apply(core_bench_detail::everyAsked)->Unit(benchmark::kMicrosecond);

static void patientToBodyMap(benchmark::State& state)
{
    const View view = core_bench_detail::viewAt(state);
    const Atlas plates = atlas();
    const Patient patient = sampledPatient(2, 0);
    for (auto _ : state)
        benchmark::DoNotOptimize(bodyMap(plates, view, patient).value());
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(patientToBodyMap)->Apply(core_bench_detail::everyView)->Unit(benchmark::kMicrosecond);

static void patientToInk(benchmark::State& state)
{
    const View view = core_bench_detail::viewAt(state);
    const Patient patient = sampledPatient(2, 0);
    const BodyMap map = bodyMap(atlas(), view, patient).value();
    for (auto _ : state)
        benchmark::DoNotOptimize(movedInk(plateOf(view), map, patient));
}
BENCHMARK(patientToInk)->Apply(core_bench_detail::everyView)->Unit(benchmark::kMillisecond);

// One press of a finger, on the body or off it, in every view that can be marked.
static void pressToFeel(benchmark::State& state)
{
    const View view = core_bench_detail::viewAt(state);
    const FeelMap map = FeelMap::make(atlas(), defaultPolicy(), sampledPatient(2, 0), view).value();
    SeedStream stream(3);
    std::vector<Point> presses;
    for (std::size_t i = 0; i < core_bench_detail::kMarks; ++i)
        presses.push_back(pointIn(stream, plateOf(view).paper));
    std::size_t next = 0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(map.at(presses[next], Cm{1.6}));
        next = (next + 1) % presses.size();
    }
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(pressToFeel)->Apply(core_bench_detail::everyMarkableView)->Unit(benchmark::kMicrosecond);

static void plateParsed(benchmark::State& state)
{
    const std::string file = std::string(wordOf(core_bench_detail::viewAt(state))) + ".svg";
    const std::string svg = sourceFile("resources/plates/" + file);
    for (auto _ : state)
        benchmark::DoNotOptimize(parsePlate(svg, file).value());
}
BENCHMARK(plateParsed)->Apply(core_bench_detail::everyView)->Unit(benchmark::kMillisecond);

}  // namespace fb::test
