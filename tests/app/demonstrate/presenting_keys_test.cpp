#include "app/demonstrate/presenting_keys.h"

#include <gtest/gtest.h>

#include "tests/support/lecture_sample.h"

namespace fb::test::presenting_keys_test {

TEST(PresentingKeysTest, EveryKeyDoesItsDeed)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    for (const int key : {Qt::Key_PageDown, Qt::Key_Right, Qt::Key_Down, Qt::Key_Space}) {
        sample.presenter.goTo(2);
        EXPECT_TRUE(presentBy(sample.presenter, key));
        EXPECT_EQ(sample.state().step, 3) << key;
    }
    for (const int key : {Qt::Key_PageUp, Qt::Key_Left, Qt::Key_Up, Qt::Key_Backspace}) {
        sample.presenter.goTo(2);
        EXPECT_TRUE(presentBy(sample.presenter, key));
        EXPECT_EQ(sample.state().step, 1) << key;
    }
    EXPECT_TRUE(presentBy(sample.presenter, Qt::Key_End));
    EXPECT_EQ(sample.state().step, sample.lastStep());
    EXPECT_TRUE(presentBy(sample.presenter, Qt::Key_Home));
    EXPECT_EQ(sample.state().step, 0);
    for (const int key : {Qt::Key_B, Qt::Key_Period}) {
        const bool was = sample.state().blank;
        EXPECT_TRUE(presentBy(sample.presenter, key));
        EXPECT_NE(sample.state().blank, was);
    }
}

TEST(PresentingKeysTest, OtherKeysDoNothing)
{
    LectureSample sample;
    const int changes = sample.changes;
    for (const int key : {Qt::Key_A, Qt::Key_Return, Qt::Key_F6, Qt::Key_Escape, Qt::Key_Tab}) {
        EXPECT_FALSE(isPresentingKey(key));
        EXPECT_FALSE(presentBy(sample.presenter, key));
    }
    EXPECT_EQ(sample.changes, changes);
}

TEST(PresentingKeysTest, BeforeThereIsABodyAKeyDoesNoHarm)
{
    LectureSample none(std::nullopt);
    for (const int key : {Qt::Key_PageDown, Qt::Key_PageUp, Qt::Key_Home, Qt::Key_End, Qt::Key_B})
        EXPECT_TRUE(presentBy(none.presenter, key));
    EXPECT_EQ(none.state().step, 0);
}

}  // namespace fb::test::presenting_keys_test
