#include "app/demonstrate/pane_ink.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QThread>
#include <vector>

#include "tests/support/pane_sample.h"

namespace fb::test::pane_ink_test {

class PaneInkTest : public ::testing::Test {
protected:
    PaneInkTest()
    {
        QObject::connect(&ink, &PaneInk::painted, &ink, [this](const PaneDrawn& drawn) {
            came.push_back(drawn);
            heardIn = QThread::currentThread();
        });
    }
    bool comes(std::size_t count)
    {
        return QTest::qWaitFor([&] { return came.size() >= count; });
    }

    PaneJob job = paneJob(stateOf(Convention::DeltoidStrip), 0);
    PaneInk ink;
    std::vector<PaneDrawn> came;
    QThread* heardIn = nullptr;
};

TEST_F(PaneInkTest, SomethingComesSoonAndThenTheSharpOne)
{
    ink.request(job);
    ASSERT_TRUE(comes(2));
    EXPECT_TRUE(came[0].result.job.preview);
    EXPECT_FALSE(came[1].result.job.preview);
    EXPECT_EQ(heardIn, QThread::currentThread());
    for (const PaneDrawn& drawn : came)
        EXPECT_EQ(drawn.job.pane.body, job.pane.body);
}

TEST_F(PaneInkTest, WhatIsSharpAlreadyComesOnce)
{
    ink.request(job);
    ASSERT_TRUE(comes(2));
    ink.request(job);
    ASSERT_TRUE(comes(3));
    QTest::qWait(50);
    EXPECT_EQ(came.size(), 3U);
    EXPECT_FALSE(came[2].result.job.preview);
}

TEST_F(PaneInkTest, WhileSomethingMovesNothingSharpIsPainted)
{
    job.moving = true;
    ink.request(job);
    ASSERT_TRUE(comes(1));
    QTest::qWait(150);
    ASSERT_EQ(came.size(), 1U);
    EXPECT_TRUE(came[0].result.job.preview);
}

TEST_F(PaneInkTest, TheNewestIsAlwaysAnsweredAndOlderOnesAreLeftOut)
{
    for (int i = 0; i < 60; ++i) {
        job.pixelRatio = 1.0 + i / 64.0;
        ink.request(job);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] {
        return !came.empty() && came.back().job.pixelRatio == 1.0 + 59.0 / 64.0 &&
               !came.back().result.job.preview;
    }));
    EXPECT_LT(came.size(), 60U);
    EXPECT_TRUE(
        std::ranges::is_sorted(came, {}, [](const PaneDrawn& drawn) { return drawn.job.pixelRatio; }));
}

TEST_F(PaneInkTest, NothingComesAfterForgetting)
{
    ink.request(job);
    ink.forget();
    QTest::qWait(200);
    EXPECT_TRUE(came.empty());
    ink.request(job);
    EXPECT_TRUE(comes(2)) << "and what is asked afterwards comes again";
}

TEST_F(PaneInkTest, EndingInTheMiddleIsSafe)
{
    for (int i = 0; i < 10; ++i) {
        PaneInk passing;
        passing.request(job);
        if (i % 2 == 1)
            QTest::qWait(4);
    }
    SUCCEED() << "nothing hangs, and no picture is told to what is gone";
}

}  // namespace fb::test::pane_ink_test
