// From checked names to a patient and a choice: see arguments.h.
#include <charconv>
#include <cmath>

#include "app/cli/arguments.h"
#include "core/hand/hand_pose.h"

namespace fb {

namespace query_detail {

std::optional<double> numberFrom(std::string_view text)
{
    double number = 0.0;
    const char* end = text.data() + text.size();
    const auto [rest, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && rest == end && std::isfinite(number) ? std::optional(number)
                                                                        : std::nullopt;
}

// Splits at commas; an empty text is one empty part.
std::vector<std::string_view> partsOf(std::string_view text)
{
    std::vector<std::string_view> parts;
    for (std::size_t from = 0;;) {
        const std::size_t comma = text.find(',', from);
        parts.push_back(text.substr(from, comma - from));
        if (comma == std::string_view::npos)
            return parts;
        from = comma + 1;
    }
}

Result<std::string_view> given(const Arguments& arguments, Option option)
{
    const std::string& text = arguments.value(option);
    if (text.empty())
        return fault(Problem::ArgumentMissing, std::string("--").append(wordOf(option)));
    return text;
}

// The enumerator a required option names.
template <class Enum>
Result<Enum> chosen(const Arguments& arguments, Option option, Problem unknown,
                    std::optional<Enum> (*from)(std::string_view))
{
    return given(arguments, option).and_then([&](std::string_view text) -> Result<Enum> {
        const auto value = from(text);
        return value ? Result<Enum>(*value) : fault(unknown, {}, std::string(text));
    });
}

Result<double> number(const Arguments& arguments, Option option, Problem notANumber)
{
    return given(arguments, option).and_then([&](std::string_view text) -> Result<double> {
        const auto value = numberFrom(text);
        return value ? Result<double>(*value) : fault(notANumber, {}, std::string(text));
    });
}

Result<Individual> individualFrom(const std::string& text)
{
    constexpr double kMost = 3.0;
    if (text.empty())
        return Individual{};
    // The arm's three alone, or those of hip and thigh after them.
    std::array<double, 6> z{};
    const auto parts = partsOf(text);
    bool good = parts.size() == 3 || parts.size() == z.size();
    for (std::size_t i = 0; good && i < parts.size(); ++i) {
        const auto value = numberFrom(parts[i]);
        good = value && std::abs(*value) <= kMost;
        z[i] = value.value_or(0.0);
    }
    if (!good)
        return fault(Problem::ArgumentBadValue, "--individual", text, -kMost, kMost);
    return Individual{z[0], z[1], z[2], z[3], z[4], z[5]};
}

Result<Patient> patientFrom(const Arguments& arguments)
{
    const auto side = chosen(arguments, Option::Side, Problem::SideUnknown, &sideFrom);
    if (!side)
        return tl::unexpected(side.error());
    const auto age = given(arguments, Option::Age).and_then(ageFromText);
    if (!age)
        return tl::unexpected(age.error());
    const auto sex = chosen(arguments, Option::Sex, Problem::SexUnknown, &sexFrom);
    if (!sex)
        return tl::unexpected(sex.error());
    const auto stature = number(arguments, Option::Stature, Problem::StatureNotANumber);
    if (!stature)
        return tl::unexpected(stature.error());
    const auto weight = number(arguments, Option::Weight, Problem::WeightNotANumber);
    if (!weight)
        return tl::unexpected(weight.error());
    const auto individual = individualFrom(arguments.value(Option::Individual));
    if (!individual)
        return tl::unexpected(individual.error());
    return Patient::make(*age, *sex, Cm{*stature}, Kg{*weight}, *side, *individual);
}

}  // namespace query_detail

using namespace query_detail;

Result<Query> queryOf(const Arguments& arguments, const Policy& policy)
{
    const auto site = chosen(arguments, Option::Site, Problem::SiteUnknown, &siteFrom);
    if (!site)
        return tl::unexpected(site.error());
    const auto patient = patientFrom(arguments);
    if (!patient)
        return tl::unexpected(patient.error());
    Query query{*site, askedViews(*site).front(), policy.convention(*site), *patient};
    if (const std::string& text = arguments.value(Option::Convention); !text.empty()) {
        const auto convention = conventionFrom(text);
        if (!convention)
            return fault(Problem::ConventionUnknown, {}, text);
        if (siteOf(*convention) != *site)
            return fault(Problem::ConventionOfAnotherSite, std::string(wordOf(*site)), text);
        query.convention = *convention;
    }
    if (const std::string& text = arguments.value(Option::View); !text.empty()) {
        const auto view = viewFrom(text);
        if (!view)
            return fault(Problem::ViewUnknown, {}, text);
        if (siteOf(*view) != *site)
            return fault(Problem::ViewOfAnotherSite, std::string(wordOf(*site)), text);
        query.view = *view;
    }
    if (const std::string& text = arguments.value(Option::Hand); !text.empty()) {
        const auto length = numberFrom(text);
        if (!length)
            return fault(Problem::ArgumentBadValue, "--hand", text);
        const auto hand = checkedHandLength(Cm{*length});
        if (!hand)
            return tl::unexpected(hand.error());
        query.hand = *hand;
    }
    return query;
}

Policy policyOf(const Query& query, const Policy& policy)
{
    return query.hand ? policy.with(PolicyKey::HandLength, query.hand->value()) : policy;
}

Result<Point> markOf(const Arguments& arguments)
{
    return given(arguments, Option::At).and_then([](std::string_view text) -> Result<Point> {
        const auto parts = partsOf(text);
        const auto x = numberFrom(parts.front());
        const auto y = numberFrom(parts.back());
        if (parts.size() != 2 || !x || !y)
            return fault(Problem::MarkNotAPoint, {}, std::string(text));
        return Point{*x, *y};
    });
}

Result<std::vector<Layer>> layersFrom(std::string_view text)
{
    if (text.empty())
        return std::vector<Layer>(kLayers.begin(), kLayers.end());
    std::vector<Layer> layers;
    for (const std::string_view word : partsOf(text)) {
        const auto layer = layerFrom(word);
        if (!layer)
            return fault(Problem::LayerUnknown, {}, std::string(word));
        layers.push_back(*layer);
    }
    return layers;
}

}  // namespace fb
