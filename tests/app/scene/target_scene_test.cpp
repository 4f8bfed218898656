#include "app/scene/target_scene.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/words/site_words.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace target_scene_test {

namespace {

using namespace fb;

Target targetOf(Side side)
{
    const Patient patient = test::adult(Sex::Female, 163, 71, side);
    return locate(test::atlas(), test::defaultPolicy(), patient, Convention::DeltoidStrip, View::ShoulderSide)
        .value();
}

Target targetIn(View view, Convention convention, Side side)
{
    const Patient patient = test::adult(Sex::Female, 163, 71, side);
    return locate(test::atlas(), test::defaultPolicy(), patient, convention, view).value();
}

Target targetIn(View view, Side side = Side::Right)
{
    return targetIn(view, test::defaultPolicy().convention(siteOf(view)), side);
}

MarkedLimb askedLimb(Site site)
{
    switch (site) {
    case Site::Deltoid: return MarkedLimb::Arm;
    case Site::VastusLateralis: return MarkedLimb::Thigh;
    case Site::Ventrogluteal: return MarkedLimb::Pelvis;
    }
    return MarkedLimb::Trunk;
}

Grade gradeAt(const Target& target, Point mark)
{
    return gradeMark(target, test::defaultPolicy(), mark, askedLimb(target.site));
}

QStringList labelsOf(const Scene& scene, Role role)
{
    QStringList labels;
    for (const SceneShape& shape : scene)
        if (shape.role == role && !shape.label.isEmpty())
            labels << shape.label;
    return labels;
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

TEST(TargetSceneTest, HelpNamesWhatIsFeltInEachView)
{
    EXPECT_EQ(labelsOf(helpScene(targetIn(View::HipSide), HelpLevel::DrawnAndNamed), Role::Landmark),
              (QStringList{landmarkName("iliac_crest"), landmarkName("iliac_tubercle"), landmarkName("asis"),
                           landmarkName("psis"), landmarkName("greater_trochanter")}));
    EXPECT_EQ(labelsOf(helpScene(targetIn(View::ThighSide), HelpLevel::DrawnAndNamed), Role::Landmark),
              (QStringList{landmarkName("asis"), landmarkName("greater_trochanter"), landmarkName("patella"),
                           landmarkName("lateral_femoral_epicondyle")}));
    for (const View view : kViews)
        EXPECT_GE(helpScene(targetIn(view), HelpLevel::DrawnAndNamed).size(), 4) << wordOf(view);
}

TEST(TargetSceneTest, EveryShapeOfEverySceneHasAPlaceAndWords)
{
    for (const View view : kViews) {
        for (const Convention convention : kConventions) {
            if (siteOf(convention) != siteOf(view))
                continue;
            const Target target = targetIn(view, convention, Side::Left);
            const Point mark{target.ideal.x + 2.0, target.ideal.y + 2.0};
            for (const Scene& scene : {targetScene(target), companionScene(target),
                                       gradedScene(target, mark, gradeAt(target, mark))}) {
                EXPECT_EQ(count(scene, Role::Region), 1);
                EXPECT_EQ(count(scene, Role::Ideal), 1);
                for (const SceneShape& shape : scene) {
                    EXPECT_FALSE(shape.points.isEmpty()) << wordOf(convention);
                    EXPECT_FALSE(spoken(shape).isEmpty()) << wordOf(convention);
                }
            }
        }
    }
}

TEST(TargetSceneTest, TheHandsFigureHasItsPointsNamed)
{
    const Scene scene = targetScene(targetIn(View::HipSide));
    EXPECT_EQ(labelsOf(scene, Role::Landmark),
              (QStringList{landmarkName("greater_trochanter"), landmarkName("asis")}));
    EXPECT_GE(count(scene, Role::Construction), 5);
}

TEST(TargetSceneTest, ABoneIsAnAreaOnlyWhereItWasStruck)
{
    const Target target = targetIn(View::HipSide);
    const auto shownAt = [&](Point mark) {
        return labelsOf(gradedScene(target, mark, gradeAt(target, mark)), Role::Strike);
    };
    const QString bone = hazardName(HazardCode::Trochanter);
    EXPECT_FALSE(shownAt(target.ideal).contains(bone));
    EXPECT_TRUE(shownAt(target.landmarks.at("greater_trochanter")).contains(bone));
}

TEST(TargetSceneTest, ACompanionShowsWhereNotWithItsWord)
{
    const QStringList hip = labelsOf(companionScene(targetIn(View::HipBehind)), Role::Strike);
    EXPECT_TRUE(hip.contains(hazardName(HazardCode::Dorsogluteal)));
    EXPECT_TRUE(hip.contains(hazardName(HazardCode::SciaticNerve)));
    EXPECT_EQ(labelsOf(companionScene(targetIn(View::ThighFront)), Role::Near),
              QStringList{hazardName(HazardCode::RectusFemoris)});
    const Target arm = targetIn(View::ShoulderThreeQuarter);
    EXPECT_EQ(companionScene(arm).size(), targetScene(arm).size());
}

TEST(TargetSceneTest, TheCloseUpHoldsTheFigureAndTheMark)
{
    for (const View view : {View::HipSide, View::ThighSide, View::ThighFront, View::ShoulderSide}) {
        const Target target = targetIn(view);
        const Point mark{target.ideal.x - 4.0, target.ideal.y + 3.0};
        const QRectF seen = closeUpOf(target, mark);
        EXPECT_TRUE(seen.contains(QPointF(mark.x, mark.y)));
        for (const Point p : target.region.corners())
            EXPECT_TRUE(seen.contains(QPointF(p.x, p.y))) << wordOf(view);
    }
}

TEST(TargetSceneTest, TheMarksOfARunLieAsFarFromTheIdealPointOnAnyBody)
{
    for (const View view : {View::HipSide, View::ThighSide}) {
        const Target model = targetIn(view);
        Summary summary;
        summary.marks = {{0.0, 0.0}, {0.8, 0.6}};
        summary.verdicts = {Verdict::OnTarget, Verdict::Unsafe};
        const Scene scene = runScene(model, summary);
        EXPECT_EQ(count(scene, Role::MarkOnTarget), 1);
        EXPECT_EQ(count(scene, Role::MarkUnsafe), 1);
        EXPECT_GE(count(scene, Role::Landmark), 1);
        const QPointF on = scene[scene.size() - 2].points.front();
        EXPECT_NEAR(on.x(), model.ideal.x, 1e-6);
        EXPECT_NEAR(on.y(), model.ideal.y, 1e-6);
        const QPointF off = scene.back().points.front();
        const Point skin = model.toSkin({off.x(), off.y()}) - model.idealSkin;
        EXPECT_NEAR(skin.x, 0.8 * model.scale, 0.02) << wordOf(view);
        EXPECT_NEAR(skin.y, -0.6 * model.scale, 0.02) << wordOf(view);
    }
}

}  // namespace

}  // namespace target_scene_test
