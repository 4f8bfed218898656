#include "app/scene/by_hand_scene.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/scene/target_scene.h"
#include "app/words/build_words.h"
#include "app/words/site_words.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace by_hand_scene_test {

namespace {

using namespace fb;

Target targetOf(Convention convention, Side side = Side::Right)
{
    const View view = askedViews(siteOf(convention)).front();
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 166, 68, side), convention,
                  view)
        .value();
}

Builder builder() { return Builder::from(test::defaultPolicy()); }

MarkedLimb limbOf(Site site)
{
    switch (site) {
    case Site::Deltoid: return MarkedLimb::Arm;
    case Site::VastusLateralis: return MarkedLimb::Thigh;
    case Site::Ventrogluteal: return MarkedLimb::Pelvis;
    }
    return MarkedLimb::Trunk;
}

Attempt markedAt(const Target& target, Point mark)
{
    Attempt attempt{requestFrom(1, 0), std::nullopt, mark, {}, {}};
    attempt.grade = gradeMark(target, test::defaultPolicy(), mark, limbOf(target.site));
    return attempt;
}

// Found by hand and marked on the ideal point.
Attempt attemptOf(const Target& target, const Build& build, const std::vector<Flag>& flags)
{
    Attempt attempt = markedAt(target, target.ideal);
    attempt.flags = flags;
    attempt.build = build;
    attempt.byHand = gradeByHand(target, test::defaultPolicy(), flags, build, attempt.grade);
    return attempt;
}

std::vector<Flag> flawlessFlags(const Target& target)
{
    std::vector<Flag> flags;
    for (const Landmark landmark : askedLandmarks(target.convention))
        if (const auto place = placeOf(target, landmark))
            flags.push_back({landmark, place->points.front()});
    return flags;
}

int count(const Scene& scene, Role role)
{
    return static_cast<int>(std::ranges::count(scene, role, &SceneShape::role));
}

const SceneShape* firstOf(const Scene& scene, Role role)
{
    const auto found = std::ranges::find(scene, role, &SceneShape::role);
    return found == scene.end() ? nullptr : &*found;
}

QPointF at(Point p) { return {p.x, p.y}; }

// Each slip on its own: a handle moved so far.
Build moved(const Target& target, Handle handle, Point by)
{
    const Build flawless = flawlessBuild(target, builder());
    const Point from = *handleAt(flawless, target, builder(), handle);
    return placed(flawless, target, builder(), handle, from + by);
}

TEST(ByHandSceneTest, NothingBuiltIsNothingDrawn)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        EXPECT_TRUE(buildScene(target, emptyBuild(target), builder()).isEmpty()) << wordOf(convention);
    }
}

TEST(ByHandSceneTest, WhatIsBuiltIsDrawnQuietlyAndSpoken)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention, Side::Left);
        const Scene scene = buildScene(target, flawlessBuild(target, builder()), builder());
        EXPECT_GE(count(scene, Role::Construction), 2) << wordOf(convention);
        for (const SceneShape& shape : scene) {
            EXPECT_TRUE(shape.role == Role::Construction || shape.role == Role::Field);
            EXPECT_TRUE(shape.label.isEmpty());
            EXPECT_FALSE(shape.description.isEmpty());
            EXPECT_FALSE(shape.points.isEmpty());
        }
    }
}

TEST(ByHandSceneTest, TheChosenFieldOfAThighIsRuledAndNamed)
{
    const Target target = targetOf(Convention::VastusThirds);
    Build build = flawlessBuild(target, builder());
    const Scene scene = buildScene(target, build, builder());
    ASSERT_EQ(count(scene, Role::Field), 1);
    EXPECT_EQ(firstOf(scene, Role::Field)->description, cellName(*build.cell));
    EXPECT_GE(firstOf(scene, Role::Field)->points.size(), 4);
    build.cell.reset();
    EXPECT_EQ(count(buildScene(target, build, builder()), Role::Field), 0);
}

