#include "app/demonstrate/lecture_painter_lines.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

#include "app/demonstrate/lecture_painter_labels.h"

namespace fb::test::lecture_painter_lines_test {

const QString kLong = QStringLiteral(
    "Press on the outer side of the hip, where it is widest, until a hard knob stops the finger.");

SetLines set(const QString& text, double width, Qt::Alignment alignment = Qt::AlignHCenter,
             Qt::LayoutDirection direction = Qt::LeftToRight, Balance balance = Balance::Even)
{
    return setLines(text, labelFont(false), QRectF(20, 50, width, 0), alignment, direction, balance);
}

TEST(LecturePainterLinesTest, KeepsEveryWordInOrder)
{
    for (const double width : {300.0, 450.0, 900.0, 4000.0}) {
        QStringList words;
        for (const SetLines::Line& line : set(kLong, width).lines)
            words << line.text;
        EXPECT_EQ(words.join(u' '), kLong);
    }
}

TEST(LecturePainterLinesTest, LinesKeepToTheRoomAndUnderEachOther)
{
    const QFontMetricsF metrics(labelFont(false));
    for (const double width : {300.0, 450.0, 900.0}) {
        const SetLines lines = set(kLong, width);
        ASSERT_GT(lines.lines.size(), 1);
        for (qsizetype i = 0; i < lines.lines.size(); ++i) {
            const SetLines::Line& line = lines.lines[i];
            EXPECT_GE(line.box.left(), 20.0 - 1.0);
            EXPECT_LE(line.box.right(), 20.0 + width + 1.0);
            EXPECT_GE(line.box.width(), metrics.horizontalAdvance(line.text));
            if (i > 0) {
                EXPECT_NEAR(line.box.top() - lines.lines[i - 1].box.top(), leadingOf(lines.font), 1e-9);
            }
        }
        EXPECT_EQ(lines.box.top(), 50.0);
        EXPECT_NEAR(lines.box.height(), leadingOf(lines.font) * static_cast<double>(lines.lines.size()),
                    1e-9);
    }
}

TEST(LecturePainterLinesTest, EvenLinesAreNoMoreThanFilledOnesAndNearerInLength)
{
    const auto spread = [](const SetLines& lines) {
        double least = 1e9;
        double most = 0.0;
        for (const SetLines::Line& line : lines.lines) {
            least = std::min(least, line.box.width());
            most = std::max(most, line.box.width());
        }
        return most - least;
    };
    const SetLines filled = set(kLong, 800.0, Qt::AlignHCenter, Qt::LeftToRight, Balance::Filled);
    const SetLines even = set(kLong, 800.0);
    EXPECT_EQ(even.lines.size(), filled.lines.size());
    EXPECT_LT(spread(even), spread(filled));
}

TEST(LecturePainterLinesTest, LeadingAndTrailingFollowTheReadingDirection)
{
    const auto leftOf = [](Qt::Alignment alignment, Qt::LayoutDirection direction) {
        return set("Palm", 600.0, alignment, direction).lines.front().box.left();
    };
    EXPECT_EQ(leftOf(Qt::AlignLeading, Qt::LeftToRight), 20.0);
    EXPECT_GT(leftOf(Qt::AlignTrailing, Qt::LeftToRight), 400.0);
    EXPECT_GT(leftOf(Qt::AlignLeading, Qt::RightToLeft), 400.0);
    EXPECT_EQ(leftOf(Qt::AlignTrailing, Qt::RightToLeft), 20.0);
}

TEST(LecturePainterLinesTest, NothingIsSetOfNothing)
{
    EXPECT_TRUE(set({}, 400.0).lines.isEmpty());
    EXPECT_TRUE(set("Palm", 0.0).lines.isEmpty());
    EXPECT_EQ(set({}, 400.0).box.height(), 0.0);
}

TEST(LecturePainterLinesTest, MovedLinesKeepTheirShape)
{
    const SetLines lines = set(kLong, 400.0);
    const SetLines moved = movedTo(lines, 500.0);
    EXPECT_EQ(moved.box.top(), 500.0);
    EXPECT_EQ(moved.box.size(), lines.box.size());
    EXPECT_EQ(moved.lines.back().box.top() - lines.lines.back().box.top(), 450.0);
}

TEST(LecturePainterLinesTest, LettersArePaintedWhereTheBoxesAre)
{
    const SetLines lines = set("Palm", 400.0);
    QImage image(500, 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.setPen(Qt::black);
        paintLines(painter, lines, Qt::LeftToRight);
    }
    QRect inked;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qGray(image.pixel(x, y)) < 128)
                inked |= QRect(x, y, 1, 1);
    ASSERT_FALSE(inked.isEmpty());
    EXPECT_TRUE(lines.lines.front().box.adjusted(-2, -2, 2, 2).contains(QRectF(inked)));
}

}  // namespace fb::test::lecture_painter_lines_test
