#include "app/demonstrate/audience_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include "app/demonstrate/lecture_view.h"
#include "tests/support/fake_screens.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::audience_window_test {

using Where = AudienceWindow::Where;

struct Room : LectureSample {
    explicit Room(const QVector<ScreenPlace>& places) : screens(places), audience(presenter, screens)
    {
        speaker.setGeometry(QRect(100, 80, 900, 600));
        speaker.show();
        presenter.setCalm(true);
        page = new QWidget(&speaker);
    }

    FakeScreens screens;
    QWidget speaker;
    QWidget* page = nullptr;
    AudienceWindow audience;
    QSignalSpy moved{&audience, &AudienceWindow::moved};
    QSignalSpy lost{&audience, &AudienceWindow::screenLost};
};

TEST(AudienceWindowTest, IsClosedUntilItIsOpened)
{
    Room room({kLaptop, kProjector});
    EXPECT_EQ(room.audience.where(), Where::Closed);
    EXPECT_FALSE(room.audience.isVisible());
    room.audience.swap();
    room.screens.plug(kThird);
    EXPECT_EQ(room.audience.where(), Where::Closed);
    EXPECT_FALSE(room.audience.isVisible());
}

TEST(AudienceWindowTest, FillsTheScreenTheSpeakerIsNotOn)
{
    Room room({kLaptop, kProjector});
    room.audience.open(room.page);
    EXPECT_EQ(room.audience.where(), Where::OtherScreen);
    EXPECT_TRUE(room.audience.isVisible());
    EXPECT_EQ(room.audience.geometry(), kProjector.geometry);
    EXPECT_EQ(room.audience.view().size(), kProjector.geometry.size());
    EXPECT_TRUE(room.audience.windowFlags().testFlag(Qt::FramelessWindowHint));
    EXPECT_EQ(room.moved.count(), 1);

    room.audience.close();
    room.speaker.move(kProjector.geometry.topLeft() + QPoint(20, 20));
    room.audience.open(room.page);
    EXPECT_EQ(room.audience.geometry(), kLaptop.geometry);
}

TEST(AudienceWindowTest, UnpluggedItIsPutAwayAndComesBack)
{
    Room room({kLaptop, kProjector});
    room.audience.open(room.page);
    room.screens.unplug(kProjector);
    EXPECT_EQ(room.audience.where(), Where::PutAway);
    EXPECT_FALSE(room.audience.isVisible());
    EXPECT_EQ(room.lost.count(), 1);
    EXPECT_FALSE(room.state().notice) << "the page says it, nobody else";

    room.screens.plug(kThird);
    EXPECT_EQ(room.audience.where(), Where::OtherScreen);
    EXPECT_EQ(room.audience.geometry(), kThird.geometry);
    EXPECT_EQ(room.lost.count(), 1);
    EXPECT_EQ(room.moved.count(), 3);
}

TEST(AudienceWindowTest, AnUnpluggedScreenChangesNothingOfTheLecture)
{
    Room room({kLaptop, kProjector});
    room.presenter.goTo(2);
    room.audience.open(room.page);
    room.screens.unplug(kProjector);
    EXPECT_EQ(room.state().step, 2);
    room.presenter.next();
    room.screens.plug(kProjector);
    EXPECT_EQ(room.state().step, 3);
    EXPECT_TRUE(QTest::qWaitFor([&] { return room.audience.view().isSharp(); }, 20000));
}

TEST(AudienceWindowTest, OfThreeScreensTheLossOfItsOwnMovesItOn)
{
    Room room({kLaptop, kProjector, kThird});
    room.audience.open(room.page);
    EXPECT_EQ(room.audience.geometry(), kProjector.geometry);
    room.screens.unplug(kProjector);
    EXPECT_EQ(room.audience.where(), Where::OtherScreen);
    EXPECT_EQ(room.audience.geometry(), kThird.geometry);
    EXPECT_EQ(room.lost.count(), 0);
    room.screens.plug(kProjector);
    EXPECT_EQ(room.audience.geometry(), kThird.geometry) << "it stays where it is";
}

