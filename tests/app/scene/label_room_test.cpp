#include "app/scene/label_room.h"

#include <gtest/gtest.h>

namespace fb::test::label_room_tests {

namespace label_room_test {

const QPolygonF kSquare{QRectF(0, 0, 200, 200)};

bool anywhere(const QRectF&) { return true; }

}  // namespace label_room_test

using namespace label_room_test;

TEST(LabelRoomTest, AWordStandsInTheMiddleOfAFreeArea)
{
    const auto box = roomWithin(kSquare, {}, {60, 20}, anywhere);
    ASSERT_TRUE(box.has_value());
    EXPECT_NEAR(box->center().x(), 100.0, 1.0);
    EXPECT_NEAR(box->center().y(), 100.0, 10.0);
}

TEST(LabelRoomTest, AWordKeepsOffAnAreaThatLiesOverItsOwn)
{
    const QPolygonF over(QRectF(40, 60, 120, 80));
    const auto box = roomWithin(kSquare, {over}, {60, 20}, anywhere);
    ASSERT_TRUE(box.has_value());
    EXPECT_FALSE(box->intersects(over.boundingRect()));
    EXPECT_TRUE(kSquare.boundingRect().contains(*box));
}

TEST(LabelRoomTest, AWordGoesWhereItIsFreeOrNowhere)
{
    const auto lower = roomWithin(kSquare, {}, {60, 20}, [](const QRectF& at) { return at.top() > 140; });
    ASSERT_TRUE(lower.has_value());
    EXPECT_GT(lower->top(), 140.0);
    EXPECT_FALSE(roomWithin(kSquare, {}, {60, 20}, [](const QRectF&) { return false; }).has_value());
    EXPECT_FALSE(roomWithin(kSquare, {}, {260, 20}, anywhere).has_value());
    EXPECT_FALSE(roomWithin({}, {}, {10, 10}, anywhere).has_value());
}

TEST(LabelRoomTest, ALeaderEndsOnTheAreaEvenWhereItsMiddleIsHollow)
{
    // A narrow arch: the middle of its bounds lies under it.
    const QPolygonF arch{{{0, 100}, {0, 0}, {100, 0}, {100, 100}, {90, 100}, {90, 10}, {10, 10}, {10, 100}}};
    const QPointF at = placeOn(arch, QRectF(0, 0, 300, 300));
    EXPECT_TRUE(arch.containsPoint(at, Qt::OddEvenFill)) << at.x() << ' ' << at.y();
    EXPECT_EQ(placeOn(kSquare, QRectF(0, 0, 100, 300)), QPointF(50, 100));
}

}  // namespace fb::test::label_room_tests
