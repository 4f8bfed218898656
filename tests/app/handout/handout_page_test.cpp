#include "app/handout/handout_page.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "tests/support/handout_sample.h"

namespace fb::test::handout_page_tests {

namespace handout_page_test {

constexpr QSizeF kPage(910.0, 1345.0);

QImage painted(const std::function<void(QPainter&)>& paint)
{
    QImage image(kPage.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter);
    return image;
}

// Row by row from the top: whether both images are alike there and not bare paper.
int longestCommonRows(const QImage& a, const QImage& b)
{
    int longest = 0;
    int run = 0;
    for (int y = 0; y < a.height(); ++y) {
        const auto row = [y](const QImage& image) {
            return QByteArray(reinterpret_cast<const char*>(image.constScanLine(y)), image.bytesPerLine());
        };
        const bool isBare = row(a).count('\xff') == a.bytesPerLine();
        run = row(a) == row(b) && !isBare ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

struct Sample {
    HandoutAsk ask;
    HandoutWords words;
    PaperBody body;

    explicit Sample(Convention convention)
        : ask(handoutAsk(convention)),
          words(handoutWords(ask)),
          body(PaperBody::make(ask.body, *ask.library, Tint::Grey).value())
    {
    }
    [[nodiscard]] HandoutInk ink() const { return {words, body}; }
};

}  // namespace handout_page_test

using namespace handout_page_test;

TEST(HandoutPageTest, PracticeAndKeyHaveTheirPlatesInOnePlace)
{
    for (const Convention convention :
         {Convention::DeltoidStrip, Convention::VastusThirds, Convention::VentroglutealHand}) {
        Sample sample(convention);
        sample.words.steps.back().look =
            sample.words.skin;  // then nothing but the drawing is left to compare
        const QImage practice =
            painted([&](QPainter& painter) { paintPracticePage(painter, kPage, sample.ink()); });
        const QImage key = painted([&](QPainter& painter) { paintKeyPage(painter, kPage, sample.ink()); });
        EXPECT_GT(longestCommonRows(practice, key), 250);
        EXPECT_NE(practice, key);
    }
}

TEST(HandoutPageTest, EveryKeyStepHasAPlateOfItsOwn)
{
    Sample sample(Convention::VentroglutealHand);
    const QImage whole = painted([&](QPainter& painter) { paintStepsPage(painter, kPage, sample.ink()); });
    for (HandoutStep& step : sample.words.steps) {
        const Scene scene = std::exchange(step.look.scene, {});
        const QImage without =
            painted([&](QPainter& painter) { paintStepsPage(painter, kPage, sample.ink()); });
        EXPECT_NE(whole, without) << step.number.toStdString();
        step.look.scene = scene;
    }
    const Scene around = std::exchange(sample.words.hazards.scene, {});
    EXPECT_NE(whole, painted([&](QPainter& painter) { paintStepsPage(painter, kPage, sample.ink()); }));
}

TEST(HandoutPageTest, APageNeverPaintsBeyondItsRoom)
{
    Sample sample(Convention::VentroglutealHand);
    for (QString* words : {&sample.words.rule, &sample.words.sources})
        *words = (*words + QLatin1Char('\n')).repeated(3);  // far more than any convention says
    for (const auto& page : {&paintStepsPage, &paintKeyPage, &paintPracticePage}) {
        QImage image((kPage + QSizeF(60.0, 60.0)).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.translate(30.0, 30.0);
        page(painter, kPage, sample.ink());
        painter.end();
        const QRect room(28, 28, static_cast<int>(kPage.width()) + 4, static_cast<int>(kPage.height()) + 4);
        int stray = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                stray += !room.contains(x, y) && image.pixel(x, y) != 0xffffffff ? 1 : 0;
        EXPECT_EQ(stray, 0);
    }
}

TEST(HandoutPageTest, AStepFillsTheRoomItIsGiven)
{
    Sample sample(Convention::DeltoidStrip);
    const QSizeF room(1144.0, 844.0);
    QImage image(room.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintStepPage(painter, room, sample.ink(), sample.words.steps.back().look);
    painter.end();
    int inked = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            inked += qGray(image.pixel(x, y)) < 250 ? 1 : 0;
    EXPECT_GT(inked, image.width() * image.height() / 4);
}

}  // namespace fb::test::handout_page_tests
