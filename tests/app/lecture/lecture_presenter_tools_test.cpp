// Pointing and drawing: see lecture_presenter.h.
#include <gtest/gtest.h>

#include <QTest>
#include <cmath>
#include <limits>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_tools_test {

constexpr BodyValues kHeavy{40.0, Sex::Female, 165.0, 115.0};
constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

struct Drawing : LectureSample {
    Drawing()
    {
        presenter.setCalm(true);
        presenter.setTool(LectureTool::Pen);
    }
};

TEST(LecturePresenterToolsTest, ThePointerIsSaidByItself)
{
    LectureSample sample;
    const int changes = sample.changes;
    sample.presenter.point(QPointF(1.0, -2.0));
    EXPECT_EQ(sample.state().pointer, QPointF(1.0, -2.0));
    EXPECT_EQ(sample.moves, 1);
    sample.presenter.point(QPointF(1.0, -2.0));
    sample.presenter.point(QPointF(kNan, -2.0));
    EXPECT_EQ(sample.moves, 1);
    sample.presenter.point(std::nullopt);
    EXPECT_FALSE(sample.state().pointer.has_value());
    EXPECT_EQ(sample.moves, 2);
    EXPECT_EQ(sample.changes, changes);
}

TEST(LecturePresenterToolsTest, AStrokeIsDrawnInTheChosenInkAndLine)
{
    Drawing sample;
    sample.presenter.setPen(PenInk::Second, PenLine::Dashed);
    sample.presenter.press({0.0, -3.0});
    ASSERT_TRUE(sample.state().drawing.has_value());
    EXPECT_TRUE(sample.state().strokes.isEmpty());
    const int changes = sample.changes;
    sample.presenter.drag({0.5, -3.5});
    sample.presenter.drag({0.5, -3.53});
    sample.presenter.drag({1.0, -4.0});
    EXPECT_EQ(sample.state().pointer, QPointF(1.0, -4.0));
    EXPECT_EQ(sample.changes, changes) << "a stroke that grows is said by itself";
    sample.presenter.release();
    ASSERT_EQ(sample.state().strokes.size(), 1);
    const PenStroke& stroke = sample.state().strokes.front();
    EXPECT_EQ(stroke.ink, PenInk::Second);
    EXPECT_EQ(stroke.line, PenLine::Dashed);
    EXPECT_EQ(stroke.points, (QVector<QPointF>{{0.0, -3.0}, {0.5, -3.5}, {1.0, -4.0}}));
    EXPECT_FALSE(sample.state().drawing.has_value());
    sample.presenter.release();
    sample.presenter.drag({2.0, -4.0});
    EXPECT_EQ(sample.state().strokes.size(), 1);
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, AStrokeThatIsBegunIsKeptWhenToolOrPenChange)
{
    Drawing sample;
    sample.presenter.press({0.0, -3.0});
    sample.presenter.setPen(PenInk::First, PenLine::Dashed);
    EXPECT_EQ(sample.state().strokes.size(), 1);
    EXPECT_EQ(sample.state().strokes.front().line, PenLine::Plain);
    sample.presenter.press({1.0, -3.0});
    sample.presenter.press({2.0, -3.0});
    sample.presenter.setTool(LectureTool::Magnifier);
    EXPECT_EQ(sample.state().strokes.size(), 3);
    sample.presenter.press({0.0, 0.0});
    sample.presenter.drag({1.0, 0.0});
    EXPECT_EQ(sample.state().strokes.size(), 3) << "a magnifier draws nothing";
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, AHandThatNeverLiftsDrawsStrokesThatEnd)
{
    Drawing sample;
    sample.presenter.press({0.0, -3.0});
    for (int i = 1; i <= 4500; ++i)
        sample.presenter.drag({std::sin(i * 0.1), -3.0 - std::cos(i * 0.1)});
    sample.presenter.release();
    EXPECT_EQ(sample.state().strokes.size(), 3);
    for (const PenStroke& stroke : sample.state().strokes)
        EXPECT_LE(stroke.points.size(), 2000);
    EXPECT_EQ(sample.state().strokes[0].points.back(), sample.state().strokes[1].points.front())
        << "without a gap";
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, StrokesGoAlongWithThePatientOrStayWhereTheyAre)
{
    Drawing sample;
    const Point edge = sample.shown().target->ideal + Point{3.0, 0.0};
    sample.drawLine(sample.ideal(), {edge.x, edge.y});
    const QVector<QPointF> drawn = pointsOn(sample.state().strokes.front(), sample.shown());
    sample.presenter.glideTo(kHeavy);
    const QVector<QPointF> heavy = pointsOn(sample.state().strokes.front(), sample.shown());
    EXPECT_GT(heavy.back().x(), drawn.back().x() + 0.2) << "skin moves outward";
    expectLaws(sample);

    sample.presenter.setStrokesStay(false);
    EXPECT_EQ(sample.state().strokes.front().points, heavy) << "from here on it stays";
    sample.presenter.glideTo(BodyValues{});
    EXPECT_EQ(pointsOn(sample.state().strokes.front(), sample.shown()), heavy);
    expectLaws(sample);

    sample.presenter.setStrokesStay(true);
    const QVector<QPointF> again = pointsOn(sample.state().strokes.front(), sample.shown());
    for (qsizetype i = 0; i < again.size(); ++i)
        EXPECT_LT(QLineF(again[i], heavy[i]).length(), 1e-3) << "nothing jumps";
    sample.presenter.glideTo(kHeavy);
    EXPECT_GT(pointsOn(sample.state().strokes.front(), sample.shown()).back().x(), heavy.back().x() + 0.2);
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, AStrokeThatIsBeingDrawnGoesAlongAsWell)
{
    Drawing sample;
    const Point edge = sample.shown().target->ideal + Point{3.0, 0.0};
    sample.presenter.press({edge.x, edge.y});
    sample.presenter.drag({edge.x, edge.y - 1.0});
    sample.presenter.glideTo(kHeavy);
    EXPECT_GT(pointsOn(*sample.state().drawing, sample.shown()).front().x(), edge.x + 0.2);
    sample.presenter.release();
    EXPECT_GT(pointsOn(sample.state().strokes.front(), sample.shown()).front().x(), edge.x + 0.2);
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, ManyStrokesAreBoundByTheFramesThatFollow)
{
    Drawing sample;
    sample.presenter.setStrokesStay(false);
    for (int i = 0; i < 20; ++i) {
        sample.presenter.press({0.2 * i, -3.0});
        for (int k = 1; k < 60; ++k)
            sample.presenter.drag({0.2 * i, -3.0 - 0.06 * k});
        sample.presenter.release();
    }
    EXPECT_FALSE(sample.presenter.isBinding());
    const auto before = sample.state().strokes;
    sample.presenter.setStrokesStay(true);
    ASSERT_TRUE(sample.presenter.isBinding()) << "1200 points are too many for one frame";
    EXPECT_TRUE(sample.state().strokes.back().anchors.empty());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !sample.presenter.isBinding(); }));
    expectLaws(sample);
    for (qsizetype i = 0; i < before.size(); ++i)
        EXPECT_EQ(sample.state().strokes[i].points, before[i].points);
    sample.presenter.setStrokesStay(false);
    EXPECT_FALSE(sample.presenter.isBinding());
    expectLaws(sample);
}

