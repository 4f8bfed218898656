#include "app/lecture/lecture_presenter.h"

#include <gtest/gtest.h>

#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_test {

TEST(LecturePresenterTest, BeforeTheLibraryIsThereNothingIsShown)
{
    LectureSample sample(std::nullopt);
    LecturePresenter& presenter = sample.presenter;
    presenter.next();
    presenter.back();
    presenter.goTo(3);
    presenter.replay();
    presenter.press({0.0, -4.0});
    presenter.drag({1.0, -4.0});
    presenter.release();
    presenter.reveal(true);
    presenter.takeRoomMarks({RoomMark{}});
    presenter.setBody({30.0, Sex::Male, 180.0, 80.0});
    presenter.letGo();
    presenter.glideTo({31.0, Sex::Male, 181.0, 81.0});
    expectLaws(sample);
    EXPECT_FALSE(sample.state().ready);
    EXPECT_FALSE(sample.state().moving);
    EXPECT_FALSE(sample.state().revealed);
    EXPECT_TRUE(sample.state().room.empty());
    EXPECT_EQ(sample.state().body.statureCm, 181.0);
    EXPECT_EQ(sample.bodies.asked, 0);
    EXPECT_EQ(presenter.library(), nullptr);
}

TEST(LecturePresenterTest, ASiteThatWasOpenedEarlyIsShownOnceTheLibraryIsThere)
{
    LectureSample sample(std::nullopt);
    sample.presenter.openSite(Site::Ventrogluteal);
    EXPECT_FALSE(sample.state().ready);
    sample.presenter.useLibrary(
        lectureLibrary(), lectureLibrary()->defaultPolicy().withConvention(Convention::VentroglutealMedians));
    ASSERT_TRUE(sample.state().ready);
    EXPECT_EQ(sample.shown().ask.convention, Convention::VentroglutealMedians);
    EXPECT_EQ(sample.presenter.library(), lectureLibrary());
    expectLaws(sample);
}

TEST(LecturePresenterTest, TheLibraryAloneShowsNothingUntilASiteIsOpened)
{
    LectureSample sample(std::nullopt);
    sample.presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
    EXPECT_FALSE(sample.state().ready);
    sample.presenter.openSite(Site::Deltoid);
    EXPECT_TRUE(sample.state().ready);
}

TEST(LecturePresenterTest, ASiteOpensWithItsAskedViewAndThePolicysConvention)
{
    LectureSample sample;
    for (const Site site : kSites) {
        sample.presenter.openSite(site);
        EXPECT_EQ(sample.presenter.site(), site);
        EXPECT_EQ(sample.state().view, askedViews(site).front());
        EXPECT_EQ(sample.state().convention, lectureLibrary()->defaultPolicy().convention(site));
        EXPECT_EQ(sample.shown().target->site, site);
        EXPECT_EQ(sample.state().step, 0);
        EXPECT_EQ(sample.step().kind, LectureStepKind::Skin);
        EXPECT_EQ(sample.state().layers.size(), static_cast<qsizetype>(kLayers.size()));
        expectLaws(sample);
    }
}

TEST(LecturePresenterTest, OpeningASiteBeginsAnew)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    sample.presenter.goTo(4);
    sample.presenter.setTool(LectureTool::Pen);
    sample.drawLine({0.0, -3.0}, {1.0, -5.0});
    sample.presenter.press({0.0, -2.0});
    sample.presenter.setTool(LectureTool::Ask);
    sample.presenter.press({0.0, -4.0});
    sample.presenter.reveal(true);
    sample.presenter.setSide(Side::Left);
    sample.presenter.setStoutness(Stoutness::Heavy);
    const BodyValues heavy = sample.state().body;
    ASSERT_FALSE(sample.state().strokes.isEmpty());

    sample.presenter.openSite(Site::Deltoid);
    EXPECT_EQ(sample.state().step, 0);
    EXPECT_TRUE(sample.state().strokes.isEmpty());
    EXPECT_FALSE(sample.state().drawing.has_value());
    EXPECT_TRUE(sample.state().room.empty());
    EXPECT_FALSE(sample.state().revealed);
    EXPECT_EQ(sample.state().side, Side::Left) << "the patient is the same one";
    EXPECT_EQ(sample.state().body, heavy);
    expectLaws(sample);
}

