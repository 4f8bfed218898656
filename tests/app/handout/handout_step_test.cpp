// Single steps as pictures: see handout.h.
#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QSvgRenderer>
#include <QXmlStreamReader>

#include "tests/support/handout_paper.h"

namespace fb::test::handout_step_tests {

namespace handout_step_test {

QString textOfSvg(const QString& file)
{
    QFile svg(file);
    EXPECT_TRUE(svg.open(QIODevice::ReadOnly));
    QXmlStreamReader reader(&svg);
    QString text;
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::Characters)
            text += reader.text();
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    return text;
}

QString readAll(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

}  // namespace handout_step_test

using namespace handout_step_test;

TEST(HandoutStepTest, AStepAsPdfIsOnePageWithItsWords)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::VentroglutealHand);
    const HandoutWords words = handoutWords(ask);
    for (const char* key :
         {"skin", "press feel_spine", "build lay_palm", "hazards", "wrong_place sciatic_nerve"}) {
        const int step = stepOf(ask, key);
        ASSERT_GE(step, 0) << key;
        const LectureLook look = lookOf(ask.body, ask.policy, ask.steps, step);
        const QString file = paper.step(ask, step, PictureKind::Pdf);
        const QStringList pages = pdfPages(file);
        ASSERT_EQ(pages.size(), 1) << key;
        for (const QString& each : {look.heading, look.manner, look.caption, words.patient, words.caution})
            expectSaid(pages.front(), each);
        for (const QString& source : words.sources.split(QLatin1Char('\n')))
            expectSaid(pages.front(), source);
        if (look.press)
            expectSaid(pages.front(), look.press->words);
        for (const PdfFont& font : pdfFonts(file))
            EXPECT_TRUE(font.isEmbedded) << font.name.toStdString();
    }
}

TEST(HandoutStepTest, AStepAsSvgCanBeReadAndSaysTheSame)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::VastusThirds);
    const HandoutWords words = handoutWords(ask);
    const int step = stepOf(ask, "build lower_third");
    const QString file = paper.step(ask, step, PictureKind::Svg);
    const QString text = textOfSvg(file);
    const LectureLook look = lookOf(ask.body, ask.policy, ask.steps, step);
    for (const QString& each : {look.heading, look.manner, look.caption, words.patient, words.caution})
        expectSaid(text, each);
    EXPECT_TRUE(QSvgRenderer(file).isValid());
    EXPECT_GT(readAll(file).count(QStringLiteral("<path")), 200) << "a body of lines, not of pixels";
}

TEST(HandoutStepTest, AStepAsPngIsAsLargeAsAScreenAndInColour)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::DeltoidFingers);
    const QImage image(paper.step(ask, stepOf(ask, "build lay_fingers"), PictureKind::Png), "PNG");
    ASSERT_EQ(image.size(), QSize(2400, 1800));
    EXPECT_NEAR(image.dotsPerMeterX(), 300 / 0.0254, 1.0);
    int coloured = 0;
    for (int y = 0; y < image.height(); y += 10)
        for (int x = 0; x < image.width(); x += 10)
            coloured += QColor(image.pixel(x, y)).saturation() > 30 ? 1 : 0;
    EXPECT_GT(coloured, 5000) << "of 43200 looked at";
    EXPECT_EQ(QColor(image.pixel(3, 3)), QColor(Qt::white));
}

}  // namespace fb::test::handout_step_tests
