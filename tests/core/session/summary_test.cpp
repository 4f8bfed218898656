#include "core/session/summary.h"

#include <gtest/gtest.h>

using namespace fb;

namespace summary_test {

namespace {

Attempt attempt(Verdict verdict, Point off, std::optional<bool> side = std::nullopt)
{
    Attempt a{requestFrom(1, 0), side, {}, {}, off};
    a.grade.verdict = verdict;
    a.grade.distanceToIdeal = Cm{length(off)};
    a.grade.points = verdict == Verdict::OnTarget ? 1.0 : 0.0;
    return a;
}

}  // namespace

TEST(SummaryTest, NothingDoneIsNothingSaid)
{
    const Summary s = summed({});
    EXPECT_EQ(s.attempts, 0);
    EXPECT_EQ(s.leanWay, Direction::None);
    EXPECT_EQ(s.hitRate.high, 1.0);
}

TEST(SummaryTest, CountsVerdictsAndSides)
{
    const std::vector<Attempt> run{attempt(Verdict::OnTarget, {0.2, 0.1}, true),
                                   attempt(Verdict::Acceptable, {0.1, 1.4}, false),
                                   attempt(Verdict::OffTarget, {3, 0}), attempt(Verdict::Unsafe, {0, -4})};
    const Summary s = summed(run);
    EXPECT_EQ(s.attempts, 4);
    EXPECT_EQ(s.hits, 1);
    EXPECT_EQ(s.acceptable, 1);
    EXPECT_EQ(s.offTarget, 1);
    EXPECT_EQ(s.unsafe, 1);
    EXPECT_EQ(s.sidesAsked, 2);
    EXPECT_EQ(s.sidesRight, 1);
    EXPECT_EQ(s.points, 1.0);
    EXPECT_EQ(s.marks.size(), 4U);
    EXPECT_NEAR(s.meanDistance.value(), (length({0.2, 0.1}) + length({0.1, 1.4}) + 3 + 4) / 4, 1e-12);
    EXPECT_LT(s.hitRate.low, 0.25);
    EXPECT_GT(s.hitRate.high, 0.25);
}

TEST(SummaryTest, ALeanIsToldOnlyWhenItIsClear)
{
    const auto lean = [](std::vector<Point> offs) {
        std::vector<Attempt> run;
        for (const Point off : offs)
            run.push_back(attempt(Verdict::OffTarget, off));
        return summed(run).leanWay;
    };
    EXPECT_EQ(lean({{0, -1}, {0.1, -1.2}, {-0.1, -0.9}}), Direction::High);
    EXPECT_EQ(lean({{0, 1}, {0.1, 1.2}, {-0.1, 0.9}}), Direction::Low);
    EXPECT_EQ(lean({{1, 0}, {1.2, 0.1}, {0.9, 0}}), Direction::Forward);
    EXPECT_EQ(lean({{-1, 0}, {-1.2, 0.1}, {-0.9, 0}}), Direction::Back);
    EXPECT_EQ(lean({{0.1, 0.1}, {-0.1, 0}, {0, -0.1}}), Direction::None);
    EXPECT_EQ(lean({{0, -3}, {0, 3}, {0, -2.9}, {0, 3.2}}), Direction::None);
    EXPECT_EQ(lean({{0, -3}}), Direction::None);
}

TEST(SummaryTest, RefusalsAreCountedApartFromMarks)
{
    Attempt refused = attempt(Verdict::OnTarget, {});
    refused.request.finding =
        Finding{FindingCode::Paralysis, BodyPart::WholeSide, refused.request.patient.side()};
    refused.refusal = Refusal{FindingCode::Paralysis, RefusalOutcome::RightReason};
    Attempt other = refused;
    other.refusal->outcome = RefusalOutcome::WrongReason;
    Attempt needless = attempt(Verdict::OffTarget, {});
    needless.refusal = Refusal{FindingCode::Rash, RefusalOutcome::NothingRulesOut};
    Attempt missed = attempt(Verdict::Unsafe, {0.1, 0.0});
    missed.request.finding = refused.request.finding;
    missed.missedFinding = true;
    const std::vector<Attempt> run{refused, other, needless, missed, attempt(Verdict::OnTarget, {0.3, 0.4})};
    const Summary s = summed(run);
    EXPECT_EQ(s.attempts, 5);
    EXPECT_EQ(s.marked, 2);
    EXPECT_EQ(s.ruledOut, 3);
    EXPECT_EQ(s.refusedRight, 1);
    EXPECT_EQ(s.refusedOther, 1);
    EXPECT_EQ(s.refusedNeedless, 1);
    EXPECT_EQ(s.hits, 1);
    EXPECT_EQ(s.unsafe, 1);
    EXPECT_EQ(s.marks.size(), 2U);
    EXPECT_NEAR(s.meanDistance.value(), (0.1 + 0.5) / 2, 1e-12);
}

TEST(SummaryTest, ASiteCanBeSummedAlone)
{
    std::vector<Attempt> run{attempt(Verdict::OnTarget, {}), attempt(Verdict::Unsafe, {})};
    run.back().request.site = Site::Ventrogluteal;
    EXPECT_EQ(summed(run, Site::Ventrogluteal).unsafe, 1);
    EXPECT_EQ(summed(run, Site::Ventrogluteal).attempts, 1);
    EXPECT_EQ(summed(run, Site::VastusLateralis).attempts, 0);
}

}  // namespace summary_test
