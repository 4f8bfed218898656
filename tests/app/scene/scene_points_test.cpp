#include "app/scene/scene_points.h"

#include <gtest/gtest.h>

namespace fb::test::scene_points_tests {

TEST(ScenePointsTest, APlaceKeepsItsCentimetresAndItsOrder)
{
    EXPECT_EQ(toScene(Point{1.5, -2.0}), QPointF(1.5, -2.0));
    EXPECT_EQ(toScene(std::vector<Point>{{0.0, 1.0}, {2.0, 3.0}}),
              (QVector<QPointF>{{0.0, 1.0}, {2.0, 3.0}}));
    EXPECT_TRUE(toScene(std::vector<Point>{}).isEmpty());
}

TEST(ScenePointsTest, EveryKindOfFigureHasItsShape)
{
    EXPECT_EQ(figureOf(FigureKind::Point), Figure::Point);
    EXPECT_EQ(figureOf(FigureKind::Line), Figure::Line);
    EXPECT_EQ(figureOf(FigureKind::Closed), Figure::Closed);
}

}  // namespace fb::test::scene_points_tests
