// The room is asked: see lecture_presenter.h.
#include <gtest/gtest.h>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_room_test {

struct Asking : LectureSample {
    explicit Asking(Site site = Site::Deltoid) : LectureSample(site)
    {
        presenter.setCalm(true);
        presenter.setTool(LectureTool::Ask);
    }
    [[nodiscard]] const RoomMark& mark(std::size_t index) const { return state().room.at(index); }
};

TEST(LecturePresenterRoomTest, VolunteersAreGradedAllAtOnceWhenTheAnswerIsRevealed)
{
    for (const Site site : kSites) {
        Asking sample(site);
        const QPointF ideal = sample.ideal();
        sample.presenter.press(ideal);
        sample.presenter.press(ideal + QPointF(0.0, -6.0));
        sample.presenter.press({1000.0, 1000.0});
        ASSERT_EQ(sample.state().room.size(), 3U);
        for (const RoomMark& mark : sample.state().room)
            EXPECT_FALSE(mark.grade.has_value()) << "nothing is given away before";
        sample.presenter.reveal(true);
        ASSERT_TRUE(sample.mark(0).grade.has_value());
        EXPECT_EQ(sample.mark(0).grade->verdict, Verdict::OnTarget);
        EXPECT_EQ(sample.mark(0).grade->distanceToIdeal, Cm{0.0});
        ASSERT_TRUE(sample.mark(1).grade.has_value());
        EXPECT_NE(sample.mark(1).grade->verdict, Verdict::OnTarget);
        EXPECT_FALSE(sample.mark(2).grade.has_value()) << "off the body";
        expectLaws(sample);
        sample.presenter.reveal(false);
        EXPECT_FALSE(sample.mark(0).grade.has_value());
        expectLaws(sample);
    }
}

TEST(LecturePresenterRoomTest, RevealingLeavesTheStepAndClearingHidesTheAnswerForTheNext)
{
    Asking sample;
    sample.presenter.goTo(2);
    sample.presenter.press(sample.ideal());
    sample.presenter.reveal(true);
    EXPECT_EQ(sample.state().step, 2);
    const int changes = sample.changes;
    sample.presenter.reveal(true);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.clearRoom();
    EXPECT_TRUE(sample.state().room.empty());
    EXPECT_FALSE(sample.state().revealed);
    sample.presenter.press(sample.ideal());
    EXPECT_FALSE(sample.mark(0).grade.has_value());
    sample.presenter.clearRoom();
    const int cleared = sample.changes;
    sample.presenter.clearRoom();
    EXPECT_EQ(sample.changes, cleared);
    expectLaws(sample);
}

TEST(LecturePresenterRoomTest, AnotherBodyGradesTheSamePlacesAnew)
{
    Asking sample;
    sample.presenter.press(sample.ideal() + QPointF(0.3, 0.2));
    sample.presenter.reveal(true);
    const RoomMark before = sample.mark(0);
    sample.presenter.setBody({40.0, Sex::Male, 205.0, 90.0});
    EXPECT_EQ(sample.mark(0).at, before.at);
    EXPECT_NE(sample.mark(0).grade->distanceToIdeal, before.grade->distanceToIdeal);
    expectLaws(sample);
    sample.presenter.setConvention(Convention::DeltoidTwoInches);
    expectLaws(sample);
    sample.presenter.press(sample.ideal());
    EXPECT_EQ(sample.mark(1).grade->verdict, Verdict::OnTarget) << "while it is revealed, at once";
}

TEST(LecturePresenterRoomTest, MarksAreNamedAndDropped)
{
    Asking sample;
    sample.presenter.press({0.0, -3.0});
    sample.presenter.press({0.0, -4.0});
    sample.presenter.press({0.0, -5.0});
    sample.presenter.nameRoomMark(1, QStringLiteral("  =Rosa\n Lindqvist "));
    EXPECT_EQ(sample.mark(1).name, QStringLiteral("=Rosa Lindqvist"));
    sample.presenter.nameRoomMark(0, QString(500, u'x'));
    EXPECT_EQ(sample.mark(0).name.size(), kLongestRoomName);
    const int changes = sample.changes;
    sample.presenter.nameRoomMark(1, QStringLiteral("=Rosa Lindqvist"));
    sample.presenter.nameRoomMark(-1, QStringLiteral("A"));
    sample.presenter.nameRoomMark(3, QStringLiteral("A"));
    sample.presenter.dropRoomMark(-1);
    sample.presenter.dropRoomMark(3);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.dropRoomMark(0);
    ASSERT_EQ(sample.state().room.size(), 2U);
    EXPECT_EQ(sample.mark(0).name, QStringLiteral("=Rosa Lindqvist"));
    EXPECT_EQ(sample.mark(1).at, (Point{0.0, -5.0}));
}

