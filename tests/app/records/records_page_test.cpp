#include "app/records/records_page.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <algorithm>
#include <functional>

#include "app/records/records_room.h"
#include "tests/support/layout_audit.h"
#include "tests/support/sample_records.h"

namespace fb::test::records_page_tests {

namespace records_page_test {

// Every word that the page, or a screen reader that walks it, could tell.
QString everythingIn(QWidget& widget)
{
    QString all;
    const std::function<void(QAccessibleInterface*, int)> walk = [&](QAccessibleInterface* at, int depth) {
        constexpr int kDeepest = 12;
        if (!at || depth > kDeepest)
            return;
        all += at->text(QAccessible::Name) + at->text(QAccessible::Description) +
               at->text(QAccessible::Value) + u'\n';
        for (int i = 0; i < at->childCount(); ++i)
            walk(at->child(i), depth + 1);
    };
    walk(QAccessible::queryAccessibleInterface(&widget), 0);
    for (const QLabel* label : widget.findChildren<QLabel*>())
        all += label->text() + u'\n';
    for (const QTableView* table : widget.findChildren<QTableView*>())
        all += QString::number(table->model()->rowCount()) + QStringLiteral(" rows\n");
    return all;
}

}  // namespace records_page_test

using records_page_test::everythingIn;

TEST(RecordsPageTest, NoRecordIsReachableBeforeThePinNorAfterLeaving)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    RecordsWindow open(records);
    EXPECT_FALSE(everythingIn(open.window).contains(QStringLiteral("Marlow")));
    EXPECT_TRUE(open.window.findChildren<QTableView*>().isEmpty());
    open.unlock();
    EXPECT_TRUE(everythingIn(open.window).contains(QStringLiteral("Marlow")))
        << "the walk finds what is there";
    open.presenter.openHistory(QStringLiteral("S1000"));
    open.presenter.openCheckOff(id);
    open.rest();
    open.page->hide();
    const QString left = everythingIn(open.window);
    EXPECT_FALSE(left.contains(QStringLiteral("Marlow"))) << left.toStdString();
    EXPECT_EQ(open.state().opened, nullptr);
    open.page->show();
    open.rest();
    EXPECT_EQ(open.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(open.find("gatePin")->isVisible());
    EXPECT_FALSE(everythingIn(open.window).contains(QStringLiteral("Marlow")));
}

TEST(RecordsPageTest, UseHoldsTheGateOpenAndTheKeyThatComesTooLateDoesNothing)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.records.clock.now += RecordsPresenter::kIdle - Ms{10};
    QTest::keyClick(open.find("boardWords"), Qt::Key_A);
    open.records.clock.now += RecordsPresenter::kIdle - Ms{10};
    open.click("areaLog");
    EXPECT_EQ(open.state().gate, RecordsGate::Open);
    open.records.clock.now += RecordsPresenter::kIdle;
    open.records.written.clear();
    open.dialogs.answer = QStringLiteral("late.db");
    QTest::mouseClick(open.find("backup"), Qt::LeftButton);
    open.rest();
    EXPECT_EQ(open.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(open.records.written.isEmpty());
    EXPECT_EQ(open.dialogs.asked, 0);
}

TEST(RecordsPageTest, IsWalkedByKeyboardAlone)
{
    SampleRecords records;
    records.signedOne(1, {}, Seen::NotDone);
    RecordsWindow open(records);
    QTest::keyClicks(QApplication::focusWidget(), QString::fromLatin1(kPin));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    open.rest();
    ASSERT_TRUE(open.tabTo("boardTable"));
    QTest::keyClick(open.find("boardTable"), Qt::Key_Return);
    open.rest();
    ASSERT_NE(open.state().history, nullptr);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    open.rest();
    ASSERT_NE(open.state().opened, nullptr);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(open.replayed());
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    open.rest();
    EXPECT_TRUE(open.find("boardTable")->isVisible());
    for (const char* area : {"areaCheckOffs", "areaLog", "areaAssessors", "recordsLock"})
        EXPECT_TRUE(open.tabTo(area)) << area;
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    open.rest();
    EXPECT_EQ(open.state().gate, RecordsGate::Locked);
}

TEST(RecordsPageTest, AFaultIsTheNoticeAndIsPutAway)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.presenter.tell({Problem::StoreFull, "records.db", {}});
    open.rest();
    EXPECT_TRUE(open.find("notice")->isVisible());
    open.click("dismissNotice");
    EXPECT_FALSE(open.find("notice")->isVisible());
}

