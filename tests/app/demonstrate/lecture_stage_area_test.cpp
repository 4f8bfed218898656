#include "app/demonstrate/lecture_stage_area.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_stage_area_test {

// A clip may round the smoothing of an edge otherwise.
constexpr int kRounding = 6;

// The most that a channel of a pixel differs.
int farthest(const QImage& a, const QImage& b)
{
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            for (const unsigned shift : {0U, 8U, 16U})
                most = std::max(most, std::abs(static_cast<int>(a.pixel(x, y) >> shift & 0xffU) -
                                               static_cast<int>(b.pixel(x, y) >> shift & 0xffU)));
    return most;
}

class LectureStageAreaTest : public ::testing::Test {
protected:
    LectureStageAreaTest()
    {
        LectureState state = stateOf(Convention::VentroglutealHand);
        state.step = stepOf(state, LectureStepKind::Hazards);
        m_face = drawnFace(plainFace(state, QSizeF(960, 540)));
    }

    [[nodiscard]] QPointF beside(double right, double up) const
    {
        const Point ideal = m_face.panes[0].body->target->ideal;
        return {ideal.x + right, ideal.y + up};
    }
    [[nodiscard]] LectureFace pointedAt(std::optional<QPointF> at) const
    {
        LectureFace face = m_face;
        face.pointer = at;
        return face;
    }
    [[nodiscard]] LectureFace drawing(const QVector<QPointF>& points, PenInk ink, PenLine line) const
    {
        LectureFace face = m_face;
        face.drawing = PenStroke{ink, line, points};
        return face;
    }
    // What is painted where it says is all there is to paint, and the place is no larger than asked.
    static void expectEnough(const LectureFace& before, const LectureFace& now, double mostShare,
                             const char* what)
    {
        const QRegion area = pointedArea(before, now, pageOf(now));
        QImage patched = paintedFace(before);
        {
            QPainter painter(&patched);
            painter.setClipRegion(area);
            paintLecture(painter, now);
        }
        EXPECT_LE(farthest(patched, paintedFace(now)), kRounding) << what;
        double pixels = 0.0;
        for (const QRect& part : area)
            pixels += part.width() * part.height();
        EXPECT_LE(pixels, mostShare * now.size.width() * now.size.height()) << what;
    }

    LectureFace m_face;
};

TEST_F(LectureStageAreaTest, APointerIsPaintedWhereItWasAndWhereItIs)
{
    for (const LectureTool tool : {LectureTool::Point, LectureTool::Ask, LectureTool::Magnifier}) {
        m_face.tool = tool;
        const double most = tool == LectureTool::Magnifier ? 0.35 : 0.02;
        expectEnough(pointedAt(beside(0, 0)), pointedAt(beside(3, 1)), most, "moved");
        expectEnough(pointedAt(beside(0, 0)), pointedAt(std::nullopt), most, "left");
        expectEnough(pointedAt(std::nullopt), pointedAt(beside(-2, -1)), most, "came");
        expectEnough(pointedAt(beside(-40, 0)), pointedAt(beside(40, 0)), most, "at the edges");
    }
}

TEST_F(LectureStageAreaTest, ASpotlightThatGoesOutLightsTheWholePlate)
{
    m_face.spotlight = true;
    expectEnough(pointedAt(beside(0, 0)), pointedAt(beside(3, 1)), 0.2, "moved");
    expectEnough(pointedAt(beside(0, 0)), pointedAt(std::nullopt), 1.0, "left");
    expectEnough(pointedAt(std::nullopt), pointedAt(beside(0, 0)), 1.0, "came");
    m_face.tool = LectureTool::Magnifier;
    expectEnough(pointedAt(beside(0, 0)), pointedAt(beside(3, 1)), 0.35, "both");
}

TEST_F(LectureStageAreaTest, AStrokeIsPaintedWhereItGoesOn)
{
    m_face.tool = LectureTool::Pen;
    QVector<QPointF> points;
    for (int i = 0; i < 30; ++i)
        points.push_back(beside(0.4 * i - 6.0, std::sin(i / 3.0)));
    for (const PenInk ink : {PenInk::First, PenInk::Second}) {
        for (const PenLine line : {PenLine::Plain, PenLine::Dashed}) {
            for (const qsizetype count : {1, 2, 12, 29}) {
                const LectureFace before = drawing(points.mid(0, count), ink, line);
                expectEnough(before, drawing(points.mid(0, count + 1), ink, line), 0.02, "goes on");
            }
            expectEnough(m_face, drawing(points.mid(0, 1), ink, line), 0.02, "begins");
            expectEnough(drawing(points, ink, line), m_face, 0.2, "ends");
        }
    }
}

TEST_F(LectureStageAreaTest, NothingIsPaintedWhereNothingChanged)
{
    EXPECT_TRUE(pointedArea(m_face, m_face, pageOf(m_face)).isEmpty());
    const LectureFace pointed = pointedAt(beside(1, 1));
    EXPECT_TRUE(pointedArea(pointed, pointed, pageOf(pointed)).isEmpty());
    LectureFace blank = pointed;
    blank.blank = true;
    EXPECT_TRUE(pointedArea(m_face, blank, pageOf(blank)).isEmpty());
}

}  // namespace fb::test::lecture_stage_area_test