TEST(ByHandSceneTest, AFlawlessConstructionIsNotDrawnTwice)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const Attempt attempt = attemptOf(target, flawlessBuild(target, builder()), flawlessFlags(target));
        const Scene scene = gradedByHandScene(target, attempt, builder());
        EXPECT_EQ(count(scene, Role::Yours), 0) << wordOf(convention);
        EXPECT_EQ(count(scene, Role::Field), 0) << wordOf(convention);
        EXPECT_EQ(count(scene, Role::Other), 0) << wordOf(convention);
        EXPECT_EQ(count(scene, Role::Arrow), 0) << wordOf(convention);
        EXPECT_EQ(count(scene, Role::Strike) + count(scene, Role::Near), 0) << wordOf(convention);
        EXPECT_EQ(count(scene, Role::Region), 1);
        EXPECT_EQ(count(scene, Role::Ideal), 1);
    }
}

TEST(ByHandSceneTest, OnlyWhatDiffersIsDrawnAsTheLearnersAndNamedOnce)
{
    const Target arm = targetOf(Convention::DeltoidStrip);
    const Attempt apex = attemptOf(arm, moved(arm, Handle::Apex, {0.0, -4.0}), flawlessFlags(arm));
    const Scene scene = gradedByHandScene(arm, apex, builder());
    ASSERT_EQ(count(scene, Role::Yours), 1);  // the triangle, and no finger
    EXPECT_EQ(firstOf(scene, Role::Yours)->figure, Figure::Closed);
    EXPECT_EQ(firstOf(scene, Role::Yours)->label, QStringLiteral("Yours"));

    const Target hip = targetOf(Convention::VentroglutealHand);
    const Attempt palm = attemptOf(hip, moved(hip, Handle::Palm, {4.0, 0.0}), flawlessFlags(hip));
    const Scene hand = gradedByHandScene(hip, palm, builder());
    EXPECT_EQ(count(hand, Role::Yours), 3);
    EXPECT_EQ(std::ranges::count_if(
                  hand, [](const SceneShape& s) { return s.role == Role::Yours && !s.label.isEmpty(); }),
              1);
}

TEST(ByHandSceneTest, MediansAreLeftOutWhereTheirCornersAreOff)
{
    const Target hip = targetOf(Convention::VentroglutealMedians);
    const Build feet = moved(hip, Handle::FootSpine, {2.5, 2.0});
    EXPECT_EQ(count(gradedByHandScene(hip, attemptOf(hip, feet, flawlessFlags(hip)), builder()), Role::Yours),
              3);
    const Build both = placed(feet, hip, builder(), Handle::CornerTubercle,
                              *feet.point(Handle::CornerTubercle) + Point{3.0, -3.0});
    EXPECT_EQ(count(gradedByHandScene(hip, attemptOf(hip, both, flawlessFlags(hip)), builder()), Role::Yours),
              1);
}

TEST(ByHandSceneTest, WhereTheHandWouldHaveLedIsOneLozengeThatSaysWhatItMeans)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    const Attempt attempt = attemptOf(hip, moved(hip, Handle::Palm, {4.0, 0.0}), flawlessFlags(hip));
    const Scene scene = gradedByHandScene(hip, attempt, builder());
    ASSERT_EQ(count(scene, Role::Other), 1);
    const SceneShape* lozenge = firstOf(scene, Role::Other);
    EXPECT_EQ(lozenge->label, QStringLiteral("By your hand"));
    EXPECT_TRUE(lozenge->description.startsWith(QStringLiteral("That alone")));
    EXPECT_NE(lozenge->points.front(), at(hip.ideal));
}

TEST(ByHandSceneTest, AFlagThatIsOffPointsToItsLandmarkWithItsCentimetres)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    std::vector<Flag> flags = flawlessFlags(hip);
    flags.front().at = flags.front().at + Point{3.0, 0.0};
    const Scene scene =
        gradedByHandScene(hip, attemptOf(hip, flawlessBuild(hip, builder()), flags), builder());
    ASSERT_EQ(count(scene, Role::Arrow), 1);
    const SceneShape* arrow = firstOf(scene, Role::Arrow);
    EXPECT_EQ(arrow->label, cmText(3.0));
    EXPECT_EQ(arrow->points.front(), at(flags.front().at));
    EXPECT_EQ(arrow->points.back(), at(hip.landmarks.at("greater_trochanter")));
}

