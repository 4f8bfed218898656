#include "app/records/put_back_panel.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include "tests/support/layout_audit.h"
#include "tests/support/memory_backups.h"

namespace fb::test::put_back_panel_tests {

TEST(PutBackPanelTest, SaysWhatIsChosenAndTakesTheKeysAtTheWayBack)
{
    QWidget window;
    auto* rows = new QVBoxLayout(&window);
    auto* panel = new PutBackPanel(&window);
    rows->addWidget(panel);
    window.resize(760, 300);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    RecordsState state;
    panel->showState(state);
    EXPECT_FALSE(panel->isVisible());
    state.chosenBackup = backupSample();
    panel->showState(state);
    ASSERT_TRUE(panel->isVisible());
    const auto text = [&](const char* name) {
        return panel->findChild<QLabel*>(QLatin1String(name))->text();
    };
    EXPECT_TRUE(text("putBackFile").endsWith(backupSample().file));
    EXPECT_TRUE(text("putBackHolds").contains(QStringLiteral("15 student")));
    EXPECT_TRUE(text("putBackMeans").contains(QStringLiteral("kept aside")));
    auto* accept = panel->findChild<QPushButton*>(QStringLiteral("putBackAccept"));
    auto* reject = panel->findChild<QPushButton*>(QStringLiteral("putBackReject"));
    EXPECT_EQ(QApplication::focusWidget(), reject) << "a key that is held down puts nothing back";
    QSignalSpy accepted(panel, &PutBackPanel::accepted);
    QSignalSpy rejected(panel, &PutBackPanel::rejected);
    QTest::keyClick(reject, Qt::Key_Return);
    EXPECT_EQ(rejected.count(), 1);
    QTest::keyClick(reject, Qt::Key_Backtab, Qt::ShiftModifier);
    ASSERT_EQ(QApplication::focusWidget(), accept);
    QTest::keyClick(accept, Qt::Key_Space);
    EXPECT_EQ(accepted.count(), 1);
    EXPECT_EQ(layoutFaults(window), QStringList());
    EXPECT_EQ(namelessControls(window), QStringList());
    state.task = LongTask{LongTaskKind::PutBack, {}, 0};
    panel->showState(state);
    EXPECT_FALSE(panel->isVisible()) << "while it is done";
}

}  // namespace fb::test::put_back_panel_tests
