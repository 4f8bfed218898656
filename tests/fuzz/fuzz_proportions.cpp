// Any bytes as a table of proportions: a fault, or finite coefficients.
#include <cmath>

#include "core/body/proportions.h"
#include "tests/fuzz/source_file.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    const auto table = Proportions::parse({reinterpret_cast<const char*>(data), size});
    if (!table) {
        fuzz::demand(!table.error().where.empty());
        return 0;
    }
    for (std::size_t m = 0; m < kMeasureCount; ++m) {
        for (const Sex sex : kSexes)
            fuzz::demand(std::isfinite(table->residualSd(static_cast<Measure>(m), sex)) &&
                         !table->source(static_cast<Measure>(m), sex).empty());
    }
    (void)measured(*table, Patient::make(40.0, Sex::Male, Cm{172.0}, Kg{70.0}, Side::Right).value());
    return 0;
}