TEST(LecturePresenterRoomTest, OneMarkTooManyIsToldAndTheOthersStay)
{
    Asking sample;
    for (int i = 0; i < kMostRoomMarks; ++i)
        sample.presenter.press({0.0, -0.1 * i});
    EXPECT_FALSE(sample.state().notice.has_value());
    const int changes = sample.changes;
    sample.presenter.press({0.0, -9.0});
    EXPECT_EQ(sample.state().room.size(), static_cast<std::size_t>(kMostRoomMarks));
    EXPECT_EQ(sample.state().room.back().at.y, -0.1 * (kMostRoomMarks - 1));
    EXPECT_EQ(sample.state().notice, (Fault{Problem::RoomFull, {}, {}, 0.0, kMostRoomMarks}));
    EXPECT_EQ(sample.changes, changes + 1);
    sample.presenter.dismissNotice();
    sample.presenter.dropRoomMark(3);
    sample.presenter.press({0.0, -9.0});
    EXPECT_EQ(sample.state().room.back().at.y, -9.0) << "there is a place again";
    EXPECT_FALSE(sample.state().notice.has_value());
    expectLaws(sample);
}

TEST(LecturePresenterRoomTest, OfTooManyMarksAtOnceNoneIsCutOffInSilence)
{
    Asking sample;
    sample.presenter.press({0.0, -3.0});
    const RoomMark read{{}, {1.0, -4.0}, {}};
    sample.presenter.takeRoomMarks(std::vector<RoomMark>(kMostRoomMarks + 1, read));
    ASSERT_EQ(sample.state().room.size(), 1U) << "those that are there stay";
    EXPECT_EQ(sample.mark(0).at, (Point{0.0, -3.0}));
    EXPECT_EQ(sample.state().notice, (Fault{Problem::RoomFull, {}, {}, 0.0, kMostRoomMarks}));
    sample.presenter.takeRoomMarks(std::vector<RoomMark>(kMostRoomMarks, read));
    EXPECT_EQ(sample.state().room.size(), static_cast<std::size_t>(kMostRoomMarks));
    EXPECT_EQ(sample.mark(0).at, read.at);
    expectLaws(sample);
}

TEST(LecturePresenterRoomTest, MarksThatAreReadStandInPlaceOfOthersAndAreGradedHere)
{
    Asking sample;
    sample.presenter.press({0.0, -3.0});
    Grade made;
    made.verdict = Verdict::OnTarget;
    const Point ideal = sample.shown().target->ideal;
    sample.presenter.takeRoomMarks({{QStringLiteral("A"), {0.0, 5.0}, made}, {{}, ideal, {}}});
    ASSERT_EQ(sample.state().room.size(), 2U);
    EXPECT_FALSE(sample.mark(0).grade.has_value()) << "a grade is never taken from outside";
    sample.presenter.reveal(true);
    EXPECT_NE(sample.mark(0).grade->verdict, Verdict::OnTarget);
    sample.presenter.takeRoomMarks({{{}, ideal, {}}});
    EXPECT_EQ(sample.mark(0).grade->verdict, Verdict::OnTarget);
    expectLaws(sample);
}

TEST(LecturePresenterRoomTest, AViewToLookAtOnlyTakesNoMarks)
{
    Asking sample(Site::Ventrogluteal);
    sample.presenter.setView(View::HipBehind);
    sample.presenter.press({0.0, 0.0});
    EXPECT_TRUE(sample.state().room.empty());
    ASSERT_TRUE(sample.state().notice.has_value());
    EXPECT_EQ(sample.state().notice->problem, Problem::ViewShowOnly);
    EXPECT_EQ(sample.state().notice->what, "hip-behind");
    sample.presenter.dismissNotice();
    sample.presenter.takeRoomMarks({RoomMark{}});
    EXPECT_TRUE(sample.state().room.empty());
    EXPECT_TRUE(sample.state().notice.has_value());
    sample.presenter.dismissNotice();
    sample.bodies.holdsBack = true;
    sample.presenter.setView(View::HipSide);
    sample.presenter.press({0.0, 0.0});
    EXPECT_TRUE(sample.state().room.empty()) << "the view is on its way";
    EXPECT_FALSE(sample.state().notice.has_value());
    sample.bodies.answerAll();
    sample.presenter.press({0.0, 0.0});
    EXPECT_EQ(sample.state().room.size(), 1U);
    expectLaws(sample);
}

}  // namespace fb::test::lecture_presenter_room_test
