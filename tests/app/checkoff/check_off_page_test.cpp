// The area of check-off by real mouse and keys, from an empty store to the next student.
#include "app/checkoff/check_off_page.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QTableView>

#include "app/canvas/plate_view.h"
#include "app/look/style.h"
#include "tests/support/check_off_run.h"
#include "tests/support/layout_audit.h"
#include "tests/support/no_feedback.h"

namespace check_off_page_test {

namespace {

using namespace fb;
using namespace fb::test;

struct Area {
    explicit Area(CheckOffPresenter& shown) : presenter(shown), page(shown, dialogs)
    {
        page.setScheme(schemeOf(PaletteKind::Light));
        page.resize(1280, 720);
        page.show();
        isReady = QTest::qWaitForWindowActive(&page);
        page.takeKeys();
    }
    [[nodiscard]] QWidget* find(const char* name) { return page.findChild<QWidget*>(QLatin1String(name)); }
    // One press of the mouse.
    void click(const char* name)
    {
        auto* button = qobject_cast<QAbstractButton*>(find(name));
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isVisible()) << name;
        ASSERT_TRUE(button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
        ++clicks;
    }
    [[nodiscard]] PlateView& plate() { return *page.findChild<PlateView*>(QStringLiteral("plate")); }
    [[nodiscard]] bool sharp()
    {
        return QTest::qWaitFor([this] { return presenter.items().state().picture && plate().isSharp(); });
    }

    CheckOffPresenter& presenter;
    AnsweringDialogs dialogs;
    CheckOffPage page;
    bool isReady = false;
    int clicks = 0;
};

TEST(CheckOffPageTest, FromAnEmptyStoreToTheFirstItemInAtMostFivePresses)
{
    MemoryRecords records;
    CountingSeeds seeds;
    CheckOffPresenter presenter(records, records.clock, seeds);
    presenter.useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(), QStringLiteral("{}"));
    presenter.openDesk();
    Area area(presenter);
    ASSERT_TRUE(area.isReady);
    area.click("useSample");
    area.click("start");
    area.click("identityYes");
    area.click("beginItems");
    ASSERT_EQ(presenter.state().stage, CheckOffStage::OnScreen);
    EXPECT_TRUE(area.plate().isVisible());
    EXPECT_TRUE(area.sharp());
    EXPECT_LE(area.clicks, 5) << "and one more for the area itself";
    RecordProperty("events_to_first_item", area.clicks + 1);
}

TEST(CheckOffPageTest, TheNextStudentIsOnePressAfterTheSignature)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    run.toClosing();
    run.sign();
    area.click("nextStudent");
    EXPECT_EQ(area.clicks, 1);
    EXPECT_TRUE(area.find("identityName")->isVisible());
    EXPECT_EQ(run.state().open->student.id, QStringLiteral("S-2"));
}

TEST(CheckOffPageTest, TheStudentsPartByKeyboardAlone)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    const auto press = [](Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); };
    press(Qt::Key_Return);
    ASSERT_EQ(run.state().stage, CheckOffStage::Identity);
    press(Qt::Key_Return);
    ASSERT_EQ(run.state().stage, CheckOffStage::Identity)
        << "nobody is taken for somebody by one key too many";
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    ASSERT_EQ(run.state().stage, CheckOffStage::Instructions);
    press(Qt::Key_Return);
    ASSERT_EQ(run.state().stage, CheckOffStage::OnScreen);
    for (int item = 0; item < run.state().itemCount; ++item) {
        ASSERT_TRUE(area.sharp());
        ASSERT_EQ(run.state().item, item);
        ASSERT_EQ(QApplication::focusWidget(), &area.plate());
        press(Qt::Key_Down);
        press(Qt::Key_Return);
        EXPECT_EQ(feedbackIn(area.page, item == 1), QStringList());
        press(Qt::Key_Return);
        EXPECT_EQ(feedbackIn(area.page, true), QStringList());
    }
    ASSERT_EQ(run.state().stage, CheckOffStage::Handover);
    press(Qt::Key_Return);
    EXPECT_EQ(run.state().stage, CheckOffStage::Handover) << "the assessor goes on, not the last key";
}

