#include "core/session/attempt.h"

#include <gtest/gtest.h>

#include "core/session/practice.h"
#include "tests/property/sampling.h"

using namespace fb;

namespace attempt_test {

namespace {

Request askedAt(Convention convention, std::optional<Finding> finding = {})
{
    Request request = requestFrom(9, 4, {SiteSet::only(siteOf(convention)), false});
    request.finding = finding;
    return request;
}

Target targetFor(const Request& request, Convention convention)
{
    return test::targetIn(request.patient, {convention, request.view});
}

}  // namespace

TEST(AttemptTest, AMarkIsGradedAndItsOffsetScaled)
{
    const Request request = askedAt(Convention::DeltoidStrip);
    const Target target = targetFor(request, Convention::DeltoidStrip);
    const Point mark = target.ideal + Point{0.3, -0.6};
    const Attempt attempt = markedAttempt(target, test::defaultPolicy(), request, mark, MarkedLimb::Arm);
    const Grade grade = gradeMark(target, test::defaultPolicy(), mark, MarkedLimb::Arm);
    EXPECT_EQ(attempt.mark, mark);
    EXPECT_EQ(attempt.grade.verdict, grade.verdict);
    EXPECT_EQ(attempt.grade.points, grade.points);
    EXPECT_DOUBLE_EQ(attempt.offIdeal.y * target.scale, grade.offDistal.value());
    EXPECT_DOUBLE_EQ(attempt.offIdeal.x * target.scale, grade.offAnterior.value());
    EXPECT_FALSE(attempt.missedFinding);
    EXPECT_FALSE(attempt.refusal);
    EXPECT_FALSE(attempt.sideRight);
}

TEST(AttemptTest, AMarkAgainstTheChartIsUnsafeWhereverItLies)
{
    Request request = askedAt(Convention::DeltoidStrip);
    request.finding = Finding{FindingCode::Scar, BodyPart::UpperArm, request.patient.side()};
    const Target target = targetFor(request, Convention::DeltoidStrip);
    const Attempt attempt =
        markedAttempt(target, test::defaultPolicy(), request, target.ideal, MarkedLimb::Arm);
    EXPECT_TRUE(attempt.missedFinding);
    EXPECT_EQ(attempt.grade.verdict, Verdict::Unsafe);
    EXPECT_EQ(attempt.grade.points, 0.0);
    // The other arm's scar rules nothing out.
    request.finding->side = opposite(request.patient.side());
    EXPECT_FALSE(
        markedAttempt(target, test::defaultPolicy(), request, target.ideal, MarkedLimb::Arm).missedFinding);
}

TEST(AttemptTest, WhatTheHandDidGivesThePoints)
{
    const Request request = askedAt(Convention::VentroglutealHand);
    const Target target = targetFor(request, Convention::VentroglutealHand);
    const Build build = flawlessBuild(target, Builder::from(test::defaultPolicy()));
    std::vector<Flag> flags;
    for (const Landmark name : askedLandmarks(target.convention)) {
        const auto points = placeOf(target, name)->points;
        flags.push_back({name, points[points.size() / 2]});
    }
    const Attempt marked =
        markedAttempt(target, test::defaultPolicy(), request, target.ideal, MarkedLimb::Pelvis);
    const Attempt attempt = foundByHand(marked, target, test::defaultPolicy(), flags, build);
    EXPECT_EQ(attempt.flags, flags);
    EXPECT_EQ(attempt.build, build);
    ASSERT_TRUE(attempt.byHand);
    EXPECT_DOUBLE_EQ(attempt.grade.points, 3.0);
    // Against the chart the finest work earns nothing.
    Attempt against = marked;
    against.missedFinding = true;
    against.grade.points = 0.0;
    EXPECT_EQ(foundByHand(against, target, test::defaultPolicy(), flags, build).grade.points, 0.0);
}

TEST(AttemptTest, ARefusalIsHeldAgainstTheChart)
{
    Request request = askedAt(Convention::VastusThirds);
    const auto refusedFor = [&](FindingCode reason, double weight) {
        return refusedAttempt(test::defaultPolicy(), request, reason, weight);
    };
    EXPECT_EQ(refusedFor(FindingCode::Rash, 1.0).grade.verdict, Verdict::OffTarget);
    EXPECT_EQ(refusedFor(FindingCode::Rash, 1.0).grade.points, 0.0);
    request.finding = Finding{FindingCode::Rash, BodyPart::Thigh, request.patient.side()};
    const Attempt right = refusedFor(FindingCode::Rash, 3.0);
    EXPECT_EQ(right.grade.verdict, Verdict::OnTarget);
    EXPECT_EQ(right.refusal->outcome, RefusalOutcome::RightReason);
    EXPECT_EQ(right.grade.points, 3.0 * test::defaultPolicy().value(PolicyKey::PointsRefusedRight));
    const Attempt other = refusedFor(FindingCode::Scar, 2.0);
    EXPECT_EQ(other.grade.verdict, Verdict::Acceptable);
    EXPECT_EQ(other.refusal->reason, FindingCode::Scar);
    EXPECT_EQ(other.grade.points, 2.0 * test::defaultPolicy().value(PolicyKey::PointsRefusedWrongReason));
}

}  // namespace attempt_test
