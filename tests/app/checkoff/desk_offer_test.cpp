#include "app/checkoff/desk_offer.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/look/style.h"
#include "tests/support/layout_audit.h"
#include "tests/support/memory_backups.h"

namespace fb::test::desk_offer_tests {

namespace desk_offer_test {

struct Shown {
    Shown()
    {
        state.offered = backupSample();
        offer.showState(state);
        offer.resize(1280, 640);
        offer.show();
        isReady = QTest::qWaitForWindowActive(&offer);
        offer.first()->setFocus();
    }
    template <class Widget = QPushButton>
    [[nodiscard]] Widget* find(const char* name)
    {
        return offer.findChild<Widget*>(QLatin1String(name));
    }

    CheckOffState state;
    DeskOffer offer;
    bool isReady = false;
};

}  // namespace desk_offer_test

using desk_offer_test::Shown;

TEST(DeskOfferTest, SaysWhatHappenedWhatTheBackupHoldsAndWhatBecomesOfThePresentFile)
{
    Shown shown;
    ASSERT_TRUE(shown.isReady);
    EXPECT_TRUE(shown.find<QLabel>("offerHappened")->text().contains(QStringLiteral("put aside")));
    const QString holds = shown.find<QLabel>("offerHolds")->text();
    for (const char* word : {"November 28, 2026", "15 student", "9 signed check-off", "not in it"})
        EXPECT_TRUE(holds.contains(QLatin1String(word))) << word << ": " << holds.toStdString();
    EXPECT_TRUE(shown.find<QLabel>("offerKept")->text().contains(QStringLiteral("kept aside")));
    EXPECT_TRUE(shown.find<QLabel>("offerFile")->text().endsWith(shown.state.offered->file));
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(layoutFaults(shown.offer), QStringList());
    EXPECT_EQ(namelessControls(shown.offer), QStringList());
}

TEST(DeskOfferTest, BothWaysOnAreTakenByKey)
{
    Shown shown;
    ASSERT_TRUE(shown.isReady);
    QSignalSpy putBack(&shown.offer, &DeskOffer::putBackAsked);
    QSignalSpy declined(&shown.offer, &DeskOffer::declined);
    ASSERT_EQ(QApplication::focusWidget(), shown.find("putBack"));
    QTest::keyClick(shown.find("putBack"), Qt::Key_Return);
    EXPECT_EQ(putBack.count(), 1);
    QTest::keyClick(shown.find("putBack"), Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), shown.find("beginEmpty"));
    QTest::keyClick(shown.find("beginEmpty"), Qt::Key_Space);
    EXPECT_EQ(declined.count(), 1);
}

TEST(DeskOfferTest, WhileItIsPutBackHowFarItIsAndAWayOutTakeTheirPlace)
{
    Shown shown;
    ASSERT_TRUE(shown.isReady);
    QSignalSpy cancelled(&shown.offer, &DeskOffer::cancelAsked);
    EXPECT_FALSE(shown.find("cancelPutBack")->isVisible());
    shown.state.puttingBack = 40;
    shown.state.saving = true;
    shown.offer.showState(shown.state);
    EXPECT_FALSE(shown.find("putBack")->isVisible());
    EXPECT_EQ(shown.find<QProgressBar>("offerBar")->value(), 40);
    EXPECT_TRUE(shown.find<QLabel>("offerDoing")->text().contains(QStringLiteral("40 %")));
    ASSERT_EQ(QApplication::focusWidget(), shown.find("cancelPutBack")) << "the keys stay with it";
    QTest::keyClick(shown.find("cancelPutBack"), Qt::Key_Space);
    EXPECT_EQ(cancelled.count(), 1);
    shown.state.puttingBack = 60;
    shown.offer.showState(shown.state);
    EXPECT_TRUE(shown.find<QLabel>("offerDoing")->text().contains(QStringLiteral("cancelled")));
    EXPECT_EQ(QApplication::focusWidget(), shown.find("cancelPutBack"));
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(layoutFaults(shown.offer), QStringList());
    shown.state.puttingBack.reset();
    shown.state.saving = false;
    shown.offer.showState(shown.state);
    EXPECT_EQ(QApplication::focusWidget(), shown.find("putBack"));
    EXPECT_FALSE(shown.find("offerBar") && shown.find<QProgressBar>("offerBar")->isVisible());
}

}  // namespace fb::test::desk_offer_tests
