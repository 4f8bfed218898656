#include "app/canvas/plate_tools.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <QStringList>

namespace plate_tools_test {

namespace {

using namespace fb;

class PlateToolsTest : public ::testing::Test {
protected:
    PlateToolsTest()
    {
        QObject::connect(&tools, &PlateTools::pressed,
                         [this](QPointF cm) { said += QString("press %1 %2").arg(cm.x()).arg(cm.y()); });
        QObject::connect(&tools, &PlateTools::lifted, [this] { said += "lift"; });
        QObject::connect(&tools, &PlateTools::handleGrabbed,
                         [this](int id) { said += QString("grab %1").arg(id); });
        QObject::connect(&tools, &PlateTools::handleMoved, [this](int id, QPointF cm) {
            said += QString("move %1").arg(id);
            last = cm;
        });
        QObject::connect(&tools, &PlateTools::handleReleased,
                         [this](int id) { said += QString("release %1").arg(id); });
        tools.setTool(PlateTool::Handles);
        tools.setHandles({{4, {1, 1}, "Palm", HandleShape::Grip}, {9, {-3, 2}, "Tip", HandleShape::Turn}});
    }
    QPointF pixel(double x, double y) const { return frame.toWidget({x, y}); }

    ViewFrame frame = ViewFrame::whole(QRectF(0, 0, 500, 500), QRectF(-10, -10, 20, 20));
    PlateTools tools;
    QStringList said;
    QPointF last;
};

TEST_F(PlateToolsTest, ADragKeepsItsOffsetAndStaysOnThePicture)
{
    ASSERT_TRUE(tools.grab(frame, pixel(1, 1) + QPointF(5, -4), 12));
    EXPECT_TRUE(tools.isDragging());
    tools.drag(frame, pixel(3, -2) + QPointF(5, -4));
    EXPECT_LT(QLineF(last, QPointF(3, -2)).length(), 1e-9);
    tools.drag(frame, pixel(300, 0));
    EXPECT_EQ(last.x(), 10.0);
    tools.letGo();
    EXPECT_EQ(said, (QStringList{"grab 4", "move 4", "move 4", "release 4"}));
    EXPECT_FALSE(tools.isDragging());
}

TEST_F(PlateToolsTest, WhatIsOutOfReachIsNotTaken)
{
    EXPECT_FALSE(tools.grab(frame, pixel(6, 6), 12));
    tools.drag(frame, pixel(2, 2));
    tools.letGo();
    tools.putBack();
    EXPECT_TRUE(said.isEmpty());
}

TEST_F(PlateToolsTest, PutBackItLiesWhereItWasAndIsLetGo)
{
    ASSERT_TRUE(tools.grab(frame, pixel(-3, 2), 12));
    tools.drag(frame, pixel(0, 0));
    tools.putBack();
    EXPECT_EQ(said, (QStringList{"grab 9", "move 9", "move 9", "release 9"}));
    EXPECT_LT(QLineF(last, QPointF(-3, 2)).length(), 1e-9);
}

TEST_F(PlateToolsTest, AKeyHeldDownIsOneGrab)
{
    tools.setCurrentHandle(4);
    EXPECT_EQ(*tools.currentPlace(), QPointF(1, 1));
    tools.step({1.5, 1});
    tools.step({2, 1});
    EXPECT_FALSE(tools.isDragging());
    tools.endStep();
    tools.endStep();
    EXPECT_EQ(said, (QStringList{"grab 4", "move 4", "move 4", "release 4"}));
    tools.setCurrentHandle(77);
    EXPECT_FALSE(tools.currentPlace());
    tools.step({0, 0});
    EXPECT_EQ(said.size(), 4);
}

TEST_F(PlateToolsTest, AnotherToolEndsWhatWasUnderWay)
{
    ASSERT_TRUE(tools.grab(frame, pixel(1, 1), 12));
    tools.setTool(PlateTool::Press);
    EXPECT_EQ(said, (QStringList{"grab 4", "move 4", "release 4"}));
    said.clear();
    tools.press({1, 2}, true);
    tools.setTool(PlateTool::Mark);
    EXPECT_EQ(said, (QStringList{"press 1 2", "lift"}));
}

TEST_F(PlateToolsTest, AFingerByKeysIsLiftedBeforeOneByPointerComes)
{
    tools.press({0, 0}, true);
    tools.press({1, 0}, true);
    tools.press({5, 0}, false);
    tools.lift();
    tools.lift();
    EXPECT_EQ(said, (QStringList{"press 0 0", "press 1 0", "lift", "press 5 0", "lift"}));
}

TEST_F(PlateToolsTest, HoveringTellsOnlyWhenItChanges)
{
    EXPECT_TRUE(tools.hover(frame, pixel(1, 1), 12));
    EXPECT_FALSE(tools.hover(frame, pixel(1, 1) + QPointF(2, 2), 12));
    EXPECT_EQ(tools.face().hovered, 4);
    EXPECT_TRUE(tools.hover(frame, std::nullopt, 12));
    EXPECT_EQ(tools.face().hovered, -1);
}

TEST_F(PlateToolsTest, FingersWithoutArtAreOutlines)
{
    tools.setHeldFingers(FingersLook{});
    EXPECT_TRUE(tools.face().outlines);
    EXPECT_FALSE(tools.face().fingers);
    tools.setHeldFingers(std::nullopt);
    EXPECT_FALSE(tools.face().outlines);
}

}  // namespace

}  // namespace plate_tools_test
