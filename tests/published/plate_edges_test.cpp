// The plate test: at its own reference body and at body-mass index 18, 30 and 45 the drawn skin
// lies within one residual spread of the regressions, level by level.
#include <numbers>

#include "tests/published/outside_row.h"

namespace fb::test {

namespace plate_edges_detail {

constexpr const char* kAnsur = "ANSUR II 2012 public data (Gordon et al. 2014), one residual SD";
constexpr const char* kNhanesArm = "NHANES 2009-10, adults 20+, one residual SD";

struct LevelEdges {
    double along = 0.0;
    double skin = 0.0;  // back to front, cm
};

LevelEdges levelOf(const Patient& patient, std::string_view limbName, std::string_view levelName)
{
    const Plate& plate = sidePlate();
    const int limb = plate.limbNamed(limbName);
    const Atlas side{&plate, &plate, &proportions()};
    const BodyMap map = bodyMap(side, View::ShoulderSide, patient).value();
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
            SCOPED_TRACE(std::string(row.limb) + " at " + row.level + ", index " + std::to_string(body.bodyMassIndex()));
            expectOutside({"skin, back to front", levelOf(body, row.limb, row.level).skin,
                           row.share * meanOf(row.measure, body),
                           row.share * proportions().residualSd(row.measure, body.sex()), row.source});
        }
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
            {"axilla below acromion", levelOf(body, "arm", "axilla").along, meanOf(Measure::AcromionToAxilla, body),
             proportions().residualSd(Measure::AcromionToAxilla, body.sex()), kAnsur},
            {"radiale below acromion", levelOf(body, "arm", "radiale").along, meanOf(Measure::ArmLength, body),
             proportions().residualSd(Measure::ArmLength, body.sex()), kAnsur},
            {"wrist beyond the elbow", levelOf(body, "forearm", "wrist").along, meanOf(Measure::ForearmLength, body),
             1.10, "ANSUR II 2012 public data, radiale-stylion, residual SD of the regression on stature"},
        });
    }
}

}  // namespace fb::test
