// The plate test for hip and thigh: at the reference body and at body-mass index 18, 30 and 45 the
// drawn skin lies within one residual spread of the regressions, level by level.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/published/moved_plate.h"

namespace fb::test::lower_plate_edges_test {

namespace lower_edges_detail {

constexpr const char* kAnsur = "ANSUR II 2012 public data (Gordon et al. 2014), one residual SD";
constexpr const char* kBetween = "own estimate between two measured levels, one residual SD of the larger";
constexpr double kRound = 1.0 / std::numbers::pi;

std::vector<Patient> plateBodies(View view)
{
    const ReferenceBody& r = plateOf(view).reference;
    std::vector<Patient> bodies{referenceBodyOf(view)};
    for (const double index : {18.0, 30.0, 45.0})
        bodies.push_back(bodyOf(r.sex, r.stature.value(), index, r.ageYears));
    return bodies;
}

std::string about(View view, const Patient& body)
{
    return std::string(wordOf(view)) + ", index " + std::to_string(body.bodyMassIndex());
}

struct EdgeCheck {
    const char* limb;
    const char* level;
    Measure measure;
    const char* source;
};

// Trunk and hip seen from the side are their depths, from behind their breadths.
void expectWidths(View view, std::initializer_list<EdgeCheck> checks)
{
    for (const Patient& body : plateBodies(view)) {
        const MovedPlate plate(view, body);
        for (const EdgeCheck& check : checks) {
            SCOPED_TRACE(about(view, body));
            SCOPED_TRACE(std::string(check.limb) + " at " + check.level);
            expectOutside({"skin to skin", plate.width(check.limb, check.level), meanOf(check.measure, body),
                           proportions().residualSd(check.measure, body.sex()), check.source});
        }
    }
}

// A round limb's girth: half the sum of what is seen from the side and from the front, times pi.
double girth(const Patient& body, const char* limb, const char* level)
{
    const MovedPlate side(View::ThighSide, body);
    const MovedPlate front(View::ThighFront, body);
    return std::numbers::pi * (side.width(limb, level) + front.width(limb, level)) / 2.0;
}

double sd(Measure measure) { return proportions().residualSd(measure, Sex::Male); }

}  // namespace lower_edges_detail

TEST(LowerPlateEdges, HipFromTheSideIsAsDeepAsMeasured)
{
    using namespace lower_edges_detail;
    expectWidths(View::HipSide, {{"pelvis", "waist", Measure::WaistDepth, kAnsur},
                                 {"pelvis", "hip", Measure::ButtockDepth, kAnsur}});
}

TEST(LowerPlateEdges, HipFromTheSideIsBetweenWaistAndHipAtTheCrest)
{
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::HipSide)) {
        SCOPED_TRACE(about(View::HipSide, body));
        const MovedPlate plate(View::HipSide, body);
        const double waist = meanOf(Measure::WaistDepth, body);
        const double hip = meanOf(Measure::ButtockDepth, body);
        for (const char* level : {"crest", "asis"}) {
            SCOPED_TRACE(level);
            EXPECT_GE(plate.width("pelvis", level), std::min(waist, hip) - sd(Measure::WaistDepth))
                << kBetween;
            EXPECT_LE(plate.width("pelvis", level), std::max(waist, hip) + sd(Measure::WaistDepth))
                << kBetween;
        }
    }
}

TEST(LowerPlateEdges, HipFromBehindIsAsBroadAsMeasured)
{
    using namespace lower_edges_detail;
    expectWidths(View::HipBehind, {{"pelvis", "waist", Measure::WaistBreadth, kAnsur},
                                   {"pelvis", "hip", Measure::HipBreadth, kAnsur}});
}

TEST(LowerPlateEdges, HipFromBehindIsBetweenWaistAndHipAtTheCrest)
{
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::HipBehind)) {
        SCOPED_TRACE(about(View::HipBehind, body));
        const MovedPlate plate(View::HipBehind, body);
        const double waist = meanOf(Measure::WaistBreadth, body);
        const double hip = meanOf(Measure::HipBreadth, body);
        for (const char* level : {"crest", "psis"}) {
            SCOPED_TRACE(level);
            EXPECT_GE(plate.width("pelvis", level), std::min(waist, hip) - sd(Measure::WaistBreadth))
                << kBetween;
            EXPECT_LE(plate.width("pelvis", level), std::max(waist, hip) + sd(Measure::WaistBreadth))
                << kBetween;
        }
    }
}

TEST(LowerPlateEdges, ThighsFromBehindAreBelowTheHipAsBroadAsMeasured)
{
    // At the fold the two thighs together are as broad as the hip, and never broader than it and a
    // residual SD: no survey measures their breadth.
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::HipBehind)) {
        SCOPED_TRACE(about(View::HipBehind, body));
        expectOutside({"skin to skin at the fold", MovedPlate(View::HipBehind, body).width("pelvis", "fold"),
                       meanOf(Measure::HipBreadth, body), 1.5 * sd(Measure::HipBreadth), kBetween});
    }
}

TEST(LowerPlateEdges, ThighIsAsThickAsItsGirths)
{
    using namespace lower_edges_detail;
    struct Row {
        const char* limb;
        const char* level;
        Measure measure;
        const char* source;
    };
    for (const Patient& body : plateBodies(View::ThighSide)) {
        SCOPED_TRACE(about(View::ThighSide, body));
        for (const Row& row : std::initializer_list<Row>{
                 {"thigh", "thigh-upper", Measure::ThighGirth, kAnsur},
                 {"thigh", "lower-thigh", Measure::LowerThighGirth, kAnsur},
                 {"leg", "shank", Measure::CalfGirth, kAnsur},
             }) {
            SCOPED_TRACE(row.level);
            expectOutside({"girth", girth(body, row.limb, row.level), meanOf(row.measure, body),
                           sd(row.measure), row.source});
        }
    }
}

