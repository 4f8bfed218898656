// The grader against learners whose one error is known: what it names first is what was planted,
// and who makes none is told of none.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/property/sampling.h"
#include "tests/support/scripted_learner.h"

namespace fb::test::scripted_learners_test {

namespace scripted_law_detail {

constexpr std::uint64_t kSeed = 2029;

// Fingers and hands of many learners.
Policy drawnPolicy(SeedStream& stream)
{
    return defaultPolicy()
        .with(PolicyKey::DeltoidFingerWidth, stream.between(1.5, 2.25))
        .with(PolicyKey::HandLength, stream.between(16.0, 21.5));
}

struct Drawn {
    Shown shown;
    Patient patient;
    Policy policy;

    [[nodiscard]] ScriptedLearner learner() const { return {patient, shown.convention, shown.view, policy}; }
    [[nodiscard]] std::string told() const
    {
        std::string text = test::shown(shown);
        text += ", ";
        text += test::shown(patient);
        text += ", hand ";
        text += std::to_string(policy.value(PolicyKey::HandLength));
        text += ", finger ";
        text += std::to_string(policy.value(PolicyKey::DeltoidFingerWidth));
        return text;
    }
};

std::vector<Shown> everyAsked()
{
    std::vector<Shown> all;
    for (const Convention convention : kConventions)
        for (const View view : askedViews(siteOf(convention)))
            all.push_back({convention, view});
    return all;
}

Drawn drawn(SeedStream& stream, int number)
{
    static const std::vector<Shown> asked = everyAsked();
    const Shown one = asked[static_cast<std::size_t>(stream.below(static_cast<int>(asked.size())))];
    return {one, sampledPatient(kSeed, number), drawnPolicy(stream)};
}

std::string told(const std::optional<Cause>& cause)
{
    if (!cause)
        return "nothing";
    if (cause->part == Cause::Part::Mark)
        return "mark";
    const bool landmark = cause->part == Cause::Part::Landmark;
    std::string text(landmark ? wordOf(cause->landmark) : wordOf(cause->step));
    text += ' ';
    text += landmark ? wordOf(cause->verdict) : wordOf(cause->slip);
    return text;
}

// The step that has the first slip tells the way it went.
bool tellsTheWay(const PlantedError& error, const ByHandGrade& grade)
{
    if (error.kind == PlantedError::Kind::Slip && error.way != Direction::None) {
        const auto step = std::ranges::find(grade.steps, error.slip, &BuildStepGrade::slip);
        return step != grade.steps.end() && step->direction == error.way;
    }
    return true;
}

struct Tally {
    int planted = 0, named = 0, impossible = 0;
};

void plantOne(std::uint64_t seed, int number, Tally& tally)
{
    SeedStream stream(seed + static_cast<std::uint64_t>(number) * 7919);
    const Drawn one = drawn(stream, number);
    const ScriptedLearner learner = one.learner();
    const auto errors = learner.everyError();
    const PlantedError& error =
        errors[static_cast<std::size_t>(stream.below(static_cast<int>(errors.size())))];
    const auto attempted = learner.planted(error, stream);
    if (!attempted) {
        ++tally.impossible;
        return;
    }
    ++tally.planted;
    const ByHandGrade grade = learner.graded(*attempted);
    const bool named = grade.first == causeOf(error) && tellsTheWay(error, grade);
    tally.named += named ? 1 : 0;
    EXPECT_TRUE(named) << "seed " << seed << " number " << number << ": planted " << shown(error)
                       << ", named " << told(grade.first) << "\n  " << one.told();
    EXPECT_LT(grade.points, 3.0);
}

void expectFlawless(std::uint64_t seed, int number)
{
    SeedStream stream(seed + static_cast<std::uint64_t>(number) * 7919);
    const Drawn one = drawn(stream, number);
    const ScriptedLearner learner = one.learner();
    const ByHandGrade grade = learner.graded(learner.flawless(stream));
    EXPECT_FALSE(grade.first.has_value())
        << "seed " << seed << " number " << number << ": " << told(grade.first) << "\n  " << one.told();
    EXPECT_NEAR(grade.points, 3.0, 1e-12) << "seed " << seed << " number " << number;
    EXPECT_TRUE(grade.landmarksFound && grade.builtRight && grade.markedRight && !grade.luckyMark);
}

}  // namespace scripted_law_detail

TEST(ScriptedLearners, TwoHundredPlantedErrorsAreNamedFirstTwoHundredTimes)
{
    using namespace scripted_law_detail;
    Tally tally;
    for (int number = 0; tally.planted < 200; ++number)
        plantOne(kSeed, number, tally);
    EXPECT_EQ(tally.named, 200) << "seed " << kSeed;
    EXPECT_LT(tally.impossible, 20);
    RecordProperty("named", tally.named);
}

TEST(ScriptedLearners, TwoHundredFlawlessOnesAreToldOfNothingAndGetFullPoints)
{
    using namespace scripted_law_detail;
    for (int number = 0; number < 200; ++number)
        expectFlawless(kSeed, number);
}

TEST(ScriptedLearners, EveryErrorOfEveryConventionIsNamedFirst)
{
    using namespace scripted_law_detail;
    Tally tally;
    const int count = rounds(5'000);
    for (int number = 0; number < count && !::testing::Test::HasFailure(); ++number)
        plantOne(kSeed + 1, number, tally);
    EXPECT_EQ(tally.named, tally.planted);
    EXPECT_GT(tally.planted, count * 9 / 10);
}

// So that no law above holds for want of room.
TEST(ScriptedLearners, EveryErrorFindsRoomOnSomeBody)
{
    using namespace scripted_law_detail;
    std::set<std::string> without;
    for (const Shown one : everyAsked()) {
        const ScriptedLearner first(sampledPatient(kSeed, 0), one.convention, one.view, defaultPolicy());
        for (const PlantedError& error : first.everyError()) {
            bool room = false;
            for (int number = 0; number < 40 && !room; ++number) {
                SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
                const Drawn drawnOne{one, sampledPatient(kSeed, number), drawnPolicy(stream)};
                room = drawnOne.learner().planted(error, stream).has_value();
            }
            if (!room)
                without.insert(shown(one) + ": " + shown(error));
        }
    }
    // What a view does not show cannot be set there; the crest's own name fits its ends.
    const std::set<std::string> expected{
        "vg.medians in hip-side: anterior_superior_iliac_spine called iliac_crest",
        "vg.medians in hip-side: iliac_tubercle called iliac_crest",
        "vl.handbreadths in thigh-front: mark back",
        "vl.handbreadths in thigh-front: outer_line_off outer_line back",
        "vl.handbreadths in thigh-side: front_line_off front_line forward",
        "vl.thirds in thigh-front: mark back",
        "vl.thirds in thigh-front: outer_line_off outer_line back",
        "vl.thirds in thigh-side: front_line_off front_line forward",
    };
    EXPECT_EQ(without, expected);
}

TEST(ScriptedLearners, ThousandsOfFlawlessOnesAreToldOfNothing)
{
    using namespace scripted_law_detail;
    for (int number = 0; number < rounds(5'000) && !::testing::Test::HasFailure(); ++number)
        expectFlawless(kSeed + 2, number);
}

}  // namespace fb::test::scripted_learners_test
