// Laws of a kept answer: from its text alone the grade is made again, to the bit; whatever else is read is
// refused and never crashes.
#include <gtest/gtest.h>

#include <array>
#include <cstring>

#include "tests/support/random_answer.h"

namespace fb::test::answer_law_test {

namespace answer_law_detail {

// Every number of an attempt's grade; compared bit by bit.
std::vector<double> numbersOf(const Attempt& attempt)
{
    const Grade& grade = attempt.grade;
    std::vector<double> all{attempt.mark.x,
                            attempt.mark.y,
                            attempt.offIdeal.x,
                            attempt.offIdeal.y,
                            grade.distanceToBorder.value(),
                            grade.offDistal.value(),
                            grade.offAnterior.value(),
                            grade.distanceToIdeal.value(),
                            grade.reason.amount.value(),
                            grade.reason.clearance.value(),
                            grade.points,
                            static_cast<double>(grade.verdict),
                            static_cast<double>(grade.inside),
                            static_cast<double>(grade.reason.direction),
                            static_cast<double>(grade.reason.tissue),
                            grade.hazard ? static_cast<double>(*grade.hazard) : -1.0,
                            grade.reason.note ? static_cast<double>(*grade.reason.note) : -1.0,
                            static_cast<double>(attempt.missedFinding)};
    if (attempt.refusal) {
        all.push_back(static_cast<double>(attempt.refusal->reason));
        all.push_back(static_cast<double>(attempt.refusal->outcome));
    }
    if (!attempt.byHand)
        return all;
    for (const FlagGrade& flag : attempt.byHand->flags)
        all.insert(all.end(), {static_cast<double>(flag.verdict), flag.distance.value()});
    for (const BuildStepGrade& step : attempt.byHand->steps)
        all.insert(all.end(), {static_cast<double>(step.slip), step.amount.value(), step.degrees.value(),
                               step.share, step.effect ? step.effect->moved.value() : -1.0});
    all.push_back(attempt.byHand->points);
    return all;
}

void expectSame(const Attempt& once, const Attempt& again)
{
    const auto a = numbersOf(once);
    const auto b = numbersOf(again);
    ASSERT_EQ(a.size(), b.size());
    ASSERT_EQ(std::memcmp(a.data(), b.data(), a.size() * sizeof(double)), 0);
    ASSERT_EQ(once.flags, again.flags);
    ASSERT_EQ(once.build, again.build);
    ASSERT_EQ(once.request.patient, again.request.patient);
    ASSERT_EQ(once.request.finding, again.request.finding);
}

// Each convention in turn, by mark or by hand; how many were answered.
int replayAll(int count, bool byHand, std::uint64_t seed)
{
    int answeredCount = 0;
    for (int number = 0; number < count; ++number) {
        const Convention convention = kConventions[static_cast<std::size_t>(number) % kConventions.size()];
        SeedStream stream(seed + static_cast<std::uint64_t>(number));
        auto answered = answeredAt(seed, number, convention, byHand, stream);
        if (!answered)
            continue;
        ++answeredCount;
        const std::string text = textOf(answered->answer);
        const auto read = answerFrom(text);
        EXPECT_TRUE(read) << read.error().where << " of " << text;
        if (!read || textOf(*read) != text) {
            ADD_FAILURE() << "another text: seed " << seed << " number " << number << "\n" << text;
            return answeredCount;
        }
        auto again = regraded(*read, atlas(), answered->policy);
        EXPECT_TRUE(again) << "seed " << seed << " number " << number;
        if (!again)
            return answeredCount;
        // By hand a refusal weighs more in practice; what is kept is part of one.
        if (again->refusal)
            again->grade.points = answered->attempt.grade.points;
        expectSame(answered->attempt, *again);
        if (::testing::Test::HasFatalFailure()) {
            ADD_FAILURE() << "seed " << seed << " number " << number << "\n" << text;
            return answeredCount;
        }
    }
    return answeredCount;
}

}  // namespace answer_law_detail

TEST(AnswerLaw, AMarkIsGradedAgainToTheBit)
{
    EXPECT_GT(answer_law_detail::replayAll(rounds(6000), false, 500), rounds(3000));
}

TEST(AnswerLaw, WhatWasFoundByHandIsGradedAgainToTheBit)
{
    EXPECT_GT(answer_law_detail::replayAll(rounds(3000), true, 900), rounds(2000));
}

TEST(AnswerLaw, ATextCutShortIsRefusedAtEveryByte)
{
    SeedStream stream(8);
    const auto answered = answeredAt(8, 3, Convention::VastusThirds, true, stream);
    ASSERT_TRUE(answered);
    const std::string text = textOf(answered->answer);
    for (std::size_t end = 0; end < text.size(); ++end) {
        const auto read = answerFrom(std::string_view(text).substr(0, end));
        ASSERT_FALSE(read) << end;
        ASSERT_EQ(read.error().problem, Problem::AnswerNotReadable);
    }
}

TEST(AnswerLaw, ADamagedTextIsRefusedOrCanBeGraded)
{
    int readable = 0;
    for (int number = 0; number < rounds(4000); ++number) {
        const Convention convention = kConventions[static_cast<std::size_t>(number) % kConventions.size()];
        SeedStream stream(700 + static_cast<std::uint64_t>(number));
        const auto answered = answeredAt(700, number, convention, number % 3 == 0, stream);
        if (!answered)
            continue;
        std::string text = textOf(answered->answer);
        for (int i = 1 + stream.below(3); i > 0; --i) {
            const auto at = static_cast<std::size_t>(stream.below(static_cast<int>(text.size())));
            // Digits for digits keep it a text of its kind more often.
            const bool isDigit = text[at] >= '0' && text[at] <= '9';
            text[at] = static_cast<char>(isDigit ? '0' + stream.below(10) : stream.below(256));
        }
        const auto read = answerFrom(text);
        if (!read) {
            ASSERT_EQ(read.error().problem, Problem::AnswerNotReadable) << text;
            continue;
        }
        ++readable;
        const auto again = regraded(*read, atlas(), answered->policy);
        if (!again) {
            ASSERT_EQ(again.error().problem, Problem::MarkOutsideBody) << text;
        }
    }
    EXPECT_GT(readable, rounds(400));
}

}  // namespace fb::test::answer_law_test
