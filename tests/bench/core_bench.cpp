// Core: one grade against GEOS over the same polygons in the same run, and patient to target.
#include <benchmark/benchmark.h>

#include <chrono>

#include "core/body/moved_ink.h"
#include "core/grade/grade.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test {

namespace core_bench_detail {

constexpr std::size_t kMarks = 4096;

// Marks about the shoulder, as a class would set them: most near the site, some far off.
std::vector<Point> marks()
{
    SeedStream stream(1);
    std::vector<Point> points;
    for (std::size_t i = 0; i < kMarks; ++i)
        points.push_back(pointIn(stream, {{-6.0, -14.0}, {6.0, 2.0}}));
    return points;
}

Target someTarget() { return targetOf(sampledPatient(1, 0), Convention::DeltoidStrip); }

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
    const Target target = someTarget();
    const GeosGrader grader(target);
    const std::vector<Point> viewer = marks();
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
BENCHMARK(gradeAgainstGeos)->UseManualTime()->Unit(benchmark::kMillisecond);

static void patientToTarget(benchmark::State& state)
{
    const auto convention = kConventions[static_cast<std::size_t>(state.range(0))];
    std::vector<Patient> patients;
    for (int number = 0; number < 1000; ++number)
        patients.push_back(sampledPatient(2, number));
    const Atlas atlas = sideAtlas();
    std::size_t next = 0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(
            locate(atlas, defaultPolicy(), patients[next], convention, View::ShoulderSide).value());
        next = (next + 1) % patients.size();
    }
    state.SetLabel(std::string(wordOf(convention)));
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(patientToTarget)->DenseRange(0, 4)->Unit(benchmark::kMicrosecond);

static void patientToBodyMap(benchmark::State& state)
{
    const Atlas atlas = sideAtlas();
    const Patient patient = sampledPatient(2, 0);
    for (auto _ : state)
        benchmark::DoNotOptimize(bodyMap(atlas, View::ShoulderSide, patient).value());
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(patientToBodyMap)->Unit(benchmark::kMicrosecond);

static void patientToInk(benchmark::State& state)
{
    const Atlas atlas = sideAtlas();
    const Patient patient = sampledPatient(2, 0);
    const BodyMap map = bodyMap(atlas, View::ShoulderSide, patient).value();
    for (auto _ : state)
        benchmark::DoNotOptimize(movedInk(sidePlate(), map, patient));
}
BENCHMARK(patientToInk)->Unit(benchmark::kMillisecond);

static void plateParsed(benchmark::State& state)
{
    const std::string svg = sourceFile("resources/plates/shoulder-side.svg");
    for (auto _ : state)
        benchmark::DoNotOptimize(parsePlate(svg, "shoulder-side.svg").value());
}
BENCHMARK(plateParsed)->Unit(benchmark::kMillisecond);

}  // namespace fb::test
