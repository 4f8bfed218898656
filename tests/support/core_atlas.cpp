#include "tests/support/core_atlas.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

namespace fb::test {

namespace atlas_detail {

template <class T>
T required(Result<T> result, const char* what)
{
    if (!result) {
        std::fprintf(stderr, "%s: problem %d, %s, %s\n", what, static_cast<int>(result.error().problem),
                     result.error().where.c_str(), result.error().what.c_str());
        std::abort();
    }
    return std::move(*result);
}

}  // namespace atlas_detail

using atlas_detail::required;

std::string sourceFile(const std::string& path)
{
    std::ifstream file(std::filesystem::path(FINGERBREADTH_SOURCE_DIR) / path, std::ios::binary);
    if (!file) {
        std::fprintf(stderr, "cannot read %s\n", path.c_str());
        std::abort();
    }
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

const Plate& plateOf(View view)
{
    static std::array<std::optional<Plate>, kPlateCount> plates;
    auto& plate = plates[static_cast<std::size_t>(view)];
    if (!plate) {
        const std::string file = std::string(wordOf(view)) + ".svg";
        const std::string folder = view >= View::OpenHand ? "resources/hands/" : "resources/plates/";
        plate = required(parsePlate(sourceFile(folder + file), file), file.c_str());
    }
    return *plate;
}

const Proportions& proportions()
{
    static const Proportions table =
        required(Proportions::parse(sourceFile("resources/proportions/adult.json")), "proportions");
    return table;
}

const Policy& defaultPolicy()
{
    static const Policy policy =
        required(Policy::parse(sourceFile("resources/policy/default.json")), "policy");
    return policy;
}

Atlas atlas()
{
    Atlas all;
    for (const View view : kViews)
        all.plates[static_cast<std::size_t>(view)] = &plateOf(view);
    all.proportions = &proportions();
    return all;
}

Patient adult(Sex sex, double statureCm, double weightKg, Side side, double ageYears)
{
    return required(Patient::make(ageYears, sex, Cm{statureCm}, Kg{weightKg}, side), "patient");
}

double weightOf(double bodyMassIndex, double statureCm)
{
    return bodyMassIndex * statureCm * statureCm / 10000.0;
}

}  // namespace fb::test