TEST(AudienceWindowTest, OnOneScreenAKeyBringsItAndPutsItAway)
{
    Room room({kLaptop});
    room.audience.open(room.page);
    EXPECT_EQ(room.audience.where(), Where::OverSpeaker);
    EXPECT_EQ(room.audience.geometry(), kLaptop.geometry);
    QTest::keyClick(&room.audience.view(), Qt::Key_F6);
    EXPECT_EQ(room.audience.where(), Where::PutAway);
    EXPECT_FALSE(room.audience.isVisible());
    EXPECT_EQ(room.lost.count(), 0);
    room.audience.swap();
    EXPECT_EQ(room.audience.where(), Where::OverSpeaker);
    EXPECT_TRUE(room.audience.isVisible());
    room.screens.plug(kProjector);
    EXPECT_EQ(room.audience.where(), Where::OtherScreen);
    EXPECT_EQ(room.audience.geometry(), kProjector.geometry);
}

TEST(AudienceWindowTest, TheSpeakerPointsOnItWhileItIsAllThereIs)
{
    Room room({kLaptop});
    room.audience.open(room.page);
    ASSERT_TRUE(QTest::qWaitFor([&] { return room.audience.view().isSharp(); }, 20000));
    room.presenter.setTool(LectureTool::Ask);
    QTest::mouseClick(&room.audience.view(), Qt::LeftButton, {}, QPoint(600, 350));
    EXPECT_EQ(room.state().room.size(), 1U);
    room.screens.plug(kProjector);
    ASSERT_TRUE(QTest::qWaitFor([&] { return room.audience.view().isSharp(); }, 20000));
    QTest::mouseClick(&room.audience.view(), Qt::LeftButton, {}, QPoint(500, 350));
    EXPECT_EQ(room.state().room.size(), 1U);
}

TEST(AudienceWindowTest, TwoScreensThatShowTheSameAreOne)
{
    const ScreenPlace mirror{QStringLiteral("mirror"), kLaptop.geometry};
    Room room({kLaptop, mirror});
    room.audience.open(room.page);
    EXPECT_EQ(room.audience.where(), Where::OverSpeaker);
}

TEST(AudienceWindowTest, WithTwoScreensTheyAreExchanged)
{
    Room room({kLaptop, kProjector});
    room.audience.open(room.page);
    room.audience.swap();
    EXPECT_EQ(room.audience.where(), Where::OtherScreen);
    EXPECT_EQ(room.audience.geometry(), kLaptop.geometry);
    EXPECT_TRUE(kProjector.geometry.contains(room.speaker.geometry()));
    EXPECT_EQ(room.moved.count(), 1) << "it is still on the other screen";
    room.audience.swap();
    EXPECT_EQ(room.audience.geometry(), kProjector.geometry);
    EXPECT_TRUE(kLaptop.geometry.contains(room.speaker.geometry()));
}

TEST(AudienceWindowTest, AMaximisedSpeakerStaysSoWhenExchanged)
{
    Room room({kLaptop, kProjector});
    room.speaker.showMaximized();
    room.audience.open(room.page);
    room.audience.swap();
    EXPECT_TRUE(room.speaker.isMaximized());
    EXPECT_TRUE(room.speaker.isVisible());
}

TEST(AudienceWindowTest, EscapeOrTheSystemClosesIt)
{
    Room room({kLaptop, kProjector});
    room.audience.open(room.page);
    QTest::keyClick(&room.audience.view(), Qt::Key_Escape);
    EXPECT_EQ(room.audience.where(), Where::Closed);
    EXPECT_FALSE(room.audience.isVisible());
    room.audience.open(room.page);
    static_cast<QWidget&>(room.audience).close();
    EXPECT_EQ(room.audience.where(), Where::Closed);
    room.screens.unplug(kProjector);
    EXPECT_EQ(room.lost.count(), 0);
}

TEST(AudienceWindowTest, ASpeakerThatIsGoneDoesNoHarm)
{
    Room room({kLaptop, kProjector});
    {
        QWidget passing;
        room.audience.open(&passing);
    }
    room.audience.swap();
    room.screens.unplug(kProjector);
    room.audience.swap();
    EXPECT_EQ(room.audience.where(), Where::OverSpeaker);
    EXPECT_EQ(room.audience.geometry(), kLaptop.geometry);
}

TEST(AudienceWindowTest, DoesNotKeepTheProgramAlive)
{
    Room room({kLaptop, kProjector});
    EXPECT_FALSE(room.audience.testAttribute(Qt::WA_QuitOnClose));
    EXPECT_FALSE(room.audience.windowTitle().isEmpty());
}

}  // namespace fb::test::audience_window_test
