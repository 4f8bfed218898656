#include "app/demonstrate/pointer_keys.h"

#include <gtest/gtest.h>

#include <QKeyEvent>

#include "tests/support/shown_lecture.h"

namespace fb::test::pointer_keys_test {

const QRectF kSeen(-10, -20, 30, 40);

class PointerKeysTest : public ::testing::Test {
protected:
    bool press(int key, Qt::KeyboardModifiers modifiers = {}, bool again = false)
    {
        return keys.take(QKeyEvent(QEvent::KeyPress, key, modifiers, {}, again), kSeen);
    }
    [[nodiscard]] QPointF pointer() const { return sample.state().pointer.value(); }

    LectureSample sample;
    PointerKeys keys{sample.presenter};
};

TEST_F(PointerKeysTest, ControlWithAnArrowMovesThePointerFromTheMiddle)
{
    EXPECT_TRUE(press(Qt::Key_Right, Qt::ControlModifier));
    EXPECT_LT(apart(pointer(), kSeen.center() + QPointF(0.5, 0)), 1e-9);
    EXPECT_TRUE(press(Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier));
    EXPECT_LT(apart(pointer(), kSeen.center() + QPointF(0.5, 0.1)), 1e-9);
}

TEST_F(PointerKeysTest, ThePointerStaysInSight)
{
    for (int i = 0; i < 100; ++i)
        press(Qt::Key_Left, Qt::ControlModifier);
    for (int i = 0; i < 100; ++i)
        press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(pointer(), QPointF(-10, -20));
}

TEST_F(PointerKeysTest, EnterNamesAPlaceOfTheRoom)
{
    sample.presenter.setTool(LectureTool::Ask);
    EXPECT_TRUE(press(Qt::Key_Return));
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_TRUE(press(Qt::Key_Enter, Qt::KeypadModifier));
    EXPECT_EQ(sample.state().room.size(), 2U);
    press(Qt::Key_Return, {}, true);
    EXPECT_EQ(sample.state().room.size(), 2U) << "a key that is held down names one place";
}

TEST_F(PointerKeysTest, APenIsDownUntilEnterAgain)
{
    sample.presenter.setTool(LectureTool::Pen);
    press(Qt::Key_Return);
    EXPECT_TRUE(sample.state().drawing);
    press(Qt::Key_Right, Qt::ControlModifier);
    press(Qt::Key_Right, Qt::ControlModifier);
    press(Qt::Key_Return);
    ASSERT_EQ(sample.state().strokes.size(), 1);
    EXPECT_LT(apart(sample.state().strokes[0].points.back(), kSeen.center() + QPointF(1.0, 0)), 1e-9);
    EXPECT_FALSE(sample.state().drawing);
}

TEST_F(PointerKeysTest, EscapeLiftsAPenAndIsElseNoneOfItsKeys)
{
    EXPECT_FALSE(press(Qt::Key_Escape));
    sample.presenter.setTool(LectureTool::Pen);
    press(Qt::Key_Return);
    EXPECT_TRUE(press(Qt::Key_Escape));
    EXPECT_FALSE(sample.state().drawing);
    EXPECT_FALSE(press(Qt::Key_Escape));
}

TEST_F(PointerKeysTest, PlainArrowsAreNotItsOwn)
{
    EXPECT_FALSE(press(Qt::Key_Right));
    EXPECT_FALSE(press(Qt::Key_Right, Qt::AltModifier | Qt::ControlModifier));
    EXPECT_FALSE(press(Qt::Key_Return, Qt::ControlModifier));
    EXPECT_FALSE(sample.state().pointer);
}

TEST(PointerKeysOfTheViewTest, AViewWithTheFocusPointsAndDrawsByKeysAlone)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    lecture.presenter.setTool(LectureTool::Pen);
    QTest::keyClick(&lecture.view, Qt::Key_Return);
    QTest::keyClick(&lecture.view, Qt::Key_Up, Qt::ControlModifier);
    EXPECT_TRUE(lecture.state().drawing);
    QTest::keyClick(&lecture.view, Qt::Key_Return);
    EXPECT_EQ(lecture.state().strokes.size(), 1);
    EXPECT_EQ(lecture.state().step, 0) << "arrows with Control turn no page";
}

}  // namespace fb::test::pointer_keys_test