TEST(ByHandSceneTest, AnAttemptThatWasOnlyMarkedIsDrawnAsBefore)
{
    const Target target = targetOf(Convention::VastusThirds);
    const Attempt attempt = markedAt(target, target.ideal + Point{2.0, 1.0});
    const Scene scene = gradedByHandScene(target, attempt, builder());
    EXPECT_EQ(scene.size(), gradedScene(target, attempt.mark, attempt.grade).size());
}

TEST(ByHandSceneTest, TheAreaHoldsTheLearnersOwnFigureAndFlags)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    const Build build = moved(hip, Handle::Palm, {9.0, -6.0});
    std::vector<Flag> flags = flawlessFlags(hip);
    flags.front().at = hip.ideal + Point{45.0, 3.0};
    const Attempt attempt = attemptOf(hip, build, flags);
    const QRectF area = gradedByHandArea(hip, attempt, builder());
    EXPECT_TRUE(area.contains(at(flags.front().at)));
    for (const Step& step : figuresOf(build, hip, builder()))
        for (const Point p : step.points)
            EXPECT_TRUE(area.contains(at(p)));
    EXPECT_TRUE(area.contains(closeUpOf(hip, attempt.mark)));
}

TEST(ByHandSceneTest, ShowingHowAddsOneStepAfterTheOther)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const int steps = watchStepCount(target);
        ASSERT_GE(steps, 5);
        qsizetype before = 0;
        for (int step = 0; step < steps; ++step) {
            const Scene scene = watchScene(target, step);
            EXPECT_GT(scene.size(), before) << wordOf(convention) << step;
            before = scene.size();
            EXPECT_EQ(count(scene, Role::Newest), step < steps - 2 ? 1 : 0);
            EXPECT_EQ(count(scene, Role::Region), step < steps - 2 ? 0 : 1);
            EXPECT_EQ(count(scene, Role::Ideal), step < steps - 1 ? 0 : 1);
            EXPECT_FALSE(watchCaption(target, step).isEmpty());
        }
    }
}

TEST(ByHandSceneTest, TheNewestStepIsNamedAndNoOtherLineIs)
{
    const Target target = targetOf(Convention::VastusThirds);
    for (int step = 0; step < watchStepCount(target) - 2; ++step) {
        for (const SceneShape& shape : watchScene(target, step)) {
            if (shape.role == Role::Newest || shape.role == Role::Construction) {
                EXPECT_EQ(shape.label.isEmpty(), shape.role == Role::Construction);
            }
        }
    }
}

TEST(ByHandSceneTest, AFingerPressesWhereABoneIsFeltAndNowhereElse)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    int pressed = 0;
    for (int step = 0; step < watchStepCount(hip); ++step) {
        const auto place = watchPress(hip, step);
        const StepCode code = hip.construction[static_cast<std::size_t>(step)].code;
        EXPECT_EQ(place.has_value(), code == StepCode::FeelTrochanter || code == StepCode::FeelSpine ||
                                         code == StepCode::FeelCrest);
        pressed += place ? 1 : 0;
        if (code == StepCode::FeelSpine) {
            EXPECT_EQ(place, at(hip.landmarks.at("asis")));
        }
    }
    EXPECT_EQ(pressed, 3);
}

TEST(ByHandSceneTest, TheHandIsLaidFromItsPalmOnAndOnNothingButAHip)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    bool laid = false;
    for (int step = 0; step < watchStepCount(hip); ++step) {
        laid = laid || hip.construction[static_cast<std::size_t>(step)].code == StepCode::LayPalm;
        EXPECT_EQ(watchLaysHand(hip, step), laid) << step;
    }
    EXPECT_TRUE(laid);
    const Target arm = targetOf(Convention::DeltoidStrip);
    EXPECT_FALSE(watchLaysHand(arm, watchStepCount(arm) - 1));
}

TEST(ByHandSceneTest, WhatIsShownLiesInTheAreaThatIsLookedAt)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const QRectF area = watchArea(target);
        for (const SceneShape& shape : watchScene(target, watchStepCount(target) - 1))
            for (const QPointF p : shape.points)
                EXPECT_TRUE(area.contains(p)) << wordOf(convention);
    }
}

}  // namespace

}  // namespace by_hand_scene_test
