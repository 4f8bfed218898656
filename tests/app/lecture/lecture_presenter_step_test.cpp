// One step after the other: see lecture_presenter.h.
#include <gtest/gtest.h>

#include <QTest>
#include <set>

#include "app/lecture/lecture_look.h"
#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_step_test {

// The first step in which something moves.
int movingStep(const LectureSample& sample)
{
    const auto& steps = sample.state().steps;
    for (std::size_t i = 1; i < steps.size(); ++i)
        if (isMoving(sample.shown(), steps[i]))
            return static_cast<int>(i);
    ADD_FAILURE() << "nothing moves in this site";
    return 0;
}

// Turns the clock and waits for the frame that sees it.
void pass(LectureSample& sample, int ms)
{
    sample.clock.now += Ms{ms};
    const int seen = sample.moves;
    EXPECT_TRUE(QTest::qWaitFor([&] { return sample.moves > seen; }));
}

class LecturePresenterWalkTest : public ::testing::TestWithParam<Site> {};

TEST_P(LecturePresenterWalkTest, AWholeDemonstrationGoesToItsEndAndBack)
{
    LectureSample sample(GetParam());
    std::set<std::string> keys{keyOf(sample.step())};
    int moving = 0;
    for (int step = 1; step <= sample.lastStep(); ++step) {
        sample.presenter.next();
        EXPECT_EQ(sample.state().step, step);
        const bool moves = isMoving(sample.shown(), sample.step());
        EXPECT_EQ(sample.presenter.isStepMoving(), moves);
        EXPECT_EQ(sample.state().progress, moves ? 0.0 : 1.0);
        if (moves) {
            ++moving;
            pass(sample, LecturePresenter::kStepMs);
            EXPECT_EQ(sample.state().progress, 1.0);
            EXPECT_FALSE(sample.presenter.isStepMoving());
        }
        keys.insert(keyOf(sample.step()));
        expectLaws(sample);
    }
    EXPECT_GE(moving, 2);
    EXPECT_EQ(keys.size(), sample.state().steps.size()) << "every step was seen";
    EXPECT_EQ(sample.step().kind, LectureStepKind::WrongPlace);
    const int changes = sample.changes;
    sample.presenter.next();
    EXPECT_EQ(sample.changes, changes) << "at the last step nothing happens";
    for (int step = sample.lastStep() - 1; step >= 0; --step) {
        sample.presenter.back();
        EXPECT_EQ(sample.state().step, step);
        EXPECT_EQ(sample.state().progress, 1.0);
        expectLaws(sample);
    }
    EXPECT_EQ(sample.step().kind, LectureStepKind::Skin);
    const int before = sample.changes;
    sample.presenter.back();
    EXPECT_EQ(sample.changes, before);
}

