#include "app/canvas/plate_accessible.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QTest>

#include "tests/support/sample_picture.h"

namespace plate_accessible_test {

namespace {

using namespace fb;

class PlateAccessibleTest : public ::testing::Test {
protected:
    PlateAccessibleTest()
    {
        QAccessible::setActive(true);
        view.resize(500, 500);
        view.setPicture(test::samplePicture());
        view.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        view.setFocus();
    }
    QAccessibleInterface* plate() { return QAccessible::queryAccessibleInterface(&view); }
    QStringList spokenChildren()
    {
        QStringList words;
        for (int i = 0; i < plate()->childCount(); ++i)
            words += plate()->child(i)->text(QAccessible::Name);
        return words;
    }

    PlateView view;
};

TEST_F(PlateAccessibleTest, ThePlateIsAGraphicWithAName)
{
    ASSERT_NE(plate(), nullptr);
    EXPECT_EQ(plate()->role(), QAccessible::Graphic);
    EXPECT_EQ(plate()->text(QAccessible::Name), view.accessibleName());
    EXPECT_TRUE(plate()->state().focusable);
}

TEST_F(PlateAccessibleTest, NothingOnThePlateNothingToSay)
{
    EXPECT_EQ(plate()->childCount(), 0);
    EXPECT_EQ(plate()->child(0), nullptr);
}

TEST_F(PlateAccessibleTest, CrosshairMarkAndShapesAreChildren)
{
    QTest::keyClick(&view, Qt::Key_Right);
    view.setMark(QPointF(1, 1));
    view.setScene({{Role::Landmark, Figure::Point, {{0, 3}}, "Acromion", {}},
                   {Role::Construction, Figure::Line, {{0, 0}, {1, 1}}, {}, {}}});
    const QStringList words = spokenChildren();
    ASSERT_EQ(words.size(), 3);
    EXPECT_TRUE(words[0].startsWith("Crosshair"));
    EXPECT_TRUE(words[1].startsWith("Your mark"));
    EXPECT_EQ(words[2], QString("Acromion"));
}

TEST_F(PlateAccessibleTest, ChildrenTellWhatIsPaintedNow)
{
    view.setScene({{Role::Landmark, Figure::Point, {{0, 3}}, "Acromion", {}}});
    QAccessibleInterface* child = plate()->child(0);
    ASSERT_NE(child, nullptr);
    EXPECT_TRUE(child->isValid());
    view.setScene({{Role::Landmark, Figure::Point, {{0, 3}}, "Deltoid tuberosity", {}}});
    EXPECT_EQ(child->text(QAccessible::Name), QString("Deltoid tuberosity"));
    view.setScene({});
    EXPECT_FALSE(child->isValid());
    EXPECT_EQ(plate()->childCount(), 0);
}

TEST_F(PlateAccessibleTest, ChildrenLieWhereTheyArePainted)
{
    view.setMark(QPointF(-3, 4));
    QAccessibleInterface* child = plate()->child(0);
    ASSERT_NE(child, nullptr);
    const QPoint there = view.mapToGlobal(view.toWidget({-3, 4})).toPoint();
    EXPECT_TRUE(child->rect().contains(there));
    EXPECT_EQ(plate()->childAt(there.x(), there.y()), child);
    EXPECT_EQ(plate()->indexOfChild(child), 0);
    EXPECT_EQ(child->parent(), plate());
    EXPECT_EQ(plate()->childAt(there.x() + 200, there.y()), nullptr);
}

}  // namespace

}  // namespace plate_accessible_test
