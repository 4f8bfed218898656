// Laws of the deltoid's targets: safe by birth, and moving with the arm.
#include <gtest/gtest.h>

#include "core/site/deltoid.h"
#include "tests/property/sampling.h"

namespace fb::test::target_law_test {

namespace target_law_detail {

// What is wrong with the ideal point of a target, or nothing.
std::string faultOfIdeal(const Target& target)
{
    if (!target.regionSkin.contains(target.idealSkin) || !target.region.contains(target.ideal))
        return "the ideal is outside its region";
    if (target.regionSkin.signedDistance(target.idealSkin) > -0.05)
        return "the ideal is not clear of the region's border";
    for (const Hazard& hazard : target.hazards) {
        if (hazard.kind != HazardKind::Near &&
            (hazard.skin.contains(target.idealSkin) || hazard.plane.contains(target.ideal)))
            return "the ideal is in " + std::string(wordOf(hazard.code));
    }
    return {};
}

// What is wrong with the region of a target, or nothing: no part of it lies in a strike.
std::string faultOfRegion(const Target& target)
{
    const double top = target.regionSkin.bounds().high.y;
    const double bottom = target.regionSkin.bounds().low.y;
    for (const Hazard& hazard : target.hazards) {
        if (hazard.kind != HazardKind::Strike || hazard.code == HazardCode::RadialNerveBehind)
            continue;
        const Bounds strike = hazard.skin.bounds();
        if (strike.low.y < top - 1e-9 && strike.high.y > bottom + 1e-9)
            return "the region reaches into " + std::string(wordOf(hazard.code));
    }
    return {};
}

double depthOf(const Patient& patient, Convention convention)
{
    return -targetOf(patient, convention).ideal.y;
}

// The ideal is where the convention says, not pulled up to keep off the armpit.
bool isHeld(const Patient& patient, Convention convention)
{
    const Target target = targetOf(patient, convention);
    const double asked = deltoidBand(convention, defaultPolicy(), target.armLength.value()).ideal;
    return std::abs(-target.idealSkin.y - asked) > 1e-9;
}

constexpr std::array kScaled{Convention::DeltoidStrip, Convention::DeltoidCentroid,
                             Convention::DeltoidTwoInches, Convention::DeltoidHalfway};

}  // namespace target_law_detail

TEST(TargetLaw, IdealIsInItsRegionAndOutOfEveryStrikeForEveryConventionAndTenThousandPatients)
{
    using namespace target_law_detail;
    for (int number = 0; number < rounds(10'000); ++number) {
        for (const Convention convention : conventionsOf(Site::Deltoid)) {
            const Target target = targetOf(sampledPatient(37, number), convention);
            ASSERT_EQ(faultOfIdeal(target), "") << wordOf(convention) << ", seed 37, request " << number
                                                << ": " << shown(sampledPatient(37, number));
            ASSERT_EQ(faultOfRegion(target), "") << wordOf(convention) << ", seed 37, request " << number;
        }
    }
}

TEST(TargetLaw, IdealIsInItsRegionAndOutOfEveryStrikeAtTheCornersOfWhatIsAccepted)
{
    using namespace target_law_detail;
    for (const Patient& patient : cornerPatients()) {
        for (const Convention convention : conventionsOf(Site::Deltoid)) {
            ASSERT_EQ(faultOfIdeal(targetOf(patient, convention)), "")
                << wordOf(convention) << ": " << shown(patient);
            ASSERT_EQ(faultOfRegion(targetOf(patient, convention)), "")
                << wordOf(convention) << ": " << shown(patient);
        }
    }
}

TEST(TargetLaw, IdealIsInTheRegionUnderAnyPolicyTheReaderAccepts)
{
    using namespace target_law_detail;
    SeedStream stream(41);
    for (int round = 0; round < rounds(20'000); ++round) {
        Policy policy = defaultPolicy();
        for (const PolicyField& field : policyFields())
            policy = policy.with(field.key, stream.between(field.low, field.high));
        const Convention convention = conventionInTurn(Site::Deltoid, stream.below(5));
        const double arm = stream.between(22.0, 45.0);
        const double axilla = arm * stream.between(0.2, 0.44);
        const DeltoidBand band = heldBand(deltoidBand(convention, policy, arm), policy, arm, axilla);
        ASSERT_LT(band.top, band.bottom) << "seed 41, round " << round;
        ASSERT_GE(band.ideal, band.top) << "seed 41, round " << round;
        ASSERT_LE(band.ideal, band.bottom) << "seed 41, round " << round;
        ASSERT_GT(band.halfWidth, 0.0) << "seed 41, round " << round;
    }
}

// Where the armpit holds a point up, it is the armpit that moves it; elsewhere the arm does.
TEST(TargetLaw, LongerArmOfTheSameBodyMovesTheTargetDown)
{
    using namespace target_law_detail;
    for (const Convention convention : kScaled) {
        int compared = 0;
        for (int number = 0; number < rounds(100); ++number) {
            const Patient p = sampledPatient(43, number);
            double before = 0.0;
            for (double z = -3.0; z <= 3.0; z += 0.5) {
                const Patient longer =
                    madePatient(p.ageYears(), p.sex(), p.stature().value(), p.weight().value(), p.side(),
                                {z, p.individual().axillaGap, 0.0});
                if (isHeld(longer, convention))
                    continue;
                const double depth = depthOf(longer, convention);
                ASSERT_GT(depth, before) << wordOf(convention) << " at " << z << ": " << shown(p);
                compared += before > 0.0;
                before = depth;
            }
        }
        EXPECT_GT(compared, rounds(100)) << wordOf(convention);
    }
}

TEST(TargetLaw, TallerBodyMovesTheTargetDown)
{
    using namespace target_law_detail;
    for (const Convention convention : kScaled) {
        for (const Sex sex : kSexes) {
            for (const double index : {18.0, 26.0, 40.0}) {
                double before = 0.0;
                for (double stature = 140.0; stature <= 205.0; stature += 2.5) {
                    const double depth = depthOf(
                        madePatient(40.0, sex, stature, weightOf(index, stature), Side::Right), convention);
                    ASSERT_GT(depth, before)
                        << wordOf(convention) << " at " << stature << " cm, index " << index;
                    before = depth;
                }
            }
        }
    }
}

TEST(TargetLaw, FingersAreLaidAlikeOnEveryArm)
{
    using namespace target_law_detail;
    for (int number = 0; number < rounds(200); ++number) {
        const Patient patient = sampledPatient(47, number);
        if (!isHeld(patient, Convention::DeltoidFingers)) {
            ASSERT_NEAR(depthOf(patient, Convention::DeltoidFingers), 4.25, 1e-9) << shown(patient);
        }
    }
}

TEST(TargetLaw, SkinAndPictureGiveEachOtherBackWithinTheArm)
{
    using namespace target_law_detail;
    SeedStream stream(53);
    for (int number = 0; number < rounds(1'000); ++number) {
        const Target target = targetOf(sampledPatient(53, number), Convention::DeltoidStrip);
        for (int i = 0; i < 10; ++i) {
            const Point skin{stream.between(-5.0, 5.0), stream.between(-20.0, 0.0)};
            const double quarter = target.surface.arm()->quarterArc(skin.y, skin.x >= 0.0);
            if (std::abs(skin.x) < quarter - 0.01) {
                ASSERT_LE(distance(target.toSkin(target.toViewer(skin)), skin), 1e-6)
                    << skin.x << "," << skin.y << ", seed 53, request " << number;
            }
        }
    }
}

}  // namespace fb::test::target_law_test
