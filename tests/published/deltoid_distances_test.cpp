// Where textbooks and anatomists put things on an arm of 30.4 cm (the mean arm of Cetik 2006,
// 24 arms), in centimetres below the acromion.
#include <algorithm>
#include <stdexcept>

#include "core/grade/grade.h"
#include "core/plate/ring.h"
#include "core/site/deltoid.h"
#include "tests/published/outside_row.h"

namespace fb::test::deltoid_distances_test {

namespace deltoid_distances_detail {

constexpr const char* kOpenStax = "OpenStax, Pharmacology for Nurses";
constexpr const char* kCdc = "CDC, vaccine administration page 40140";
constexpr const char* kLife = "Life 16(5):724";
constexpr const char* kCetik = "Cetik 2006, J Bone Joint Surg Am 88:2395";
constexpr const char* kPatra = "Patra 2018, Anat Cell Biol 51:93";
constexpr const char* kKim = "Kim 2022, BioMed Res Int 1784572";
constexpr const char* kBehrens = "Behrens and Patel 2021, Lancet 397:471";

constexpr double kArm = 30.4;

DeltoidBand bandAt(Convention convention, double arm = kArm)
{
    return deltoidBand(convention, defaultPolicy(), arm);
}

// A living body whose arm has the length asked for; the axilla at its mean.
Patient withArm(double arm, Sex sex = Sex::Female)
{
    const double at150 = meanOf(Measure::ArmLength, bodyOf(sex, 150.0, 25.0));
    const double at180 = meanOf(Measure::ArmLength, bodyOf(sex, 180.0, 25.0));
    return bodyOf(sex, 150.0 + 30.0 * (arm - at150) / (at180 - at150), 25.0);
}

Target targetAt(const Patient& patient, Convention convention)
{
    return locate(atlas(), defaultPolicy(), patient, convention, View::ShoulderSide).value();
}

Target target304(Convention convention = Convention::DeltoidStrip)
{
    return targetAt(withArm(kArm), convention);
}

Bounds bandOf(const Target& target, HazardCode code)
{
    const auto it = std::ranges::find(target.hazards, code, &Hazard::code);
    if (it == target.hazards.end())
        throw std::out_of_range(std::string(wordOf(code)));
    return it->skin.bounds();
}

Grade gradeAt(const Target& target, double forward, double below)
{
    return gradeMark(target, defaultPolicy(), target.toViewer({forward, -below}), MarkedLimb::Arm);
}

double lengthOfMuscle(const Target& target)
{
    return distance(target.landmarks.at("acromion"), target.landmarks.at("deltoid_tuberosity"));
}

}  // namespace deltoid_distances_detail

TEST(DeltoidDistances, ConventionsStandWhereTheirTextsPutThem)
{
    using namespace deltoid_distances_detail;
    using enum Convention;
    expectAll({
        {"the arm itself", target304().armLength.value(), kArm, 0.005, kCetik},
        {"strip, upper edge", bandAt(DeltoidStrip).top, 3.0, 0.05, kLife},
        {"strip, lower edge", bandAt(DeltoidStrip).bottom, 5.08, 0.05, kCdc},
        {"strip, two and a half fingers", bandAt(DeltoidStrip).ideal, 4.25, 0.05,
         "two to three fingers of 1.7 cm; common practice, no source"},
        {"strip, half width: a base of 4.7 cm that narrows to the apex", bandAt(DeltoidStrip).halfWidth, 1.5,
         0.05, kKim},
        {"centroid: about 1.5 inches", bandAt(DeltoidCentroid).ideal, 3.81, 0.05, kOpenStax},
        {"about two inches", bandAt(DeltoidTwoInches).ideal, 5.08, 0.05, kCdc},
        {"two fingers", bandAt(DeltoidFingers).top, 3.4, 0.01, kOpenStax},
        {"three fingers", bandAt(DeltoidFingers).bottom, 5.1, 0.01, kOpenStax},
        {"halfway down a muscle of 16.1 cm", bandAt(DeltoidHalfway).ideal, 8.05, 0.01, kBehrens},
        {"strip on an arm of 24 cm, upper edge", bandAt(DeltoidStrip, 24.0).top, 2.40, 0.02, kLife},
        {"strip on an arm of 24 cm, lower edge", bandAt(DeltoidStrip, 24.0).bottom, 4.01, 0.02, kCdc},
    });
}

TEST(DeltoidDistances, CentroidOfATriangleIsAThirdOfItsHeight)
{
    // Geometry: base on the acromion, apex at 11.43 cm, the depth that 1.5 inches imply.
    const Polygon triangle = Polygon::make({{-2.35, 0.0}, {2.35, 0.0}, {0.0, -11.43}}).value();
    EXPECT_NEAR(-triangle.centroid().y, deltoid_distances_detail::bandAt(Convention::DeltoidCentroid).ideal,
                0.01);
}

TEST(DeltoidDistances, MarksAreGradedAsTheTextsWouldHaveIt)
{
    using namespace deltoid_distances_detail;
    struct Row {
        double forward, below;
        Verdict verdict;
        Direction direction;
        const char* source;
    };
    const Target target = target304();
    for (const Row& row : std::initializer_list<Row>{
             {0.0, 2.5, Verdict::Unsafe, Direction::High, "above 3 cm: Life 16(5):724; CDC page 50050"},
             {0.0, 4.25, Verdict::OnTarget, Direction::None, kLife},
             {0.0, 5.6, Verdict::OffTarget, Direction::Low, "below two inches: CDC page 40140"},
             {-1.0, 4.25, Verdict::OnTarget, Direction::None, "within half the origin's width: Kim 2022"},
             {-2.0, 4.25, Verdict::Acceptable, Direction::Back, "half a centimetre outside: lab's choice"},
             {-2.1, 4.25, Verdict::OffTarget, Direction::Back, "behind the strip: Kim 2022"},
             {2.1, 4.25, Verdict::OffTarget, Direction::Forward, "in front of the strip: Kim 2022"},
             {0.0, 9.9, Verdict::Unsafe, Direction::Low, "below the armpit: CDC page 40140"},
         }) {
        const Grade grade = gradeAt(target, row.forward, row.below);
        EXPECT_EQ(wordOf(grade.verdict), wordOf(row.verdict))
            << row.forward << ", " << row.below << ": " << row.source;
        EXPECT_EQ(wordOf(grade.reason.direction), wordOf(row.direction)) << row.forward << ", " << row.below;
    }
}

TEST(DeltoidDistances, ArmpitCutsTheStrip)
{
    // CDC page 40140: above the armpit. At 4.6 cm (an arm that is not found in life) 4.8 is too low.
    using namespace deltoid_distances_detail;
    const DeltoidBand held = heldBand(bandAt(Convention::DeltoidStrip), defaultPolicy(), kArm, 4.6);
    EXPECT_NEAR(held.bottom, 4.6, 1e-12);
    EXPECT_LT(held.ideal, 4.6);
}

TEST(DeltoidDistances, FingersAreAsWideAsMeasured)
{
    const double width = defaultPolicy().value(PolicyKey::DeltoidFingerWidth);
    expectAll({
        {"middle finger, 17.5 to 20 years", width, 1.58, 0.15, "Snyder et al. 1977, UM-HSRI-77-17 (SD)"},
        {"bedside fingerbreadth 1.5 to 2.0", width, 1.75, 0.25, "common practice, no source (from memory)"},
        {"three fingers are two inches", 3.0 * width, 5.08, 0.05, deltoid_distances_detail::kCdc},
    });
}

TEST(DeltoidDistances, AxillaryNerveLiesWhereTheIndexPutsIt)
{
    using namespace deltoid_distances_detail;
    using enum HazardCode;
    const Target cetik = target304();
    const Target patra = targetAt(withArm(29.3), Convention::DeltoidStrip);
    const Target living = targetAt(withArm(32.91, Sex::Male), Convention::DeltoidStrip);
    const double middle =
        (bandOf(living, AxillaryNerveFront).low.y + bandOf(living, AxillaryNerveFront).high.y) / 2.0;
    expectAll({
        {"front, arm 30.4", -bandOf(cetik, AxillaryNerveFront).low.y, 6.08, 0.05, kCetik},
        {"back, arm 30.4", -bandOf(cetik, AxillaryNerveBack).low.y, 4.87, 0.05, kCetik},
        {"front, arm 29.3", -bandOf(patra, AxillaryNerveFront).high.y, 5.22, 0.10, kPatra},
        {"back, arm 29.3", -bandOf(patra, AxillaryNerveBack).high.y, 4.17, 0.10, kPatra},
        {"front and side, living, arm 32.91", -middle, 6.0, 0.36, "Yildirim 2022, J Orthop Surg Res 17:248"},
        {"front, 45 cadavers, 0.194 of the humerus", -bandOf(cetik, AxillaryNerveFront).low.y / kArm, 0.194,
         0.024, "cadaveric study of the anterior branch, 6.5 (SD 0.8) of 33.5 cm"},
        {"front, 2.2 cm above the muscle's middle", -bandOf(cetik, AxillaryNerveFront).low.y,
         lengthOfMuscle(cetik) / 2.0 - 2.2, 0.5, "Anat Rec, doi 10.1002/ar.1092320217, 132 sides"},
        {"below the bursa's edge, at least 1.5",
         bandOf(cetik, BursaEdge).low.y - bandOf(cetik, AxillaryNerveFront).low.y, 2.0, 0.5,
         "Shoulder and Elbow 2009, doi 10.1111/j.1758-5740.2009.00005.x, six cadavers"},
    });
}

TEST(DeltoidDistances, BranchesOfTheNerveAreMostlyInTheBandThatIsShown)
{
    // 51 percent of the branches met the muscle 4 to 6 cm below its origin's middle.
    using namespace deltoid_distances_detail;
    const Target target = target304();
    EXPECT_GE(-bandOf(target, HazardCode::AxillaryNerveBack).high.y, 4.0) << kKim;
    EXPECT_LE(-bandOf(target, HazardCode::AxillaryNerveFront).low.y, 6.1) << kKim;
}

TEST(DeltoidDistances, BursaIsNotedAboveFourCentimetres)
{
    using namespace deltoid_distances_detail;
    const Target target = target304();
    const Grade above = gradeAt(target, 0.0, 3.9);
    const Grade below = gradeAt(target, 0.0, 4.1);
    ASSERT_EQ(above.reason.note, HazardCode::BursaEdge);
    EXPECT_EQ(above.reason.clearance.value(), 0.0) << kBehrens;
    EXPECT_GT(below.reason.clearance.value(), 0.0) << kBehrens;
    expectOutside({"lower edge of the bursa", -bandOf(target, HazardCode::BursaEdge).low.y, 4.0, 0.05,
                   "average below mid-acromion: Radiopaedia, subacromial-subdeltoid bursa"});
}

TEST(DeltoidDistances, RadialNerveIsWarnedOfFromTheLeastDistanceEverFound)
{
    using namespace deltoid_distances_detail;
    const char* source =
        "surgical anatomy of the radial nerve around the humerus: mean 12.4, least 9.7 cm, 24 arms";
    // An arm of 30.4 cm whose armpit lies deep, so that the back of the arm shows above it.
    const Patient deep = bodyOf(Sex::Female, withArm(kArm).stature().value(), 42.0);
    const Target target = targetAt(deep, Convention::DeltoidStrip);
    ASSERT_GT(target.axillaDepth.value(), 10.0);
    EXPECT_EQ(gradeAt(target, -2.0, 9.6).hazard, std::nullopt) << source;
    EXPECT_EQ(gradeAt(target, -2.0, 9.7).hazard, HazardCode::RadialNerveBehind) << source;
    EXPECT_EQ(gradeAt(target, -2.0, 9.7).verdict, Verdict::Unsafe) << source;
    EXPECT_EQ(gradeAt(target, -2.5, 12.4).verdict, Verdict::Unsafe) << source;
    EXPECT_EQ(gradeAt(target, -2.5, 12.4).reason.tissue, Tissue::RadialNerve) << source;
}

TEST(DeltoidDistances, BonesAndMuscleOfThePlateAreAsLongAsMeasured)
{
    using namespace deltoid_distances_detail;
    const auto& points = sidePlate().points;
    const double acromion = distance(points.find("landmark.acromion.front")->second.at,
                                     points.find("landmark.acromion.back")->second.at);
    const Target target = target304();
    expectAll({
        {"acromion, front to back", acromion, 4.4, 0.5, "215 dry scapulae, Nigeria: 44 (SD 5) mm"},
        {"acromion, front to back", acromion, 4.6, 0.5,
         "Mansur 2012, PMID 23132472, 68 dry scapulae, Nepal: 46 (SD 5) mm"},
        {"origin of the deltoid's middle part", acromion, 4.7, 0.7, kKim},
        {"deltoid, acromion to tuberosity", lengthOfMuscle(target), 16.1, 1.0, kKim},
        {"halfway point as the text and as the bone have it", target304(Convention::DeltoidHalfway).ideal.y,
         -lengthOfMuscle(target) / 2.0, 0.5, kBehrens},
    });
}

}  // namespace fb::test::deltoid_distances_test