TEST(LecturePresenterTest, AnotherConventionGoesOnAtTheSameStep)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    sample.presenter.goTo(sample.lastStep());
    const std::string last = keyOf(sample.step());
    sample.presenter.setConvention(Convention::DeltoidTwoInches);
    EXPECT_EQ(keyOf(sample.step()), last);
    EXPECT_EQ(sample.shown().target->convention, Convention::DeltoidTwoInches);
    const int asked = sample.bodies.asked;
    sample.presenter.setConvention(Convention::VastusThirds);
    sample.presenter.setConvention(Convention::DeltoidTwoInches);
    EXPECT_EQ(sample.state().convention, Convention::DeltoidTwoInches);
    EXPECT_EQ(sample.bodies.asked, asked) << "another site's, and the one that is shown";
    expectLaws(sample);
}

TEST(LecturePresenterTest, ASiteIsShownInItsOwnViewsOnly)
{
    LectureSample sample(Site::Ventrogluteal);
    sample.presenter.setView(View::HipBehind);
    EXPECT_EQ(sample.shown().ask.view, View::HipBehind);
    sample.presenter.setView(View::OpenHand);
    EXPECT_EQ(sample.state().view, View::HipBehind) << "the hand is no view of a patient";
    sample.presenter.setView(View::ShoulderSide);
    EXPECT_EQ(sample.state().view, View::HipBehind);
    EXPECT_FALSE(sample.state().notice.has_value());
    expectLaws(sample);
}

TEST(LecturePresenterTest, SkinTonesAreHeldToThoseThereAre)
{
    LectureSample sample;
    sample.presenter.setSkinTone(99);
    EXPECT_EQ(sample.state().skinTone, 4);
    EXPECT_EQ(sample.shown().picture->skinTone, 4);
    sample.presenter.setSkinTone(-1);
    EXPECT_EQ(sample.state().skinTone, 0);
    expectLaws(sample);
}

TEST(LecturePresenterTest, LayersArePeeledWithoutMakingABodyAnew)
{
    LectureSample sample;
    const int asked = sample.bodies.asked;
    sample.presenter.setLayerShown(Layer::Skin, false);
    EXPECT_FALSE(sample.state().layers.contains(Layer::Skin));
    const int changes = sample.changes;
    sample.presenter.setLayerShown(Layer::Skin, false);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.setLayerShown(Layer::Skin, true);
    EXPECT_TRUE(sample.state().layers.contains(Layer::Skin));
    EXPECT_EQ(sample.bodies.asked, asked);
}

TEST(LecturePresenterTest, TimeRunsFromTheOpeningAndCanBeSetBack)
{
    LectureSample sample(std::nullopt);
    sample.clock.now += Ms{60'000};
    sample.presenter.openSite(Site::Deltoid);
    EXPECT_EQ(sample.presenter.elapsed(), Ms{0});
    sample.clock.now += Ms{5'000};
    sample.presenter.openSite(Site::Ventrogluteal);
    EXPECT_EQ(sample.presenter.elapsed(), Ms{5'000}) << "another site is the same demonstration";
    sample.presenter.restartClock();
    EXPECT_EQ(sample.presenter.elapsed(), Ms{0});
    sample.clock.now -= Ms{1'000};
    EXPECT_EQ(sample.presenter.elapsed(), Ms{0}) << "a clock that runs backwards counts nothing";
}

TEST(LecturePresenterTest, BlankAndNoticeAreSaidOnlyWhereTheyChange)
{
    LectureSample sample;
    sample.presenter.setBlank(true);
    EXPECT_TRUE(sample.state().blank);
    sample.presenter.tell({Problem::ScreenLost, {}, {}});
    EXPECT_EQ(sample.state().notice->problem, Problem::ScreenLost);
    sample.presenter.dismissNotice();
    const int changes = sample.changes;
    sample.presenter.dismissNotice();
    sample.presenter.setBlank(true);
    sample.presenter.setSide(Side::Right);
    sample.presenter.setSkinTone(0);
    sample.presenter.setView(View::ShoulderSide);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.setBlank(false);
    EXPECT_FALSE(sample.state().blank);
}

}  // namespace fb::test::lecture_presenter_test