TEST(CheckOffPageTest, AKeyHeldDownGoesNoFurtherThanOnePress)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    const auto hold = [] {
        for (int i = 0; i < 10; ++i) {
            QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QString(), true);
            QCoreApplication::sendEvent(QApplication::focusWidget(), &held);
        }
    };
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    hold();
    EXPECT_EQ(run.state().stage, CheckOffStage::Identity);
    run.presenter->confirmIdentity();
    run.presenter->startItems();
    ASSERT_TRUE(area.sharp());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_TRUE(run.items().state().mark.has_value());
    hold();
    EXPECT_EQ(run.state().item, 0);
}

TEST(CheckOffPageTest, EveryPageHoldsItsWordsAndItsNames)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    const auto look = [&](const char* where) {
        QCoreApplication::processEvents();
        EXPECT_EQ(layoutFaults(area.page), QStringList()) << where;
        for (const QWidget* shown : area.page.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
            if (shown->isVisible()) {
                EXPECT_EQ(namelessControls(*shown), QStringList()) << where;
            }
        }
    };
    look("desk");
    run.presenter->begin(QStringLiteral("S-2"));
    look("identity");
    run.presenter->confirmIdentity();
    look("instructions");
    run.presenter->startItems();
    ASSERT_TRUE(area.sharp());
    look("items");
    run.presenter->pause(QStringLiteral("fire alarm"));
    look("paused");
    run.presenter->resume();
    while (run.state().stage == CheckOffStage::OnScreen)
        run.confirm();
    look("handover");
}

TEST(CheckOffPageTest, EveryPageFitsTheSmallestScreenWithLargeLetters)
{
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.5);
    {
        CheckOffRun run;
        Area area(*run.presenter);
        ASSERT_TRUE(area.isReady);
        const auto fits = [&](const char* where) {
            QCoreApplication::processEvents();
            EXPECT_LE(area.page.minimumSizeHint().width(), 1280) << where;
            EXPECT_EQ(area.page.width(), 1280) << where;
            EXPECT_EQ(layoutFaults(area.page), QStringList()) << where;
        };
        fits("desk");
        run.presenter->begin(QStringLiteral("S-2"));
        fits("identity");
        run.presenter->confirmIdentity();
        fits("instructions");
        run.presenter->startItems();
        fits("items");
        run.presenter->pause(QStringLiteral("fire alarm"));
        fits("paused");
        run.presenter->resume();
        fits("items again");
    }
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

TEST(CheckOffPageTest, APauseCoversThePlateAndGivesTheKeysBack)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    run.toItems();
    ASSERT_TRUE(area.sharp());
    run.mark();
    run.presenter->pause(QStringLiteral("fire alarm"));
    EXPECT_FALSE(area.plate().isVisible());
    EXPECT_EQ(QApplication::focusWidget(), area.find("resume"));
    QTest::keyClick(area.find("resume"), Qt::Key_Return);
    EXPECT_TRUE(area.plate().isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &area.plate());
    EXPECT_TRUE(run.items().state().mark.has_value()) << "the mark is where it was";
    while (run.state().stage == CheckOffStage::OnScreen)
        run.confirm();
    run.presenter->takeOver();
    run.presenter->pause(QStringLiteral("again"));
    EXPECT_TRUE(area.find("pausedTitle")->isVisible()) << "on the manikin as well";
}

TEST(CheckOffPageTest, WhatCouldNotBeSavedIsToldUnderThePageUntilItIs)
{
    CheckOffRun run;
    Area area(*run.presenter);
    ASSERT_TRUE(area.isReady);
    run.toItems();
    ASSERT_TRUE(area.sharp());
    run.records.trouble = Fault{Problem::StoreFull, "/srv/records.sqlite", {}};
    run.mark();
    area.click("grade");
    auto* notice = area.page.findChild<QWidget*>(QStringLiteral("notice"), Qt::FindDirectChildrenOnly);
    ASSERT_NE(notice, nullptr);
    EXPECT_TRUE(notice->isVisible());
    run.records.trouble.reset();
    area.click("grade");
    EXPECT_FALSE(notice->isVisible());
    EXPECT_EQ(run.state().item, 1);
}

}  // namespace

}  // namespace check_off_page_test
