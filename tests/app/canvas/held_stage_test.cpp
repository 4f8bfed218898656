#include "app/canvas/held_stage.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/core_atlas.h"

namespace held_stage_test {

namespace {

using namespace fb;

Held hand(QPointF wrist, double degrees, double opening)
{
    HandLook look;
    look.art = {std::shared_ptr<const Plate>(), &test::plateOf(View::OpenHand)};
    const QPointF fork = wrist + QTransform().rotate(degrees).map(QPointF(11, 0));
    look.pose.hand = Side::Left;
    look.pose.wrist = {wrist.x(), wrist.y()};
    look.pose.fork = {fork.x(), fork.y()};
    look.pose.opening = Degrees{opening};
    return heldOf(look).value();
}

class HeldStageTest : public ::testing::Test {
protected:
    HeldStageTest()
    {
        stage.look(8.0, schemeOf(PaletteKind::Light));
        stage.hold(hand({0, 0}, 90, 30));
    }
    bool sharpens()
    {
        return QTest::qWaitFor([this] { return stage.isSharp(); });
    }
    HeldStage stage;
};

TEST_F(HeldStageTest, SomethingIsThereAtOnceAndSharpSoonAfter)
{
    ASSERT_TRUE(stage.image());
    EXPECT_FALSE(stage.isSharp());
    const QSize quick = stage.image()->image.size();
    QSignalSpy changed(&stage, &HeldStage::changed);
    ASSERT_TRUE(sharpens());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_GT(stage.image()->image.width(), 1.7 * quick.width());
}

TEST_F(HeldStageTest, SlidingDrawsNothingAnew)
{
    ASSERT_TRUE(sharpens());
    const auto before = stage.image()->image.cacheKey();
    for (int i = 0; i < 20; ++i) {
        stage.hold(hand({0.1 * i, -0.2 * i}, 90, 30));
        EXPECT_TRUE(stage.isSharp());
        EXPECT_EQ(stage.image()->image.cacheKey(), before);
    }
}

TEST_F(HeldStageTest, SlidingCarriesTheImageAlong)
{
    const QPointF before = stage.image()->box().center();
    stage.hold(hand({3, -2}, 90, 30));
    const QPointF moved = stage.image()->box().center() - before;
    EXPECT_NEAR(moved.x(), 3.0, 1e-6);
    EXPECT_NEAR(moved.y(), -2.0, 1e-6);
}

TEST_F(HeldStageTest, TurningLaysTheOldImageAndSharpensOnceItRests)
{
    ASSERT_TRUE(sharpens());
    const auto before = stage.image()->image.cacheKey();
    for (int i = 1; i <= 10; ++i) {
        stage.hold(hand({0, 0}, 90 + i, 30));
        EXPECT_EQ(stage.image()->image.cacheKey(), before);
    }
    EXPECT_FALSE(stage.isSharp());
    ASSERT_TRUE(sharpens());
    EXPECT_NE(stage.image()->image.cacheKey(), before);
}

TEST_F(HeldStageTest, OpeningShowsTheNewFormAtOnce)
{
    ASSERT_TRUE(sharpens());
    const double narrow = stage.image()->box().width();
    stage.hold(hand({0, 0}, 90, 45));
    EXPECT_GT(stage.image()->box().width(), narrow + 0.5);
    EXPECT_FALSE(stage.isSharp());
    EXPECT_TRUE(sharpens());
}

TEST_F(HeldStageTest, AnotherSizeOrSchemeIsDrawnAnew)
{
    ASSERT_TRUE(sharpens());
    const int width = stage.image()->image.width();
    stage.look(16.0, schemeOf(PaletteKind::Light));
    EXPECT_FALSE(stage.isSharp());
    ASSERT_TRUE(sharpens());
    EXPECT_GT(stage.image()->image.width(), 1.8 * width);
    const auto light = stage.image()->image;
    stage.look(16.0, schemeOf(PaletteKind::Dark));
    EXPECT_NE(stage.image()->image, light);
    EXPECT_TRUE(sharpens());
}

TEST_F(HeldStageTest, WhatIsTakenAwayIsGone)
{
    stage.hold(std::nullopt);
    EXPECT_FALSE(stage.image());
    EXPECT_TRUE(stage.isSharp());
    QTest::qWait(2 * HeldStage::kSettleMs);
    EXPECT_FALSE(stage.image());
}

TEST_F(HeldStageTest, ItCanBeTakenAwayWhileItDraws)
{
    auto passing = std::make_unique<HeldStage>();
    passing->look(60.0, schemeOf(PaletteKind::Light));
    passing->hold(hand({0, 0}, 90, 30));
    QTest::qWait(HeldStage::kSettleMs + 15);
    passing.reset();
    EXPECT_TRUE(sharpens());
}

}  // namespace

}  // namespace held_stage_test
