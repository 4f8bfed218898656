#include "app/demonstrate/lecture_view.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QSignalSpy>

#include "tests/support/lecture_faces.h"
#include "tests/support/shown_lecture.h"

namespace fb::test::lecture_view_test {

TEST(LectureViewTest, PaintsWhatTheStateIs)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_EQ(lecture.view.grab().toImage().convertToFormat(QImage::Format_RGB32).pixel(400, 200),
              paintedFace(lecture.view.face()).pixel(400, 200));
    const QImage first = lecture.view.grab().toImage();
    lecture.presenter.goTo(2);
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_NE(lecture.view.grab().toImage(), first);
}

TEST(LectureViewTest, AnotherSchemeIsPaintedAnew)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    QSignalSpy sharpened(&lecture.view, &LectureView::sharpened);
    lecture.view.setScheme(schemeOf(PaletteKind::Dark));
    EXPECT_FALSE(lecture.view.isSharp());
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_GE(sharpened.count(), 1);
    EXPECT_EQ(lecture.view.face().panes.front().drawn->job.scheme, schemeOf(PaletteKind::Dark));
}

TEST(LectureViewTest, KeysOfAPresenterGoOnAndBack)
{
    ShownLecture lecture;
    lecture.view.setFocus();
    for (const Qt::Key key : {Qt::Key_PageDown, Qt::Key_Right, Qt::Key_Down, Qt::Key_Space})
        QTest::keyClick(&lecture.view, key);
    EXPECT_EQ(lecture.state().step, 4);
    for (const Qt::Key key : {Qt::Key_PageUp, Qt::Key_Left, Qt::Key_Up})
        QTest::keyClick(&lecture.view, key);
    EXPECT_EQ(lecture.state().step, 1);
    QTest::keyClick(&lecture.view, Qt::Key_End);
    EXPECT_EQ(lecture.state().step, lecture.lastStep());
    QTest::keyClick(&lecture.view, Qt::Key_Backspace);
    EXPECT_EQ(lecture.state().step, lecture.lastStep() - 1);
    QTest::keyClick(&lecture.view, Qt::Key_Home);
    EXPECT_EQ(lecture.state().step, 0);
}

TEST(LectureViewTest, AKeyThatIsHeldDownDoesNotRunThroughALecture)
{
    ShownLecture lecture;
    for (int i = 0; i < 5; ++i) {
        QKeyEvent held(QEvent::KeyPress, Qt::Key_PageDown, Qt::NoModifier, {}, true);
        QCoreApplication::sendEvent(&lecture.view, &held);
    }
    EXPECT_EQ(lecture.state().step, 0);
}

TEST(LectureViewTest, BOrPeriodBlanksAndShowsAgain)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    const QImage shown = lecture.view.grab().toImage();
    QTest::keyClick(&lecture.view, Qt::Key_B);
    EXPECT_TRUE(lecture.state().blank);
    const QImage blank = lecture.view.grab().toImage();
    EXPECT_EQ(blank.pixel(20, 20), blank.pixel(400, 220));
    QTest::keyClick(&lecture.view, Qt::Key_Period);
    EXPECT_FALSE(lecture.state().blank);
    EXPECT_EQ(lecture.view.grab().toImage(), shown);
}

TEST(LectureViewTest, F6AndEscapeAreTold)
{
    ShownLecture lecture;
    QSignalSpy swap(&lecture.view, &LectureView::asksSwap);
    QSignalSpy close(&lecture.view, &LectureView::asksClose);
    QTest::keyClick(&lecture.view, Qt::Key_F6);
    QTest::keyClick(&lecture.view, Qt::Key_Escape);
    EXPECT_EQ(swap.count(), 1);
    EXPECT_EQ(close.count(), 1);
}

TEST(LectureViewTest, OtherKeysGoToWhoeverHoldsTheView)
{
    class Holder : public QWidget {
    public:
        int heard = 0;

    protected:
        void keyPressEvent(QKeyEvent* event) override { heard += event->key() != Qt::Key_Control; }
    } holder;
    LectureSample sample;
    LectureView view(sample.presenter, LectureView::For::Speaker, &holder);
    QTest::keyClick(&view, Qt::Key_N);
    QTest::keyClick(&view, Qt::Key_B, Qt::ControlModifier);
    EXPECT_EQ(holder.heard, 2);
    EXPECT_FALSE(sample.state().blank);
    QTest::keyClick(&view, Qt::Key_B);
    EXPECT_EQ(holder.heard, 2);
}