// What is dressed anew makes parts of it anew while Qt still walks the old ones.
TEST(RecordsPageTest, TheLookMayChangeWhileAnAnswerIsShown)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {0.3, 0.2});
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openHistory(QStringLiteral("S1000"));
    open.presenter.openCheckOff(id);
    open.presenter.replay(0);
    ASSERT_TRUE(open.replayed());
    for (const double scale : {1.5, 1.0}) {
        applyStyle(*qApp, schemeOf(PaletteKind::Dark), scale);
        open.page->setScheme(schemeOf(PaletteKind::Dark));
        open.rest();
        EXPECT_TRUE(open.find("replayPlate")->isVisible());
    }
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
    open.presenter.back();
    open.rest();
    EXPECT_TRUE(open.find("openedOutcome")->isVisible());
}

// Every screen of the page in every look: nothing cut, nothing crossing, nothing nameless.
class RecordsPageLookTest : public testing::TestWithParam<std::tuple<PaletteKind, double, bool>> {};

TEST_P(RecordsPageLookTest, HoldsTogetherOnEveryScreen)
{
    const auto [palette, scale, mirrored] = GetParam();
    qApp->setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
    SampleRecords records;
    const qint64 failed = records.signedOne(1, {0.6, 2.6}, Seen::NotDone);
    records.signedOne(0, {0.2, 0.1});
    RecordsWindow open(records, palette, scale);
    const auto look = [&](const char* where) {
        open.rest();
        const QStringList faults = layoutFaults(open.window);
        EXPECT_TRUE(faults.isEmpty()) << where << ":\n" << faults.join('\n').toStdString();
        const QStringList nameless = namelessControls(open.window);
        EXPECT_TRUE(nameless.isEmpty()) << where << ":\n" << nameless.join('\n').toStdString();
    };
    look("gate");
    open.type("gatePin", "111111");
    open.click("gateAction");
    look("wrong PIN");
    open.unlock();
    look("board");
    open.presenter.show(RecordsArea::CheckOffs);
    look("check-offs");
    open.presenter.verify();
    open.presenter.show(RecordsArea::Log);
    look("log");
    open.presenter.show(RecordsArea::Assessors);
    look("assessors");
    open.presenter.openHistory(QStringLiteral("S1001"));
    look("history");
    open.presenter.openCheckOff(failed);
    look("check-off");
    open.presenter.replay(0);
    ASSERT_TRUE(open.replayed());
    look("replay");
    qApp->setLayoutDirection(Qt::LeftToRight);
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

TEST(RecordsPageTest, NothingOfItOutlivesItsWindow)
{
    SampleRecords records;
    const auto roomsLeft = [] {
        return std::ranges::count_if(QApplication::allWidgets(), [](const QWidget* each) {
            return qobject_cast<const RecordsRoom*>(each) != nullptr;
        });
    };
    const auto before = roomsLeft();
    {
        RecordsWindow open(records);
        open.unlock();
        ASSERT_EQ(roomsLeft(), before + 1);
    }
    EXPECT_EQ(roomsLeft(), before) << "with it its painting threads would outlive the program's fonts";
}

INSTANTIATE_TEST_SUITE_P(Looks, RecordsPageLookTest,
                         testing::Values(std::tuple{PaletteKind::Light, 1.0, false},
                                         std::tuple{PaletteKind::Dark, 1.5, false},
                                         std::tuple{PaletteKind::Projector, 1.0, true},
                                         std::tuple{PaletteKind::Light, 1.5, true}));

}  // namespace fb::test::records_page_tests
