#include "app/practice/run_strip.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace fb::test::run_strip_test {

TEST(RunStripTest, TheSeedIsShownAndATypedOneIsAskedFor)
{
    RunStrip strip;
    PracticeState state;
    state.ready = true;
    state.setup.seed = 48213;
    strip.showState(state);
    strip.show();
    auto* seed = strip.findChild<QLineEdit*>(QStringLiteral("seed"));
    EXPECT_EQ(seed->text(), QStringLiteral("48213"));
    QSignalSpy asked(&strip, &RunStrip::replayAsked);
    seed->selectAll();
    QTest::keyClicks(seed, QStringLiteral("99"));
    strip.showState(state);
    EXPECT_EQ(seed->text(), QStringLiteral("99")) << "typing is not disturbed while the run goes on";
    QTest::keyClick(seed, Qt::Key_Return);
    QTest::mouseClick(strip.findChild<QPushButton*>(QStringLiteral("replay")), Qt::LeftButton);
    ASSERT_EQ(asked.count(), 2);
    EXPECT_EQ(asked[0][0].toString(), QStringLiteral("99"));
    EXPECT_TRUE(namelessControls(strip).isEmpty()) << namelessControls(strip).join('\n').toStdString();
}

TEST(RunStripTest, TheLargestSeedCanBeTyped)
{
    RunStrip strip;
    const QString largest = QString::number(kLargestSeed);
    EXPECT_GE(strip.findChild<QLineEdit*>(QStringLiteral("seed"))->maxLength(), largest.size());
}

}  // namespace fb::test::run_strip_test
