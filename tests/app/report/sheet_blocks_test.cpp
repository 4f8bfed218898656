#include "app/report/sheet_blocks.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "app/report/item_picture.h"
#include "tests/support/report_sample.h"

namespace fb::test::sheet_blocks_tests {

namespace sheet_blocks_test {

SheetRoom roomOf(Qt::LayoutDirection direction = Qt::LeftToRight)
{
    return {900.0, direction, paperScheme()};
}

const FeedbackSheet& usualFeedback()
{
    static const FeedbackSheet kSheet = sheetOf(usualSample());
    return kSheet;
}

// Where anything was painted, on white; the block begins 20 units below the top.
QRect inked(const SheetBlock& block)
{
    QImage image(900, static_cast<int>(block.height) + 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    block.paint(painter, 20.0);
    painter.end();
    QRect box;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qGray(image.pixel(x, y)) < 200)
                box |= QRect(x, y, 1, 1);
    return box;
}

}  // namespace sheet_blocks_test

using namespace sheet_blocks_test;

TEST(SheetBlocksTest, EachBlockKeepsToItsHeightAndWidth)
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        for (const auto part : {&headBlocks, &itemBlocks, &stepBlocks, &recordBlocks}) {
            const SheetBlocks blocks = part(usualFeedback(), roomOf(direction));
            ASSERT_FALSE(blocks.empty());
            for (const SheetBlock& block : blocks) {
                EXPECT_GT(block.height, 0.0);
                const QRect box = inked(block);
                EXPECT_GE(box.top(), 17);
                EXPECT_LE(box.bottom(), 20 + block.height + 3.0);
            }
        }
    }
}

TEST(SheetBlocksTest, ALanguageFromRightToLeftMirrorsThePlaces)
{
    const SheetRoom left = roomOf();
    const SheetRoom right = roomOf(Qt::RightToLeft);
    EXPECT_EQ(left.left(30.0, 100.0), 30.0);
    EXPECT_EQ(right.left(30.0, 100.0), 770.0);
    const SheetBlock from = listBlocks({QStringLiteral("a word")}, left).front();
    const SheetBlock back = listBlocks({QStringLiteral("a word")}, right).front();
    EXPECT_LT(inked(from).right(), 200);
    EXPECT_GT(inked(back).left(), 700);
}

TEST(SheetBlocksTest, HeadingsStayWithWhatTheyHead)
{
    EXPECT_TRUE(headingBlock(QStringLiteral("A"), roomOf()).staysWithNext);
    for (const auto part : {&itemBlocks, &stepBlocks, &recordBlocks})
        EXPECT_TRUE(part(usualFeedback(), roomOf()).front().staysWithNext);
    EXPECT_FALSE(recordBlocks(usualFeedback(), roomOf()).back().staysWithNext);
}

TEST(SheetBlocksTest, FactsStandThreeInARow)
{
    const std::vector<SheetFact> facts(7, {QStringLiteral("name"), QStringLiteral("value")});
    EXPECT_EQ(factBlocks(facts, roomOf()).size(), 3U);
    EXPECT_TRUE(factBlocks({}, roomOf()).empty());
}

TEST(SheetBlocksTest, TwoPlatesStandInARow)
{
    const std::size_t items = usualFeedback().words.items.size();
    EXPECT_EQ(itemBlocks(usualFeedback(), roomOf()).size(), 1 + (items + 1) / 2);
}

TEST(SheetBlocksTest, WithoutItemsOrStepsThereAreNoSuchPieces)
{
    FeedbackSheet sheet = usualFeedback();
    sheet.findings.items.clear();
    sheet.words.items.clear();
    sheet.words.steps.clear();
    EXPECT_TRUE(itemBlocks(sheet, roomOf()).empty());
    EXPECT_TRUE(stepBlocks(sheet, roomOf()).empty());
}

TEST(SheetBlocksTest, LongTextGetsMoreLines)
{
    const SheetRoom room = roomOf();
    EXPECT_GT(textBlock(QString(400, QLatin1Char('m')), room).height,
              2.0 * textBlock(QStringLiteral("m"), room).height);
    EXPECT_GE(room.strong(QStringLiteral("word"), 500.0).width(),
              room.set(QStringLiteral("word"), 500.0, Type::Body).width());
}

}  // namespace fb::test::sheet_blocks_tests
