// Hands that feel, lay and build, against surveys and texts. Hand length, palm and breadth of the
// survey's mean people stand in lower_body_surveys_test.cpp; here is what building by hand makes of them.
#include <algorithm>

#include "core/build/arm_build.h"
#include "core/build/build.h"
#include "core/build/thigh_build.h"
#include "core/grade/build_grade.h"
#include "core/hand/free_hand.h"
#include "core/site/ventrogluteal.h"
#include "tests/property/sampling.h"
#include "tests/published/outside_row.h"

namespace fb::test::by_hand_hands_test {

namespace by_hand_hands_detail {

constexpr const char* kAnsur = "ANSUR II 2012 public data (Gordon et al. 2014)";
constexpr const char* kSnyder = "Snyder 1977 (UM-HSRI-77-17), middle finger, 47 people of 17.5 to 20 years";
constexpr const char* kOpenStax = "OpenStax Pharmacology for Nurses, ventrogluteal steps";
constexpr const char* kNoSource = "common practice, no source";

HandMeasures handOf(Sex sex, double stature) { return measuredHand(proportions(), sex, Cm{stature}).value(); }

LaidFingers fingersOf(int count) { return {count, Side::Left, {0.0, 0.0}, Degrees{0.0}}; }

double laidDepth(int count, double width) { return -lowerEdge(fingersOf(count), Cm{width}).y; }

Point siteBy(const Target& target, const Policy& policy = defaultPolicy())
{
    const Builder builder = Builder::from(policy);
    return *fb::siteBy(flawlessBuild(target, builder), target, builder);
}

// A line across laid so far down the flawless thigh: the site that makes of it, as a share of the thigh.
BuildStepGrade thirdsWithUpperLineAt(const Target& target, double share)
{
    const Builder builder = Builder::from(defaultPolicy());
    Build build = flawlessBuild(target, builder);
    build.point(Handle::UpperLine) =
        lerp(*build.point(Handle::ThighTop), *build.point(Handle::ThighBottom), share);
    const auto steps = gradeBuild(build, target, builder, defaultPolicy());
    return *std::ranges::find(steps, BuildStep::Thirds, &BuildStepGrade::step);
}

}  // namespace by_hand_hands_detail

// Held to one standard deviation of the survey's people, at statures away from the mean, by the same
// survey's slope: a hand is 0.111 of the stature of a woman and 0.110 of a man's.
TEST(ByHandHands, HandsOfShortAndTallPeopleKeepTheirShareOfStature)
{
    using namespace by_hand_hands_detail;
    for (const double off : {-12.0, 12.0}) {
        const HandMeasures f = handOf(Sex::Female, 162.85 + off);
        const HandMeasures m = handOf(Sex::Male, 175.62 + off);
        expectAll({
            {"hand length, women", f.length.value(), 0.1112 * (162.85 + off), 1.01, kAnsur},
            {"hand length, men", m.length.value(), 0.1101 * (175.62 + off), 0.99, kAnsur},
            {"hand breadth, women", f.breadth.value(), 0.0480 * (162.85 + off), 0.38, kAnsur},
            {"hand breadth, men", m.breadth.value(), 0.0503 * (175.62 + off), 0.44, kAnsur},
            {"palm, women", f.palm.value(), 0.0667 * (162.85 + off), 0.7, kAnsur},
            {"palm, men", m.palm.value(), 0.0663 * (175.62 + off), 0.7, kAnsur},
        });
    }
}

TEST(ByHandHands, AFingerbreadthIsAQuarterOfTheHandsBreadthOrAFinger)
{
    using namespace by_hand_hands_detail;
    const double women = handOf(Sex::Female, 162.85).breadth.value() / 4.0;
    const double men = handOf(Sex::Male, 175.62).breadth.value() / 4.0;
    expectAll({
        {"a quarter of a woman's hand", women, 1.95, 0.02, kAnsur},
        {"a quarter of a man's hand", men, 2.21, 0.02, kAnsur},
        // One standard deviation is 0.15; the lab's width is laid between a finger and a quarter of the hand.
        {"the lab's finger", defaultPolicy().value(PolicyKey::DeltoidFingerWidth), 1.58, 0.15, kSnyder},
    });
    for (const double width : {1.5, 1.58, 1.7, women, men, 2.25})
        EXPECT_TRUE(checkedFingerWidth(Cm{width}).has_value())
            << width << ": published fingers run from 1.5 to 2.25 cm (a review of deltoid sites)";
    for (const double width : {0.0, 1.0, 3.0})
        EXPECT_FALSE(checkedFingerWidth(Cm{width}).has_value()) << width;
}

TEST(ByHandHands, TwoAndThreeFingersMeasureWhatTextsSay)
{
    using namespace by_hand_hands_detail;
    expectAll({
        {"two fingers of 1.58", laidDepth(2, 1.58), 3.3, 0.3, "two fingers held together: 3.0 to 3.6 cm"},
        {"two of the lab's", laidDepth(2, 1.7), 3.3, 0.3, "two fingers held together: 3.0 to 3.6 cm"},
        {"three fingers of 1.58", laidDepth(3, 1.58), 5.1, 0.4, "three fingers held together: 4.7 to 5.5 cm"},
        {"three of the lab's", laidDepth(3, 1.7), 5.1, 0.4, "three fingers held together: 4.7 to 5.5 cm"},
        {"three of the lab's", laidDepth(3, 1.7), 5.08, 0.05, "2 inches: CDC page 40140"},
    });
}

// Three broad fingers end below the band of a short arm; two or three narrow ones lie within it.
TEST(ByHandHands, HowManyFingersFitDependsOnTheFinger)
{
    using namespace by_hand_hands_detail;
    const Target arm = targetOf(adult(Sex::Male, 172.0, 75.0), Convention::DeltoidStrip);
    const auto fits = [&](double width, int count) {
        const Policy policy = defaultPolicy().with(PolicyKey::DeltoidFingerWidth, width);
        return countFits(arm, Builder::from(policy), count);
    };
    EXPECT_TRUE(fits(1.7, 2)) << "two to three fingerbreadths: OpenStax Pharmacology for Nurses, glossary";
    EXPECT_TRUE(fits(1.7, 3)) << "two to three fingerbreadths: OpenStax Pharmacology for Nurses, glossary";
    EXPECT_TRUE(fits(2.25, 2)) << "3 to 5 cm";
    EXPECT_FALSE(fits(2.25, 3)) << "6.75 cm is below the band";
}

TEST(ByHandHands, LeftHandForTheRightHipAndRightHandForTheLeft)
{
    using namespace by_hand_hands_detail;
    const Builder builder = Builder::from(defaultPolicy());
    for (const Side hip : kSides) {
        const Target target = targetOf(adult(Sex::Female, 163.0, 71.0, hip), Convention::VentroglutealHand);
        const Side taught = hip == Side::Right ? Side::Left : Side::Right;
        for (const Side hand : kSides) {
            Build build = flawlessBuild(target, builder);
            ASSERT_EQ(build.hand->hand, taught) << kOpenStax;
            build.hand->hand = hand;
            const auto steps = gradeBuild(build, target, builder, defaultPolicy());
            EXPECT_EQ(steps.front().slip, hand == taught ? Slip::None : Slip::WrongHand) << kOpenStax;
        }
    }
}

TEST(ByHandHands, BothVentroglutealConstructionsOnTheSameHip)
{
    using namespace by_hand_hands_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(103, number);
        const Target byHand = targetOf(patient, Convention::VentroglutealHand);
        const Target byMedians = targetOf(patient, Convention::VentroglutealMedians);
        const double apart = distance(siteBy(byHand), siteBy(byMedians));
        // They differ, in 120 adults, and the muscle is as thick under both: 38 and 36 mm in 734 people.
        ASSERT_GT(apart, 0.0) << "Int J Nurs Stud 2015, number " << number;
        ASSERT_LT(apart, 6.0) << "within one muscle, number " << number;
        const auto at = [&](const char* name) { return byMedians.landmarks.at(name); };
        const Point mean = (at("greater_trochanter") + at("iliac_tubercle") + at("asis")) * (1.0 / 3.0);
        ASSERT_NEAR(distance(siteBy(byMedians), mean), 0.0, 1e-9) << "geometry; " << kNoSource;
    }
}

