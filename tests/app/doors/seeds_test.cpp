#include "app/doors/seeds.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "core/session/request.h"

namespace fb::test::seeds_test {

TEST(SeedsTest, FreshSeedsAreShortDifferAndCanBeTyped)
{
    SystemSeeds seeds;
    std::set<std::uint64_t> seen;
    for (int i = 0; i < 200; ++i) {
        const std::uint64_t seed = seeds.fresh();
        EXPECT_EQ(std::to_string(seed).size(), 5U);
        EXPECT_TRUE(seedFromText(std::to_string(seed)).has_value());
        seen.insert(seed);
    }
    EXPECT_GT(seen.size(), 150U);
}

}  // namespace fb::test::seeds_test
