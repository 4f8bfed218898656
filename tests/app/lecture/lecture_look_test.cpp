#include "app/lecture/lecture_look.h"

#include <gtest/gtest.h>

#include <QSet>

#include "app/lecture/room_marks.h"
#include "app/words/feel_words.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"
#include "core/build/build.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_look_test {

LectureLook lookAt(const LectureState& state, int step, double progress = 1.0)
{
    return lookOf(*state.shown, *state.policy, state.steps, step, progress);
}

QStringList labelsOf(const Scene& scene)
{
    QStringList labels;
    for (const SceneShape& shape : scene)
        if (!shape.label.isEmpty())
            labels << shape.label;
    return labels;
}

qsizetype countOf(const Scene& scene, Role role)
{
    return std::count_if(scene.begin(), scene.end(),
                         [role](const SceneShape& shape) { return shape.role == role; });
}

TEST(LectureLookTest, TheFirstStepShowsNothingButThePatient)
{
    for (const Convention convention : kConventions) {
        const LectureState state = stateOf(convention);
        const LectureLook look = lookAt(state, 0);
        EXPECT_TRUE(look.scene.isEmpty());
        EXPECT_FALSE(look.press || look.hand || look.fingers);
        EXPECT_EQ(look.caption, skinCaption(*state.shown->target));
        EXPECT_EQ(look.manner, conventionName(convention));
    }
}

TEST(LectureLookTest, APressFeelsWhatCoreFeelsAndNamesNoBone)
{
    const LectureState state = stateOf(Convention::VentroglutealHand);
    int pressed = 0;
    for (std::size_t i = 0; i < state.steps.size(); ++i) {
        if (state.steps[i].kind != LectureStepKind::Press)
            continue;
        ++pressed;
        const LectureLook look = lookAt(state, static_cast<int>(i));
        ASSERT_TRUE(look.press);
        const Point at{look.press->cm.x(), look.press->cm.y()};
        const Feel feel = state.shown->feel->at(at, Builder::from(*state.policy).hand.fingerWidth).value();
        EXPECT_EQ(look.press->firmness, feel.firmness);
        EXPECT_EQ(look.press->words, feelPlaque(feel, *state.shown->target, at));
        EXPECT_TRUE(labelsOf(look.scene).isEmpty());
        EXPECT_EQ(look.caption, pressCaption(state.steps[i].code));
        for (const char* key : {"greater_trochanter", "asis", "iliac_crest"})
            EXPECT_FALSE(look.press->words.contains(landmarkName(key), Qt::CaseInsensitive));
    }
    EXPECT_EQ(pressed, 3);
}

TEST(LectureLookTest, AViewThatCannotBeFeltStillShowsTheFinger)
{
    const LectureState state = stateOf(bodyFor(Convention::DeltoidStrip, View::ShoulderThreeQuarter));
    const LectureLook look = lookAt(state, stepOf(state, LectureStepKind::Press));
    ASSERT_TRUE(look.press);
    EXPECT_TRUE(look.press->words.isEmpty());
}

TEST(LectureLookTest, OneThingIsNamedAtATime)
{
    for (const Convention convention : kConventions) {
        const LectureState state = stateOf(convention);
        for (std::size_t i = 0; i < state.steps.size(); ++i) {
            if (state.steps[i].kind != LectureStepKind::Build)
                continue;
            const LectureLook look = lookAt(state, static_cast<int>(i));
            ASSERT_EQ(labelsOf(look.scene).size(), 1) << keyOf(state.steps[i]);
            if (state.steps[i].code != StepCode::LayFingers) {
                EXPECT_EQ(labelsOf(look.scene).front(), plateWord(state.steps[i].code));
            }
            EXPECT_FALSE(look.caption.isEmpty());
        }
    }
}

