// Laws of one request found by hand: whatever the order of the calls, undo and redo lead back and
// forth over the same states, a drag is one step, and nothing is lost.
#include <gtest/gtest.h>

#include <cmath>

#include "core/session/by_hand.h"
#include "tests/property/sampling.h"

namespace fb::test::by_hand_law_test {

namespace by_hand_law_detail {

constexpr std::uint64_t kSeed = 97;

// What a learner sees; stages are restored by undo, but a redo keeps the stage it was asked in.
struct Seen {
    std::vector<Flag> flags;
    Build build;
    std::optional<Point> mark;

    friend bool operator==(const Seen&, const Seen&) = default;
};

Seen seen(const ByHand& by) { return {by.flags(), by.build(), by.mark()}; }

Target targetInTurn(int number)
{
    const Convention convention = kConventions[static_cast<std::size_t>(number) % kConventions.size()];
    return targetOf(sampledPatient(kSeed, number), convention);
}

Point anyPoint(const Target& target, SeedStream& stream)
{
    if (stream.below(20) == 0)
        return {std::nan(""), 0.0};
    return target.ideal + pointIn(stream, {{-20.0, -20.0}, {20.0, 20.0}});
}

Handle anyHandle(const Target& target, SeedStream& stream)
{
    const auto own = handlesOf(buildKindOf(target.convention));
    if (stream.below(10) == 0)
        return static_cast<Handle>(stream.below(kHandleCount));
    return own[static_cast<std::size_t>(stream.below(static_cast<int>(own.size())))];
}

// One call that is a step of undo, or changes nothing.
void anyStep(ByHand& by, const Target& target, SeedStream& stream)
{
    switch (stream.below(8)) {
    case 0: by.plant({landmarkAt(stream.below(kLandmarkCount)), anyPoint(target, stream)}); break;
    case 1: by.pullOut(landmarkAt(stream.below(kLandmarkCount))); break;
    case 2: by.chooseHand(stream.below(2) == 0 ? Side::Left : Side::Right); break;
    case 3: by.chooseFingers(stream.below(5), stream.below(2) == 0 ? Side::Left : Side::Right); break;
    case 4: by.chooseCell({ThighRow::Middle, ThighColumn::Between}); break;
    case 5: by.setMark(stream.below(3) == 0 ? std::nullopt : std::optional(anyPoint(target, stream))); break;
    default: by.setHandle(anyHandle(target, stream), anyPoint(target, stream)); break;
    }
}

void anyDrag(ByHand& by, const Target& target, SeedStream& stream)
{
    const Handle handle = anyHandle(target, stream);
    by.beginDrag();
    for (int i = stream.below(6); i > 0; --i)
        by.setHandle(handle, anyPoint(target, stream));
    by.endDrag();
}

void sound(const ByHand& by, const Target& target)
{
    for (const Flag& flag : by.flags()) {
        ASSERT_TRUE(isFinite(flag.at));
        ASSERT_EQ(std::ranges::count(by.flags(), flag.name, &Flag::name), 1);
    }
    ASSERT_TRUE(!by.mark() || isFinite(*by.mark()));
    ASSERT_EQ(by.build().convention, target.convention);
    ASSERT_EQ(by.build().side, target.side);
    ASSERT_EQ(isWhole(by.build()), siteBy(by.build(), target, by.builder()).has_value());
    const bool complete = !by.flags().empty() && isWhole(by.build()) && by.mark();
    ASSERT_EQ(by.ready().has_value(), complete);
    if (complete) {
        const Grade mark = gradeMark(target, defaultPolicy(), *by.mark(), MarkedLimb::Arm);
        const ByHandGrade grade = gradeByHand(target, defaultPolicy(), by.flags(), by.build(), mark);
        ASSERT_TRUE(grade.points >= 0.0 && grade.points <= 3.0);
        ASSERT_EQ(grade.flags.size(), askedLandmarks(target.convention).size());
    }
}

}  // namespace by_hand_law_detail

TEST(ByHandLaw, UndoAndRedoLeadOverTheSameStates)
{
    using namespace by_hand_law_detail;
    for (int number = 0; number < rounds(900); ++number) {
        const Target target = targetInTurn(number);
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        ByHand by(target, defaultPolicy());
        std::vector<Seen> states{seen(by)};
        for (int call = 0; call < 40; ++call) {
            if (stream.below(4) == 0)
                anyDrag(by, target, stream);
            else
                anyStep(by, target, stream);
            (void)by.goTo(static_cast<ByHandStage>(stream.below(kByHandStageCount)));
            if (!(seen(by) == states.back()))
                states.push_back(seen(by));
            sound(by, target);
            ASSERT_FALSE(HasFatalFailure()) << "seed " << kSeed << " number " << number << " call " << call;
        }
        for (std::size_t i = states.size(); i-- > 1;) {
            ASSERT_EQ(seen(by), states[i]) << "undo, seed " << kSeed << " number " << number;
            ASSERT_TRUE(by.undo());
        }
        ASSERT_EQ(seen(by), states.front());
        ASSERT_FALSE(by.canUndo());
        for (const Seen& state : states) {
            ASSERT_EQ(seen(by), state) << "redo, seed " << kSeed << " number " << number;
            (void)by.redo();
        }
        ASSERT_FALSE(by.canRedo());
    }
}

TEST(ByHandLaw, UndoneStepsAreForgottenByANewOne)
{
    using namespace by_hand_law_detail;
    for (int number = 0; number < rounds(900); ++number) {
        const Target target = targetInTurn(number);
        SeedStream stream(kSeed + 1 + static_cast<std::uint64_t>(number));
        ByHand by(target, defaultPolicy());
        for (int call = 0; call < 60; ++call) {
            const Seen before = seen(by);
            const bool could = by.canRedo();
            switch (stream.below(3)) {
            case 0: {
                const bool undone = by.undo();
                ASSERT_EQ(by.canRedo(), undone || could);
                break;
            }
            case 1: (void)by.redo(); break;
            default:
                anyStep(by, target, stream);
                // A call that changes nothing keeps what was undone.
                ASSERT_EQ(by.canRedo(), could && seen(by) == before);
                break;
            }
            sound(by, target);
            ASSERT_FALSE(HasFatalFailure()) << "seed " << kSeed << " number " << number << " call " << call;
        }
    }
}

TEST(ByHandLaw, ADragIsOneStep)
{
    using namespace by_hand_law_detail;
    for (int number = 0; number < rounds(900); ++number) {
        const Target target = targetInTurn(number);
        SeedStream stream(kSeed + 2 + static_cast<std::uint64_t>(number));
        ByHand by(target, defaultPolicy());
        by.chooseHand(Side::Left);
        by.chooseFingers(2, Side::Left);
        const Handle first = handlesOf(buildKindOf(target.convention)).front();
        by.setHandle(first, target.ideal);
        const Seen before = seen(by);
        by.beginDrag();
        for (int i = 1; i <= 30; ++i)
            by.setHandle(first, target.ideal + Point{0.1 * i, 0.05 * i});
        by.endDrag();
        by.setHandle(first, target.ideal + Point{-1.0, -1.0});
        ASSERT_TRUE(by.undo());
        const Point dragged = target.ideal + Point{3.0, 1.5};
        ASSERT_LT(distance(*handleAt(by.build(), target, by.builder(), first), dragged), 1e-9);
        ASSERT_TRUE(by.undo());
        ASSERT_EQ(seen(by), before);
    }
}

TEST(ByHandLaw, UndoGoesToTheStageOfTheStep)
{
    using namespace by_hand_law_detail;
    const Target target = targetOf(sampledPatient(kSeed, 1), Convention::VentroglutealHand);
    ByHand by(target, defaultPolicy());
    by.plant({Landmark::GreaterTrochanter, {0.0, 0.0}});
    ASSERT_TRUE(by.goTo(ByHandStage::Building));
    by.chooseHand(Side::Left);
    ASSERT_TRUE(by.goTo(ByHandStage::Marking));
    by.setMark(target.ideal);
    ASSERT_TRUE(by.goTo(ByHandStage::Feeling));
    for (const ByHandStage stage : {ByHandStage::Marking, ByHandStage::Building, ByHandStage::Feeling}) {
        ASSERT_TRUE(by.undo());
        EXPECT_EQ(by.stage(), stage);
    }
}

}  // namespace fb::test::by_hand_law_test
