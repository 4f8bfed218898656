#include "app/checkoff/items_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>

#include "app/canvas/plate_view.h"
#include "app/checkoff/reason_dialog.h"
#include "tests/support/check_off_run.h"
#include "tests/support/no_feedback.h"

namespace items_page_test {

namespace {

using namespace fb;
using namespace fb::test;

struct ItemsRun : CheckOffRun {
    ItemsRun() : page(*presenter)
    {
        page.setScheme(schemeOf(PaletteKind::Light));
        toItems();
        page.resize(1280, 700);
        page.show();
        isReady = QTest::qWaitForWindowActive(&page) && sharp();
    }
    [[nodiscard]] bool sharp()
    {
        return QTest::qWaitFor([this] { return items().state().picture && plate().isSharp(); });
    }
    [[nodiscard]] PlateView& plate() { return *page.findChild<PlateView*>(QStringLiteral("plate")); }
    [[nodiscard]] QString words(const char* name)
    {
        return page.findChild<QLabel*>(QLatin1String(name))->text();
    }

    ItemsPage page;
    bool isReady = false;
};

TEST(ItemsPageTest, AnItemIsMarkedConfirmedAndTheNextComesWithoutAWord)
{
    ItemsRun run;
    ASSERT_TRUE(run.isReady);
    run.page.focusFirst();
    ASSERT_EQ(QApplication::focusWidget(), &run.plate());
    EXPECT_EQ(run.words("itemCounter"), QStringLiteral("Item 1 of 3"));
    const Point ideal = run.items().state().target->ideal;
    QTest::mouseClick(&run.plate(), Qt::LeftButton, {}, run.plate().toWidget({ideal.x, ideal.y}).toPoint());
    QTest::mouseClick(run.page.findChild<QPushButton*>(QStringLiteral("grade")), Qt::LeftButton);
    EXPECT_EQ(run.words("itemCounter"), QStringLiteral("Item 2 of 3"));
    EXPECT_EQ(feedbackIn(run.page, true), QStringList());
    EXPECT_EQ(run.events().back().answer->verdict, Verdict::OnTarget);
}

TEST(ItemsPageTest, TheClockRunsInSightAndCanBeHidden)
{
    ItemsRun run;
    ASSERT_TRUE(run.isReady);
    EXPECT_EQ(run.words("timeLeft"), QStringLiteral("1:00 left for this item"));
    ASSERT_TRUE(run.wait(Ms{3800}));
    EXPECT_EQ(run.words("timeLeft"), QStringLiteral("0:57 left for this item"));
    QTest::mouseClick(run.page.findChild<QToolButton*>(QStringLiteral("showTime")), Qt::LeftButton);
    EXPECT_FALSE(run.state().timeShown);
    EXPECT_FALSE(run.page.findChild<QLabel*>(QStringLiteral("timeLeft"))->isVisible());
}

TEST(ItemsPageTest, PauseAsksForAReason)
{
    ItemsRun run;
    ASSERT_TRUE(run.isReady);
    QTest::mouseClick(run.page.findChild<QPushButton*>(QStringLiteral("pauseItems")), Qt::LeftButton);
    auto* dialog = run.page.findChild<ReasonDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(run.state().paused);
    auto* own = dialog->findChild<QLineEdit*>(QStringLiteral("ownReason"));
    QTest::keyClicks(own, QStringLiteral("fire alarm"));
    QTest::keyClick(own, Qt::Key_Return);
    EXPECT_TRUE(run.state().paused);
}

}  // namespace

}  // namespace items_page_test
