#include "core/build/thigh_build.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace thigh_build_test {

namespace {

Target thigh(View view, Convention convention = Convention::VastusThirds, Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64, side), convention,
                  view)
        .value();
}

}  // namespace

TEST(ThighBuildTest, TheThirdsLieAtOneAndTwoThirdsOfTheFlawlessSpan)
{
    for (const View view : askedViews(Site::VastusLateralis)) {
        const Target target = thigh(view);
        const Build build = flawlessOnThigh(target);
        EXPECT_NEAR(lineShare(build, target, Handle::UpperLine), 1.0 / 3.0, 0.02);
        EXPECT_NEAR(lineShare(build, target, Handle::LowerLine), 2.0 / 3.0, 0.02);
    }
}

TEST(ThighBuildTest, ALineAlongRunsFromEndToEnd)
{
    const Target target = thigh(View::ThighSide);
    const Build build = flawlessOnThigh(target);
    for (const Handle line : {Handle::FrontLine, Handle::OuterLine}) {
        const auto points = lineAlong(build, target, line);
        EXPECT_NEAR(target.toSkin(points.front()).y, target.toSkin(*build.point(Handle::ThighTop)).y, 0.05);
        EXPECT_NEAR(target.toSkin(points.back()).y, target.toSkin(*build.point(Handle::ThighBottom)).y, 0.05);
    }
}

TEST(ThighBuildTest, ALineOffToTheFrontIsForwardInEitherView)
{
    for (const View view : askedViews(Site::VastusLateralis)) {
        for (const Side side : kSides) {
            const Target target = thigh(view, Convention::VastusThirds, side);
            Build build = flawlessOnThigh(target);
            EXPECT_NEAR(lineOff(build, target, Handle::OuterLine), 0.0, 0.01);
            EXPECT_NEAR(lineOff(build, target, Handle::FrontLine), 0.0, 0.01);
            const double middle = -target.thighLength.value() / 2.0;
            const double front = target.surface.thigh()->limb.arcOf(0.6, middle);
            build.point(Handle::OuterLine) = target.toViewer({front, middle});
            EXPECT_GT(lineOff(build, target, Handle::OuterLine), 0.3) << wordOf(view);
        }
    }
}

TEST(ThighBuildTest, TheCellUnderAPointIsReadFromTheLinesWhicheverOrderTheyWereSetIn)
{
    const Target target = thigh(View::ThighSide);
    Build build = flawlessOnThigh(target);
    const auto cell = cellAt(build, target, target.ideal);
    ASSERT_TRUE(cell);
    EXPECT_EQ(*cell, (ThighCell{ThighRow::Middle, ThighColumn::Between}));
    std::swap(build.point(Handle::UpperLine), build.point(Handle::LowerLine));
    EXPECT_EQ(cellAt(build, target, target.ideal), cell);
    const double length = target.thighLength.value();
    EXPECT_EQ(cellAt(build, target, target.toViewer({1.0, -0.1 * length}))->row, ThighRow::Upper);
    EXPECT_EQ(cellAt(build, target, target.toViewer({1.0, -0.9 * length}))->row, ThighRow::Lower);
    EXPECT_EQ(cellAt(build, target, target.toViewer({-4.0, -0.5 * length}))->column, ThighColumn::Behind);
    build.point(Handle::FrontLine).reset();
    EXPECT_FALSE(cellAt(build, target, target.ideal));
}

TEST(ThighBuildTest, TheChosenCellPutsTheSiteInIt)
{
    const Target target = thigh(View::ThighSide);
    Build build = flawlessOnThigh(target);
    const double ideal = target.toSkin(siteByThigh(build, target)).y;
    build.cell = ThighCell{ThighRow::Lower, ThighColumn::Between};
    EXPECT_LT(target.toSkin(siteByThigh(build, target)).y, ideal - target.thighLength.value() * 0.2);
    build.cell = ThighCell{ThighRow::Middle, ThighColumn::Behind};
    EXPECT_LT(target.toSkin(siteByThigh(build, target)).x, target.idealSkin.x - 3.0);
}

TEST(ThighBuildTest, GripsOfLinesAcrossLieOnTheWayFromEndToEnd)
{
    const Target target = thigh(View::ThighFront);
    Build build = flawlessOnThigh(target);
    build = placedOnThigh(build, Handle::UpperLine, target.ideal + Point{0.0, 2.0});
    const auto grip = thighHandleAt(build, target, Handle::UpperLine);
    ASSERT_TRUE(grip);
    const Point top = *build.point(Handle::ThighTop);
    const Point bottom = *build.point(Handle::ThighBottom);
    EXPECT_NEAR(cross(bottom - top, *grip - top), 0.0, 1e-6);
    EXPECT_NEAR(distance(top, *grip) / distance(top, bottom), lineShare(build, target, Handle::UpperLine),
                1e-6);
}

TEST(ThighBuildTest, ACellsOutlineHoldsItsMiddle)
{
    const Target target = thigh(View::ThighSide);
    const Build build = flawlessOnThigh(target);
    const auto outline = Polygon::make(cellOutline(build, target, {ThighRow::Middle, ThighColumn::Between}));
    ASSERT_TRUE(outline);
    EXPECT_TRUE(outline->contains(target.ideal));
    const auto lower = Polygon::make(cellOutline(build, target, {ThighRow::Lower, ThighColumn::Between}));
    ASSERT_TRUE(lower);
    EXPECT_FALSE(lower->contains(target.ideal));
}

TEST(ThighBuildTest, FiguresWaitForBothEnds)
{
    const Target target = thigh(View::ThighSide);
    Build build = emptyBuild(target);
    build.point(Handle::ThighTop) = target.landmarks.at("greater_trochanter");
    EXPECT_TRUE(thighFigures(build, target).empty());
    const Steps whole = thighFigures(flawlessOnThigh(target), target);
    EXPECT_EQ(std::ranges::count(whole, StepCode::UpperThird, &Step::code), 1);
    EXPECT_EQ(std::ranges::count(whole, StepCode::LowerThird, &Step::code), 1);
    EXPECT_EQ(std::ranges::count(whole, StepCode::FrontLine, &Step::code), 1);
}

}  // namespace thigh_build_test
