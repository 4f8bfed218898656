#include "app/canvas/ink_worker.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QTest>
#include <QThread>
#include <algorithm>

#include "tests/support/sample_picture.h"

namespace ink_worker_test {

namespace {

using namespace fb;

InkJob job(double size = 300)
{
    InkJob made;
    made.picture = test::samplePicture();
    made.frame = ViewFrame::whole(QRectF(0, 0, size, size), QRectF(-10, -10, 20, 20));
    made.scheme = schemeOf(PaletteKind::Light);
    made.layers = {kLayers.begin(), kLayers.end()};
    return made;
}

TEST(InkWorkerTest, TheImageCoversTheSheetAndIsPaperAtItsRim)
{
    const std::atomic_bool never = false;
    const auto image = paintedImage(job(), ReadyInk(*test::samplePicture()), never);
    ASSERT_TRUE(image);
    EXPECT_EQ(image->size(), QSize(300, 300));
    EXPECT_EQ(image->pixelColor(1, 1), schemeOf(PaletteKind::Light).paper);
}

TEST(InkWorkerTest, BandsLeaveNoSeam)
{
    const std::atomic_bool never = false;
    const auto image = paintedImage(job(307), ReadyInk(*test::samplePicture()), never);
    ASSERT_TRUE(image);
    const QRgb skin = toneColours(*test::samplePicture()->plate, schemeOf(PaletteKind::Light), 1)[0].rgb();
    for (int y = 60; y < 240; ++y)
        EXPECT_EQ(image->pixel(200, y), skin) << y;
}

TEST(InkWorkerTest, AHandLiesOverTheDrawingWithoutASeam)
{
    const std::atomic_bool never = false;
    InkJob with = job(307);
    with.hand = test::samplePicture();
    const ReadyInk ink(*test::samplePicture());
    const auto bare = paintedImage(job(307), ink, never);
    const auto image = paintedImage(with, ink, never, &ink);
    ASSERT_TRUE(bare && image);
    EXPECT_NE(image->pixel(200, 150), bare->pixel(200, 150));
    for (int y = 60; y < 240; ++y)
        EXPECT_EQ(image->pixel(200, y), image->pixel(200, 150)) << y;
    EXPECT_EQ(image->pixel(3, 3), bare->pixel(3, 3));
}

TEST(InkWorkerTest, AResultTellsOfTheHandItWasPaintedWith)
{
    InkWorker worker;
    std::vector<InkResult> came;
    QObject::connect(&worker, &InkWorker::painted, [&](const InkResult& result) { came.push_back(result); });
    InkJob with = job();
    with.hand = test::samplePicture();
    worker.request(with);
    ASSERT_TRUE(QTest::qWaitFor([&] { return came.size() == 1; }));
    EXPECT_NE(came.back().hand, nullptr);
    worker.request(job());
    ASSERT_TRUE(QTest::qWaitFor([&] { return came.size() == 2; }));
    EXPECT_EQ(came.back().hand, nullptr);
}

TEST(InkWorkerTest, ACancelledDrawingIsNone)
{
    const std::atomic_bool cancelled = true;
    EXPECT_FALSE(paintedImage(job(), ReadyInk(*test::samplePicture()), cancelled));
}

TEST(InkWorkerTest, APreviewHasFewerPixelsOfTheSameSheet)
{
    InkJob half = job();
    half.preview = true;
    half.pixelRatio = 0.5;
    const std::atomic_bool never = false;
    const auto image = paintedImage(half, ReadyInk(*test::samplePicture()), never);
    ASSERT_TRUE(image);
    EXPECT_EQ(image->size(), QSize(150, 150));
    EXPECT_EQ(image->deviceIndependentSize(), QSizeF(300, 300));
}

TEST(InkWorkerTest, ResultsComeInTheThreadOfTheWorkersOwner)
{
    InkWorker worker;
    QThread* heard = nullptr;
    QObject::connect(&worker, &InkWorker::painted, &worker,
                     [&](const InkResult&) { heard = QThread::currentThread(); });
    worker.request(job());
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard != nullptr; }));
    EXPECT_EQ(heard, QThread::currentThread());
}

TEST(InkWorkerTest, TheNewestRequestIsAlwaysAnswered)
{
    InkWorker worker;
    std::vector<double> widths;
    QObject::connect(&worker, &InkWorker::painted, &worker,
                     [&](const InkResult& r) { widths.push_back(r.job.frame.sheet().width()); });
    for (int i = 0; i < 40; ++i)
        worker.request(job(200 + i));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !widths.empty() && widths.back() == 239.0; }));
    EXPECT_LT(widths.size(), 40U);
    EXPECT_TRUE(std::is_sorted(widths.begin(), widths.end()));
}

TEST(InkWorkerTest, NothingComesAfterForgetting)
{
    InkWorker worker;
    int heard = 0;
    QObject::connect(&worker, &InkWorker::painted, &worker, [&](const InkResult&) { ++heard; });
    worker.request(job(900));
    worker.forget();
    QTest::qWait(150);
    EXPECT_EQ(heard, 0);
}

TEST(InkWorkerTest, EndingInTheMiddleOfADrawingIsQuick)
{
    QElapsedTimer clock;
    clock.start();
    for (int i = 0; i < 20; ++i) {
        InkWorker worker;
        worker.request(job(1200));
    }
    EXPECT_LT(clock.elapsed(), 10000);
}

}  // namespace

}  // namespace ink_worker_test
