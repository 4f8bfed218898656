#include "app/shell/area_bar.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

namespace fb::test::area_bar_test {

namespace {

struct Shown {
    Shown()
    {
        bar.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&bar));
    }
    [[nodiscard]] QToolButton* button(const char* name) { return bar.findChild<QToolButton*>(name); }

    AreaBar bar;
    QSignalSpy asked{&bar, &AreaBar::areaAsked};
};

}  // namespace

TEST(AreaBarTest, AnotherAreaIsAskedForAndTheOpenOneIsNot)
{
    Shown shown;
    QTest::mouseClick(shown.button("areaCheckOff"), Qt::LeftButton);
    ASSERT_EQ(shown.asked.count(), 1);
    EXPECT_EQ(shown.asked.at(0).at(0).value<Area>(), Area::CheckOff);
    EXPECT_TRUE(shown.button("areaPractice")->isChecked()) << "nothing is open before it is said to be";
    EXPECT_FALSE(shown.button("areaCheckOff")->isChecked());
    QTest::mouseClick(shown.button("areaPractice"), Qt::LeftButton);
    EXPECT_EQ(shown.asked.count(), 1);
    EXPECT_TRUE(shown.button("areaPractice")->isChecked());
}

TEST(AreaBarTest, ByKeyboardAsWell)
{
    Shown shown;
    shown.button("areaRecords")->setFocus();
    QTest::keyClick(shown.button("areaRecords"), Qt::Key_Space);
    ASSERT_EQ(shown.asked.count(), 1);
    EXPECT_EQ(shown.asked.at(0).at(0).value<Area>(), Area::Records);
}

TEST(AreaBarTest, WhileACheckOffHoldsTheWindowOnlyItsAreaCanBePressed)
{
    Shown shown;
    shown.bar.showArea(Area::CheckOff);
    shown.bar.setFree(false);
    QTest::mouseClick(shown.button("areaPractice"), Qt::LeftButton);
    QTest::mouseClick(shown.button("areaRecords"), Qt::LeftButton);
    EXPECT_EQ(shown.asked.count(), 0);
    EXPECT_TRUE(shown.button("areaCheckOff")->isEnabled());
    shown.bar.setFree(true);
    QTest::mouseClick(shown.button("areaPractice"), Qt::LeftButton);
    EXPECT_EQ(shown.asked.count(), 1);
}

}  // namespace fb::test::area_bar_test