TEST(LectureViewTest, TheMousePointsDrawsAndAsksInCentimetres)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    const QPoint from(300, 200);
    const QPoint to(380, 230);
    lecture.move(from);
    ASSERT_TRUE(lecture.state().pointer);
    EXPECT_LT(apart(*lecture.state().pointer, lecture.cm(from)), 0.1);
    lecture.presenter.setTool(LectureTool::Pen);
    QTest::mousePress(lecture.view.windowHandle(), Qt::LeftButton, {}, from);
    lecture.move(to);
    EXPECT_TRUE(lecture.state().drawing);
    QTest::mouseRelease(lecture.view.windowHandle(), Qt::LeftButton, {}, to);
    ASSERT_EQ(lecture.state().strokes.size(), 1);
    EXPECT_LT(apart(lecture.state().strokes.front().points.front(), lecture.cm(from)), 0.1);
    EXPECT_LT(apart(lecture.state().strokes.front().points.back(), lecture.cm(to)), 0.1);
    lecture.presenter.setTool(LectureTool::Ask);
    QTest::mouseClick(lecture.view.windowHandle(), Qt::LeftButton, {}, to);
    ASSERT_EQ(lecture.state().room.size(), 1U);
    EXPECT_LT(apart({lecture.state().room[0].at.x, lecture.state().room[0].at.y}, lecture.cm(to)), 0.1);
}

TEST(LectureViewTest, BesideThePlateThereIsNoPointer)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    lecture.move(QPoint(300, 200));
    ASSERT_TRUE(lecture.state().pointer);
    lecture.move(QPoint(300, 447));  // the caution
    EXPECT_FALSE(lecture.state().pointer);
    lecture.move(QPoint(300, 200));
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&lecture.view, &leave);
    EXPECT_FALSE(lecture.state().pointer);
}

TEST(LectureViewTest, OfTwoPlatesOnlyTheFirstTakesThePen)
{
    ShownLecture lecture;
    lecture.presenter.pin();
    lecture.presenter.setStoutness(Stoutness::Heavy);
    ASSERT_TRUE(lecture.sharpens());
    ASSERT_EQ(lecture.view.face().panes.size(), 2U);
    lecture.presenter.setTool(LectureTool::Pen);
    const auto stroke = [&](QPoint from) {
        QTest::mousePress(lecture.view.windowHandle(), Qt::LeftButton, {}, from);
        lecture.move(from + QPoint(20, 5));
        QTest::mouseRelease(lecture.view.windowHandle(), Qt::LeftButton, {}, from + QPoint(20, 5));
    };
    stroke({600, 200});
    EXPECT_TRUE(lecture.state().strokes.isEmpty());
    stroke({200, 200});
    EXPECT_EQ(lecture.state().strokes.size(), 1);
}

TEST(LectureViewTest, TheAudiencesTakesNeitherPointerNorPenUnlessItIsAllThereIs)
{
    ShownLecture lecture(Site::Deltoid, LectureView::For::Audience);
    ASSERT_TRUE(lecture.sharpens());
    lecture.presenter.setTool(LectureTool::Ask);
    lecture.move(QPoint(300, 200));
    QTest::mouseClick(lecture.view.windowHandle(), Qt::LeftButton, {}, QPoint(300, 200));
    EXPECT_FALSE(lecture.state().pointer);
    EXPECT_TRUE(lecture.state().room.empty());
    EXPECT_EQ(lecture.view.cursor().shape(), Qt::BlankCursor);
    lecture.view.setTakesPointer(true);
    QTest::mouseClick(lecture.view.windowHandle(), Qt::LeftButton, {}, QPoint(300, 200));
    EXPECT_EQ(lecture.state().room.size(), 1U);
}

TEST(LectureViewTest, TheAudienceSeesNoFocusAndNoNotice)
{
    ShownLecture lecture(Site::Deltoid, LectureView::For::Audience);
    ASSERT_TRUE(lecture.sharpens());
    const QImage before = lecture.view.grab().toImage();
    lecture.view.setFocus();
    lecture.presenter.tell({Problem::ScreenLost, {}, {}, {}, {}});
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_EQ(lecture.view.grab().toImage(), before);
}

TEST(LectureViewTest, AScreenReaderIsToldStepAndCaption)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_TRUE(lecture.view.accessibleName().startsWith(QStringLiteral("Step 1 of ")));
    const QString first = lecture.view.accessibleDescription();
    EXPECT_TRUE(first.contains(lecture.view.face().panes.front().look.caption));
    lecture.presenter.next();
    ASSERT_TRUE(lecture.sharpens());
    EXPECT_TRUE(lecture.view.accessibleName().startsWith(QStringLiteral("Step 2 of ")));
    EXPECT_NE(lecture.view.accessibleDescription(), first);
}

TEST(LectureViewTest, AHiddenOneKeepsNoPictureAndHasOneAgainWhenShown)
{
    ShownLecture lecture;
    ASSERT_TRUE(lecture.sharpens());
    lecture.view.hide();
    EXPECT_FALSE(lecture.view.face().panes.front().drawn);
    lecture.presenter.next();
    QTest::qWait(60);
    EXPECT_FALSE(lecture.view.isSharp());
    lecture.view.show();
    EXPECT_TRUE(lecture.sharpens());
}

}  // namespace fb::test::lecture_view_test
