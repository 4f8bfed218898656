#include "app/scene/sign_paths.h"

#include <gtest/gtest.h>

namespace sign_paths_test {

namespace {

using namespace fb;

TEST(SignPathsTest, SignsAreAsBroadAsTheyAreAskedAndLieRoundTheirPlace)
{
    for (const QPainterPath& sign :
         {lozengeAt({10, 20}, 4), squareAt({10, 20}, 4), crossedRingAt({10, 20}, 2, 4)}) {
        const QRectF box = sign.boundingRect();
        EXPECT_NEAR(box.width(), 8, 1e-9);
        EXPECT_NEAR(box.height(), 8, 1e-9);
        EXPECT_NEAR(box.center().x(), 10, 1e-9);
        EXPECT_NEAR(box.center().y(), 20, 1e-9);
    }
}

TEST(SignPathsTest, ALozengeLeavesTheCornersOfASquareFree)
{
    EXPECT_FALSE(lozengeAt({0, 0}, 4).contains(QPointF(3, 3)));
    EXPECT_TRUE(squareAt({0, 0}, 4).contains(QPointF(3, 3)));
}

TEST(SignPathsTest, AClosedFigureGoesBackToItsFirstCorner)
{
    const QPolygonF corner{QPointF(0, 0), QPointF(4, 0), QPointF(4, 4)};
    EXPECT_EQ(openPath(corner).currentPosition(), QPointF(4, 4));
    EXPECT_EQ(closedPath(corner).currentPosition(), QPointF(0, 0));
}

TEST(SignPathsTest, AnArrowKeepsClearOfBothEnds)
{
    const ArrowPaths arrow = arrowAlong(QLineF(0, 0, 100, 0), 9, 12);
    EXPECT_NEAR(arrow.shaft.boundingRect().left(), 9, 1e-9);
    EXPECT_NEAR(arrow.head.boundingRect().right(), 91, 1e-9);
    EXPECT_NEAR(arrow.head.boundingRect().width(), 12, 1e-9);
    EXPECT_GT(arrow.head.boundingRect().height(), 6);
}

TEST(SignPathsTest, ALineTooShortForAHeadIsNoArrow)
{
    const ArrowPaths none = arrowAlong(QLineF(0, 0, 20, 0), 9, 12);
    EXPECT_TRUE(none.shaft.isEmpty());
    EXPECT_TRUE(none.head.isEmpty());
    EXPECT_FALSE(arrowAlong(QLineF(0, 0, 24, 0), 9, 12).head.isEmpty());
}

}  // namespace

}  // namespace sign_paths_test
