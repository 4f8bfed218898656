// Laws of the targets of hip and thigh: safe by birth for every convention, patient and hand.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/grade/grade.h"
#include "core/site/vastus.h"
#include "tests/property/sampling.h"

namespace fb::test::lower_target_law_test {

namespace lower_law_detail {

std::vector<Shown> askedShown()
{
    std::vector<Shown> asked;
    for (const Shown one : everyShown()) {
        if (siteOf(one.convention) != Site::Deltoid && plateOf(one.view).markable)
            asked.push_back(one);
    }
    return asked;
}

// What the reader of a policy asks of hip and thigh: numbers in their order.
bool inOrder(const Policy& policy)
{
    using enum PolicyKey;
    constexpr std::array<std::pair<PolicyKey, PolicyKey>, 9> kRising{{{ThighEnds, VastusTop},
                                                                      {VastusTop, VastusIdeal},
                                                                      {VastusIdeal, VastusBottom},
                                                                      {VastusFront, VastusIdealRound},
                                                                      {VastusIdealRound, VastusBack},
                                                                      {VastusBack, SciaticRound},
                                                                      {HandHeel, HandFork},
                                                                      {HandFork, HandPalm},
                                                                      {HandPalm, HandIndex}}};
    return std::ranges::all_of(
        kRising, [&](const auto& pair) { return policy.value(pair.first) < policy.value(pair.second); });
}

// Least distance an ideal point keeps from its region's border, cm.
constexpr double kClear = 0.05;

// What is wrong with the ideal point of a target, or nothing.
std::string faultOfIdeal(const Target& target)
{
    if (!target.regionSkin.contains(target.idealSkin) || !target.region.contains(target.ideal))
        return "the ideal is outside its region";
    if (target.regionSkin.signedDistance(target.idealSkin) > -kClear)
        return "the ideal is not clear of the region's border";
    for (const Hazard& hazard : target.hazards) {
        if (hazard.kind != HazardKind::Near && hazard.skin.contains(target.idealSkin))
            return "the ideal is in " + std::string(wordOf(hazard.code));
    }
    return {};
}

// In the picture too.
std::string faultOfPicture(const Target& target)
{
    for (const Hazard& hazard : target.hazards) {
        if (hazard.kind != HazardKind::Near && hazard.plane.contains(target.ideal))
            return "the ideal is painted in " + std::string(wordOf(hazard.code));
    }
    return {};
}

std::string faultOf(const Target& target)
{
    const std::string ideal = faultOfIdeal(target);
    return ideal.empty() ? faultOfPicture(target) : ideal;
}

// Skin of the hip: s to the front, y to the head; the trochanter at the origin.
std::string faultOfHipRegion(const Target& target)
{
    const double margin = defaultPolicy().value(PolicyKey::VgTrochanterMargin) * target.scale;
    for (const Point corner : target.regionSkin.corners()) {
        // A chord of the disc dips under its circle by a thousandth of the radius.
        if (length(corner) < margin * 0.999 - 1e-9)
            return "the region reaches into the trochanter's margin";
        for (const Hazard& hazard : target.hazards) {
            const bool never = hazard.kind == HazardKind::Bone || hazard.code == HazardCode::AboveCrest;
            if (never && hazard.skin.signedDistance(corner) < -1e-9)
                return "the region reaches into " + std::string(wordOf(hazard.code));
        }
    }
    return {};
}

std::string faultOfThighRegion(const Target& target)
{
    for (const Point corner : target.regionSkin.corners()) {
        for (const Hazard& hazard : target.hazards) {
            if (hazard.kind != HazardKind::Near && hazard.skin.signedDistance(corner) < -1e-9)
                return "the region reaches into " + std::string(wordOf(hazard.code));
        }
    }
    return {};
}

std::string faultOfRegion(const Target& target)
{
    return target.site == Site::Ventrogluteal ? faultOfHipRegion(target) : faultOfThighRegion(target);
}

}  // namespace lower_law_detail

TEST(LowerTargetLaw, IdealIsInItsRegionAndOutOfEveryStrikeForEveryConventionAndTenThousandPatients)
{
    using namespace lower_law_detail;
    for (int number = 0; number < rounds(10'000); ++number) {
        const Patient patient = sampledPatient(181, number);
        for (const Shown one : askedShown()) {
            const Target target = targetIn(patient, one);
            ASSERT_EQ(faultOf(target), "")
                << shown(one) << ", seed 181, request " << number << ": " << shown(patient);
            ASSERT_EQ(faultOfRegion(target), "")
                << shown(one) << ", seed 181, request " << number << ": " << shown(patient);
        }
    }
}

TEST(LowerTargetLaw, IdealIsInItsRegionAndOutOfEveryStrikeAtTheCornersOfWhatIsAccepted)
{
    using namespace lower_law_detail;
    for (const Patient& patient : cornerPatients()) {
        for (const Shown one : askedShown()) {
            const Target target = targetIn(patient, one);
            ASSERT_EQ(faultOf(target), "") << shown(one) << ": " << shown(patient);
            ASSERT_EQ(faultOfRegion(target), "") << shown(one) << ": " << shown(patient);
        }
    }
}

TEST(LowerTargetLaw, IdealIsSafeForHandsOfAnySizeThatIsAccepted)
{
    using namespace lower_law_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(182, number);
        for (double hand = 13.0; hand <= 24.0; hand += 1.0) {
            const Policy policy = defaultPolicy().with(PolicyKey::HandLength, hand);
            for (const Shown one : {Shown{Convention::VentroglutealHand, View::HipSide},
                                    Shown{Convention::VastusHandbreadths, View::ThighSide}}) {
                const Target target = targetIn(patient, one, policy);
                ASSERT_EQ(faultOf(target), "") << shown(one) << ", hand " << hand << ", seed 182, request "
                                               << number << ": " << shown(patient);
                ASSERT_EQ(faultOfRegion(target), "")
                    << shown(one) << ", hand " << hand << ", seed 182, request " << number;
            }
        }
    }
}

TEST(LowerTargetLaw, IdealIsSafeUnderAnyPolicyTheReaderAccepts)
{
    using namespace lower_law_detail;
    SeedStream stream(183);
    int tried = 0;
    for (int number = 0; number < rounds(5'000); ++number) {
        Policy policy = defaultPolicy();
        for (const PolicyField& field : policyFields())
            policy = policy.with(field.key, stream.between(field.low, field.high));
        if (!inOrder(policy))
            continue;
        ++tried;
        const Patient patient = sampledPatient(183, number);
        const auto asked = askedShown();
        const Shown one = asked[static_cast<std::size_t>(number) % asked.size()];
        const Target target = targetIn(patient, one, policy);
        ASSERT_TRUE(target.regionSkin.contains(target.idealSkin))
            << shown(one) << ", seed 183, round " << number << ": " << shown(patient);
        // Near the outline the painted region's chords may run half a millimetre inside the ideal.
        ASSERT_LE(target.region.signedDistance(target.ideal), 0.05)
            << shown(one) << ", seed 183, round " << number << ": " << shown(patient);
    }
    EXPECT_GT(tried, rounds(300));
}

TEST(LowerTargetLaw, IdealIsOnTargetWhenItIsMarked)
{
    using namespace lower_law_detail;
    for (int number = 0; number < rounds(2'000); ++number) {
        const Patient patient = sampledPatient(184, number);
        for (const Shown one : askedShown()) {
            const Target target = targetIn(patient, one);
            const MarkedLimb limb =
                target.site == Site::Ventrogluteal ? MarkedLimb::Pelvis : MarkedLimb::Thigh;
            const Grade grade = gradeMark(target, defaultPolicy(), target.ideal, limb);
            ASSERT_EQ(wordOf(grade.verdict), "on_target")
                << shown(one) << ", seed 184, request " << number << ": " << shown(patient);
            ASSERT_NEAR(grade.distanceToIdeal.value(), 0.0, 1e-6) << shown(one);
        }
    }
}

TEST(LowerTargetLaw, IdealLiesOnTheLimbItIsAskedOn)
{
    using namespace lower_law_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(185, number);
        for (const Shown one : askedShown()) {
            const Target target = targetIn(patient, one);
            const BodyMap map = bodyMap(atlas(), one.view, patient).value();
            const auto limb = markedLimb(plateOf(one.view), map, patient.side(), target.ideal);
            ASSERT_TRUE(limb.has_value()) << shown(one) << ", seed 185, request " << number;
            const MarkedLimb asked =
                target.site == Site::Ventrogluteal ? MarkedLimb::Pelvis : MarkedLimb::Thigh;
            ASSERT_EQ(*limb, asked) << shown(one) << ", seed 185, request " << number << ": "
                                    << shown(patient);
        }
    }
}

TEST(LowerTargetLaw, HipFromBehindShowsTheSideViewsTarget)
{
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(188, number);
        const Convention convention = conventionInTurn(Site::Ventrogluteal, number);
        const Target side = targetIn(patient, {convention, View::HipSide});
        const Target behind = targetIn(patient, {convention, View::HipBehind});
        ASSERT_EQ(behind.regionSkin, side.regionSkin) << "seed 188, request " << number;
        ASSERT_EQ(behind.idealSkin, side.idealSkin) << "seed 188, request " << number;
        ASSERT_EQ(behind.heights, side.heights) << "seed 188, request " << number;
        ASSERT_TRUE(behind.region.contains(behind.ideal)) << "seed 188, request " << number;
        // Heads are to the left in one and up in the other.
        const double left = patient.side() == Side::Left ? -1.0 : 1.0;
        ASSERT_NEAR(behind.ideal.y, -side.ideal.x * left, 1e-9) << "seed 188, request " << number;
    }
}

TEST(LowerTargetLaw, LongerThighMovesTheTargetDown)
{
    for (const Convention convention : conventionsOf(Site::VastusLateralis)) {
        for (int number = 0; number < rounds(100); ++number) {
            const Patient p = sampledPatient(186, number);
            double before = 0.0;
            for (double z = -3.0; z <= 3.0; z += 0.5) {
                const Patient longer =
                    madePatient(p.ageYears(), p.sex(), p.stature().value(), p.weight().value(), Side::Right,
                                {0.0, 0.0, 0.0, 0.0, z, p.individual().thighGirth});
                const double depth = targetOf(longer, convention).ideal.x;
                ASSERT_GT(depth, before) << wordOf(convention) << " at " << z << ": " << shown(p);
                before = depth;
            }
        }
    }
}

TEST(LowerTargetLaw, HigherCrestMovesTheSpineUpByItsShare)
{
    for (const Convention convention : conventionsOf(Site::Ventrogluteal)) {
        for (int number = 0; number < rounds(100); ++number) {
            const Patient p = sampledPatient(187, number);
            const double step = proportions().spineShare(p.sex()) *
                                proportions().residualSd(Measure::CrestAboveTrochanter, p.sex());
            const auto spineAt = [&](double z) {
                const Patient own =
                    madePatient(p.ageYears(), p.sex(), p.stature().value(), p.weight().value(), Side::Right,
                                {0.0, 0.0, 0.0, z, 0.0, 0.0});
                return -targetOf(own, convention).landmarks.at("asis").x;
            };
            // Drawn to a tenth of a millimetre beside its level.
            for (double z = -3.0; z < 3.0; z += 1.0)
                ASSERT_NEAR(spineAt(z + 1.0) - spineAt(z), step, 0.02)
                    << wordOf(convention) << " at " << z << ": " << shown(p);
        }
    }
}

}  // namespace fb::test::lower_target_law_test
