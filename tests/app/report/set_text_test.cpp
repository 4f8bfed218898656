#include "app/report/set_text.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "app/look/type.h"

namespace fb::test::set_text_tests {

namespace set_text_test {

Setting bodySetting(Qt::LayoutDirection direction = Qt::LeftToRight, bool atEnd = false)
{
    return {fontOf(Type::Body, 1.0), direction, atEnd};
}

// The columns in which anything was painted.
std::pair<int, int> inkedColumns(const SetText& text, int width)
{
    QImage image(width, 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(Qt::black);
    text.paint(painter, {0.0, 0.0});
    painter.end();
    int first = width;
    int last = -1;
    for (int x = 0; x < width; ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (qGray(image.pixel(x, y)) < 128) {
                first = std::min(first, x);
                last = std::max(last, x);
            }
        }
    }
    return {first, last};
}

}  // namespace set_text_test

using namespace set_text_test;

TEST(SetTextTest, TextIsBrokenIntoLinesOfItsWidth)
{
    const QString words = QStringLiteral("one two three four five six seven eight nine ten");
    const SetText wide(words, 2000.0, bodySetting());
    const SetText narrow(words, 100.0, bodySetting());
    EXPECT_EQ(wide.lines(), 1);
    EXPECT_GT(narrow.lines(), 2);
    EXPECT_LE(narrow.width(), 100.0);
    EXPECT_NEAR(narrow.height(), narrow.lines() * wide.height(), 0.5);
    EXPECT_GT(wide.baseline(), 0.0);
    EXPECT_LT(wide.baseline(), wide.height());
}

TEST(SetTextTest, AWordThatIsTooLongIsBrokenInside)
{
    const SetText text(QString(200, QLatin1Char('W')), 150.0, bodySetting());
    EXPECT_GT(text.lines(), 5);
    EXPECT_LE(text.width(), 150.0);
}

TEST(SetTextTest, LineBreaksOfTheTextAreKept)
{
    EXPECT_EQ(SetText(QStringLiteral("a\nb\nc"), 500.0, bodySetting()).lines(), 3);
}

TEST(SetTextTest, NoTextTakesNoMoreThanALine)
{
    const SetText text(QString(), 500.0, bodySetting());
    EXPECT_LE(text.height(), SetText(QStringLiteral("a"), 500.0, bodySetting()).height());
    EXPECT_EQ(text.width(), 0.0);
}

TEST(SetTextTest, TextStandsAtTheEdgeWhereItsLanguageBeginsOrEnds)
{
    const QString word = QStringLiteral("word");
    EXPECT_LT(inkedColumns(SetText(word, 400.0, bodySetting()), 400).second, 100);
    EXPECT_GT(inkedColumns(SetText(word, 400.0, bodySetting(Qt::LeftToRight, true)), 400).first, 300);
    EXPECT_GT(inkedColumns(SetText(word, 400.0, bodySetting(Qt::RightToLeft)), 400).first, 300);
    EXPECT_LT(inkedColumns(SetText(word, 400.0, bodySetting(Qt::RightToLeft, true)), 400).second, 100);
}

}  // namespace fb::test::set_text_tests
