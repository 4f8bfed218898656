// Request lines in the process, by site: see request_lines.sh for the same through the program.
#include <benchmark/benchmark.h>

#include <sstream>

#include "app/cli/commands.h"
#include "app/doors/library.h"
#include "core/session/request.h"

namespace fb {

// `locate --json -`, in the process: from request lines to answer lines.
static void requestLines(benchmark::State& state)
{
    const std::shared_ptr<const Library> shipped = Library::load().value();
    constexpr int kLines = 1000;
    const Site site = kSites[static_cast<std::size_t>(state.range(0))];
    state.SetLabel(std::string(wordOf(site)));
    std::ostringstream lines;
    for (int number = 0; number < kLines; ++number) {
        const Patient patient = requestFrom(1, number).patient;
        lines << R"({"site": ")" << wordOf(site) << R"(", "side": ")" << wordOf(patient.side())
              << R"(", "age": ")" << patient.ageYears() << R"(y", "sex": ")" << wordOf(patient.sex())
              << R"(", "stature": )" << patient.stature().value() << R"(, "weight": )"
              << patient.weight().value() << "}\n";
    }
    Arguments common;
    common.command = Command::Locate;
    common.json = true;
    common.lines = true;
    for (auto _ : state) {
        std::istringstream in(lines.str());
        std::ostringstream out;
        const LineCount count = answerLines(common, *shipped, in, out).value();
        if (count.answered != kLines)
            state.SkipWithError("a line was not answered");
        benchmark::DoNotOptimize(out.str().size());
    }
    state.SetItemsProcessed(state.iterations() * kLines);
}
BENCHMARK(requestLines)->DenseRange(0, static_cast<int>(kSites.size()) - 1)->Unit(benchmark::kMillisecond);

}  // namespace fb
