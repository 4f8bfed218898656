#include <gtest/gtest.h>

#include <QPushButton>
#include <QToolButton>

#include "app/checkoff/check_off_page.h"
#include "app/demonstrate/audience_window.h"
#include "app/demonstrate/speaker_page.h"
#include "app/records/records_page.h"
#include "app/roster/samples.h"
#include "tests/support/open_window.h"

namespace fb::test::main_areas_test {

namespace {

void press(OpenWindow& open, const char* area)
{
    QTest::mouseClick(open.find<QToolButton>(area), Qt::LeftButton);
    QTest::qWait(1);
}

// The sample's first student at the first item.
void stand(OpenWindow& open)
{
    press(open, "areaCheckOff");
    CheckOffPresenter& checkOff = open.services.checkOff();
    checkOff.useSample();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !checkOff.state().desk.students.empty(); }));
    checkOff.begin(checkOff.state().desk.students.front().student.id);
    ASSERT_TRUE(QTest::qWaitFor([&] { return checkOff.state().open.has_value(); }));
}

}  // namespace

TEST(MainAreasTest, EachAreaHasItsPageAndTheSeedBelongsToPractice)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    EXPECT_EQ(open.window().findChild<CheckOffPage*>(), nullptr) << "made when first opened";
    press(open, "areaCheckOff");
    ASSERT_NE(open.window().findChild<CheckOffPage*>(), nullptr);
    EXPECT_TRUE(open.window().findChild<CheckOffPage*>()->isVisible());
    EXPECT_FALSE(open.find("seed")->isVisible());
    press(open, "areaRecords");
    EXPECT_TRUE(open.window().findChild<RecordsPage*>()->isVisible());
    EXPECT_FALSE(open.window().findChild<CheckOffPage*>()->isVisible());
    press(open, "areaPractice");
    EXPECT_TRUE(open.find("seed")->isVisible());
    EXPECT_FALSE(open.window().findChild<RecordsPage*>()->isVisible());
}

TEST(MainAreasTest, LargeLettersTakeTheWordmarksRoom)
{
    Preferences large = plainPreferences();
    large.textPercent = 200;
    OpenWindow open(large);
    ASSERT_TRUE(open.isReady);
    QTest::qWait(20);
    EXPECT_FALSE(open.find("wordmark")->isVisible());
    for (const char* area : {"areaPractice", "areaCheckOff", "areaDemonstrate", "areaRecords"})
        EXPECT_GE(open.find(area)->width(), open.find(area)->sizeHint().width()) << area;
    open.window().resize(2400, 1000);
    EXPECT_TRUE(open.find("wordmark")->isVisible());
    OpenWindow usual;
    ASSERT_TRUE(usual.isReady);
    EXPECT_TRUE(usual.find("wordmark")->isVisible());
}

TEST(MainAreasTest, NothingElseCanBeOpenedWhileAStudentIsAtTheScreen)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    stand(open);
    EXPECT_FALSE(open.find<QToolButton>("areaPractice")->isEnabled());
    EXPECT_FALSE(open.find<QToolButton>("areaRecords")->isEnabled());
    EXPECT_FALSE(open.find<QPushButton>("policyMenu")->isEnabled());
    open.window().openArea(Area::Practice);
    EXPECT_TRUE(open.window().findChild<CheckOffPage*>()->isVisible());
    open.services.checkOff().backToDesk();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !open.services.checkOff().state().open; }));
    press(open, "areaPractice");
    EXPECT_TRUE(open.find("seed")->isVisible());
}

TEST(MainAreasTest, ACheckOffThatWasCutOffIsWhatTheWindowOpensWith)
{
    OpenWindow first;
    ASSERT_TRUE(first.isReady);
    stand(first);
    first.services.checkOff().confirmIdentity();
    first.services.checkOff().startItems();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return first.services.checkOff().state().stage == CheckOffStage::OnScreen; }));

    MemorySettings settings;
    settings.stored = plainPreferences();
    MemoryProfiles profiles;
    AnsweringDialogs dialogs;
    CountingSeeds seeds;
    SystemScreens screens;
    Services again({settings, dialogs, seeds, first.records.clock, profiles, first.records, screens});
    again.window().show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return again.window().findChild<CheckOffPage*>() != nullptr; }, 20000));
    EXPECT_TRUE(again.window().findChild<CheckOffPage*>()->isVisible());
    ASSERT_TRUE(again.checkOff().state().desk.running.has_value());
    EXPECT_EQ(again.checkOff().state().desk.running->student.id,
              first.services.checkOff().state().open->student.id);
}

TEST(MainAreasTest, ADemonstrationOpensWithTheFirstSiteAndGoesByKeys)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    press(open, "areaDemonstrate");
    LecturePresenter& lecture = open.services.lecture();
    lecture.setCalm(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return lecture.state().ready; }, 20000));
    EXPECT_EQ(siteOf(lecture.state().convention), Site::Deltoid);
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.window().focusWidget() != nullptr; }));
    QTest::keyClick(open.window().focusWidget(), Qt::Key_PageDown);
    EXPECT_EQ(lecture.state().step, 1);
    lecture.openSite(Site::Ventrogluteal);
    ASSERT_TRUE(QTest::qWaitFor([&] { return lecture.state().shown->target->site == Site::Ventrogluteal; }));
    press(open, "areaPractice");
    press(open, "areaDemonstrate");
    EXPECT_EQ(siteOf(lecture.state().convention), Site::Ventrogluteal) << "it goes on where it was";
}

TEST(MainAreasTest, TheAudienceDoesNotStayWhenTheWindowCloses)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    press(open, "areaDemonstrate");
    AudienceWindow& audience = open.window().findChild<SpeakerPage*>()->audience();
    audience.open(&open.window());
    EXPECT_NE(audience.where(), AudienceWindow::Where::Closed);
    open.window().close();
    EXPECT_EQ(audience.where(), AudienceWindow::Where::Closed);
}

TEST(MainAreasTest, LeavingTheRecordsShutsTheirGate)
{
    OpenWindow open;
    open.records.people.push_back({{1, QStringLiteral("Ines Okafor")}, QStringLiteral("493857"), 0});
    ASSERT_TRUE(open.isReady);
    press(open, "areaRecords");
    open.services.records().open(1, QStringLiteral("493857"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.services.records().state().gate == RecordsGate::Open; }));
    press(open, "areaPractice");
    EXPECT_NE(open.services.records().state().gate, RecordsGate::Open);
    press(open, "areaRecords");
    EXPECT_NE(open.services.records().state().gate, RecordsGate::Open);
}

}  // namespace fb::test::main_areas_test