TEST(ByHandHands, MediansOfTheWorkedTriangleCrossAtSixAndSix)
{
    using namespace by_hand_hands_detail;
    const Point crossing = mediansCrossing({0.0, 0.0}, {6.0, 9.0}, {12.0, 9.0});
    EXPECT_NEAR(crossing.x, 6.0, 1e-9) << "geometry";
    EXPECT_NEAR(crossing.y, 6.0, 1e-9) << "geometry";
    // The same by lines drawn on a hip: corners and feet moved there by hand.
    const Builder builder = Builder::from(defaultPolicy());
    const Target hip = targetOf(adult(Sex::Female, 163.0, 71.0), Convention::VentroglutealMedians);
    Build build = flawlessBuild(hip, builder);
    const Point moved = *fb::siteBy(build, hip, builder);
    const Point wasMean = (*build.point(Handle::CornerTrochanter) + *build.point(Handle::CornerTubercle) +
                           *build.point(Handle::CornerSpine)) *
                          (1.0 / 3.0);
    const std::array corners{std::pair{Handle::CornerTrochanter, Point{0.0, 0.0}},
                             std::pair{Handle::CornerTubercle, Point{6.0, 9.0}},
                             std::pair{Handle::CornerSpine, Point{12.0, 9.0}}};
    for (const auto& [corner, to] : corners)
        build = placed(build, hip, builder, corner, to);
    const std::array feet{std::pair{Handle::FootTrochanter, Point{9.0, 9.0}},
                          std::pair{Handle::FootTubercle, Point{6.0, 4.5}},
                          std::pair{Handle::FootSpine, Point{3.0, 4.5}}};
    for (const auto& [foot, to] : feet)
        build = placed(build, hip, builder, foot, to);
    const Point now = *fb::siteBy(build, hip, builder) - moved + wasMean;
    EXPECT_NEAR(distance(now, {6.0, 6.0}), 0.0, 1e-9) << "geometry";
}

