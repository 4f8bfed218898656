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

TEST(LabelRoomTest, AFreePlaceIsFoundNearTheWishElseWhereverItIs)
{
    const QRectF paper(0, 0, 300, 200);
    const QRectF wish(120, 90, 60, 20);
    EXPECT_EQ(freePlace(wish, paper, {}, 4.0), wish);
    const auto beside = freePlace(wish, paper, {wish}, 4.0);
    ASSERT_TRUE(beside.has_value());
    EXPECT_TRUE(isFreeOf(*beside, {wish}, 4.0));
    EXPECT_EQ(beside->left(), wish.left());
    const QRectF hole(230.7, 3.3, 69.3, 23.0);
    const QVector<QRectF> taken{QRectF(0, 0, hole.left(), 200), QRectF(0, hole.bottom(), 300, 200),
                                QRectF(0, 0, 300, hole.top())};
    const auto found = freePlace(wish, paper, taken, 4.0);
    ASSERT_TRUE(found.has_value());
    EXPECT_TRUE(hole.contains(*found));
    EXPECT_FALSE(freePlace(wish, paper, {paper}, 4.0).has_value());
}

TEST(LabelRoomTest, ABoxIsHeldOnThePaper)
{
    EXPECT_EQ(heldOn(QRectF(0, 0, 100, 100), QRectF(90, -5, 20, 10)), QRectF(80, 0, 20, 10));
}

}  // namespace fb::test::label_room_tests
