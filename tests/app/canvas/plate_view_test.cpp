#include "app/canvas/plate_view.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QLineF>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "app/look/type.h"
#include "tests/support/core_atlas.h"
#include "tests/support/sample_picture.h"

namespace plate_view_test {

namespace {

using namespace fb;

class PlateViewTest : public ::testing::Test {
protected:
    PlateViewTest()
    {
        view.resize(520, 480);
        view.setPicture(test::samplePicture());
        view.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        EXPECT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
        QObject::connect(&view, &PlateView::marked, &view, [this](QPointF cm) {
            marks.push_back(cm);
            view.setMark(cm);
        });
    }
    QPoint pixel(double x, double y) { return view.toWidget({x, y}).toPoint(); }

    PlateView view;
    std::vector<QPointF> marks;
};

TEST_F(PlateViewTest, AClickMarksThePlaceUnderIt)
{
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(2, 3));
    ASSERT_EQ(marks.size(), 1U);
    EXPECT_LT(QLineF(marks[0], QPointF(2, 3)).length(), 1.0 / view.pixelsPerCm());
}

TEST_F(PlateViewTest, AMarkCanBeDraggedElsewhere)
{
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(2, 3));
    QTest::mousePress(&view, Qt::LeftButton, {}, pixel(2, 3));
    QTest::mouseMove(&view, pixel(0, 0));
    QTest::mouseRelease(&view, Qt::LeftButton, {}, pixel(-1, -2));
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_LT(QLineF(marks[1], QPointF(-1, -2)).length(), 1.5 / view.pixelsPerCm());
}

TEST_F(PlateViewTest, KeysAloneMarkWithdrawAndAskForTheGrade)
{
    QSignalSpy graded(&view, &PlateView::gradeAsked);
    QSignalSpy withdrawn(&view, &PlateView::withdrawAsked);
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Up, Qt::ShiftModifier);
    QTest::keyClick(&view, Qt::Key_Return);
    ASSERT_EQ(marks.size(), 1U);
    EXPECT_LT(QLineF(marks[0], QPointF(2.0, 0.1)).length(), 1e-9);
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_EQ(graded.count(), 1);
    QTest::keyClick(&view, Qt::Key_Backspace);
    EXPECT_EQ(withdrawn.count(), 1);
}

TEST_F(PlateViewTest, APlateThatIsOnlyShownTakesNoMarkButZooms)
{
    view.setMarkable(false);
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(0, 0));
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_TRUE(marks.empty());
    const double before = view.pixelsPerCm();
    QTest::keyClick(&view, Qt::Key_Plus);
    EXPECT_GT(view.pixelsPerCm(), before);
}

TEST_F(PlateViewTest, TheWheelKeepsThePlaceUnderThePointerAndZeroShowsAll)
{
    const QPointF pointer(200, 180);
    const double whole = view.pixelsPerCm();
    view.zoomBy(3.0);
    const QPointF place = view.toCm(pointer);
    QWheelEvent turn(pointer, view.mapToGlobal(pointer), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                     Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&view, &turn);
    EXPECT_LT(QLineF(view.toCm(pointer), place).length(), 1e-9);
    QTest::keyClick(&view, Qt::Key_0);
    EXPECT_NEAR(view.pixelsPerCm(), whole, 1e-9);
}

TEST_F(PlateViewTest, ZoomingIsFollowedByASharpDrawing)
{
    QSignalSpy sharpened(&view, &PlateView::sharpened);
    view.zoomBy(2.0);
    EXPECT_FALSE(view.isSharp());
    ASSERT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
    EXPECT_EQ(sharpened.count(), 1);
}

TEST_F(PlateViewTest, NewPicturesAndSchemesNeverHoldUpTheWindow)
{
    QElapsedTimer clock;
    for (int i = 0; i < 12; ++i) {
        auto picture = std::make_shared<Picture>(*test::samplePicture());
        picture->skinTone = i % 5;
        clock.start();
        view.setPicture(picture);
        view.setScheme(schemeOf(kPaletteKinds[static_cast<std::size_t>(i) % 3]));
        view.setLayers({kLayers[static_cast<std::size_t>(i) % kLayers.size()]});
        EXPECT_LT(clock.elapsed(), 50);
    }
    EXPECT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
}

TEST_F(PlateViewTest, LettersFollowTheTextSizeOfTheProgram)
{
    view.setScene({{Role::Landmark, Figure::Point, {{0, 0}}, "Acromion", {}}});
    const QImage before = view.grab().toImage();
    view.setFont(fontOf(Type::Body, 2.0));
    EXPECT_NE(view.grab().toImage(), before);
}

TEST_F(PlateViewTest, AHandIsLaidOverTheDrawingAndCanBeHidden)
{
    EXPECT_TRUE(view.isHandShown());
    const QImage bare = view.grab().toImage();
    view.setHand(test::samplePicture());
    ASSERT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
    EXPECT_NE(view.grab().toImage(), bare);
    view.setHandShown(false);
    EXPECT_FALSE(view.isHandShown());
    ASSERT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
    EXPECT_EQ(view.grab().toImage(), bare);
}

// Wide plates and tall ones, both sides: what is shown can be marked where it is seen.
TEST_F(PlateViewTest, EveryPlateIsShownWholeAndMarkedWhereItIsClickedAndByKeys)
{
    for (const View of : kViews) {
        for (const Side side : kSides) {
            const Patient patient = test::adult(Sex::Female, 158.0, 90.0, side);
            const auto map = bodyMap(test::atlas(), of, patient);
            ASSERT_TRUE(map.has_value());
            const Plate& plate = test::plateOf(of);
            view.setPicture(std::make_shared<const Picture>(
                Picture{{std::shared_ptr<const Plate>(), &plate}, movedInk(plate, *map, patient), 2}));
            ASSERT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }, 20000)) << wordOf(of);
            view.showWhole();
            const Bounds paper = movedInk(plate, *map, patient).paper;
            const QRectF sheet = QRectF(view.rect());
            EXPECT_TRUE(sheet.contains(view.toWidget({paper.low.x, paper.low.y}))) << wordOf(of);
            EXPECT_TRUE(sheet.contains(view.toWidget({paper.high.x, paper.high.y}))) << wordOf(of);
            marks.clear();
            const QPointF place(paper.low.x * 0.4 + paper.high.x * 0.6,
                                paper.low.y * 0.6 + paper.high.y * 0.4);
            QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(place.x(), place.y()));
            QTest::keyClick(&view, Qt::Key_Left);
            QTest::keyClick(&view, Qt::Key_Return);
            ASSERT_EQ(marks.size(), 2U) << wordOf(of);
            EXPECT_LT(QLineF(marks[0], place).length(), 1.0 / view.pixelsPerCm());
            EXPECT_LT(QLineF(marks[1], marks[0] - QPointF(0.5, 0.0)).length(), 1e-9);
        }
    }
}

TEST_F(PlateViewTest, ItIsNamedForAScreenReader)
{
    EXPECT_FALSE(view.objectName().isEmpty());
    EXPECT_FALSE(view.accessibleName().isEmpty());
    EXPECT_FALSE(view.accessibleDescription().isEmpty());
}

TEST_F(PlateViewTest, ItCanBeTakenAwayWhileItPaints)
{
    auto passing = std::make_unique<PlateView>();
    passing->resize(1200, 900);
    passing->setPicture(test::samplePicture());
    passing->show();
    passing.reset();
    EXPECT_TRUE(view.isSharp());
}

}  // namespace

}  // namespace plate_view_test
