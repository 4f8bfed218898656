// A body is asked for, comes late or not at all, and brings its steps and marks: see lecture_presenter.h.
#include <gtest/gtest.h>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_shown_test {

TEST(LecturePresenterShownTest, WhatIsShownStaysWholeUntilTheNewSiteIsThere)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    sample.presenter.goTo(3);
    const auto before = sample.state();
    sample.bodies.holdsBack = true;
    sample.presenter.openSite(Site::VastusLateralis);
    EXPECT_EQ(sample.state().shown, before.shown);
    EXPECT_EQ(sample.state().steps, before.steps);
    EXPECT_EQ(sample.state().step, 3);
    sample.presenter.next();
    sample.presenter.next();
    sample.presenter.back();
    EXPECT_EQ(sample.state().step, 3) << "these are steps of the site to come";
    sample.bodies.answerNewest();
    EXPECT_EQ(sample.shown().target->site, Site::VastusLateralis);
    EXPECT_EQ(sample.state().step, 1);
    sample.presenter.openSite(Site::Ventrogluteal);
    sample.presenter.goTo(1000);
    sample.bodies.answerNewest();
    EXPECT_EQ(sample.state().step, sample.lastStep());
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, ABodyOfAnEarlierChoiceIsNeverShown)
{
    LectureSample sample;
    sample.bodies.holdsBack = true;
    sample.presenter.openSite(Site::VastusLateralis);
    sample.presenter.openSite(Site::Ventrogluteal);
    ASSERT_EQ(sample.bodies.waiting.size(), 2U);
    sample.bodies.answerOne(0);
    EXPECT_EQ(sample.shown().target->site, Site::Deltoid);
    sample.bodies.answerOne(0);
    EXPECT_EQ(sample.shown().target->site, Site::Ventrogluteal);
    sample.presenter.setSide(Side::Left);
    sample.presenter.setSide(Side::Right);
    sample.bodies.answerOne(0);
    EXPECT_EQ(sample.shown().target->side, Side::Right);
    sample.bodies.answerOne(0);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, EveryViewKeepsItsOwnStrokesAndMarks)
{
    LectureSample sample(Site::VastusLateralis);
    sample.presenter.setTool(LectureTool::Ask);
    sample.presenter.press(sample.ideal());
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({0.0, 0.0}, {1.0, -2.0});
    const auto strokes = sample.state().strokes;
    sample.presenter.press({3.0, 3.0});
    sample.presenter.drag({3.0, 4.0});

    sample.presenter.setView(View::ThighFront);
    EXPECT_TRUE(sample.state().strokes.isEmpty());
    EXPECT_TRUE(sample.state().room.empty());
    EXPECT_FALSE(sample.state().drawing.has_value());
    sample.presenter.release();
    sample.drawLine({0.0, 1.0}, {1.0, 1.0});
    expectLaws(sample);

    sample.presenter.setView(View::ThighSide);
    ASSERT_EQ(sample.state().strokes.size(), 2) << "the stroke that was being drawn is finished";
    EXPECT_EQ(sample.state().strokes.front().points, strokes.front().points);
    EXPECT_EQ(sample.state().room.size(), 1U);
    sample.presenter.setView(View::ThighFront);
    EXPECT_EQ(sample.state().strokes.size(), 1);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, TheOtherSideIsTheMirrorImage)
{
    LectureSample sample;
    sample.presenter.setStrokesStay(false);
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({1.0, -3.0}, {2.0, -5.0});
    sample.presenter.setTool(LectureTool::Ask);
    sample.presenter.press(sample.ideal());
    sample.presenter.reveal(true);
    const RoomMark right = sample.state().room.front();
    sample.presenter.setSide(Side::Left);
    EXPECT_EQ(sample.shown().target->side, Side::Left);
    EXPECT_EQ(sample.state().strokes.front().points, (QVector<QPointF>{{-1.0, -3.0}, {-2.0, -5.0}}));
    const RoomMark left = sample.state().room.front();
    EXPECT_EQ(left.at, mirrored(right.at));
    EXPECT_EQ(left.grade->verdict, Verdict::OnTarget);
    EXPECT_EQ(left.grade->distanceToBorder, right.grade->distanceToBorder);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, AnOlderBodyThatComesLateChangesNothing)
{
    LectureSample sample;
    sample.presenter.setCompare(Compare::OtherConvention);
    sample.bodies.holdsBack = true;
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 80.0});
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 90.0});
    sample.presenter.letGo();
    ASSERT_EQ(sample.bodies.waiting.size(), 4U);
    sample.bodies.answerOne(2);
    sample.bodies.answerOne(2);
    EXPECT_FALSE(sample.state().moving);
    sample.bodies.answerAll();
    EXPECT_EQ(sample.shown().ask.patient.weight(), Kg{90.0});
    EXPECT_EQ(sample.state().beside->ask.patient.weight(), Kg{90.0});
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, WhatOtherViewsKeepIsMirroredAsWell)
{
    LectureSample sample(Site::VastusLateralis);
    sample.presenter.setTool(LectureTool::Ask);
    sample.presenter.press({1.5, -2.0});
    sample.presenter.setView(View::ThighFront);
    sample.presenter.setSide(Side::Left);
    sample.presenter.setView(View::ThighSide);
    EXPECT_EQ(sample.state().room.at(0).at, (Point{-1.5, -2.0}));
}