TEST(LecturePresenterToolsTest, TheEraserTakesWholeStrokesThatItTouches)
{
    Drawing sample;
    sample.drawLine({0.0, -3.0}, {0.0, -6.0});
    sample.drawLine({2.0, -3.0}, {2.0, -6.0});
    sample.drawLine({4.0, -3.0}, {4.0, -6.0});
    sample.presenter.setTool(LectureTool::Eraser);
    sample.presenter.press({1.0, -4.5});
    EXPECT_EQ(sample.state().strokes.size(), 3) << "between two";
    sample.presenter.drag({2.3, -4.5});
    ASSERT_EQ(sample.state().strokes.size(), 2);
    sample.presenter.release();
    sample.presenter.drag({4.0, -4.5});
    EXPECT_EQ(sample.state().strokes.size(), 2) << "it is not pressed";
    EXPECT_EQ(sample.state().strokes.back().points.front(), QPointF(4.0, -3.0));
    sample.presenter.press({0.0, -5.0});
    sample.presenter.setTool(LectureTool::Point);
    sample.presenter.drag({4.0, -4.5});
    EXPECT_EQ(sample.state().strokes.size(), 1) << "another tool erases nothing";
}

TEST(LecturePresenterToolsTest, TheEraserMeetsAStrokeWhereItIsSeen)
{
    Drawing sample;
    const Point edge = sample.shown().target->ideal + Point{3.0, 0.0};
    sample.drawLine({edge.x, edge.y}, {edge.x, edge.y - 1.0});
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 160.0});
    const QPointF seen = pointsOn(sample.state().strokes.front(), sample.shown()).front();
    ASSERT_GT(seen.x(), edge.x + 0.6);
    sample.presenter.setTool(LectureTool::Eraser);
    sample.presenter.press({edge.x, edge.y});
    EXPECT_EQ(sample.state().strokes.size(), 1);
    sample.presenter.press(seen);
    EXPECT_TRUE(sample.state().strokes.isEmpty());
}

TEST(LecturePresenterToolsTest, TheLastStrokeIsTakenBackAndAllAreWiped)
{
    Drawing sample;
    sample.presenter.undoStroke();
    sample.presenter.wipe();
    sample.drawLine({0.0, -3.0}, {0.0, -6.0});
    sample.drawLine({2.0, -3.0}, {2.0, -6.0});
    sample.presenter.press({3.0, -3.0});
    sample.presenter.undoStroke();
    EXPECT_FALSE(sample.state().drawing.has_value());
    EXPECT_EQ(sample.state().strokes.size(), 2) << "the one being drawn was the last";
    sample.presenter.undoStroke();
    ASSERT_EQ(sample.state().strokes.size(), 1);
    EXPECT_EQ(sample.state().strokes.front().points.front(), QPointF(0.0, -3.0));
    sample.presenter.press({3.0, -3.0});
    sample.presenter.wipe();
    EXPECT_TRUE(sample.state().strokes.isEmpty());
    EXPECT_FALSE(sample.state().drawing.has_value());
    const int changes = sample.changes;
    sample.presenter.wipe();
    EXPECT_EQ(sample.changes, changes);
}

TEST(LecturePresenterToolsTest, SpotlightAndToolAreChosen)
{
    LectureSample sample;
    sample.presenter.setSpotlight(true);
    EXPECT_TRUE(sample.state().spotlight);
    sample.presenter.setTool(LectureTool::Magnifier);
    EXPECT_EQ(sample.state().tool, LectureTool::Magnifier);
    EXPECT_TRUE(sample.state().spotlight);
    const int changes = sample.changes;
    sample.presenter.setSpotlight(true);
    sample.presenter.setTool(LectureTool::Magnifier);
    sample.presenter.setPen(PenInk::First, PenLine::Plain);
    sample.presenter.setStrokesStay(true);
    EXPECT_EQ(sample.changes, changes);
    sample.presenter.press({kNan, 0.0});
    sample.presenter.drag({0.0, kNan});
    EXPECT_FALSE(sample.state().pointer.has_value());
}

}  // namespace fb::test::lecture_presenter_tools_test
