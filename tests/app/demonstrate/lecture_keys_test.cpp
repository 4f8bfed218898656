#include "app/demonstrate/lecture_keys.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>

#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_keys_test {

class LectureKeysTest : public ::testing::Test {
protected:
    LectureKeysTest()
    {
        auto* rows = new QVBoxLayout(&page);
        for (QWidget* each : std::initializer_list<QWidget*>{&button, &slider, &line, &spin, &combo})
            rows->addWidget(each);
        slider.setRange(0, 100);
        slider.setValue(50);
        spin.setRange(0, 100);
        spin.setValue(50);
        combo.addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
        sample.presenter.setCalm(true);
    }
    void press(QWidget& at, Qt::Key key)
    {
        at.setFocus();
        QTest::keyClick(&at, key);
    }
    [[nodiscard]] int step() const { return sample.state().step; }

    LectureSample sample;
    QWidget page;
    QPushButton button;
    QSlider slider{Qt::Horizontal};
    QLineEdit line;
    QSpinBox spin;
    QComboBox combo;
    LectureKeys keys{sample.presenter, page};
};

TEST_F(LectureKeysTest, OnAButtonTheArrowsGoOnAndBack)
{
    press(button, Qt::Key_Right);
    press(button, Qt::Key_Down);
    EXPECT_EQ(step(), 2);
    EXPECT_TRUE(button.hasFocus()) << "the focus stays";
    press(button, Qt::Key_Left);
    press(button, Qt::Key_Backspace);
    EXPECT_EQ(step(), 0);
    press(button, Qt::Key_End);
    EXPECT_EQ(step(), sample.lastStep());
    press(button, Qt::Key_Home);
    EXPECT_EQ(step(), 0);
}

TEST_F(LectureKeysTest, SpacePressesAButtonAndElsewhereGoesOn)
{
    QSignalSpy clicked(&button, &QPushButton::clicked);
    press(button, Qt::Key_Space);
    EXPECT_EQ(clicked.count(), 1);
    EXPECT_EQ(step(), 0);
    page.setFocusPolicy(Qt::StrongFocus);
    press(page, Qt::Key_Space);
    EXPECT_EQ(step(), 1);
}

TEST_F(LectureKeysTest, FieldsInUseKeepWhatTheyNeed)
{
    press(slider, Qt::Key_Right);
    EXPECT_EQ(slider.value(), 51);
    press(spin, Qt::Key_Up);
    EXPECT_EQ(spin.value(), 51);
    press(combo, Qt::Key_Down);
    EXPECT_EQ(combo.currentIndex(), 1);
    line.setFocus();
    QTest::keyClicks(&line, QStringLiteral("Bob b. b"));
    EXPECT_EQ(line.text(), QStringLiteral("Bob b. b"));
    EXPECT_EQ(step(), 0);
    EXPECT_FALSE(sample.state().blank);
}

TEST_F(LectureKeysTest, AListAtItsEndGoesNotOnInTheDemonstration)
{
    QTableWidget table(2, 1, &page);
    table.show();
    table.setCurrentCell(1, 0);
    press(table, Qt::Key_Down);
    press(table, Qt::Key_End);
    EXPECT_EQ(table.currentRow(), 1);
    EXPECT_EQ(step(), 0);
    press(slider, Qt::Key_B);
    EXPECT_TRUE(sample.state().blank) << "a letter means nothing to a slider";
}

TEST_F(LectureKeysTest, AHandHeldPresenterGoesOnWhateverHasTheFocus)
{
    int expected = 0;
    for (QWidget* each : std::initializer_list<QWidget*>{&button, &slider, &line, &spin, &combo}) {
        press(*each, Qt::Key_PageDown);
        EXPECT_EQ(step(), ++expected) << each->metaObject()->className();
    }
    EXPECT_EQ(slider.value(), 50);
    EXPECT_EQ(spin.value(), 50);
    EXPECT_EQ(combo.currentIndex(), 0);
    press(spin, Qt::Key_PageUp);
    EXPECT_EQ(step(), expected - 1);
}

TEST_F(LectureKeysTest, BlankSwapAndClose)
{
    QSignalSpy swap(&keys, &LectureKeys::asksSwap);
    QSignalSpy close(&keys, &LectureKeys::asksClose);
    press(button, Qt::Key_B);
    EXPECT_TRUE(sample.state().blank);
    press(button, Qt::Key_Period);
    EXPECT_FALSE(sample.state().blank);
    press(spin, Qt::Key_F6);
    EXPECT_EQ(swap.count(), 1);
    press(button, Qt::Key_Escape);
    EXPECT_EQ(close.count(), 1);
}

TEST_F(LectureKeysTest, ShortcutsAndOtherWindowsAreLeftAlone)
{
    button.setFocus();
    QTest::keyClick(&button, Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(&button, Qt::Key_B, Qt::AltModifier);
    QWidget other;
    other.show();
    QTest::keyClick(&other, Qt::Key_PageDown);
    EXPECT_EQ(step(), 0);
    EXPECT_FALSE(sample.state().blank);
}

}  // namespace fb::test::lecture_keys_test
