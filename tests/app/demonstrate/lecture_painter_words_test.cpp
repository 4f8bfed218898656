#include "app/demonstrate/lecture_painter_words.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <cmath>

#include "app/demonstrate/lecture_painter_labels.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_painter_words_test {

constexpr int kFlags = static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap;

struct Scale {
    double unit = 1.0;
    double fineness = 1.0;
};

QImage painted(const Scale& scale, bool direct, const QString& text, const QColor& colour = Qt::black)
{
    const double pixels = scale.unit * scale.fineness;
    QImage image(QSizeF(400 * pixels, 100 * pixels).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(scale.fineness);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale.unit, scale.unit);
    painter.setPen(colour);
    const QRectF box(20, 10, 360, 80);
    if (direct) {
        painter.setFont(labelFont(true));
        painter.drawText(box, kFlags, text);
    } else {
        paintWords(painter, box, kFlags, text, labelFont(true));
    }
    return image;
}

QRect inkedOf(const QImage& image)
{
    QRect inked;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qGray(image.pixel(x, y)) < 128)
                inked |= QRect(x, y, 1, 1);
    return inked;
}

TEST(LecturePainterWordsTest, WordsThatWereMadeReadyAreNotMadeAgain)
{
    constexpr QSizeF kTall{3840, 2160};
    LectureState state = stateOf(Convention::VastusHandbreadths);
    state.step = stepOf(state, LectureStepKind::Hazards);
    const LectureFace face = plainFace(state, kTall);
    const qsizetype before = keptWords();
    warmWords(face, 1.0);
    const qsizetype ready = keptWords();
    EXPECT_GT(ready, before);
    static_cast<void>(paintedFace(face));
    EXPECT_EQ(keptWords(), ready);
}

TEST(LecturePainterWordsTest, LargeLettersLieWhereThePainterWouldPutThem)
{
    for (const Scale scale : {Scale{1.0, 1.0}, Scale{2.5, 1.0}, Scale{4.0, 1.0}, Scale{2.0, 2.0}}) {
        const QRect own = inkedOf(painted(scale, false, "Greater trochanter"));
        const QRect direct = inkedOf(painted(scale, true, "Greater trochanter"));
        ASSERT_FALSE(direct.isEmpty());
        const double most = 2.0 * scale.fineness;
        EXPECT_NEAR(own.left(), direct.left(), most);
        EXPECT_NEAR(own.right(), direct.right(), most);
        EXPECT_NEAR(own.top(), direct.top(), most);
        EXPECT_NEAR(own.bottom(), direct.bottom(), most);
    }
}

TEST(LecturePainterWordsTest, OtherWordsOrAnotherColourAreNotTheKeptOnes)
{
    const Scale large{4.0, 1.0};
    const QImage palm = painted(large, false, "Palm");
    EXPECT_EQ(painted(large, false, "Palm"), palm);
    EXPECT_NE(painted(large, false, "Base"), palm);
    EXPECT_NE(painted(large, false, "Palm", Qt::red), palm);
    EXPECT_EQ(painted(large, false, "Palm"), palm);
}

}  // namespace fb::test::lecture_painter_words_test
