#include "core/grade/build_steps.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/site/landmark.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace build_steps_test {

namespace {

class Bench {
public:
    explicit Bench(Convention convention, double finger = 1.7)
        : m_policy(test::defaultPolicy().with(PolicyKey::DeltoidFingerWidth, finger)),
          m_target(locate(test::atlas(), m_policy, test::adult(Sex::Female, 165, 64), convention,
                          askedViews(siteOf(convention)).front())
                       .value()),
          m_builder(Builder::from(m_policy)),
          build(flawlessBuild(m_target, m_builder))
    {
    }

    [[nodiscard]] BuildStepGrade graded(BuildStep step) const
    {
        StepWriter writer(build, m_target, m_builder, m_policy);
        switch (m_target.site) {
        case Site::Deltoid: gradeArmBuild(writer); break;
        case Site::VastusLateralis: gradeThighBuild(writer); break;
        case Site::Ventrogluteal: gradeHipBuild(writer); break;
        }
        const auto steps = writer.taken();
        return *std::ranges::find(steps, step, &BuildStepGrade::step);
    }
    [[nodiscard]] const Target& target() const { return m_target; }
    [[nodiscard]] const Builder& builder() const { return m_builder; }

private:
    Policy m_policy;
    Target m_target;
    Builder m_builder;

public:
    Build build;
};

}  // namespace

TEST(BuildStepsTest, FingersLaidLowAreTooLow)
{
    Bench bench(Convention::DeltoidStrip);
    bench.build.fingers->top = bench.build.fingers->top + Point{0.2, -2.0};
    const BuildStepGrade grade = bench.graded(BuildStep::FingersLaid);
    EXPECT_EQ(grade.slip, Slip::FingersOff);
    EXPECT_EQ(grade.direction, Direction::Low);
    EXPECT_GT(grade.effect->grade.offDistal.value(), 1.5);
}

TEST(BuildStepsTest, FingersAskewAreToldInDegrees)
{
    Bench bench(Convention::DeltoidStrip);
    bench.build.fingers->turn = Degrees{-25.0};
    const BuildStepGrade grade = bench.graded(BuildStep::FingersLevel);
    EXPECT_EQ(grade.slip, Slip::FingersTurned);
    EXPECT_DOUBLE_EQ(grade.degrees.value(), 25.0);
}

TEST(BuildStepsTest, ThreeWideFingersReachTooLow)
{
    Bench bench(Convention::DeltoidStrip, 2.2);
    EXPECT_EQ(bench.graded(BuildStep::FingerCount).slip, Slip::None);
    bench.build.fingers->count = 3;
    const BuildStepGrade grade = bench.graded(BuildStep::FingerCount);
    EXPECT_EQ(grade.slip, Slip::FingerCount);
    EXPECT_EQ(grade.direction, Direction::Low);
    EXPECT_NEAR(grade.amount.value(), 6.6, 1e-9);
}

TEST(BuildStepsTest, APlaceThatIsOffAslantIsOffInTwoWays)
{
    Bench arm(Convention::DeltoidFingers);
    arm.build.fingers->top = arm.build.fingers->top + Point{-3.0, 2.5};
    const BuildStepGrade fingers = arm.graded(BuildStep::FingersLaid);
    EXPECT_EQ(fingers.direction, Direction::Back);
    EXPECT_EQ(fingers.second, Direction::High);
    EXPECT_NEAR(fingers.amount.value(), 3.905125, 1e-6);
    Bench hip(Convention::VentroglutealHand);
    hip.build.hand->palm = hip.build.hand->palm + Point{-2.5, -3.0};
    const BuildStepGrade palm = hip.graded(BuildStep::Palm);
    EXPECT_EQ(palm.direction, Direction::Back);
    EXPECT_EQ(palm.second, Direction::High);
    EXPECT_EQ(hip.graded(BuildStep::WhichHand).second, Direction::None);
}

TEST(BuildStepsTest, TheWorseCornerOfTheBaseIsTold)
{
    Bench bench(Convention::DeltoidStrip);
    bench.build.point(Handle::BaseBack) = *bench.build.point(Handle::BaseBack) + Point{-3.0, 0.0};
    const BuildStepGrade grade = bench.graded(BuildStep::Base);
    EXPECT_EQ(grade.slip, Slip::BaseOff);
    EXPECT_EQ(grade.direction, Direction::Back);
    EXPECT_LT(grade.effect->grade.offAnterior.value(), -0.5);
}

TEST(BuildStepsTest, AHalvedLineHasEndsAndAMiddle)
{
    Bench bench(Convention::DeltoidHalfway);
    const Point top = *bench.build.point(Handle::LineTop);
    bench.build.point(Handle::LineMiddle) = lerp(top, *bench.build.point(Handle::LineBottom), 0.75);
    EXPECT_EQ(bench.graded(BuildStep::LineEnds).slip, Slip::None);
    const BuildStepGrade grade = bench.graded(BuildStep::LineHalved);
    EXPECT_EQ(grade.slip, Slip::HalfUneven);
    EXPECT_EQ(grade.direction, Direction::Low);
    bench.build.point(Handle::LineBottom) = *bench.build.point(Handle::LineBottom) + Point{0.0, -3.0};
    EXPECT_EQ(bench.graded(BuildStep::LineEnds).slip, Slip::BottomOff);
}