TEST(LecturePresenterShownTest, ALabsOtherNumbersReachTheBodyBesideAsWell)
{
    LectureSample sample;
    sample.presenter.compareConvention(Convention::DeltoidTwoInches);
    const Point before = sample.state().beside->target->ideal;
    sample.presenter.useLibrary(lectureLibrary(),
                                lectureLibrary()->defaultPolicy().with(PolicyKey::DeltoidTwoInches, 5.6));
    EXPECT_LT(sample.state().beside->target->ideal.y, before.y - 0.1);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, AnotherPolicyKeepsStepBodyStrokesAndTheSpeakersOwnConvention)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    sample.presenter.goTo(5);
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({0.0, -3.0}, {0.0, -5.0});
    sample.presenter.compareConvention(Convention::DeltoidTwoInches);
    const std::string key = keyOf(sample.step());
    const Policy& shipped = lectureLibrary()->defaultPolicy();
    const Policy lower = shipped.with(PolicyKey::DeltoidStripIdeal, 0.15);
    const double was = sample.ideal().y();
    const Cm apart = sample.state().difference->apart;

    sample.presenter.useLibrary(lectureLibrary(), lower);
    EXPECT_LT(sample.ideal().y(), was - 0.1);
    EXPECT_EQ(keyOf(sample.step()), key);
    EXPECT_EQ(sample.state().strokes.size(), 1);
    EXPECT_NE(sample.state().difference->apart, apart);
    sample.presenter.useLibrary(lectureLibrary(), shipped.withConvention(Convention::DeltoidTwoInches));
    EXPECT_EQ(sample.shown().ask.convention, Convention::DeltoidTwoInches) << "it was the policy's own";
    EXPECT_EQ(sample.presenter.otherConvention(), Convention::DeltoidStrip);
    expectLaws(sample);
    sample.presenter.setConvention(Convention::DeltoidFingers);
    sample.presenter.useLibrary(lectureLibrary(), shipped);
    EXPECT_EQ(sample.shown().ask.convention, Convention::DeltoidFingers) << "chosen by the speaker";
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, AViewThatCannotBeMadeIsToldAndTheOldOneStays)
{
    LectureSample sample(Site::Ventrogluteal);
    sample.presenter.setCalm(true);
    sample.presenter.goTo(4);
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({0.0, 3.0}, {1.0, 4.0});
    const auto before = sample.state();
    sample.bodies.fails = [](const BodyAsk& ask) { return ask.view != View::HipSide; };
    sample.presenter.setView(View::HipBehind);
    ASSERT_TRUE(sample.state().notice.has_value());
    EXPECT_EQ(sample.state().notice->problem, Problem::PlateDisordered);
    EXPECT_EQ(sample.state().view, View::HipSide);
    sample.presenter.openSite(Site::Deltoid);
    EXPECT_EQ(sample.presenter.site(), Site::Ventrogluteal);
    EXPECT_EQ(sample.state().shown, before.shown);
    EXPECT_EQ(sample.state().step, before.step);
    EXPECT_EQ(sample.state().strokes.size(), 1);
    expectLaws(sample);
    sample.presenter.next();
    EXPECT_EQ(sample.state().step, before.step + 1);

    sample.presenter.dismissNotice();
    EXPECT_FALSE(sample.state().notice.has_value());
    sample.bodies.fails = [](const BodyAsk&) { return false; };
    sample.presenter.openSite(Site::Deltoid);
    EXPECT_EQ(sample.shown().target->site, Site::Deltoid);
    EXPECT_EQ(sample.state().step, 0);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, AFirstBodyThatCannotBeMadeLeavesItUnready)
{
    LectureSample sample(std::nullopt);
    sample.bodies.fails = [](const BodyAsk& ask) { return ask.view == View::ShoulderSide; };
    sample.presenter.openSite(Site::Deltoid);
    sample.presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
    EXPECT_FALSE(sample.state().ready);
    EXPECT_TRUE(sample.state().notice.has_value());
    expectLaws(sample);
    sample.presenter.openSite(Site::Ventrogluteal);
    EXPECT_TRUE(sample.state().ready);
    expectLaws(sample);
}

TEST(LecturePresenterShownTest, AFaultOfABodyThatIsNotWantedAnyMoreIsNotTold)
{
    LectureSample sample;
    sample.bodies.holdsBack = true;
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 100.0});
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 60.0});
    sample.bodies.fails = [](const BodyAsk& ask) { return ask.patient.weight() > Kg{90.0}; };
    sample.bodies.answerAll();
    EXPECT_FALSE(sample.state().notice.has_value());
    EXPECT_EQ(sample.shown().ask.patient.weight(), Kg{60.0});
}

TEST(LecturePresenterShownTest, NothingIsAnsweredOnceItIsGone)
{
    FakeBodies bodies;
    TestClock clock;
    bodies.holdsBack = true;
    {
        LecturePresenter presenter(bodies, clock);
        presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
        presenter.openSite(Site::Deltoid);
    }
    EXPECT_EQ(bodies.waiting.size(), 1U);
    bodies.answerAll();
    EXPECT_TRUE(bodies.waiting.empty());
}

}  // namespace fb::test::lecture_presenter_shown_test
