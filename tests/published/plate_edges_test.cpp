// The plate test: at its own reference body and at body-mass index 18, 30 and 45 the drawn skin
// lies within one residual spread of the regressions, level by level.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/published/outside_row.h"

namespace fb::test::plate_edges_test {

namespace plate_edges_detail {

constexpr const char* kAnsur = "ANSUR II 2012 public data (Gordon et al. 2014), one residual SD";
constexpr const char* kNhanesArm = "NHANES 2009-10, adults 20+, one residual SD";

struct LevelEdges {
    double along = 0.0;
    double skin = 0.0;  // back to front, cm
};

LevelEdges levelOf(const Patient& patient, std::string_view limbName, std::string_view levelName,
                   View view = View::ShoulderSide)
{
    const Plate& plate = atlas().plate(view);
    const int limb = plate.limbNamed(limbName);
    const BodyMap map = bodyMap(atlas(), view, patient).value();
    const auto& levels = plate.limbs[static_cast<std::size_t>(limb)].levels;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const LevelRow& row = map.limbMap(limb).patientLevels()[i];
        if (levels[i].name == levelName)
            return {row.along, row.edges[3] - row.edges[0]};
    }
    return {};
}

// The reference body and, of its sex, age and stature, the three indices.
std::vector<Patient> plateBodies()
{
    const ReferenceBody& r = sidePlate().reference;
    std::vector<Patient> bodies{adult(r.sex, r.stature.value(), r.weight.value(), Side::Right, r.ageYears)};
    for (const double index : {18.0, 30.0, 45.0})
        bodies.push_back(bodyOf(r.sex, r.stature.value(), index, r.ageYears));
    return bodies;
}

struct PlateRow {
    const char* limb;
    const char* level;
    Measure measure;
    double share;  // of the measure that is seen front to back
    const char* source;
};

constexpr double kRound = 1.0 / std::numbers::pi;  // a girth seen as a diameter

// The width of a superellipse of that breadth and depth, seen at 45 degrees.
double trunkAt45(const Patient& body, Measure breadth, Measure depth, double exponent)
{
    const double dual = exponent / (exponent - 1.0);
    const auto part = [&](Measure measure) {
        return std::pow(meanOf(measure, body) / std::numbers::sqrt2, dual);
    };
    return std::pow(part(breadth) + part(depth), 1.0 / dual);
}

}  // namespace plate_edges_detail

TEST(PlateEdges, SkinIsWithinOneResidualSpreadOfTheRegressions)
{
    using namespace plate_edges_detail;
    constexpr PlateRow kRows[]{
        {"arm", "mid-arm", Measure::MidArmGirth, kRound, kNhanesArm},
        {"arm", "radiale", Measure::ForearmGirthFlexed, kRound, kAnsur},
        {"forearm", "forearm", Measure::ForearmGirthFlexed, kRound, kAnsur},
        {"trunk", "chest", Measure::ChestDepth, 1.0, kAnsur},
        {"trunk", "waist", Measure::WaistDepth, 1.0, kAnsur},
    };
    for (const Patient& body : plateBodies()) {
        for (const PlateRow& row : kRows) {
            SCOPED_TRACE(std::string(row.limb) + " at " + row.level + ", index " +
                         std::to_string(body.bodyMassIndex()));
            expectOutside({"skin, back to front", levelOf(body, row.limb, row.level).skin,
                           row.share * meanOf(row.measure, body),
                           row.share * proportions().residualSd(row.measure, body.sex()), row.source});
        }
    }
}

TEST(PlateEdges, SkinSeenFromThreeQuarterFrontIsTheWidthTheRegressionsAllow)
{
    // Arms are round. No survey measures a trunk at 45 degrees: of breadth b and depth d it is
    // seen at least as wide as an ellipse and at most as wide as a rounded box (own estimate: a
    // superellipse of exponent 3), one residual SD either side.
    using namespace plate_edges_detail;
    constexpr View kView = View::ShoulderThreeQuarter;
    for (const Patient& body : plateBodies()) {
        SCOPED_TRACE("index " + std::to_string(body.bodyMassIndex()));
        expectAll({
            {"mid-arm", levelOf(body, "arm", "mid-arm", kView).skin,
             kRound * meanOf(Measure::MidArmGirth, body),
             kRound * proportions().residualSd(Measure::MidArmGirth, body.sex()), kNhanesArm},
            {"elbow", levelOf(body, "arm", "radiale", kView).skin,
             kRound * meanOf(Measure::ForearmGirthFlexed, body),
             kRound * proportions().residualSd(Measure::ForearmGirthFlexed, body.sex()), kAnsur},
        });
        const double chest = levelOf(body, "trunk", "chest", kView).skin;
        EXPECT_GE(chest, trunkAt45(body, Measure::ChestBreadth, Measure::ChestDepth, 2.0) - 1.29);
        EXPECT_LE(chest, trunkAt45(body, Measure::ChestBreadth, Measure::ChestDepth, 3.0) + 1.29);
        const double waist = levelOf(body, "trunk", "waist", kView).skin;
        EXPECT_GE(waist, trunkAt45(body, Measure::WaistBreadth, Measure::WaistDepth, 2.0) - 1.65);
        EXPECT_LE(waist, trunkAt45(body, Measure::WaistBreadth, Measure::WaistDepth, 3.0) + 1.65);
    }
}

TEST(PlateEdges, ArmAtTheAxillaIsAsThickAsTheGirthThereAllows)
{
    // No survey of the living gives the girth at the axilla; it lies between the relaxed mid-arm
    // and the flexed biceps and a tenth (own estimate from a body mesh in the public domain).
    using namespace plate_edges_detail;
    for (const Patient& body : plateBodies()) {
        const double skin = levelOf(body, "arm", "axilla").skin;
        EXPECT_GE(skin, kRound * meanOf(Measure::MidArmGirth, body)) << body.bodyMassIndex();
        EXPECT_LE(skin, kRound * (1.1 * meanOf(Measure::BicepsGirthFlexed, body) +
                                  proportions().residualSd(Measure::BicepsGirthFlexed, body.sex())))
            << body.bodyMassIndex();
    }
}

TEST(PlateEdges, LevelsOfTheArmLieWhereTheSurveyPutsThem)
{
    using namespace plate_edges_detail;
    for (const Patient& body : plateBodies()) {
        expectAll({
            {"axilla below acromion", levelOf(body, "arm", "axilla").along,
             meanOf(Measure::AcromionToAxilla, body),
             proportions().residualSd(Measure::AcromionToAxilla, body.sex()), kAnsur},
            {"radiale below acromion", levelOf(body, "arm", "radiale").along,
             meanOf(Measure::ArmLength, body), proportions().residualSd(Measure::ArmLength, body.sex()),
             kAnsur},
            {"wrist beyond the elbow", levelOf(body, "forearm", "wrist").along,
             meanOf(Measure::ForearmLength, body), 1.10,
             "ANSUR II 2012 public data, radiale-stylion, residual SD of the regression on stature"},
        });
    }
}

}  // namespace fb::test::plate_edges_test