TEST(LectureLookTest, FingersAreLaidOnceAndThenCounted)
{
    const LectureState state = stateOf(Convention::DeltoidFingers);
    const int first = buildOf(state, StepCode::LayFingers);
    const auto laid = *lookAt(state, first).fingers;
    EXPECT_NE(lookAt(state, first, 0.0).fingers, laid);
    EXPECT_EQ(lookAt(state, first + 1, 0.0).fingers, laid);
    EXPECT_EQ(labelsOf(lookAt(state, first).scene), QStringList{fingerbreadths(1)});
    EXPECT_EQ(labelsOf(lookAt(state, first + 2).scene), QStringList{fingerbreadths(3)});
    EXPECT_FALSE(lookAt(state, buildOf(state, StepCode::ArmpitLevel)).fingers);
}

TEST(LectureLookTest, TheHandIsThereUntilTheSiteIsMarked)
{
    const LectureState state = stateOf(Convention::VentroglutealHand);
    const int laid = buildOf(state, StepCode::LayPalm);
    EXPECT_FALSE(lookAt(state, laid - 1).hand);
    for (int step = laid; step <= buildOf(state, StepCode::IdealPoint); ++step)
        EXPECT_TRUE(lookAt(state, step).hand) << step;
    EXPECT_FALSE(lookAt(state, stepOf(state, LectureStepKind::Hazards)).hand);
    EXPECT_EQ(lookAt(state, buildOf(state, StepCode::IdealPoint)).hand->fork,
              state.shown->target->hand->fork);
}

TEST(LectureLookTest, ALineGrowsFromItsStartAndIsNamedWhenItIsWhole)
{
    const LectureState state = stateOf(Convention::VastusThirds);
    const int step = buildOf(state, StepCode::ThighLine);
    const auto newest = [&](double progress) { return lookAt(state, step, progress).scene.back(); };
    const auto lengthAt = [&](double progress) {
        const auto points = newest(progress).points;
        return QLineF(points.front(), points.back()).length();
    };
    EXPECT_EQ(lookAt(state, step, 0.0).scene.size() + 1, lookAt(state, step).scene.size());
    EXPECT_LT(lengthAt(0.25), lengthAt(0.5));
    EXPECT_NEAR(lengthAt(0.5), lengthAt(1.0) / 2.0, 1e-6);
    EXPECT_EQ(newest(0.25).points.front(), newest(1.0).points.front());
    EXPECT_TRUE(newest(0.99).label.isEmpty());
    EXPECT_EQ(newest(1.0).label, plateWord(StepCode::ThighLine));
}

TEST(LectureLookTest, ARegionIsOutlinedBeforeItIsARegion)
{
    const LectureState state = stateOf(Convention::DeltoidStrip);
    const int step = buildOf(state, StepCode::Region);
    EXPECT_EQ(countOf(lookAt(state, step, 0.5).scene, Role::Region), 0);
    EXPECT_EQ(countOf(lookAt(state, step, 0.5).scene, Role::Newest), 1);
    EXPECT_EQ(countOf(lookAt(state, step).scene, Role::Region), 1);
    EXPECT_EQ(countOf(lookAt(state, step).scene, Role::Ideal), 0);
}

TEST(LectureLookTest, EveryHazardIsShownAndNamed)
{
    for (const Convention convention : kConventions) {
        const LectureState state = stateOf(convention);
        const Target& target = *state.shown->target;
        const LectureLook look = lookAt(state, stepOf(state, LectureStepKind::Hazards));
        for (const Hazard& hazard : target.hazards)
            if (hazard.kind != HazardKind::Bone) {
                EXPECT_TRUE(labelsOf(look.scene).contains(plateWord(hazard.code)))
                    << std::string(wordOf(hazard.code));
            }
        EXPECT_EQ(countOf(look.scene, Role::Region), 1);
        EXPECT_EQ(countOf(look.scene, Role::Ideal), 1);
    }
}

