#include "app/report/sheet_flow.h"

#include <gtest/gtest.h>

namespace fb::test::sheet_flow_tests {

namespace sheet_flow_test {

SheetBlock block(double height, double before = 0.0, bool stays = false)
{
    return {height, before, stays, {}, {}};
}

// "0 10 | 0": the tops of the blocks, pages parted by a bar.
std::string tops(const std::vector<SheetBlock>& blocks, double height)
{
    std::string text;
    for (const auto& page : paginated(blocks, height)) {
        text += text.empty() ? "" : " |";
        for (const PlacedBlock& placed : page)
            text += (text.empty() ? "" : " ") + std::to_string(static_cast<int>(placed.top));
    }
    return text;
}

}  // namespace sheet_flow_test

using namespace sheet_flow_test;

TEST(SheetFlowTest, BlocksStandUnderEachOtherUntilThePageIsFull)
{
    EXPECT_EQ(tops({block(40), block(40), block(40)}, 100.0), "0 40 | 0");
    EXPECT_EQ(tops({block(50), block(50)}, 100.0), "0 50");
    EXPECT_EQ(tops({block(50), block(50.1)}, 100.0), "0 | 0");
}

TEST(SheetFlowTest, SpaceAboveIsLeftOutAtTheTopOfAPage)
{
    EXPECT_EQ(tops({block(40, 20), block(40, 20), block(40, 20)}, 100.0), "0 60 | 0");
}

TEST(SheetFlowTest, AHeadingNeverStandsAloneAtTheFoot)
{
    EXPECT_EQ(tops({block(80), block(10, 0, true), block(30)}, 100.0), "0 | 0 10");
    EXPECT_EQ(tops({block(80), block(5, 0, true), block(5, 0, true), block(10)}, 100.0), "0 80 85 90");
    EXPECT_EQ(tops({block(80), block(5, 0, true), block(5, 0, true), block(11)}, 100.0), "0 | 0 5 10");
}

TEST(SheetFlowTest, TheLastLinesStayWithWhatComesAfterThem)
{
    std::vector<SheetBlock> lines{block(40), block(10), block(10), block(10), block(10)};
    std::vector<SheetBlock> parted = lines;
    parted.push_back(block(30));
    EXPECT_EQ(tops(parted, 100.0), "0 40 50 60 70 | 0");
    lastLinesStay(lines);
    lines.push_back(block(30));
    EXPECT_EQ(tops(lines, 100.0), "0 40 | 0 10 20 30");
    std::vector<SheetBlock> plates{block(10), block(300)};
    lastLinesStay(plates);
    EXPECT_FALSE(plates[0].staysWithNext || plates[1].staysWithNext) << "a plate is not carried over";
    std::vector<SheetBlock> none;
    lastLinesStay(none);
    EXPECT_TRUE(none.empty());
}

TEST(SheetFlowTest, ABlockHigherThanAPageStandsOnOneOfItsOwn)
{
    EXPECT_EQ(tops({block(10), block(300), block(10)}, 100.0), "0 | 0 | 0");
}

TEST(SheetFlowTest, ARowThatBeginsAPageHasTheHeadOfItsTableAboveIt)
{
    const auto head = std::make_shared<const SheetBlock>(block(10));
    std::vector<SheetBlock> blocks{block(50), *head};
    for (int row = 0; row < 8; ++row) {
        blocks.push_back(block(20));
        blocks.back().head = head;
    }
    blocks.push_back(block(30));
    EXPECT_EQ(tops(blocks, 100.0), "0 50 60 80 | 0 10 30 50 70 | 0 10 30 50");
    const auto pages = paginated(blocks, 100.0);
    EXPECT_EQ(pages[1].front().block, head.get());
    EXPECT_EQ(pages[2].front().block, head.get());
}

TEST(SheetFlowTest, NothingIsStillOnePageAndNothingIsLost)
{
    EXPECT_EQ(paginated({}, 100.0).size(), 1U);
    std::vector<SheetBlock> blocks;
    for (int i = 0; i < 100; ++i)
        blocks.push_back(block(7.0 + i % 5, i % 3, i % 7 == 0));
    std::size_t next = 0;
    for (const auto& page : paginated(blocks, 100.0)) {
        double bottom = 0.0;
        for (const PlacedBlock& placed : page) {
            ASSERT_EQ(placed.block, &blocks[next++]);
            EXPECT_GE(placed.top, bottom);
            bottom = placed.top + placed.block->height;
        }
        EXPECT_LE(bottom, 100.0);
    }
    EXPECT_EQ(next, blocks.size());
}

}  // namespace fb::test::sheet_flow_tests
