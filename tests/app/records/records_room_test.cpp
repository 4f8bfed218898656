#include "app/records/records_room.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QToolButton>

#include "tests/support/sample_records.h"

namespace fb::test::records_room_test {

TEST(RecordsRoomTest, EachAreaIsOpenedByItsWordAndTheFocusGoesWithIt)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    const std::array<std::pair<const char*, const char*>, 4> areas{{{"areaCheckOffs", "listWords"},
                                                                    {"areaLog", "verify"},
                                                                    {"areaAssessors", "enrolName"},
                                                                    {"areaBoard", "boardWords"}}};
    for (const auto& [area, first] : areas) {
        open.click(area);
        EXPECT_TRUE(open.find<QToolButton>(area)->isChecked());
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        EXPECT_EQ(QApplication::focusWidget()->objectName(), QLatin1String(first));
    }
}

TEST(RecordsRoomTest, EscapeGoesBackOneStepAtATime)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openHistory(QStringLiteral("S1000"));
    open.presenter.openCheckOff(id);
    open.presenter.replay(0);
    ASSERT_TRUE(open.replayed());
    for (int step = 0; step < 3; ++step) {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        open.rest();
    }
    EXPECT_FALSE(open.state().item || open.state().opened || open.state().history);
    EXPECT_TRUE(open.find("boardTable")->isVisible());
}

TEST(RecordsRoomTest, LockShutsItAtOnce)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.click("recordsLock");
    EXPECT_EQ(open.state().gate, RecordsGate::Locked);
    EXPECT_EQ(open.window.findChild<RecordsRoom*>(), nullptr);
    EXPECT_EQ(QApplication::focusWidget(), open.find("gatePin"));
}

}  // namespace fb::test::records_room_test