TEST(LectureLookTest, AWrongPlaceStandsAloneWithItsHarm)
{
    for (const Convention convention : kConventions) {
        const LectureState state = stateOf(convention);
        for (std::size_t i = 0; i < state.steps.size(); ++i) {
            if (state.steps[i].kind != LectureStepKind::WrongPlace)
                continue;
            const LectureLook look = lookAt(state, static_cast<int>(i));
            EXPECT_EQ(countOf(look.scene, Role::Strike), 1) << keyOf(state.steps[i]);
            EXPECT_EQ(labelsOf(look.scene), QStringList{plateWord(state.steps[i].hazard)});
            EXPECT_EQ(look.caption, wrongPlaceCaption(state.steps[i].hazard));
        }
    }
}

TEST(LectureLookTest, EveryStepHasATitleAndOnlyLinesAndFiguresMove)
{
    for (const Convention convention : kConventions) {
        const LectureState state = stateOf(convention);
        for (std::size_t i = 0; i < state.steps.size(); ++i) {
            const LectureStep& step = state.steps[i];
            EXPECT_FALSE(stepTitle(*state.shown, step).isEmpty());
            const LectureLook begun = lookAt(state, static_cast<int>(i), 0.3);
            const LectureLook rests = lookAt(state, static_cast<int>(i), 1.0);
            const bool differs =
                begun.scene.size() != rests.scene.size() || labelsOf(begun.scene) != labelsOf(rests.scene);
            EXPECT_EQ(isMoving(*state.shown, step), differs) << keyOf(step);
        }
    }
}

TEST(LectureLookTest, TheAreaIsTheSameForEveryStepOfABody)
{
    const LectureState state = stateOf(Convention::VentroglutealMedians);
    const QRectF area = lookAt(state, 0).area;
    for (int step = 1; step < static_cast<int>(state.steps.size()); ++step)
        EXPECT_EQ(lookAt(state, step).area, area);
}

TEST(LectureLookTest, TwoTargetsAreToldApartAndMeasured)
{
    const auto lean = bodyFor(Convention::VastusThirds, View::ThighSide, Stoutness::Lean);
    const auto heavy = bodyFor(Convention::VastusThirds, View::ThighSide, Stoutness::Heavy);
    const Scene scene = besideScene(*lean->target, *heavy->target, "lean", "heavy");
    EXPECT_TRUE(labelsOf(scene).contains("lean"));
    EXPECT_TRUE(labelsOf(scene).contains("heavy"));
    const double apart = distance(lean->target->ideal, heavy->target->ideal);
    ASSERT_EQ(countOf(scene, Role::Arrow), 1);
    EXPECT_TRUE(labelsOf(scene).contains(cmText(apart).replace(u' ', QChar(QChar::Nbsp))));
    // One and the same place has no arrow.
    EXPECT_EQ(countOf(besideScene(*lean->target, *lean->target, "a", "b"), Role::Arrow), 0);
}

TEST(LectureLookTest, TheRoomsMarksShowVerdictsOnlyOnceRevealed)
{
    const LectureState state = stateOf(Convention::DeltoidStrip);
    std::vector<RoomMark> marks(2);
    marks[0].at = state.shown->target->ideal;
    marks[0].name = "Noor";
    marks[1].at = {-60.0, 0.0};
    marks[0].grade = gradeMark(*state.shown->target, *state.policy, marks[0].at, MarkedLimb::Arm);
    const Scene asked = roomScene(marks, false);
    EXPECT_EQ(labelsOf(asked), (QStringList{"1 Noor", "2"}));
    EXPECT_EQ(countOf(asked, Role::Landmark), 2);
    const Scene revealed = roomScene(marks, true);
    EXPECT_EQ(countOf(revealed, Role::MarkOnTarget), 1);
    EXPECT_TRUE(labelsOf(revealed).front().startsWith("1 Noor: On target, 0.0"));
    EXPECT_TRUE(labelsOf(revealed).back().contains("off the body"));
}

TEST(LectureLookTest, ManyMarksKeepOnlyTheirNumbers)
{
    const std::vector<RoomMark> marks(7);
    for (const SceneShape& shape : roomScene(marks, true)) {
        EXPECT_TRUE(shape.label.size() == 1) << qPrintable(shape.label);
        EXPECT_GT(shape.description.size(), shape.label.size());
    }
}

}  // namespace fb::test::lecture_look_test
