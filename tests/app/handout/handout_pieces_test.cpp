#include "app/handout/handout_pieces.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "tests/support/handout_sample.h"

namespace fb::test::handout_pieces_tests {

namespace handout_pieces_test {

constexpr int kWide = 600;
constexpr int kHigh = 300;

SheetRoom room(Qt::LayoutDirection direction = Qt::LeftToRight)
{
    HandoutWords words;
    words.direction = direction;
    return roomOf(words, kWide, 1.0);
}

QImage painted(const std::function<void(QPainter&)>& paint)
{
    QImage image(kWide, kHigh, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter);
    return image;
}

QImage painted(const SheetBlock& piece)
{
    return painted([&](QPainter& painter) { piece.paint(painter, 0.0); });
}

// The columns or rows of an image that have ink in them: the first and the last.
std::pair<int, int> inked(const QImage& image, Qt::Orientation way)
{
    int first = -1;
    int last = -1;
    const bool across = way == Qt::Horizontal;
    for (int i = 0; i < (across ? image.width() : image.height()); ++i)
        for (int k = 0; k < (across ? image.height() : image.width()); ++k)
            if (qGray(across ? image.pixel(i, k) : image.pixel(k, i)) < 235) {
                first = first < 0 ? i : first;
                last = i;
            }
    return {first, last};
}

const QString kLong =
    QStringLiteral("The fingertip follows the iliac crest back, a hard edge that runs on. ").repeated(3);

}  // namespace handout_pieces_test

using namespace handout_pieces_test;

TEST(HandoutPiecesTest, ASmallerSettingIsALargerRoom)
{
    EXPECT_DOUBLE_EQ(roomOf({}, 900.0, 1.0).width, 900.0);
    EXPECT_DOUBLE_EQ(roomOf({}, 900.0, 0.75).width, 1200.0);
}

TEST(HandoutPiecesTest, EveryPieceKeepsToItsHeightAndWidth)
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const SheetRoom at = room(direction);
        for (const SheetBlock& piece : {headPiece(kLong.left(30), {kLong.left(40), {}}, kLong, at),
                                        titledPiece(kLong.left(20), kLong, at, 280.0),
                                        numberedPiece(QStringLiteral("7"), kLong, at, 280.0),
                                        linePiece(QStringLiteral("Name"), at, 280.0),
                                        footPiece(kLong.left(50), QStringLiteral("Page 1 of 2"), at)}) {
            const QImage image = painted(piece);
            const auto [top, bottom] = inked(image, Qt::Vertical);
            EXPECT_GE(top, 0);
            EXPECT_LE(bottom, static_cast<int>(piece.height) + 1);
            EXPECT_LT(inked(image, Qt::Horizontal).second, kWide);
        }
    }
}

TEST(HandoutPiecesTest, ANumberStandsBeforeItsWordsInEitherDirection)
{
    const auto numbered = [](Qt::LayoutDirection direction) {
        return inked(painted(numberedPiece(QStringLiteral("7"), QStringLiteral("."), room(direction), 280.0)),
                     Qt::Horizontal);
    };
    EXPECT_LT(numbered(Qt::LeftToRight).first, 12);
    EXPECT_GT(numbered(Qt::RightToLeft).second, 268);
}

TEST(HandoutPiecesTest, ALineToWriteOnReachesFromItsWordToItsEnd)
{
    const auto [first, last] = inked(painted(linePiece({}, room(), 280.0)), Qt::Horizontal);
    EXPECT_LE(first, 1);
    EXPECT_GE(last, 278);
    EXPECT_GE(linePiece(QStringLiteral("Name"), room(), 280.0).height, 35.0) << "7 mm of room for a pen";
}

TEST(HandoutPiecesTest, EverySourceHasALineOfItsOwn)
{
    const SheetBlocks two =
        sourcesPieces(QStringLiteral("From"), QStringLiteral("one\ntwo\n"), room(), 280.0);
    EXPECT_EQ(two.size(), 3U);
    EXPECT_EQ(sourcesPieces(QStringLiteral("From"), {}, room(), 280.0).size(), 1U);
}

TEST(HandoutPiecesTest, PiecesStandBelowEachOther)
{
    const SheetBlock piece = titledPiece(QStringLiteral("A"), QStringLiteral("B"), room(), 280.0);
    EXPECT_DOUBLE_EQ(heightOf({piece}), piece.height);
    EXPECT_DOUBLE_EQ(heightOf({piece, piece}), 2.0 * piece.height + piece.before);
    const QImage two = painted([&](QPainter& painter) { paintDown(painter, {piece, piece}, 10.0); });
    EXPECT_NEAR(inked(two, Qt::Vertical).second - inked(painted(piece), Qt::Vertical).second,
                10.0 + piece.height + piece.before, 1.5);
    const QImage right = painted([&](QPainter& painter) {
        paintDown(painter, {piece}, {100.0, 0.0}, room(Qt::RightToLeft), 280.0);
    });
    EXPECT_GE(inked(right, Qt::Horizontal).first, 220) << "280 wide, 100 from the right edge of 600";
}

TEST(HandoutPiecesTest, TheRulerIsFiveCentimetresOfTheBody)
{
    const HandoutAsk ask = handoutAsk(Convention::VastusThirds);
    const HandoutWords words = handoutWords(ask);
    const PaperBody body = PaperBody::make(ask.body, *ask.library, Tint::Grey).value();
    const QRectF plate(0.0, 0.0, kWide, kHigh);
    const QImage image = painted([&](QPainter& painter) {
        paintRuler(painter, {words, body}, plate, words.skin, room());
    });
    // Its long line is the lowest ink.
    const int bottom = inked(image, Qt::Vertical).second;
    const auto [first, last] = inked(image.copy(0, bottom - 1, kWide, 2), Qt::Horizontal);
    const double unitsPerCm =
        kWide / body.fittedArea(words.skin.area, plate.width() / plate.height()).width();
    EXPECT_NEAR(last - first, 5.0 * unitsPerCm, 2.5);
}

TEST(HandoutPiecesTest, APlateIsFramed)
{
    const HandoutAsk ask = handoutAsk(Convention::DeltoidStrip);
    const HandoutWords words = handoutWords(ask);
    const PaperBody body = PaperBody::make(ask.body, *ask.library, Tint::Grey).value();
    const QRectF plate(50.5, 40.5, 300.0, 200.0);
    const QImage image = painted([&](QPainter& painter) {
        paintPlate(painter, {words, body}, plate, words.skin, kPlateLabelScale);
    });
    EXPECT_EQ(inked(image, Qt::Horizontal), (std::pair{50, 350}));
    EXPECT_EQ(inked(image, Qt::Vertical), (std::pair{40, 240}));
}

}  // namespace fb::test::handout_pieces_tests
