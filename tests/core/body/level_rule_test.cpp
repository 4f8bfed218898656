#include "core/body/level_rule.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;
using test::adult;

namespace level_rule_test {

namespace {

BodyMeasures body(Sex sex, double stature, double weight)
{
    return measured(test::proportions(), adult(sex, stature, weight));
}

const Limb& limb(const char* name)
{
    const Plate& plate = test::sidePlate();
    return plate.limbs[static_cast<std::size_t>(plate.limbNamed(name))];
}

std::size_t levelIndex(const Limb& of, const char* name)
{
    for (std::size_t i = 0; i < of.levels.size(); ++i) {
        if (of.levels[i].name == name)
            return i;
    }
    ADD_FAILURE() << name;
    return 0;
}

}  // namespace

TEST(LevelRuleTest, EqualMeasuresGiveTheDrawnRowsBack)
{
    const BodyMeasures same = body(Sex::Male, 172, 70);
    for (const View view : kViews) {
        const Plate& plate = test::plateOf(view);
        for (const Limb& drawn : plate.limbs) {
            const auto rows = patientLevels(drawn, plate.azimuth, same, same);
            for (std::size_t i = 0; i < rows.size(); ++i) {
                EXPECT_NEAR(rows[i].along, drawn.levels[i].along.value(), 1e-9) << drawn.levels[i].name;
                EXPECT_NEAR(rows[i].edges[3], drawn.levels[i].skinFront.value(), 1e-9)
                    << drawn.levels[i].name;
            }
        }
    }
}

TEST(LevelRuleTest, FatMovesSkinAndNeverBone)
{
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const BodyMeasures lean = body(Sex::Female, 165, 49);
    const BodyMeasures heavy = body(Sex::Female, 165, 122);
    for (const View view : kViews) {
        const Plate& plate = test::plateOf(view);
        for (const Limb& drawn : plate.limbs) {
            const auto thin = patientLevels(drawn, plate.azimuth, reference, lean);
            const auto thick = patientLevels(drawn, plate.azimuth, reference, heavy);
            for (std::size_t i = 0; i < thin.size(); ++i) {
                EXPECT_EQ(thin[i].edges[1], thick[i].edges[1]) << drawn.levels[i].name;
                EXPECT_EQ(thin[i].edges[2], thick[i].edges[2]) << drawn.levels[i].name;
                EXPECT_LE(thin[i].edges[3], thick[i].edges[3]) << drawn.levels[i].name;
            }
        }
    }
}

TEST(LevelRuleTest, MuscleLiesBetweenBoneAndSkinAndFatOverIt)
{
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    for (const double weight : {50.0, 70.0, 95.0, 140.0}) {
        const BodyMeasures patient = body(Sex::Female, 165, weight);
        const BodyMeasures muscle = muscleOf(reference, patient);
        for (const View view : kViews) {
            const Plate& plate = test::plateOf(view);
            for (const Limb& drawn : plate.limbs) {
                const auto skin = patientLevels(drawn, plate.azimuth, reference, patient);
                const auto flesh = patientLevels(drawn, plate.azimuth, reference, muscle);
                for (std::size_t i = 0; i < skin.size(); ++i) {
                    // Fat lies over the shoulder too.
                    EXPECT_GE(flesh[i].along, skin[i].along) << drawn.levels[i].name;
                    EXPECT_EQ(flesh[i].edges[1], skin[i].edges[1]) << drawn.levels[i].name;
                    EXPECT_GE(flesh[i].edges[0], skin[i].edges[0] - 1e-9) << drawn.levels[i].name;
                    EXPECT_LE(flesh[i].edges[3], skin[i].edges[3] + 1e-9) << drawn.levels[i].name;
                }
            }
        }
    }
    const BodyMeasures heavy = body(Sex::Male, 172, 140);
    EXPECT_GT(heavy.thighDepth - muscleOf(reference, heavy).thighDepth, Cm{2.0}) << "fat on a heavy thigh";
}

TEST(LevelRuleTest, TheArmsLevelsStandAtTheirLengths)
{
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const BodyMeasures tall = body(Sex::Male, 195, 130);
    const Limb& arm = limb("arm");
    const auto rows = patientLevels(arm, Degrees{90}, reference, tall);
    EXPECT_NEAR(rows[levelIndex(arm, "acromion")].along, 0.0, 1e-9);
    EXPECT_NEAR(rows[levelIndex(arm, "radiale")].along, tall.armLength.value(), 0.15);
    EXPECT_NEAR(rows[levelIndex(arm, "axilla")].along, tall.axillaDepth.value(), 0.15);
}

TEST(LevelRuleTest, TheHipsLevelsStandAtTheirHeights)
{
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const BodyMeasures woman = body(Sex::Female, 158, 95);
    const Plate& plate = test::plateOf(View::HipSide);
    const Limb& pelvis = plate.limbs[static_cast<std::size_t>(plate.limbNamed("pelvis"))];
    const auto rows = patientLevels(pelvis, plate.azimuth, reference, woman);
    const double joint = woman.hipCentreAboveTrochanter.value();
    EXPECT_NEAR(rows[levelIndex(pelvis, "asis")].along, joint - woman.spineAboveTrochanter.value(), 0.2);
    EXPECT_NEAR(rows[levelIndex(pelvis, "crest")].along, joint - woman.crestAboveTrochanter.value(), 0.2);
    EXPECT_NEAR(rows[levelIndex(pelvis, "hip")].along, 0.0, 1e-9);
    const Limb& thigh = plate.limbs[static_cast<std::size_t>(plate.limbNamed("thigh"))];
    const auto down = patientLevels(thigh, plate.azimuth, reference, woman);
    EXPECT_NEAR(down[levelIndex(thigh, "trochanter")].along, joint, 0.1);
    EXPECT_NEAR(down[levelIndex(thigh, "epicondyle")].along, joint + woman.thighLength.value(), 0.2);
}

TEST(LevelRuleTest, AnUnknownLevelFollowsItsLimb)
{
    Limb strange = limb("forearm");
    strange.levels[1].name = "unheard-of";
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const auto rows = patientLevels(strange, Degrees{90}, reference, body(Sex::Male, 195, 130));
    EXPECT_GT(rows[1].edges[3], strange.levels[1].skinFront.value());
}

}  // namespace level_rule_test
