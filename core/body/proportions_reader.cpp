// Reading resources/proportions: see proportions.h for the contract.
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/body/proportions.h"

namespace fb {

using nlohmann::json;

class ProportionsReader {
public:
    [[nodiscard]] static Result<Proportions> read(std::string_view text)
    {
        const json document = json::parse(text, nullptr, false);
        if (!document.is_object())
            return fault(Problem::ProportionsBroken, "the file");
        ProportionsReader reader(document);
        for (std::size_t m = 0; m < kMeasureCount && reader.m_broken.empty(); ++m)
            reader.readMeasure(static_cast<Measure>(m));
        reader.readShares();
        reader.readFat();
        if (!reader.m_broken.empty())
            return fault(Problem::ProportionsBroken, reader.m_broken);
        return std::move(reader.m_proportions);
    }

private:
    explicit ProportionsReader(const json& document) : m_document(document) {}

    [[nodiscard]] json member(const json& from, const std::string& key, const std::string& path)
    {
        if (from.is_object() && from.contains(key))
            return from[key];
        m_broken = path + key;
        return {};
    }
    [[nodiscard]] double number(const json& from, const std::string& key, const std::string& path)
    {
        const json value = member(from, key, path);
        if (value.is_number() && std::isfinite(value.get<double>()))
            return value.get<double>();
        m_broken = path + key;
        return 0.0;
    }
    [[nodiscard]] double aboveZero(const json& from, const std::string& key, const std::string& path)
    {
        const double value = number(from, key, path);
        if (value <= 0.0)
            m_broken = path + key;
        return value;
    }
    [[nodiscard]] static double numberOr0(const json& from, const char* key)
    {
        return from.is_object() && from.contains(key) && from[key].is_number() ? from[key].get<double>()
                                                                               : 0.0;
    }
    [[nodiscard]] std::string source(const json& from, const std::string& path)
    {
        const json value = member(from, "source", path);
        if (value.is_string() && !value.get<std::string>().empty())
            return value.get<std::string>();
        m_broken = path + "source";
        return {};
    }

    void readMeasure(Measure measure)
    {
        const std::string key(wordOf(measure));
        const json both = member(member(m_document, "measures", ""), key, "measures.");
        for (const Sex sex : kSexes) {
            const std::string path = "measures." + key + "." + std::string(wordOf(sex)) + ".";
            const json entry = member(both, std::string(wordOf(sex)), "measures." + key + ".");
            Proportions::Row& row = m_proportions.m_rows[static_cast<std::size_t>(measure)][sex == Sex::Male];
            row.intercept = number(entry, "intercept", path);
            row.residualSd = number(entry, "residual_sd", path);
            row.stature = numberOr0(entry, "stature");
            row.bmi = numberOr0(entry, "bmi");
            row.sqrtBmi = numberOr0(entry, "sqrt_bmi");
            row.age = numberOr0(entry, "age");
            row.highFrom = numberOr0(entry, "high_from_bmi");
            row.highSqrtBmi = numberOr0(entry, "high_sqrt_bmi");
            row.source = source(entry, path);
        }
    }

    void readShares()
    {
        const json shares = member(m_document, "axilla_share_of_arm", "");
        const json older = member(m_document, "older_stature", "");
        m_proportions.m_olderFrom = number(older, "from_age", "older_stature.");
        for (const Sex sex : kSexes) {
            const std::string word(wordOf(sex));
            const json share = member(shares, word, "axilla_share_of_arm.");
            m_proportions.m_axillaShare[sex == Sex::Male] = {number(share, "mean", "axilla_share_of_arm."),
                                                             number(share, "sd", "axilla_share_of_arm.")};
            m_proportions.m_olderStature[sex == Sex::Male] = number(older, word, "older_stature.");
        }
        const json pelvis = member(m_document, "pelvis", "");
        const json share = member(pelvis, "spine_share_of_crest_gap", "pelvis.");
        for (const Sex sex : kSexes)
            m_proportions.m_spineShare[sex == Sex::Male ? 1 : 0] =
                number(share, std::string(wordOf(sex)), "pelvis.spine_share_of_crest_gap.");
        m_proportions.m_hipCentreShare =
            number(member(pelvis, "hip_centre_above_trochanter_share", "pelvis."), "value",
                   "pelvis.hip_centre_above_trochanter_share.");
        const json fat = member(m_document, "least_arm_fat_mm", "");
        m_proportions.m_leastArmFat = Mm{number(fat, "value", "least_arm_fat_mm.")};
    }

    void readFat()
    {
        const json thigh = member(m_document, "thigh_fat", "");
        const json hip = member(m_document, "hip_fat", "");
        const double least = number(thigh, "least_mm", "thigh_fat.");
        for (const Sex sex : kSexes) {
            const std::size_t index = sex == Sex::Male ? 1 : 0;
            const std::string word(wordOf(sex));
            std::string path = "thigh_fat." + word + ".";
            json row = member(thigh, word, "thigh_fat.");
            m_proportions.m_thighFat[index] = {number(row, "mm", path), number(row, "at_bmi", path),
                                               number(row, "mm_per_bmi", path), least, source(row, path)};
            path = "hip_fat." + word + ".";
            row = member(hip, word, "hip_fat.");
            m_proportions.m_hipFat[index] = {aboveZero(row, "mm", path),
                                             number(row, "at_bmi", path),
                                             aboveZero(row, "growth_per_bmi", path),
                                             aboveZero(row, "straight_from_mm", path),
                                             number(row, "mm_per_bmi", path),
                                             source(row, path)};
        }
    }

    const json& m_document;
    std::string m_broken;
    Proportions m_proportions;
};

Result<Proportions> Proportions::parse(std::string_view text) { return ProportionsReader::read(text); }

}  // namespace fb
