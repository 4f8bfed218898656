#include "app/handout/paper_look.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QFile>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>

#include "app/lecture/lecture_look_hand.h"
#include "app/report/item_picture.h"
#include "tests/support/handout_sample.h"
#include "tests/support/pdf_reading.h"

namespace fb::test::paper_look_tests {

namespace paper_look_test {

constexpr QRectF kPlate(0.0, 0.0, 600.0, 400.0);

PaperBody bodyOf(const HandoutAsk& ask, Tint tint)
{
    return PaperBody::make(ask.body, *ask.library, tint).value();
}

LectureLook lookAt(const HandoutAsk& ask, const std::string& key)
{
    return lookOf(ask.body, ask.policy, ask.steps, stepOf(ask, key));
}

QImage painted(const PaperBody& body, const LectureLook& look)
{
    QImage image(kPlate.size().toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    body.paint(painter, kPlate, look, 1.0, Qt::LeftToRight);
    return image;
}

// So many plates one below the other on one long page of 600 units' width at 72 dots to an inch.
QByteArray printed(const PaperBody& body, const LectureLook& look, int plates)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(72);
    writer.setPageSize(QPageSize(QSizeF(600.0, 400.0 * plates), QPageSize::Point, {}, QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF());
    QPainter painter(&writer);
    for (int i = 0; i < plates; ++i)
        body.paint(painter, kPlate.translated(0.0, 400.0 * i), look, 1.0, Qt::LeftToRight);
    painter.end();
    return bytes;
}

QImage seen(const QByteArray& pdf)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("plate.pdf"));
    {
        QFile out(file);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(pdf);
    }
    (void)saidBy(QStringLiteral("pdftoppm"),
                 {QStringLiteral("-r"), QStringLiteral("72"), QStringLiteral("-png"),
                  QStringLiteral("-singlefile"), file, folder.filePath(QStringLiteral("seen"))});
    return QImage(folder.filePath(QStringLiteral("seen.png"))).convertToFormat(QImage::Format_RGB32);
}

double meanDifference(const QImage& a, const QImage& b)
{
    EXPECT_EQ(a.size(), b.size());
    double sum = 0.0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            sum += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y)));
    return sum / (a.width() * a.height());
}

// Of patches ten pixels wide, so that how a line is smoothed counts for little.
int mostPatchDifference(const QImage& a, const QImage& b)
{
    const auto patches = [](const QImage& image) {
        return image.scaled(image.size() / 10, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(QImage::Format_RGB32);
    };
    const QImage first = patches(a);
    const QImage second = patches(b);
    EXPECT_EQ(first.size(), second.size());
    int most = 0;
    for (int y = 0; y < first.height(); ++y)
        for (int x = 0; x < first.width(); ++x)
            most = std::max(most, std::abs(qGray(first.pixel(x, y)) - qGray(second.pixel(x, y))));
    return most;
}

int mostColour(const QImage& image)
{
    int most = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            most = std::max(most, QColor(image.pixel(x, y)).saturation());
    return most;
}

}  // namespace paper_look_test

using namespace paper_look_test;

// The hand was once drawn about the frame's origin, wherever it was laid.
TEST(PaperLookTest, TheHandLiesWhereItIsLaid)
{
    const HandoutAsk ask = handoutAsk(Convention::VentroglutealHand);
    const PaperBody body = bodyOf(ask, Tint::Grey);
    LectureLook with = lookAt(ask, "build middle_along_crest");
    with.scene.clear();  // no name moves
    ASSERT_TRUE(with.hand.has_value());
    LectureLook without = with;
    without.hand.reset();
    const QImage one = painted(body, with);
    const QImage other = painted(body, without);
    const QRectF area = body.fittedArea(with.area, kPlate.width() / kPlate.height());
    const double unitsPerCm = kPlate.width() / area.width();
    const auto changes = [&](Point p, double radiusCm) {
        const QPointF at((p.x - area.left()) * unitsPerCm, kPlate.height() - (p.y - area.top()) * unitsPerCm);
        const int radius = static_cast<int>(radiusCm * unitsPerCm);
        int changed = 0;
        for (int y = -radius; y <= radius; ++y)
            for (int x = -radius; x <= radius; ++x) {
                const QPoint pixel = at.toPoint() + QPoint(x, y);
                changed += one.rect().contains(pixel) && one.pixel(pixel) != other.pixel(pixel) ? 1 : 0;
            }
        return static_cast<double>(changed) / ((2 * radius + 1) * (2 * radius + 1));
    };
    const auto bars = laidBars(with);
    for (const LaidBar& bar : bars)
        EXPECT_GT(changes(lerp(bar.from, bar.to, 0.5), 0.3), 0.7);
    EXPECT_LT(changes(lerp(with.hand->indexTip, with.hand->middleTip, 0.5), 0.3), 0.1)
        << "between two fingers";
}

