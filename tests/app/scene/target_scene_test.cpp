#include "app/scene/target_scene.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/words/site_words.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace {

using namespace fb;

Target targetOf(Side side)
{
    const Patient patient = test::adult(Sex::Female, 163, 71, side);
    return locate(test::atlas(), test::defaultPolicy(), patient, Convention::DeltoidStrip, View::ShoulderSide)
        .value();
}

Grade gradeAt(const Target& target, Point mark)
{
    return gradeMark(target, test::defaultPolicy(), mark, MarkedLimb::Arm);
}

int count(const Scene& scene, Role role)
{
    return static_cast<int>(
        std::count_if(scene.begin(), scene.end(), [role](const SceneShape& s) { return s.role == role; }));
}

TEST(TargetSceneTest, DrawnHelpGivesEachLandmarkAPointAndAName)
{
    const Target target = targetOf(Side::Right);
    const Scene scene = helpScene(target, HelpLevel::DrawnAndNamed);
    EXPECT_GE(scene.size(), 5);
    for (const SceneShape& shape : scene) {
        EXPECT_EQ(shape.role, Role::Landmark);
        EXPECT_EQ(shape.points.size(), 1);
        EXPECT_FALSE(shape.label.isEmpty());
    }
}

TEST(TargetSceneTest, NamedHelpGivesTheSameNamesAndNoPlace)
{
    const Target target = targetOf(Side::Left);
    const Scene drawn = helpScene(target, HelpLevel::DrawnAndNamed);
    const Scene named = helpScene(target, HelpLevel::NamedOnly);
    ASSERT_EQ(named.size(), drawn.size());
    for (qsizetype i = 0; i < named.size(); ++i) {
        EXPECT_TRUE(named[i].points.isEmpty());
        EXPECT_EQ(named[i].label, drawn[i].label);
    }
}

TEST(TargetSceneTest, NoHelpIsNothing)
{
    EXPECT_TRUE(helpScene(targetOf(Side::Right), HelpLevel::Nothing).isEmpty());
}

TEST(TargetSceneTest, HelpNeverShowsWhatTheTargetIsBuiltFrom)
{
    for (const HelpLevel help : {HelpLevel::DrawnAndNamed, HelpLevel::NamedOnly, HelpLevel::Nothing})
        for (const SceneShape& shape : helpScene(targetOf(Side::Right), help))
            EXPECT_EQ(shape.role, Role::Landmark);
}

TEST(TargetSceneTest, ATargetIsItsRegionItsConstructionAndItsIdealPoint)
{
    const Target target = targetOf(Side::Right);
    const Scene scene = targetScene(target);
    EXPECT_EQ(count(scene, Role::Region), 1);
    EXPECT_EQ(count(scene, Role::Ideal), 1);
    EXPECT_GE(count(scene, Role::Construction), 3);
    EXPECT_EQ(scene.front().points.size(), static_cast<qsizetype>(target.region.corners().size()));
    EXPECT_EQ(scene.back().points.front(), QPointF(target.ideal.x, target.ideal.y));
}

TEST(TargetSceneTest, AGradedMarkHasAnArrowToTheIdealPointWithItsLengthAlongTheSkin)
{
    const Target target = targetOf(Side::Right);
    const Point mark{target.ideal.x + 1.5, target.ideal.y + 2.0};
    const Grade grade = gradeAt(target, mark);
    const Scene scene = gradedScene(target, mark, grade);
    const auto arrow =
        std::find_if(scene.begin(), scene.end(), [](const SceneShape& s) { return s.role == Role::Arrow; });
    ASSERT_NE(arrow, scene.end());
    EXPECT_EQ(arrow->points, (QVector<QPointF>{{mark.x, mark.y}, {target.ideal.x, target.ideal.y}}));
    EXPECT_EQ(arrow->label, cmText(grade.distanceToIdeal.value()));
    EXPECT_EQ(count(scene, Role::Strike) + count(scene, Role::Near), static_cast<int>(target.hazards.size()));
}

TEST(TargetSceneTest, AMarkOnTheIdealPointNeedsNoArrow)
{
    const Target target = targetOf(Side::Left);
    EXPECT_EQ(count(gradedScene(target, target.ideal, gradeAt(target, target.ideal)), Role::Arrow), 0);
}

TEST(TargetSceneTest, EveryHazardIsNamed)
{
    const Target target = targetOf(Side::Right);
    for (const SceneShape& shape : gradedScene(target, target.ideal, gradeAt(target, target.ideal)))
        EXPECT_FALSE(spoken(shape).isEmpty());
}

TEST(TargetSceneTest, AnotherConventionIsOneNamedPoint)
{
    const Scene scene = otherScene(Convention::DeltoidHalfway, {1, -7});
    ASSERT_EQ(scene.size(), 1);
    EXPECT_EQ(scene[0].role, Role::Other);
    EXPECT_EQ(scene[0].label, conventionName(Convention::DeltoidHalfway));
    EXPECT_EQ(scene[0].points, QVector<QPointF>{QPointF(1, -7)});
}

}  // namespace
