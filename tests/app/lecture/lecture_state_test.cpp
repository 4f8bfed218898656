#include "app/lecture/lecture_state.h"

#include <gtest/gtest.h>

#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_state_test {

TEST(LectureStateTest, AStateNobodyHasTouchedShowsNothingAndGivesNothingAway)
{
    const LectureState state;
    EXPECT_FALSE(state.ready);
    EXPECT_FALSE(state.notice.has_value());
    EXPECT_EQ(state.shown, nullptr);
    EXPECT_EQ(state.beside, nullptr);
    EXPECT_EQ(state.compare, Compare::Nothing);
    EXPECT_EQ(state.tool, LectureTool::Point);
    EXPECT_FALSE(state.blank);
    EXPECT_FALSE(state.revealed);
    EXPECT_EQ(state.progress, 1.0) << "nothing moves";
    EXPECT_EQ(state.body, held(state.body)) << "its values are a body";
}

TEST(LectureStateTest, EveryToolAndComparisonCanBeChosen)
{
    LectureSample sample;
    for (int tool = kLectureToolCount - 1; tool >= 0; --tool) {
        sample.presenter.setTool(static_cast<LectureTool>(tool));
        EXPECT_EQ(static_cast<int>(sample.state().tool), tool);
    }
    sample.presenter.pin();
    for (int compare = kCompareCount - 1; compare >= 0; --compare) {
        sample.presenter.setCompare(static_cast<Compare>(compare));
        EXPECT_EQ(static_cast<int>(sample.state().compare), compare);
        expectLaws(sample);
    }
}

// A window may keep the state it paints: what comes after does not reach into it.
TEST(LectureStateTest, ACopyIsAMoment)
{
    LectureSample sample;
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({0.0, -3.0}, {1.0, -5.0});
    const LectureState before = sample.state();
    const auto body = before.shown;
    sample.presenter.wipe();
    sample.presenter.setSide(Side::Left);
    sample.presenter.openSite(Site::Ventrogluteal);
    EXPECT_EQ(before.strokes.size(), 1);
    EXPECT_EQ(before.shown, body);
    EXPECT_EQ(before.shown->target->side, Side::Right);
    EXPECT_EQ(before.steps, lectureSteps(*body->target));
}

}  // namespace fb::test::lecture_state_test
