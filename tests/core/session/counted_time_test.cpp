#include "core/session/counted_time.h"

#include <gtest/gtest.h>

#include "core/basics/seed_stream.h"

using namespace fb;

namespace counted_time_test {

TEST(CountedTimeTest, CountsFromRunToHold)
{
    CountedTime time;
    time.look(Ms{50});
    EXPECT_EQ(time.used(), Ms{0});
    EXPECT_FALSE(time.isRunning());
    time.run(Ms{100});
    EXPECT_TRUE(time.isRunning());
    time.look(Ms{600});
    EXPECT_EQ(time.used(), Ms{500});
    time.hold(Ms{750});
    EXPECT_FALSE(time.isRunning());
    EXPECT_EQ(time.used(), Ms{650});
    time.look(Ms{900});
    time.hold(Ms{1000});
    EXPECT_EQ(time.used(), Ms{650});
}

TEST(CountedTimeTest, GoesOnAfterAPauseFromWhatWasUsed)
{
    CountedTime time(Ms{4000});
    EXPECT_EQ(time.used(), Ms{4000});
    time.run(Ms{10});
    time.hold(Ms{20});
    time.run(Ms{900});
    time.look(Ms{1000});
    EXPECT_EQ(time.used(), Ms{4110});
}

TEST(CountedTimeTest, RunWhileItRunsCountsWhatLiesBetween)
{
    CountedTime time;
    time.run(Ms{0});
    time.run(Ms{300});
    time.look(Ms{400});
    EXPECT_EQ(time.used(), Ms{400});
}

TEST(CountedTimeTest, AGapLongerThanTwoSecondsIsLeftOutWhole)
{
    CountedTime time;
    time.run(Ms{0});
    time.look(Ms{2000});
    EXPECT_EQ(time.used(), Ms{2000});
    time.look(Ms{4001});
    EXPECT_EQ(time.used(), Ms{2000});
    time.look(Ms{4101});
    time.look(Ms{3'604'101});
    EXPECT_EQ(time.used(), Ms{2100});
}

TEST(CountedTimeTest, AClockThatRunsBackwardsCountsNothing)
{
    CountedTime time;
    time.run(Ms{10'000});
    time.look(Ms{9000});
    EXPECT_EQ(time.used(), Ms{0});
    // And goes on from where it is now.
    time.look(Ms{9400});
    EXPECT_EQ(time.used(), Ms{400});
    time.hold(Ms{-5000});
    EXPECT_EQ(time.used(), Ms{400});
}

TEST(CountedTimeTest, EveryReadingIsCountedOnceWhateverTheClockDoes)
{
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        SeedStream stream(seed);
        CountedTime time;
        Ms now{stream.below(1000)};
        Ms used{0};
        bool running = false;
        for (int i = 0; i < 60; ++i) {
            const Ms gap{stream.below(5) == 0 ? stream.below(9000) - 4000 : stream.below(600)};
            now += gap;
            if (running && gap > Ms{0} && gap <= CountedTime::kLongestGap)
                used += gap;
            switch (stream.below(4)) {
            case 0: time.run(now); break;
            case 1: time.hold(now); break;
            default: time.look(now); break;
            }
            running = time.isRunning();
            ASSERT_EQ(time.used(), used) << "seed " << seed << " call " << i;
        }
    }
}

}  // namespace counted_time_test
