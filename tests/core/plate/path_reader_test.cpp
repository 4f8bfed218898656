#include "core/plate/path_reader.h"

#include <gtest/gtest.h>

using namespace fb;

namespace path_reader_test {

TEST(PathReaderTest, ReadsTheFourCommands)
{
    const auto rings = ringsFrom("M 0 0 L10,0 C 10 5 5 10 0 10 Z M 1 1 L 2 1");
    ASSERT_TRUE(rings);
    ASSERT_EQ(rings->size(), 2U);
    EXPECT_TRUE(rings->front().closed);
    EXPECT_FALSE(rings->back().closed);
    EXPECT_EQ(rings->front().points.size(), 10U);  // line, cubic, and the closing line
    EXPECT_EQ(rings->front().points.back(), (Point{0, 0}));
}

TEST(PathReaderTest, OneLetterMayCarrySeveralPieces)
{
    const auto rings = ringsFrom("M0 0 1 0 1 1");
    ASSERT_TRUE(rings);
    EXPECT_EQ(rings->front().points.size(), 7U);
}

TEST(PathReaderTest, RefusesEverythingElse)
{
    for (const char* d :
         {"", "L 1 1", "Z", "M 0 0", "M 0 0 l 1 1", "M 0 0 A 1 1 0 0 0 2 2", "M 0 0 L 1", "M 0 0 C 1 1 2 2",
          "M 0 0 L nan 1", "M 0 0 L 1e999 1", "M 0 0 L 1 1 Q 1 1 2 2", "hello", "M 0 0 L 1 1 Z 3"})
        EXPECT_FALSE(ringsFrom(d)) << d;
}

TEST(PathReaderTest, CountsItsNumbers)
{
    EXPECT_TRUE(numbersFrom("0 0 560 640", 4));
    EXPECT_EQ(numbersFrom("1,2", 2)->back(), 2.0);
    EXPECT_FALSE(numbersFrom("1 2 3", 2));
    EXPECT_FALSE(numbersFrom("1 x", 2));
    EXPECT_FALSE(numbersFrom("", 1));
}

}  // namespace path_reader_test