// t = 0.30 is too high by a thirtieth of the thigh, within what a line by hand may be off; 0.25 is not.
TEST(ByHandHands, ThirdsByTheBuild)
{
    using namespace by_hand_hands_detail;
    const char* source =
        "middle third, one third to two thirds: Melbourne Vaccine Education Centre; adults derived";
    for (const View view : askedViews(Site::VastusLateralis)) {
        const Target target = targetIn(adult(Sex::Male, 175.0, 80.0), {Convention::VastusThirds, view});
        const Builder builder = Builder::from(defaultPolicy());
        const Build build = flawlessBuild(target, builder);
        // Along the picture the thigh is a few tenths of a millimetre shorter than from bone to bone.
        expectAll({
            {"upper line", lineShare(build, target, Handle::UpperLine), 1.0 / 3.0, 0.001, source},
            {"lower line", lineShare(build, target, Handle::LowerLine), 2.0 / 3.0, 0.001, source},
            {"site", -target.toSkin(siteBy(target)).y / target.thighLength.value(), 0.5, 1e-9, source},
        });
        EXPECT_EQ(thirdsWithUpperLineAt(target, 0.30).slip, Slip::None);
        const BuildStepGrade high = thirdsWithUpperLineAt(target, 0.25);
        EXPECT_EQ(high.slip, Slip::ThirdsUneven) << source;
        EXPECT_EQ(high.direction, Direction::High) << source;
        EXPECT_NEAR(high.share, 1.0 / 3.0 - 0.25, 0.001) << source;
        EXPECT_EQ(thirdsWithUpperLineAt(target, 0.42).direction, Direction::Low) << source;
    }
}

}  // namespace fb::test::by_hand_hands_test
