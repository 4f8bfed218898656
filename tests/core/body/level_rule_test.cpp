#include "core/body/level_rule.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;
using test::adult;

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
    for (const char* name : {"arm", "forearm", "trunk"}) {
        const auto rows = patientLevels(limb(name), Degrees{90}, same, same);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            EXPECT_NEAR(rows[i].along, limb(name).levels[i].along.value(), 1e-9);
            EXPECT_NEAR(rows[i].edges[3], limb(name).levels[i].skinFront.value(), 1e-9);
        }
    }
}

TEST(LevelRuleTest, FatMovesSkinAndNeverBone)
{
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const BodyMeasures lean = body(Sex::Female, 165, 49);
    const BodyMeasures heavy = body(Sex::Female, 165, 122);
    for (const char* name : {"arm", "forearm", "trunk"}) {
        const auto thin = patientLevels(limb(name), Degrees{90}, reference, lean);
        const auto thick = patientLevels(limb(name), Degrees{90}, reference, heavy);
        for (std::size_t i = 0; i < thin.size(); ++i) {
            EXPECT_EQ(thin[i].edges[1], thick[i].edges[1]) << limb(name).levels[i].name;
            EXPECT_EQ(thin[i].edges[2], thick[i].edges[2]) << limb(name).levels[i].name;
            EXPECT_LE(thin[i].edges[3], thick[i].edges[3]) << limb(name).levels[i].name;
        }
    }
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

TEST(LevelRuleTest, AnUnknownLevelFollowsItsLimb)
{
    Limb strange = limb("forearm");
    strange.levels[1].name = "unheard-of";
    const BodyMeasures reference = body(Sex::Male, 172, 70);
    const auto rows = patientLevels(strange, Degrees{90}, reference, body(Sex::Male, 195, 130));
    EXPECT_GT(rows[1].edges[3], strange.levels[1].skinFront.value());
}
