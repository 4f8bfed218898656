#include "core/session/request.h"

#include <charconv>
#include <cmath>
#include <iterator>
#include <string>
#include <vector>

#include "core/basics/seed_stream.h"
#include "core/session/population.h"

namespace fb {

namespace request_detail {

double correlated(double with, double correlation, SeedStream& stream)
{
    const double own = stream.normal(kIndividualCut);
    return correlation * with + std::sqrt(1.0 - correlation * correlation) * own;
}

// Deviations of hip and thigh, drawn last so that the rest of a request does not depend on them.
Individual withLowerBody(Individual own, SeedStream& stream)
{
    own.crestGap = stream.normal(kIndividualCut);
    own.thighLength = correlated(own.crestGap, kCrestThighCorrelation, stream);
    own.thighGirth = stream.normal(kIndividualCut);
    return own;
}

// Whole years, centimetres and kilograms, as a chart would give them.
Patient drawnPatient(SeedStream& stream)
{
    for (;;) {
        const Sex sex = stream.below(2) == 0 ? Sex::Female : Sex::Male;
        const Side side = stream.below(2) == 0 ? Side::Left : Side::Right;
        const int age = kYoungest + stream.below(kOldest - kYoungest + 1);
        const StatureSpread spread = statureSpread(sex);
        const double stature = std::round(spread.mean + spread.sd * stream.normal(2.5));
        const double index = kIndexMedian * std::exp(kIndexLogSd * stream.normal(2.5));
        const double arm = stream.normal(kIndividualCut);
        const double gap = correlated(arm, kArmAxillaCorrelation, stream);
        const double girth = stream.normal(kIndividualCut);
        const double weight = std::round(index * stature * stature / 10000.0);
        if (index < kIndexLow || index > kIndexHigh)
            continue;
        const Individual own = withLowerBody({arm, gap, girth}, stream);
        if (const auto patient = Patient::make(age, sex, Cm{stature}, Kg{weight}, side, own))
            return *patient;
    }
}

Site drawnSite(SeedStream& stream, const SiteSet& sites)
{
    std::vector<Site> chosen;
    std::ranges::copy_if(kSites, std::back_inserter(chosen), [&](Site s) { return sites.has(s); });
    if (chosen.empty())
        return Site::Deltoid;
    return chosen[static_cast<std::size_t>(stream.below(static_cast<int>(chosen.size())))];
}

// Findings are drawn until one of the wanted kind comes up: one that rules the site out, or one
// that only looks as if it did.
Finding drawnFinding(SeedStream& stream, Site site, Side side, bool ruling)
{
    constexpr std::array kParts{BodyPart::UpperArm, BodyPart::Thigh, BodyPart::Hip};
    for (;;) {
        Finding finding;
        finding.code = findingAt(stream.below(kFindingCodeCount));
        finding.side = kSides[static_cast<std::size_t>(stream.below(2))];
        const bool wholeSide = finding.code == FindingCode::Fistula ||
                               finding.code == FindingCode::Mastectomy ||
                               finding.code == FindingCode::Paralysis;
        // Half of the notes speak of the very part that is asked.
        const BodyPart any = kParts[static_cast<std::size_t>(stream.below(3))];
        finding.part = wholeSide ? BodyPart::WholeSide : stream.below(2) == 0 ? partOf(site) : any;
        if (rulesOut(finding, site, side) == ruling)
            return finding;
    }
}

std::optional<Finding> maybeFinding(SeedStream& stream, Site site, Side side)
{
    const int draw = stream.below(100);
    if (draw >= kFindingPercent)
        return std::nullopt;
    return drawnFinding(stream, site, side, draw < kRulingPercent);
}

}  // namespace request_detail

SiteSet SiteSet::only(Site site)
{
    SiteSet one{{false, false, false}};
    one.set(site, true);
    return one;
}

Request requestFrom(std::uint64_t seed, int requestNumber, const RequestMix& mix)
{
    // Each request has a stream of its own, so that it can be replayed alone.
    SeedStream mixer(seed);
    SeedStream stream(mixer.next() ^
                      (0xD1B54A32D192ED03ULL * (static_cast<std::uint64_t>(requestNumber) + 1)));
    const int tone = stream.below(kSkinToneCount);
    const Patient patient = request_detail::drawnPatient(stream);
    const Site site = request_detail::drawnSite(stream, mix.sites);
    const auto views = askedViews(site);
    const View view = views[static_cast<std::size_t>(stream.below(static_cast<int>(views.size())))];
    const auto finding =
        mix.findings ? request_detail::maybeFinding(stream, site, patient.side()) : std::nullopt;
    return Request{requestNumber, site, view, patient, tone, finding};
}

Result<std::uint64_t> seedFromText(std::string_view text)
{
    std::uint64_t seed = 0;
    const auto [rest, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
    if (text.empty() || error != std::errc{} || rest != text.data() + text.size() || seed > kLargestSeed)
        return fault(Problem::SeedNotANumber, {}, std::string(text), 0.0, static_cast<double>(kLargestSeed));
    return seed;
}

}  // namespace fb
