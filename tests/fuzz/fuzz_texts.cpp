// Any bytes as a seed, an age, a list of numbers or a path: a fault, or a value of sense.
#include <cmath>

#include "core/body/patient.h"
#include "core/plate/path_reader.h"
#include "core/session/request.h"
#include "tests/fuzz/source_file.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (const auto seed = seedFromText(text))
        fuzz::demand(*seed <= kLargestSeed && std::to_string(*seed).size() <= size);
    if (const auto age = ageFromText(text)) {
        fuzz::demand(std::isfinite(*age));
        if (const auto patient = Patient::make(*age, Sex::Female, Cm{163.0}, Kg{71.0}, Side::Left))
            fuzz::demand(patient->ageYears() >= 18.0 && patient->ageYears() <= 110.0);
    }
    if (const auto rings = ringsFrom(text)) {
        for (const Ring& ring : *rings)
            fuzz::demand(ring.points.size() >= 4 && ring.points.size() % 3 == 1);
    }
    if (const auto numbers = numbersFrom(text, 4))
        fuzz::demand(numbers->size() == 4);
    return 0;
}
