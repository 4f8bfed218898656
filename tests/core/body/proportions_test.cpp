#include "core/body/proportions.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/support/core_atlas.h"

using namespace fb;
using nlohmann::json;
using test::adult;
using test::proportions;

namespace proportions_test {

TEST(ProportionsTest, EveryRowHasASourceAndASpread)
{
    for (std::size_t m = 0; m < kMeasureCount; ++m) {
        for (const Sex sex : kSexes) {
            EXPECT_FALSE(proportions().source(static_cast<Measure>(m), sex).empty());
            EXPECT_GT(proportions().residualSd(static_cast<Measure>(m), sex), 0.0);
        }
    }
    for (const Sex sex : kSexes) {
        EXPECT_FALSE(proportions().thighFat(sex).source.empty());
        EXPECT_FALSE(proportions().hipFat(sex).source.empty());
    }
}

TEST(ProportionsTest, ABrokenTableIsNamed)
{
    const json whole = json::parse(test::sourceFile("resources/proportions/adult.json"));
    for (std::size_t m = 0; m < kMeasureCount; ++m) {
        const std::string key(wordOf(static_cast<Measure>(m)));
        for (const char* part : {"intercept", "residual_sd", "source"}) {
            json broken = whole;
            broken["measures"][key]["male"].erase(part);
            const auto read = Proportions::parse(broken.dump());
            ASSERT_FALSE(read) << key << ' ' << part;
            EXPECT_EQ(read.error().problem, Problem::ProportionsBroken);
        }
    }
    for (const char* key : {"measures", "axilla_share_of_arm", "older_stature", "least_arm_fat_mm", "pelvis",
                            "thigh_fat", "hip_fat"}) {
        json broken = whole;
        broken.erase(key);
        EXPECT_FALSE(Proportions::parse(broken.dump())) << key;
    }
    EXPECT_FALSE(Proportions::parse(""));
    EXPECT_FALSE(Proportions::parse("[]"));
}

TEST(ProportionsTest, BrokenFatIsNamed)
{
    const json whole = json::parse(test::sourceFile("resources/proportions/adult.json"));
    const auto expectNamed = [](const json& broken, const std::string& where) {
        const auto read = Proportions::parse(broken.dump());
        ASSERT_FALSE(read) << where;
        EXPECT_EQ(read.error().problem, Problem::ProportionsBroken);
        EXPECT_EQ(read.error().where, where);
    };
    for (const char* group : {"thigh_fat", "hip_fat"}) {
        for (const Sex sex : kSexes) {
            const std::string word(wordOf(sex));
            for (const auto& [key, value] : whole[group][word].items()) {
                json broken = whole;
                broken[group][word][key] = nullptr;
                expectNamed(broken, std::string(group) + "." + word + "." + key);
            }
        }
    }
    for (const char* key : {"mm", "growth_per_bmi", "straight_from_mm"}) {
        json broken = whole;
        broken["hip_fat"]["female"][key] = 0.0;
        expectNamed(broken, std::string("hip_fat.female.") + key);
    }
}

TEST(ProportionsTest, ABreadthGoesOnWithoutAStepWhereTheCurveTakesOver)
{
    for (const Sex sex : kSexes) {
        const double below =
            proportions().mean(Measure::ChestDepth, adult(sex, 170, test::weightOf(37.999, 170)));
        const double above =
            proportions().mean(Measure::ChestDepth, adult(sex, 170, test::weightOf(38.001, 170)));
        EXPECT_NEAR(above, below, 0.01);
        EXPECT_GT(above, below);
    }
}

TEST(ProportionsTest, BonesDoNotFollowWeight)
{
    for (const Measure bone : {Measure::ArmLength, Measure::ForearmLength, Measure::HandBreadth,
                               Measure::AcromialHeight, Measure::WaistHeight, Measure::TrochanterHeight,
                               Measure::IliacCrestHeight, Measure::ThighLength, Measure::HandLength}) {
        EXPECT_EQ(proportions().mean(bone, adult(Sex::Female, 165, 49)),
                  proportions().mean(bone, adult(Sex::Female, 165, 122)));
    }
}

TEST(ProportionsTest, OlderPeopleKeepTheArmsOfTheirYouth)
{
    // NHANES 2009-10: arm length does not shrink with the spine.
    const auto arm = [](double age) {
        return proportions().mean(Measure::ArmLength, adult(Sex::Female, 160, 60, Side::Right, age));
    };
    EXPECT_EQ(arm(64), arm(30));
    EXPECT_GT(arm(66), arm(64));
}

TEST(ProportionsTest, IndividualDeviationsMoveTheirOwnMeasure)
{
    const auto body = [](Individual z) {
        return measured(proportions(), Patient::make(35, Sex::Male, Cm{175}, Kg{78}, Side::Right, z).value());
    };
    const BodyMeasures mean = body({});
    EXPECT_NEAR((body({1, 0, 0}).armLength - mean.armLength).value(),
                proportions().residualSd(Measure::ArmLength, Sex::Male), 1e-9);
    EXPECT_GT(body({0, 1, 0}).axillaDepth, mean.axillaDepth);
    EXPECT_GT(body({0, 0, 1}).midArmDepth, mean.midArmDepth);
    EXPECT_EQ(body({0, 1, 0}).armLength, mean.armLength);
    EXPECT_NEAR((body({0, 0, 0, 1, 0, 0}).crestAboveTrochanter - mean.crestAboveTrochanter).value(),
                proportions().residualSd(Measure::CrestAboveTrochanter, Sex::Male), 1e-9);
    EXPECT_NEAR((body({0, 0, 0, 0, 1, 0}).thighLength - mean.thighLength).value(),
                proportions().residualSd(Measure::ThighLength, Sex::Male), 1e-9);
    EXPECT_GT(body({0, 0, 0, 0, 0, 1}).thighDepth, mean.thighDepth);
    EXPECT_EQ(body({0, 0, 0, 0, 0, 1}).thighLength, mean.thighLength);
}

TEST(ProportionsTest, TheAxillaKeepsToItsShareOfTheArm)
{
    for (const Sex sex : kSexes) {
        for (const double index : {14.0, 25.0, 45.0, 69.0}) {
            const BodyMeasures body = measured(proportions(), adult(sex, 160, test::weightOf(index, 160)));
            const auto share = proportions().axillaShare(sex);
            const double own = body.axillaDepth / body.armLength;
            EXPECT_GE(own, share.mean - 3.0 * share.sd - 1e-12);
            EXPECT_LE(own, share.mean + 3.0 * share.sd + 1e-12);
        }
    }
}

TEST(ProportionsTest, FatNeverFallsBelowItsFloor)
{
    EXPECT_EQ(measured(proportions(), adult(Sex::Male, 180, test::weightOf(13.5, 180))).armFat,
              proportions().leastArmFat());
}

TEST(ProportionsTest, TheSpineLiesBetweenTrochanterAndCrest)
{
    for (const Sex sex : kSexes) {
        for (const double z : {-3.0, 0.0, 3.0}) {
            const Patient patient =
                Patient::make(40, sex, Cm{165}, Kg{65}, Side::Right, {0, 0, 0, z, 0, 0}).value();
            const BodyMeasures body = measured(proportions(), patient);
            EXPECT_GT(body.spineAboveTrochanter, body.hipCentreAboveTrochanter);
            EXPECT_NEAR(body.spineAboveTrochanter / body.crestAboveTrochanter, proportions().spineShare(sex),
                        1e-12);
        }
    }
}

TEST(ProportionsTest, TheLengthsOfTheThighAreTheDifferencesOfItsHeights)
{
    // Least squares of a difference are the difference of least squares: a slip of the pen shows here.
    for (const Sex sex : kSexes) {
        const Patient patient = adult(sex, 168, 66);
        const auto mean = [&](Measure m) { return proportions().mean(m, patient); };
        EXPECT_NEAR(mean(Measure::IliacCrestHeight) - mean(Measure::TrochanterHeight),
                    mean(Measure::CrestAboveTrochanter), 0.01);
        EXPECT_NEAR(mean(Measure::TrochanterHeight) - mean(Measure::LateralEpicondyleHeight),
                    mean(Measure::ThighLength), 0.01);
    }
}

TEST(ProportionsTest, AHandGoesWithSexAndStature)
{
    const HandMeasures woman = measuredHand(proportions(), Sex::Female, Cm{163}).value();
    const HandMeasures man = measuredHand(proportions(), Sex::Male, Cm{176}).value();
    EXPECT_GT(man.length, woman.length);
    EXPECT_GT(woman.length, woman.palm);
    EXPECT_GT(woman.palm, woman.breadth);
    EXPECT_EQ(measuredHand(proportions(), Sex::Female, Cm{90}).error().problem, Problem::StatureOutOfRange);
}

}  // namespace proportions_test