TEST(LowerPlateEdges, KneeIsAsThickAsBetweenLowerThighAndCalf)
{
    // No girth of the knee in the survey: between those just above the patella and of the calf.
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::ThighSide)) {
        SCOPED_TRACE(about(View::ThighSide, body));
        const double above = meanOf(Measure::LowerThighGirth, body);
        const double calf = meanOf(Measure::CalfGirth, body);
        for (const double knee : {girth(body, "thigh", "epicondyle"), girth(body, "leg", "knee")}) {
            EXPECT_GE(knee, std::min(above, calf) - sd(Measure::CalfGirth)) << kBetween;
            EXPECT_LE(knee, std::max(above, calf) + sd(Measure::CalfGirth)) << kBetween;
        }
    }
}

TEST(LowerPlateEdges, MidThighIsAsThickAsBetweenItsGirths)
{
    // No girth at mid-thigh in the survey: between that at the fold and that above the knee; the
    // contract of the plates says 16 cm across on the reference body.
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::ThighSide)) {
        SCOPED_TRACE(about(View::ThighSide, body));
        const double upper = meanOf(Measure::ThighGirth, body);
        const double lower = meanOf(Measure::LowerThighGirth, body);
        expectOutside({"girth at mid-thigh", girth(body, "thigh", "mid-thigh"), 0.67 * upper + 0.33 * lower,
                       sd(Measure::ThighGirth), kBetween});
    }
}

TEST(LowerPlateEdges, ThighOfASideLyingPatientIsAsThickAsItsGirths)
{
    // Seen from the side alone: a thigh that lies free is round.
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::HipSide)) {
        SCOPED_TRACE(about(View::HipSide, body));
        const MovedPlate plate(View::HipSide, body);
        expectAll({
            {"below the fold", plate.width("thigh", "thigh-upper"),
             kRound * meanOf(Measure::ThighGirth, body), kRound * sd(Measure::ThighGirth), kAnsur},
            {"above the knee", plate.width("thigh", "lower-thigh"),
             kRound * meanOf(Measure::LowerThighGirth, body), kRound * sd(Measure::LowerThighGirth), kAnsur},
            {"calf", plate.width("leg", "shank"), kRound * meanOf(Measure::CalfGirth, body),
             kRound * sd(Measure::CalfGirth), kAnsur},
        });
    }
}

TEST(LowerPlateEdges, HalfTheHipFromTheFrontReachesTheMiddle)
{
    using namespace lower_edges_detail;
    for (const Patient& body : plateBodies(View::ThighFront)) {
        SCOPED_TRACE(about(View::ThighFront, body));
        expectOutside({"outer skin to the middle at the hip",
                       MovedPlate(View::ThighFront, body).width("pelvis", "hip"),
                       meanOf(Measure::HipBreadth, body) / 2.0, sd(Measure::HipBreadth) / 2.0, kAnsur});
    }
}

TEST(LowerPlateEdges, LyingThighAndHipAreAsDeepAsMeasuredFromTheSide)
{
    using namespace lower_edges_detail;
    expectWidths(View::ThighSide,
                 {{"pelvis", "hip", Measure::ButtockDepth,
                   "ANSUR II 2012 public data (Gordon et al. 2014), one residual SD; lying "
                   "on a bed, which flattens the buttock: own estimate that it stays within"}});
}

TEST(LowerPlateEdges, LevelsLieWhereTheSurveyPutsThem)
{
    using namespace lower_edges_detail;
    for (const View view : {View::HipSide, View::ThighSide, View::ThighFront}) {
        for (const Patient& body : plateBodies(view)) {
            SCOPED_TRACE(about(view, body));
            const MovedPlate plate(view, body);
            const double centre = measured(proportions(), body).hipCentreAboveTrochanter.value();
            expectAll({
                {"trochanter to epicondyle",
                 plate.level("thigh", "epicondyle").along - plate.level("thigh", "trochanter").along,
                 meanOf(Measure::ThighLength, body), sd(Measure::ThighLength), kAnsur},
                {"crest above the trochanter", centre - plate.level("pelvis", "crest").along,
                 meanOf(Measure::CrestAboveTrochanter, body), sd(Measure::CrestAboveTrochanter), kAnsur},
                {"spine above the trochanter", centre - plate.level("pelvis", "asis").along, 9.13, 1.7,
                 "Snyder et al. 1977, 47 people of 17.5 to 20 years; spread of the spine's share"},
            });
        }
    }
}

TEST(LowerPlateEdges, BonesOfThePlateAreAsBroadAsMeasured)
{
    using namespace lower_edges_detail;
    const MovedPlate front(View::ThighFront);
    const EdgeRow knee = front.level("thigh", "epicondyle").edges;
    const auto crest = MovedPlate(View::HipBehind).line("iliac-crest");
    const double middle = MovedPlate(View::HipBehind).point("joint.pelvis").x;
    double widest = 0.0;
    for (const Point p : crest)
        widest = std::max(widest, p.x - middle);
    expectAll({
        {"epicondyles", knee[2] - knee[1], 8.2, 0.5, "contract of the plates; dry femurs (from memory)"},
        {"half the crests' breadth, skin", widest, 27.54 / 2.0, 0.88,
         "ANSUR II 2012 public data, bicristal breadth, men (SD), half"},
    });
}

}  // namespace fb::test::lower_plate_edges_test
