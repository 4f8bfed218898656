// Laws of a check-off over thousands of random courses: what was kept is what happened, nothing is lost or
// doubled, and nobody pays for a second that was not her own.
#include <gtest/gtest.h>

#include "tests/property/sampling.h"
#include "tests/support/check_off_chaos.h"

namespace fb::test::check_off_law_test {

namespace check_off_law_detail {

Sheet courseSheet(SeedStream& stream)
{
    Sheet sheet = randomSheet(stream);
    sheet.items.resize(static_cast<std::size_t>(1 + stream.below(4)), sheet.items.front());
    sheet.steps.resize(std::min<std::size_t>(sheet.steps.size(), static_cast<std::size_t>(stream.below(5))));
    // Short, so that time runs out often.
    sheet.secondsPerItem = stream.below(6);
    sheet.secondsOnScreen = stream.below(15);
    sheet.secondsOnManikin = stream.below(8);
    return sheet;
}

Chaos chaosOf(std::uint64_t seed)
{
    SeedStream stream(seed * 7919);
    const int extra = 25 * stream.below(9);
    return {seed, courseSheet(stream), extra};
}

// Answers stand one behind the other, each as it was kept.
void expectNothingLostOrDoubled(const Chaos& chaos)
{
    std::size_t number = 0;
    for (const CheckOffEvent& event : chaos.kept()) {
        if (!event.answer)
            continue;
        ASSERT_LT(number, chaos.off().answers().size());
        ASSERT_EQ(textOf(chaos.off().answers()[number]), textOf(*event.answer));
        ASSERT_EQ(event.answer->item, static_cast<int>(number));
        ++number;
    }
    ASSERT_EQ(number, chaos.off().answers().size());
    ASSERT_LE(number, chaos.off().requests().size());
}

bool isRunning(const CheckOff& off)
{
    const bool timed = off.stage() == CheckOffStage::OnScreen || off.stage() == CheckOffStage::OnManikin;
    return timed && !off.isPaused();
}

struct Reached {
    int closed = 0, outOfTime = 0, refused = 0;
};

void runOne(std::uint64_t seed, Reached& reached)
{
    Chaos chaos = chaosOf(seed);
    for (int i = 0; i < 60; ++i) {
        chaos.happen();
        if (::testing::Test::HasFatalFailure())
            return;
        ASSERT_EQ(chaos.off().onScreen(), chaos.screenUsed());
        ASSERT_EQ(chaos.off().onManikin(), chaos.manikinUsed());
    }
    expectNothingLostOrDoubled(chaos);
    const CheckOff again = chaos.replayed(chaos.kept().size());
    ASSERT_EQ(stateOf(again), stateOf(chaos.off()));
    ASSERT_LE(again.onScreen(), chaos.off().onScreen());
    ASSERT_LE(again.onManikin(), chaos.off().onManikin());
    if (!isRunning(chaos.off())) {
        ASSERT_EQ(again.onScreen(), chaos.off().onScreen());
        ASSERT_EQ(again.onManikin(), chaos.off().onManikin());
        ASSERT_EQ(textOf(again.result()), textOf(chaos.off().result()));
    }
    reached.closed += chaos.off().stage() == CheckOffStage::Closed ? 1 : 0;
    const CheckOffResult result = chaos.off().result();
    reached.outOfTime += result.onScreenKept && result.onManikinKept ? 0 : 1;
    reached.refused += chaos.refused();
}

}  // namespace check_off_law_detail

TEST(CheckOffLaw, WhateverHappensWhatWasKeptIsWhatHappened)
{
    using namespace check_off_law_detail;
    Reached reached;
    const int count = rounds(2000);
    for (int i = 1; i <= count; ++i) {
        runOne(static_cast<std::uint64_t>(i), reached);
        ASSERT_FALSE(HasFatalFailure()) << "seed " << i;
    }
    // The courses go everywhere.
    EXPECT_GT(reached.closed, count / 4);
    EXPECT_GT(reached.outOfTime, count / 20);
    EXPECT_GT(reached.refused, count);
}

// Cut at every event: the same stage, the same item, no more time than was used by then.
TEST(CheckOffLaw, CutOffAnywhereItGoesOnWhereItWas)
{
    using namespace check_off_law_detail;
    for (int i = 1; i <= rounds(600); ++i) {
        SeedStream stream(static_cast<std::uint64_t>(i));
        Course at(courseSheet(stream), 25 * stream.below(5));
        std::vector<std::string> states;
        std::vector<std::pair<Ms, Ms>> used;
        const auto noted = [&] {
            states.push_back(stateOf(at.off));
            used.emplace_back(at.off.onScreen(), at.off.onManikin());
        };
        const auto step = [&](const Result<CheckOffEvent>& event) {
            at.wait(Ms{stream.below(3000)});
            if (event && at.keep(*event))
                noted();
        };
        step(at.off.confirm(at.now));
        step(at.off.start(at.now));
        while (at.off.stage() == CheckOffStage::OnScreen) {
            at.wait(Ms{stream.below(2500)});
            step(at.off.isTimeUp() ? at.off.answer(silenceTo(at.off), at.now)
                                   : at.off.answer(answerTo(at.off, Verdict::OnTarget, 1.0), at.now));
        }
        step(at.off.takeOver(at.now));
        for (const SheetStep& each : at.off.setup().sheet.steps)
            step(at.off.observe(each.step, Seen::Done, {}, at.now));
        step(at.off.finish(at.now));
        for (std::size_t cut = 0; cut < at.kept.size(); ++cut) {
            CheckOff back(at.off.setup());
            for (std::size_t k = 0; k <= cut; ++k)
                ASSERT_TRUE(back.apply(at.kept[k], std::nullopt)) << "seed " << i;
            back.resumeAt(Ms{77}, at.kept[cut].onScreen, at.kept[cut].onManikin);
            ASSERT_EQ(stateOf(back), states[cut]) << "seed " << i << " cut " << cut;
            ASSERT_LE(back.onScreen(), used[cut].first) << "seed " << i << " cut " << cut;
            ASSERT_LE(back.onManikin(), used[cut].second) << "seed " << i << " cut " << cut;
        }
    }
}

TEST(CheckOffLaw, ExtraTimeMovesTheEndAndNothingElse)
{
    using namespace check_off_law_detail;
    for (int i = 1; i <= rounds(500); ++i) {
        SeedStream stream(static_cast<std::uint64_t>(i));
        Sheet sheet = plainSheet(2);
        sheet.secondsPerItem = 1 + stream.below(20);
        for (const int extra : {0, 25, 50, 100}) {
            Course at(sheet, extra);
            at.begin();
            const Ms limit{sheet.secondsPerItem * 10 * (100 + extra)};
            at.wait(limit - Ms{1});
            ASSERT_FALSE(at.off.isTimeUp()) << "seed " << i << " extra " << extra;
            at.wait(Ms{1});
            ASSERT_TRUE(at.off.isTimeUp()) << "seed " << i << " extra " << extra;
            ASSERT_EQ(at.off.onScreen(), limit);
        }
    }
}

TEST(CheckOffLaw, ADamagedLineIsAFaultOrAnEvent)
{
    using namespace check_off_law_detail;
    int readable = 0;
    for (int i = 1; i <= rounds(1000); ++i) {
        Chaos chaos = chaosOf(static_cast<std::uint64_t>(i) + 90'000);
        for (int k = 0; k < 12; ++k)
            chaos.happen();
        SeedStream stream(static_cast<std::uint64_t>(i));
        CheckOff fresh(chaos.off().setup());
        for (const CheckOffEvent& event : chaos.kept()) {
            std::string text = textOf(event);
            for (int n = stream.below(3); n > 0; --n) {
                const auto at = static_cast<std::size_t>(stream.below(static_cast<int>(text.size())));
                const bool isDigit = text[at] >= '0' && text[at] <= '9';
                text[at] = static_cast<char>(isDigit ? '0' + stream.below(10) : stream.below(256));
            }
            const auto read = eventFrom(text);
            if (!read) {
                ASSERT_EQ(read.error().problem, Problem::EventNotReadable) << text;
                continue;
            }
            ++readable;
            const auto applied = fresh.apply(*read, std::nullopt);
            if (!applied) {
                ASSERT_EQ(applied.error().problem, Problem::CheckOffOutOfOrder) << text;
            }
            (void)fresh.result();
        }
    }
    EXPECT_GT(readable, rounds(1000));
}

}  // namespace fb::test::check_off_law_test
