#include "app/canvas/view_frame.h"

#include <gtest/gtest.h>

#include <QLineF>

#include "core/basics/seed_stream.h"

namespace view_frame_test {

namespace {

using namespace fb;

const QRectF kSheet(10, 20, 800, 600);
const QRectF kPicture(-20, -30, 50, 60);

double apart(QPointF a, QPointF b) { return QLineF(a, b).length(); }

TEST(ViewFrameTest, ThereAndBackIsTheSamePlace)
{
    SeedStream draw(3);
    ViewFrame frame = ViewFrame::whole(kSheet, kPicture);
    for (int i = 0; i < 500; ++i) {
        frame = frame.zoomedAt({draw.between(0, 800), draw.between(0, 600)}, draw.between(0.6, 1.8));
        const QPointF cm(draw.between(-20, 30), draw.between(-30, 30));
        EXPECT_LT(apart(frame.toCm(frame.toWidget(cm)), cm), 1e-9);
        EXPECT_LT(apart(frame.cmToWidget().map(cm), frame.toWidget(cm)), 1e-9);
    }
}

TEST(ViewFrameTest, TheWholePictureLiesOnTheSheet)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture);
    EXPECT_TRUE(kSheet.contains(frame.cmToWidget().mapRect(kPicture)));
    EXPECT_LT(apart(frame.toWidget(kPicture.center()), kSheet.center()), 1e-9);
    EXPECT_NEAR(frame.zoom(), 1.0, 1e-12);
}

TEST(ViewFrameTest, UpInCentimetresIsUpOnTheSheet)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture);
    EXPECT_LT(frame.toWidget({0, 5}).y(), frame.toWidget({0, 0}).y());
    EXPECT_GT(frame.toWidget({5, 0}).x(), frame.toWidget({0, 0}).x());
}

TEST(ViewFrameTest, ZoomingKeepsThePointUnderThePointer)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture).zoomedAt(kSheet.center(), 4.0);
    const QPointF pointer(380, 300);
    EXPECT_LT(apart(frame.zoomedAt(pointer, 1.3).toCm(pointer), frame.toCm(pointer)), 1e-9);
}

TEST(ViewFrameTest, TheScaleStaysBetweenWholeAndLargest)
{
    const ViewFrame whole = ViewFrame::whole(kSheet, kPicture);
    EXPECT_NEAR(whole.zoomedAt({1, 1}, 1e6).zoom(), ViewFrame::kLargestZoom, 1e-9);
    EXPECT_NEAR(whole.zoomedAt({1, 1}, 1e-6).zoom(), 1.0, 1e-9);
    EXPECT_EQ(whole.zoomedAt({1, 1}, 0.0), whole);
    EXPECT_EQ(whole.zoomedAt({1, 1}, -2.0), whole);
}

TEST(ViewFrameTest, NoPanningLosesThePicture)
{
    SeedStream draw(5);
    for (int i = 0; i < 300; ++i) {
        const ViewFrame frame = ViewFrame::whole(kSheet, kPicture)
                                    .zoomedAt(kSheet.center(), draw.between(1.0, 12.0))
                                    .panned({draw.between(-1e5, 1e5), draw.between(-1e5, 1e5)});
        EXPECT_TRUE(frame.cmToWidget().mapRect(kPicture).intersects(kSheet.adjusted(100, 100, -100, -100)));
    }
}

TEST(ViewFrameTest, PanningMovesThePaperWithTheHand)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture).zoomedAt(kSheet.center(), 4.0);
    const QPointF before = frame.toWidget({0, 0});
    EXPECT_LT(apart(frame.panned({12, -7}).toWidget({0, 0}), before + QPointF(12, -7)), 1e-9);
}

TEST(ViewFrameTest, AnotherSheetKeepsZoomAndMiddle)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture).zoomedAt({300, 200}, 3.0);
    const ViewFrame other = frame.resized(QRectF(0, 0, 400, 500));
    EXPECT_NEAR(other.zoom(), frame.zoom(), 1e-9);
    EXPECT_LT(apart(other.toCm(QPointF(200, 250)), frame.toCm(kSheet.center())), 1e-9);
}

TEST(ViewFrameTest, ShowingMovesOnlyWhenNeeded)
{
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture).zoomedAt(kSheet.center(), 6.0);
    EXPECT_EQ(frame.showing(frame.toCm(kSheet.center()), 50), frame);
    const QPointF outside = frame.toCm(kSheet.center() + QPointF(450, 0));
    const QPointF seen = frame.showing(outside, 50).toWidget(outside);
    EXPECT_TRUE(kSheet.adjusted(49, 49, -49, -49).contains(seen));
}

TEST(ViewFrameTest, AnAreaIsShownWholeAndInTheMiddle)
{
    const QRectF area(kPicture.center() - QPointF(3, 4), QSizeF(6, 8));
    const ViewFrame frame = ViewFrame::whole(kSheet, kPicture).around(area);
    EXPECT_GT(frame.zoom(), 1.0);
    EXPECT_LT(apart(frame.toWidget(area.center()), kSheet.center()), 1e-9);
    EXPECT_TRUE(kSheet.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(frame.cmToWidget().mapRect(area)));
    EXPECT_EQ(frame.around(QRectF()), frame);
}

TEST(ViewFrameTest, AnEmptyPictureIsNoDivisionByZero)
{
    const ViewFrame frame = ViewFrame::whole(QRectF(), QRectF());
    EXPECT_TRUE(std::isfinite(frame.pixelsPerCm()));
    EXPECT_GT(frame.pixelsPerCm(), 0.0);
}

}  // namespace

}  // namespace view_frame_test