TEST(PaperLookTest, AFittedAreaHoldsTheAskedOneInTheProportionsAndStaysOnTheDrawing)
{
    for (const Convention convention : kConventions) {
        const HandoutAsk ask = handoutAsk(convention);
        const PaperBody body = bodyOf(ask, Tint::Grey);
        const Bounds& drawn = ask.body.picture->ink.paper;
        const QRectF area = lookAt(ask, "skin").area;
        for (const double proportions : {0.7, 1.0, 1.5, 2.2}) {
            const QRectF fitted = body.fittedArea(area, proportions);
            EXPECT_NEAR(fitted.width() / fitted.height(), proportions, 1e-9);
            EXPECT_GE(fitted.width(), area.width() - 1e-9);
            EXPECT_GE(fitted.height(), area.height() - 1e-9);
            if (fitted.width() <= drawn.high.x - drawn.low.x) {
                EXPECT_GE(fitted.left(), drawn.low.x - 1e-9);
                EXPECT_LE(fitted.right(), drawn.high.x + 1e-9);
            }
            EXPECT_TRUE(fitted.contains(QPointF(ask.body.target->ideal.x, ask.body.target->ideal.y)));
        }
    }
}

TEST(PaperLookTest, GreyIsGreyAndPaleEnoughToDrawOver)
{
    const HandoutAsk ask = handoutAsk(Convention::VastusThirds);
    const QImage image = painted(bodyOf(ask, Tint::Grey), lookAt(ask, "skin"));
    EXPECT_LE(mostColour(image), 2);
    double sum = 0.0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            sum += qGray(image.pixel(x, y));
    EXPECT_GT(sum / (image.width() * image.height()), 210.0);
    EXPECT_GT(mostColour(painted(bodyOf(ask, Tint::Full), lookAt(ask, "skin"))), 60);
}

TEST(PaperLookTest, SignsHandAndFingersAreLaidOverTheBody)
{
    for (const auto& [convention, key] : {std::pair{Convention::VentroglutealHand, "build lay_palm"},
                                          {Convention::DeltoidFingers, "build lay_fingers"}}) {
        const HandoutAsk ask = handoutAsk(convention);
        const PaperBody body = bodyOf(ask, Tint::Grey);
        LectureLook look = lookAt(ask, key);
        ASSERT_TRUE(look.hand || look.fingers);
        const QImage whole = painted(body, look);
        look.hand.reset();
        look.fingers.reset();
        const QImage signsAlone = painted(body, look);
        EXPECT_GT(meanDifference(whole, signsAlone), 1.0) << key;
        look.scene.clear();
        EXPECT_GT(meanDifference(signsAlone, painted(body, look)), 0.05) << key;
    }
}

// Qt 6.4 by itself prints the shades of the shoulder and the fading finger as blocks: patches then differ by
// 50 and more.
TEST(PaperLookTest, APdfLooksAsTheScreenDoes)
{
    for (const auto& [convention, key] : {std::pair{Convention::DeltoidStrip, "press feel_acromion"},
                                          {Convention::VentroglutealHand, "build region"}}) {
        const HandoutAsk ask = handoutAsk(convention);
        const PaperBody body = bodyOf(ask, Tint::Full);
        const LectureLook look = lookAt(ask, key);
        EXPECT_LT(mostPatchDifference(painted(body, look), seen(printed(body, look, 1))), 36) << key;
    }
}

TEST(PaperLookTest, ThePlatesOfAPageShareOneDrawing)
{
    const HandoutAsk ask = handoutAsk(Convention::VastusThirds);
    const PaperBody body = bodyOf(ask, Tint::Grey);
    const LectureLook look = lookAt(ask, "build front_line");
    const qsizetype one = printed(body, look, 1).size();
    EXPECT_LT(printed(body, look, 8).size(), one + one / 4);
}

}  // namespace fb::test::paper_look_tests
