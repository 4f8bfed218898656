#include "app/demonstrate/lecture_painter_signs.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_painter_signs_test {

template <typename Paint>
QImage painted(Paint paint)
{
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(QColor(0xcc, 0x99, 0x77));  // skin
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter);
    return image;
}

const QPolygonF kLine{QPointF(20, 100), QPointF(280, 100)};

QImage strokeOf(PenInk ink, PenLine line, PaletteKind palette = PaletteKind::Light)
{
    return painted([&](QPainter& painter) { paintStroke(painter, kLine, ink, line, schemeOf(palette)); });
}

// Grey values down a stroke, each kind once: plain has one besides the skin, edged has three.
int tonesAcross(const QImage& image, int x)
{
    QVector<int> tones;
    for (int y = 80; y < 120; ++y) {
        const int grey = qGray(image.pixel(x, y));
        if (std::none_of(tones.begin(), tones.end(), [grey](int tone) { return std::abs(tone - grey) < 24; }))
            tones.push_back(grey);
    }
    return static_cast<int>(tones.size());
}

TEST(LecturePainterSignsTest, PensAreToldApartWithoutColour)
{
    for (const PaletteKind palette : kPaletteKinds) {
        const int plain = tonesAcross(strokeOf(PenInk::First, PenLine::Plain, palette), 150);
        const int edged = tonesAcross(strokeOf(PenInk::Second, PenLine::Plain, palette), 150);
        EXPECT_GT(edged, plain);
    }
}

TEST(LecturePainterSignsTest, DashesHaveGaps)
{
    for (const PenInk ink : {PenInk::First, PenInk::Second}) {
        const QImage dashed = strokeOf(ink, PenLine::Dashed);
        const QRgb skin = dashed.pixel(5, 5);
        int gaps = 0;
        for (int x = 30; x < 270; ++x)
            gaps += dashed.pixel(x, 100) == skin ? 1 : 0;
        EXPECT_GT(gaps, 20);
        const QImage plain = strokeOf(ink, PenLine::Plain);
        for (int x = 30; x < 270; ++x)
            ASSERT_NE(plain.pixel(x, 100), skin);
    }
}

TEST(LecturePainterSignsTest, ATapOfThePenIsADot)
{
    const QImage dot = painted([](QPainter& painter) {
        paintStroke(painter, {QPointF(150, 100)}, PenInk::First, PenLine::Plain,
                    schemeOf(PaletteKind::Light));
    });
    EXPECT_NE(dot.pixel(150, 100), dot.pixel(5, 5));
    EXPECT_EQ(dot.pixel(170, 100), dot.pixel(5, 5));
}

TEST(LecturePainterSignsTest, TheSpotlightDimsAllButACircle)
{
    const QImage lit = painted([](QPainter& painter) {
        paintSpotlight(painter, {150, 100}, QRectF(0, 0, 300, 200), schemeOf(PaletteKind::Light));
    });
    EXPECT_EQ(lit.pixel(150, 100), qRgb(0xcc, 0x99, 0x77));
    EXPECT_LT(qGray(lit.pixel(10, 10)), 100);
    EXPECT_LT(qGray(lit.pixel(290, 190)), 100);
}

TEST(LecturePainterSignsTest, ThePointerShowsItsMiddle)
{
    const QImage pointer = painted([](QPainter& painter) {
        paintPointer(painter, {150, 100}, schemeOf(PaletteKind::Light));
    });
    EXPECT_LT(qGray(pointer.pixel(150, 100)), 80);
    EXPECT_LT(qGray(pointer.pixel(165, 100)), 80);
    EXPECT_EQ(pointer.pixel(200, 100), qRgb(0xcc, 0x99, 0x77));
}

TEST(LecturePainterSignsTest, TheLensEnlargesWhatIsUnderIt)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.step = buildOf(state, StepCode::Region);
    state.tool = LectureTool::Magnifier;
    const QPointF ideal(state.shown->target->ideal.x, state.shown->target->ideal.y);
    LectureFace face = drawnFace(plainFace(state, QSizeF(1280, 720)));
    const QImage without = paintedFace(face);
    face.pointer = ideal;
    const QImage with = paintedFace(face);
    const QPointF at = frameOf(face, 0).toWidget(ideal);
    int changed = 0;
    int farther = 0;
    for (int y = 0; y < with.height(); ++y) {
        for (int x = 0; x < with.width(); ++x) {
            if (with.pixel(x, y) == without.pixel(x, y))
                continue;
            ++changed;
            farther += QLineF(at, QPointF(x, y)).length() > 720 * 0.22 ? 1 : 0;
        }
    }
    EXPECT_GT(changed, 5000);
    EXPECT_EQ(farther, 0);
    // Without a drawing there is nothing to enlarge.
    face.panes.front().drawn.reset();
    const QImage bare = paintedFace(face);
    face.pointer.reset();
    EXPECT_EQ(bare, paintedFace(face));
}

TEST(LecturePainterSignsTest, TheLensShowsTheHandThatIsLaid)
{
    LectureState state = stateOf(Convention::VentroglutealHand);
    state.step = buildOf(state, StepCode::FingerTriangle);
    state.tool = LectureTool::Magnifier;
    const Point fork = state.shown->target->hand->fork;
    const Point wrist = state.shown->target->hand->wrist;
    const QPointF palm((fork.x + wrist.x) / 2.0, (fork.y + wrist.y) / 2.0 - 2.0);
    LectureFace face = drawnFace(plainFace(state, QSizeF(1280, 720)));
    face.panes.front().look.scene.clear();
    face.pointer = palm;
    const QImage withHand = paintedFace(face);
    face.panes.front().look.hand.reset();
    const QImage bare = paintedFace(drawnFace(face));
    const QPoint at = frameOf(face, 0).toWidget(palm).toPoint();
    int apart = 0;
    for (int dy = -20; dy <= 20; dy += 4)
        for (int dx = -20; dx <= 20; dx += 4)
            apart += std::abs(qBlue(withHand.pixel(at + QPoint(dx, dy))) -
                              qBlue(bare.pixel(at + QPoint(dx, dy)))) > 8;
    EXPECT_GT(apart, 60) << "skin through the lens where the hand lies";
}

}  // namespace fb::test::lecture_painter_signs_test
