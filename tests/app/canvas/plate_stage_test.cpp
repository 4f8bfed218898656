#include "app/canvas/plate_stage.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/sample_picture.h"

namespace plate_stage_test {

namespace {

using namespace fb;

class PlateStageTest : public ::testing::Test {
protected:
    PlateStageTest()
    {
        stage.setWidget(QRectF(0, 0, 500, 400), 1.0);
        stage.setPicture(picture);
        stage.setFocus(true);
    }
    bool sharpens()
    {
        return QTest::qWaitFor([this] { return stage.isSharp(); });
    }

    std::shared_ptr<const Picture> picture = test::samplePicture();
    PlateStage stage;
};

TEST_F(PlateStageTest, ANewPictureIsShownWholeAndBecomesSharp)
{
    QSignalSpy sharpened(&stage, &PlateStage::sharpened);
    EXPECT_NEAR(stage.frame().zoom(), 1.0, 1e-9);
    ASSERT_TRUE(sharpens());
    EXPECT_GE(sharpened.count(), 1);
}

TEST_F(PlateStageTest, AnotherPictureOfTheSameBodyKeepsTheZoom)
{
    stage.zoomAt({250, 200}, 3.0);
    auto same = std::make_shared<Picture>(*picture);
    same->skinTone = 4;
    stage.setPicture(same);
    EXPECT_NEAR(stage.frame().zoom(), 3.0, 1e-9);
    auto larger = std::make_shared<Picture>(*picture);
    larger->ink.paper.high.y = 14;
    stage.setPicture(larger);
    EXPECT_NEAR(stage.frame().zoom(), 1.0, 1e-9);
}

TEST_F(PlateStageTest, WhileAHandMovesOnlyPreviewsComeAndSharpSoonAfter)
{
    ASSERT_TRUE(sharpens());
    stage.setMoving(true);
    stage.zoomAt({250, 200}, 2.0);
    stage.panBy({10, 5});
    ASSERT_TRUE(QTest::qWaitFor([this] {
        const PlateFace face = stage.face();
        return face.drawn->job.preview && face.drawn->job.frame == stage.frame();
    }));
    QTest::qWait(3 * PlateStage::kSettleMs);
    EXPECT_FALSE(stage.isSharp());
    stage.setMoving(false);
    EXPECT_TRUE(sharpens());
}

TEST_F(PlateStageTest, AHandIsDrawnUntilItIsHiddenOrTakenAway)
{
    ASSERT_TRUE(sharpens());
    const QImage bare = stage.face().drawn->image;
    stage.setHand(test::samplePicture());
    EXPECT_FALSE(stage.isSharp());
    ASSERT_TRUE(sharpens());
    EXPECT_NE(stage.face().drawn->image, bare);
    stage.setHandShown(false);
    ASSERT_TRUE(sharpens());
    EXPECT_EQ(stage.face().drawn->image, bare);
    stage.setHandShown(true);
    ASSERT_TRUE(sharpens());
    EXPECT_NE(stage.face().drawn->image, bare);
    stage.setHand(nullptr);
    ASSERT_TRUE(sharpens());
    EXPECT_EQ(stage.face().drawn->image, bare);
}

TEST_F(PlateStageTest, HidingAHandThatIsNotThereAsksForNothing)
{
    ASSERT_TRUE(sharpens());
    stage.setHandShown(false);
    EXPECT_TRUE(stage.isSharp());
}

TEST_F(PlateStageTest, PeelingAsksForANewDrawing)
{
    ASSERT_TRUE(sharpens());
    stage.setLayers({Layer::Bone});
    EXPECT_FALSE(stage.isSharp());
    EXPECT_TRUE(sharpens());
    EXPECT_EQ(stage.face().drawn->job.layers, QSet<Layer>{Layer::Bone});
}

TEST_F(PlateStageTest, AnotherSchemeAsksForANewDrawing)
{
    ASSERT_TRUE(sharpens());
    stage.setScheme(schemeOf(PaletteKind::Dark));
    EXPECT_FALSE(stage.isSharp());
    EXPECT_TRUE(sharpens());
}

TEST_F(PlateStageTest, TheCrosshairShowsOnlyForKeysOnAMarkablePlateInFocus)
{
    EXPECT_FALSE(stage.face().crosshair);
    stage.setByKeyboard(true);
    EXPECT_TRUE(stage.face().crosshair);
    stage.setMarkable(false);
    EXPECT_FALSE(stage.face().crosshair);
    stage.setMarkable(true);
    stage.setFocus(false);
    EXPECT_FALSE(stage.face().crosshair);
}

TEST_F(PlateStageTest, TheCrosshairStartsInTheMiddleAndStaysOnThePicture)
{
    EXPECT_EQ(stage.crosshair(), QPointF(0, 0));
    stage.stepCrosshair({500, -500});
    EXPECT_EQ(stage.crosshair(), QPointF(10, -10));
}

TEST_F(PlateStageTest, ACrosshairThatLeavesTheSheetTakesThePaperAlong)
{
    stage.zoomAt({250, 200}, 8.0);
    for (int i = 0; i < 8; ++i)
        stage.stepCrosshair({0.5, 0});
    EXPECT_TRUE(stage.frame().sheet().contains(stage.frame().toWidget(stage.crosshair())));
}

TEST_F(PlateStageTest, EnterMarksAndEnterAgainOnTheMarkAsksForTheGrade)
{
    QSignalSpy marked(&stage, &PlateStage::marked);
    QSignalSpy graded(&stage, &PlateStage::gradeAsked);
    stage.stepCrosshair({1.5, 2});
    stage.enter();
    ASSERT_EQ(marked.count(), 1);
    stage.setMark(marked[0][0].toPointF());
    stage.enter();
    EXPECT_EQ(graded.count(), 1);
    stage.stepCrosshair({0.1, 0});
    stage.enter();
    EXPECT_EQ(marked.count(), 2);
    EXPECT_EQ(graded.count(), 1);
}

TEST_F(PlateStageTest, ACarriedMarkIsShownBeforeItIsMade)
{
    stage.setMark(QPointF(1, 1));
    stage.carry(stage.frame().toWidget({3, -2}));
    EXPECT_LT(QLineF(*stage.face().mark, QPointF(3, -2)).length(), 1e-9);
    stage.carry(std::nullopt);
    EXPECT_EQ(*stage.face().mark, QPointF(1, 1));
}

TEST_F(PlateStageTest, WithoutAPictureNothingCanBeMarkedOrDrawn)
{
    stage.setPicture(nullptr);
    EXPECT_FALSE(stage.isMarkable());
    EXPECT_FALSE(stage.face().hasPicture);
    EXPECT_FALSE(stage.face().drawn);
    QTest::qWait(60);
    EXPECT_FALSE(stage.isSharp());
}

TEST_F(PlateStageTest, AFigureThatMovesRepaintsWhereItWasAndIsAndOneWithAWordAll)
{
    const Scene low = {{Role::Construction, Figure::Line, {{-2, -2}, {2, -2}}, {}, "Line"}};
    Scene high = {{Role::Construction, Figure::Line, {{-2, 4}, {2, 4}}, {}, "Line"}};
    stage.setScene(low);
    QSignalSpy all(&stage, &PlateStage::changed);
    QSignalSpy some(&stage, &PlateStage::changedWithin);
    stage.setScene(high);
    EXPECT_EQ(all.count(), 0);
    ASSERT_EQ(some.count(), 1);
    const QRectF box = some[0][0].toRectF();
    for (const QPointF at : {QPointF(-2, -2), QPointF(2, 4)})
        EXPECT_TRUE(box.contains(stage.frame().toWidget(at)));
    EXPECT_FALSE(box.contains(stage.frame().toWidget({-8, 0})));
    high[0].label = "Line";
    stage.setScene(high);
    EXPECT_EQ(all.count(), 1);
}

TEST_F(PlateStageTest, TheSameHandleToldAgainRepaintsOnlyTheTools)
{
    stage.setTool(PlateTool::Handles);
    stage.setHandles({{1, {0, 0}, "Palm", HandleShape::Grip}, {2, {3, 3}, "Tip", HandleShape::Turn}});
    stage.setCurrentHandle(1);
    QSignalSpy all(&stage, &PlateStage::changed);
    QSignalSpy some(&stage, &PlateStage::changedWithin);
    stage.setCurrentHandle(2);
    EXPECT_EQ(all.count(), 0);
    ASSERT_EQ(some.count(), 1);
    EXPECT_TRUE(some[0][0].toRectF().contains(stage.frame().toWidget({3, 3})));
}

}  // namespace

}  // namespace plate_stage_test