// Every convention of every site in every view of it, once through.
TEST_P(LecturePresenterWalkTest, EveryConventionAndViewGoesToItsEnd)
{
    LectureSample sample(GetParam());
    sample.presenter.setCalm(true);
    for (const View view : kViews) {
        if (siteOf(view) != GetParam())
            continue;
        sample.presenter.setView(view);
        for (const Convention convention : conventionsOf(GetParam())) {
            sample.presenter.setConvention(convention);
            sample.presenter.goTo(0);
            for (int step = 1; step <= sample.lastStep(); ++step) {
                sample.presenter.next();
                ASSERT_EQ(sample.state().step, step);
                EXPECT_EQ(sample.state().progress, 1.0) << "without motion";
            }
            expectLaws(sample);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Sites, LecturePresenterWalkTest, ::testing::ValuesIn(kSites), [](const auto& each) {
    std::string name(wordOf(each.param));
    std::erase(name, '-');
    return name;
});

TEST(LecturePresenterStepTest, AStepComesSmoothlyAndRests)
{
    LectureSample sample;
    sample.presenter.goTo(movingStep(sample));
    EXPECT_EQ(sample.state().progress, 0.0);
    const int changes = sample.changes;
    pass(sample, LecturePresenter::kStepMs / 10);
    EXPECT_NEAR(sample.state().progress, 0.028, 1e-9) << "it sets out slowly";
    pass(sample, LecturePresenter::kStepMs * 4 / 10);
    EXPECT_NEAR(sample.state().progress, 0.5, 1e-9);
    pass(sample, LecturePresenter::kStepMs * 4 / 10);
    EXPECT_NEAR(sample.state().progress, 0.972, 1e-9) << "and arrives slowly";
    pass(sample, LecturePresenter::kStepMs);
    EXPECT_EQ(sample.state().progress, 1.0);
    EXPECT_EQ(sample.changes, changes) << "frames are no other change";
    EXPECT_EQ(sample.bodies.asked, 1) << "the body is the same all the time";
}

TEST(LecturePresenterStepTest, NextFinishesWhatRunsBeforeItGoesOn)
{
    LectureSample sample;
    const int step = movingStep(sample);
    sample.presenter.goTo(step);
    pass(sample, LecturePresenter::kStepMs / 3);
    sample.presenter.next();
    EXPECT_EQ(sample.state().step, step);
    EXPECT_EQ(sample.state().progress, 1.0);
    EXPECT_FALSE(sample.presenter.isStepMoving());
    sample.presenter.next();
    EXPECT_EQ(sample.state().step, step + 1);
}

TEST(LecturePresenterStepTest, BackLeavesWhatRunsForTheStepBeforeIt)
{
    LectureSample sample;
    const int step = movingStep(sample);
    sample.presenter.goTo(step);
    pass(sample, LecturePresenter::kStepMs / 3);
    sample.presenter.back();
    EXPECT_EQ(sample.state().step, step - 1);
    EXPECT_EQ(sample.state().progress, 1.0);
    EXPECT_FALSE(sample.presenter.isStepMoving());
}

TEST(LecturePresenterStepTest, AStepIsGoneToWithinThoseThereAre)
{
    LectureSample sample;
    sample.presenter.goTo(1'000'000);
    EXPECT_EQ(sample.state().step, sample.lastStep());
    const int step = movingStep(sample);
    sample.presenter.goTo(step);
    EXPECT_FALSE(sample.presenter.isStepMoving()) << "an earlier one is there at once";
    const int changes = sample.changes;
    sample.presenter.goTo(step);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.goTo(-5);
    EXPECT_EQ(sample.state().step, 0);
}

TEST(LecturePresenterStepTest, AStepIsReplayed)
{
    LectureSample sample;
    const int step = movingStep(sample);
    sample.presenter.goTo(step);
    sample.presenter.next();
    ASSERT_EQ(sample.state().progress, 1.0);
    sample.presenter.replay();
    EXPECT_TRUE(sample.presenter.isStepMoving());
    EXPECT_EQ(sample.state().step, step);
    EXPECT_EQ(sample.state().progress, 0.0);
    pass(sample, LecturePresenter::kStepMs);
    EXPECT_EQ(sample.state().progress, 1.0);
    sample.presenter.goTo(0);
    sample.presenter.replay();
    EXPECT_EQ(sample.state().progress, 1.0) << "nothing moves in the first";
}

TEST(LecturePresenterStepTest, WithoutMotionAStepIsThereAtOnce)
{
    LectureSample sample;
    const int step = movingStep(sample);
    sample.presenter.goTo(step);
    sample.presenter.setCalm(true);
    EXPECT_EQ(sample.state().progress, 1.0);
    EXPECT_FALSE(sample.presenter.isStepMoving());
    sample.presenter.replay();
    EXPECT_EQ(sample.state().progress, 1.0);
    sample.presenter.back();
    sample.presenter.next();
    EXPECT_EQ(sample.state().step, step);
    EXPECT_FALSE(sample.presenter.isStepMoving());
}

TEST(LecturePresenterStepTest, AStepGoesOnMovingWhileTheBodyChanges)
{
    LectureSample sample;
    sample.presenter.goTo(movingStep(sample));
    pass(sample, LecturePresenter::kStepMs / 2);
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 90.0});
    sample.presenter.letGo();
    EXPECT_TRUE(sample.presenter.isStepMoving());
    EXPECT_NEAR(sample.state().progress, 0.5, 1e-9);
    pass(sample, LecturePresenter::kStepMs);
    EXPECT_EQ(sample.state().progress, 1.0);
    expectLaws(sample);
}

TEST(LecturePresenterStepTest, AStepThatIsNotInAnotherConventionRests)
{
    LectureSample sample(Site::Ventrogluteal);
    int triangle = 0;
    while (sample.state().steps[static_cast<std::size_t>(triangle)].code != StepCode::FingerTriangle)
        ++triangle;
    sample.presenter.goTo(triangle);
    sample.presenter.setConvention(Convention::VentroglutealMedians);
    EXPECT_FALSE(sample.presenter.isStepMoving());
    EXPECT_EQ(sample.state().progress, 1.0);
    EXPECT_NE(keyOf(sample.step()), "build finger_triangle");
    expectLaws(sample);
}

}  // namespace fb::test::lecture_presenter_step_test