TEST(BuildStepsTest, AThighsEndsAreToldOneByOne)
{
    Bench bench(Convention::VastusThirds);
    const double length = bench.target().thighLength.value();
    bench.build.point(Handle::ThighTop) = bench.target().toViewer({0.0, -0.12 * length});
    const BuildStepGrade top = bench.graded(BuildStep::ThighEnds);
    EXPECT_EQ(top.slip, Slip::TopOff);
    EXPECT_EQ(top.direction, Direction::Low);
    EXPECT_NEAR(top.amount.value(), 0.12 * length, 0.2);
    EXPECT_GT(top.effect->grade.offDistal.value(), 0.04 * length);
}

TEST(BuildStepsTest, UnevenThirdsAreASharesWorth)
{
    Bench bench(Convention::VastusThirds);
    const double length = bench.target().thighLength.value();
    bench.build.point(Handle::UpperLine) = bench.target().toViewer({0.0, -0.45 * length});
    const BuildStepGrade grade = bench.graded(BuildStep::Thirds);
    EXPECT_EQ(grade.slip, Slip::ThirdsUneven);
    EXPECT_NEAR(grade.share, 0.45 - 1.0 / 3.0, 0.02);
    EXPECT_EQ(grade.direction, Direction::Low);
}

TEST(BuildStepsTest, LinesAlongAndTheCellAreGradedOnTheirOwn)
{
    Bench bench(Convention::VastusThirds);
    const double middle = -bench.target().thighLength.value() / 2.0;
    bench.build.point(Handle::OuterLine) = bench.target().toViewer({-3.0, middle});
    const BuildStepGrade outer = bench.graded(BuildStep::OuterLine);
    EXPECT_EQ(outer.slip, Slip::OuterLineOff);
    EXPECT_EQ(outer.direction, Direction::Back);
    EXPECT_EQ(bench.graded(BuildStep::FrontLine).slip, Slip::None);
    bench.build.cell = ThighCell{ThighRow::Lower, ThighColumn::Between};
    const BuildStepGrade cell = bench.graded(BuildStep::Cell);
    EXPECT_EQ(cell.slip, Slip::WrongCell);
    EXPECT_EQ(cell.effect->grade.reason.direction, Direction::Low);
}

TEST(BuildStepsTest, AnIndexFingerOnTheCrestIsNamed)
{
    Bench bench(Convention::VentroglutealHand);
    const auto crest = placeOf(bench.target(), Landmark::IliacCrest);
    bench.build.hand =
        turnedTo(*bench.build.hand, bench.builder().hand, crest->points[crest->points.size() / 3]);
    const HandPose pose = poseOf(*bench.build.hand, bench.builder().hand);
    const BuildStepGrade grade = bench.graded(BuildStep::IndexFinger);
    EXPECT_NE(grade.slip, Slip::None);
    const bool onCrest = distance(crest->nearest(pose.indexTip), pose.indexTip) <= 1.0;
    EXPECT_EQ(grade.slip, onCrest ? Slip::IndexOnCrest : Slip::IndexOff);
    // Turned back, the site goes back with it.
    EXPECT_LT(grade.effect->grade.offAnterior.value(), -1.0);
}

TEST(BuildStepsTest, ClosedFingersAreToldInDegrees)
{
    Bench bench(Convention::VentroglutealHand);
    bench.build.hand->opening = Degrees{10.0};
    const BuildStepGrade grade = bench.graded(BuildStep::MiddleFinger);
    EXPECT_EQ(grade.slip, Slip::FingersClosed);
    EXPECT_DOUBLE_EQ(grade.degrees.value(), 10.0);
    EXPECT_EQ(bench.graded(BuildStep::IndexFinger).slip, Slip::None);
}

TEST(BuildStepsTest, TheWorstCornerAndTheWorstMedianAreTold)
{
    Bench bench(Convention::VentroglutealMedians);
    bench.build.point(Handle::CornerTubercle) = *bench.build.point(Handle::CornerTubercle) + Point{0.0, -4.0};
    const BuildStepGrade corner = bench.graded(BuildStep::Corners);
    EXPECT_EQ(corner.slip, Slip::CornerTubercleOff);
    EXPECT_EQ(corner.direction, Direction::Back);
    EXPECT_NEAR(corner.effect->moved.value(), 4.0 / 3.0, 0.01);
    Bench feet(Convention::VentroglutealMedians);
    feet.build.point(Handle::FootSpine) =
        lerp(*feet.build.point(Handle::CornerTrochanter), *feet.build.point(Handle::CornerTubercle), 0.8);
    const BuildStepGrade median = feet.graded(BuildStep::Medians);
    EXPECT_EQ(median.slip, Slip::MedianUneven);
    EXPECT_NEAR(median.share, 0.3, 1e-9);
}

}  // namespace build_steps_test
