#include "app/checkoff/rating_row.h"

#include <gtest/gtest.h>

#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace rating_row_test {

namespace {

using namespace fb;
using namespace fb::test;

class RatingRowTest : public ::testing::Test {
protected:
    RatingRowTest()
    {
        dressed();
        row.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&row));
    }
    [[nodiscard]] QRadioButton* button(int rating) const
    {
        return row.findChild<QRadioButton*>(QStringLiteral("rating%1").arg(rating));
    }

    RatingRow row;
    QSignalSpy chosen{&row, &RatingRow::chosen};
    QSignalSpy settled{&row, &RatingRow::settled};
};

TEST_F(RatingRowTest, EachOfTheFiveHasItsWords)
{
    for (int rating = 1; rating <= kRatingCount; ++rating) {
        EXPECT_TRUE(button(rating)->text().endsWith(ratingName(rating)));
        EXPECT_TRUE(button(rating)->text().startsWith(QString::number(rating)));
    }
    EXPECT_EQ(row.rating(), std::nullopt) << "none is chosen for the assessor";
}

TEST_F(RatingRowTest, OneClickIsChosenAndSettled)
{
    QTest::mouseClick(button(4), Qt::LeftButton, {}, {8, 8});
    EXPECT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].toInt(), 4);
    EXPECT_TRUE(QTest::qWaitFor([this] { return settled.size() == 1; }));
}

TEST_F(RatingRowTest, ArrowsPassThroughWithoutSettling)
{
    row.choose(2);
    settled.clear();
    row.focusFirst();
    QTest::keyClick(button(2), Qt::Key_Down);
    EXPECT_EQ(row.rating(), 3);
    QTest::qWait(20);
    EXPECT_TRUE(settled.isEmpty());
    QTest::keyClick(button(3), Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([this] { return settled.size() == 1; }));
}

TEST_F(RatingRowTest, WhatIsShownAsksNothing)
{
    row.showRating(5);
    EXPECT_EQ(row.rating(), 5);
    row.showRating({});
    EXPECT_EQ(row.rating(), std::nullopt);
    EXPECT_TRUE(chosen.isEmpty());
    EXPECT_TRUE(settled.isEmpty());
}

}  // namespace

}  // namespace rating_row_test
