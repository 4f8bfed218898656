#include "app/canvas/plate_words.h"

#include <gtest/gtest.h>

namespace plate_words_test {

namespace {

using namespace fb;

PlateFace face()
{
    PlateFace made;
    made.widget = QRectF(0, 0, 500, 400);
    made.frame = ViewFrame::whole(sheetOf(made.widget), QRectF(-8, -10, 20, 20));  // its middle is (2, 0)
    made.hasPicture = true;
    return made;
}

TEST(PlateWordsTest, NothingPaintedNothingSpoken)
{
    EXPECT_TRUE(spokenItems(face()).isEmpty());
    PlateFace empty = face();
    empty.hasPicture = false;
    empty.mark = QPointF(1, 1);
    EXPECT_TRUE(spokenItems(empty).isEmpty());
}

TEST(PlateWordsTest, PlacesAreToldFromTheMiddleOfThePicture)
{
    PlateFace made = face();
    made.crosshair = QPointF(5.2, -0.4);
    made.mark = QPointF(0, 3);
    const auto items = spokenItems(made);
    ASSERT_EQ(items.size(), 2);
    EXPECT_EQ(items[0].words,
              QString("Crosshair, 3.2 cm right of and 0.4 cm below the middle of the picture"));
    EXPECT_EQ(items[1].words,
              QString("Your mark, 2.0 cm left of and 3.0 cm above the middle of the picture"));
}

TEST(PlateWordsTest, BoxesLieWhereThingsArePainted)
{
    PlateFace made = face();
    made.mark = QPointF(4, 4);
    made.scene = {{Role::Region, Figure::Closed, {{0, 0}, {3, 0}, {3, 2}}, {}, "Target region"}};
    const auto items = spokenItems(made);
    ASSERT_EQ(items.size(), 2);
    EXPECT_TRUE(items[0].box.contains(made.frame.toWidget({4, 4}).toPoint()));
    EXPECT_TRUE(items[1].box.contains(made.frame.toWidget({2, 0.5}).toPoint()));
    EXPECT_EQ(items[1].words, QString("Target region"));
}

TEST(PlateWordsTest, ShapesWithoutWordsAndBoxesOffTheSheetAreSilentOrEmpty)
{
    PlateFace made = face();
    made.frame = made.frame.zoomedAt(made.frame.toWidget({2, 0}), 10.0);
    made.scene = {{Role::Construction, Figure::Line, {{0, 0}, {1, 1}}, {}, {}},
                  {Role::Landmark, Figure::Point, {{-8, 9}}, "Acromion", {}},
                  {Role::Landmark, Figure::Point, {}, "Deltoid tuberosity", {}}};
    const auto items = spokenItems(made);
    ASSERT_EQ(items.size(), 2);
    EXPECT_TRUE(items[0].box.isEmpty());
    EXPECT_EQ(items[1].box, made.frame.sheet().toAlignedRect());
}

}  // namespace

}  // namespace plate_words_test
