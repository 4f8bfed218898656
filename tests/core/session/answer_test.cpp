#include "core/session/answer.h"

#include <gtest/gtest.h>

#include "tests/support/random_answer.h"

using namespace fb;

namespace answer_test {

namespace {

constexpr Convention kStrip = Convention::DeltoidStrip;

Request askedOn(Site site) { return requestFrom(21, 0, {SiteSet::only(site), false}); }

Attempt markedAt(Point off, const Policy& policy = test::defaultPolicy())
{
    Practice run(test::atlas(), policy, {{askedOn(Site::Deltoid), HelpLevel::Nothing, false}}, 0);
    EXPECT_TRUE(run.placeMark(run.target().ideal + off).value_or(false));
    EXPECT_TRUE(run.grade());
    return *run.graded();
}

Attempt flawlessByHand(const Policy& policy)
{
    SeedStream stream(4);
    const Request request = askedOn(Site::Ventrogluteal);
    Practice run(test::atlas(), policy, {{request, HelpLevel::Nothing, true}}, 0);
    const test::ScriptedLearner learner(request.patient, Convention::VentroglutealHand, request.view, policy);
    test::workByHand(run, learner.flawless(stream));
    EXPECT_TRUE(run.gradeByHand().value());
    return *run.graded();
}

}  // namespace

TEST(AnswerTest, KeepsWhatWasMarkedAndWhatCameOfIt)
{
    const Attempt attempt = markedAt({0.2, -9.0});
    const Answer answer = answerOf(3, attempt, kStrip, test::defaultPolicy());
    EXPECT_EQ(answer.item, 3);
    EXPECT_EQ(answer.convention, kStrip);
    EXPECT_FALSE(answer.timeUp);
    EXPECT_EQ(answer.mark, attempt.mark);
    EXPECT_FALSE(answer.refusal);
    EXPECT_FALSE(answer.byHand);
    EXPECT_EQ(answer.verdict, attempt.grade.verdict);
    EXPECT_EQ(answer.distanceToIdeal, attempt.grade.distanceToIdeal);
    EXPECT_EQ(answer.offDistal, attempt.grade.offDistal);
    EXPECT_EQ(answer.offAnterior, attempt.grade.offAnterior);
    EXPECT_EQ(answer.direction, Direction::Low);
    EXPECT_EQ(answer.hazard, attempt.grade.hazard);
}

TEST(AnswerTest, PointsArePartsOfOneWhateverThePolicyGives)
{
    EXPECT_EQ(answerOf(0, markedAt({}), kStrip, test::defaultPolicy()).points, 1.0);
    const Policy generous = test::defaultPolicy()
                                .with(PolicyKey::PointsOnTarget, 8.0)
                                .with(PolicyKey::PointsOffTarget, 2.0)
                                .with(PolicyKey::PointsAcceptable, 10.0);
    EXPECT_EQ(answerOf(0, markedAt({}, generous), kStrip, generous).points, 1.0);
    // More than is given for a mark on target is still one.
    Attempt attempt = markedAt({}, generous);
    attempt.grade.points = 10.0;
    EXPECT_EQ(answerOf(0, attempt, kStrip, generous).points, 1.0);
    attempt.grade.points = 2.0;
    EXPECT_EQ(answerOf(0, attempt, kStrip, generous).points, 0.25);
    EXPECT_EQ(answerOf(0, attempt, kStrip, generous.with(PolicyKey::PointsOnTarget, 0.0)).points, 0.0);
}

TEST(AnswerTest, ByHandAllPartsThatCountMakeOne)
{
    const auto pointsUnder = [](const Policy& policy) {
        return answerOf(0, flawlessByHand(policy), Convention::VentroglutealHand, policy).points;
    };
    EXPECT_DOUBLE_EQ(pointsUnder(test::defaultPolicy()), 1.0);
    EXPECT_DOUBLE_EQ(pointsUnder(test::defaultPolicy().with(PolicyKey::WeightMark, 5.0)), 1.0);
    // A construction that is only noted costs nothing and gives nothing.
    EXPECT_DOUBLE_EQ(pointsUnder(test::defaultPolicy().with(PolicyKey::BuildCounts, 0.0)), 1.0);

    Attempt attempt = flawlessByHand(test::defaultPolicy());
    const Answer answer = answerOf(1, attempt, Convention::VentroglutealHand, test::defaultPolicy());
    EXPECT_TRUE(answer.byHand);
    EXPECT_EQ(answer.flags, attempt.flags);
    EXPECT_EQ(answer.build, attempt.build);
    attempt.grade.points = 1.5;
    EXPECT_DOUBLE_EQ(answerOf(1, attempt, Convention::VentroglutealHand, test::defaultPolicy()).points, 0.5);
}

TEST(AnswerTest, ARefusalEarnsTheSameByHandAndByMark)
{
    for (const bool byHand : {false, true}) {
        Request request = askedOn(Site::Deltoid);
        request.finding = Finding{FindingCode::Rash, BodyPart::UpperArm, request.patient.side()};
        for (const FindingCode reason : {FindingCode::Rash, FindingCode::Scar}) {
            Practice run(test::atlas(), test::defaultPolicy(), {{request, HelpLevel::Nothing, byHand}}, 0);
            ASSERT_TRUE(run.refuse(reason));
            const Answer answer = answerOf(0, *run.graded(), kStrip, test::defaultPolicy());
            const double full = test::defaultPolicy().value(PolicyKey::PointsOnTarget);
            const double given = test::defaultPolicy().value(reason == FindingCode::Rash
                                                                 ? PolicyKey::PointsRefusedRight
                                                                 : PolicyKey::PointsRefusedWrongReason);
            EXPECT_EQ(answer.points, given / full);
            EXPECT_FALSE(answer.mark);
            EXPECT_EQ(answer.refusal, reason);
        }
    }
}

TEST(AnswerTest, TimeUpIsNoMarkAndNoPoint)
{
    const Answer answer = unanswered(2, askedOn(Site::Deltoid), kStrip);
    EXPECT_EQ(answer.item, 2);
    EXPECT_TRUE(answer.timeUp);
    EXPECT_FALSE(answer.mark);
    EXPECT_EQ(answer.verdict, Verdict::OffTarget);
    EXPECT_EQ(answer.points, 0.0);
    const auto again = regraded(answer, test::atlas(), test::defaultPolicy());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->grade.verdict, Verdict::OffTarget);
    EXPECT_EQ(again->grade.points, 0.0);
    const auto read = answerFrom(textOf(answer));
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->timeUp);
    EXPECT_EQ(textOf(*read), textOf(answer));
}

TEST(AnswerTest, ThePatientIsKeptToTheLastDigit)
{
    Request request = askedOn(Site::Deltoid);
    request.number = 4;
    request.finding = Finding{FindingCode::Fistula, BodyPart::WholeSide, Side::Left};
    request.patient = Patient::make(18.0 + 1.0 / 3.0, Sex::Male, Cm{161.7}, Kg{64.1 / 1.1}, Side::Left,
                                    {0.1, -0.2, 1.0 / 3.0, -3.0, 2.5, 1e-9})
                          .value();
    const auto read = answerFrom(textOf(unanswered(4, request, kStrip)));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->request.patient, request.patient);
    EXPECT_EQ(read->request.finding, request.finding);
    EXPECT_EQ(read->request.number, 4);
    EXPECT_EQ(read->request.skinTone, request.skinTone);
    EXPECT_EQ(read->request.view, request.view);
}

TEST(AnswerTest, IsOneLineOfTheSameBytes)
{
    Answer answer = unanswered(1, requestFrom(7, 0), kStrip);
    const std::string text = textOf(answer);
    EXPECT_EQ(text.find('\n'), std::string::npos);
    EXPECT_TRUE(text.starts_with(R"({"item":1,"request":{"number":0,"site":"deltoid","view":"shoulder-side",)"
                                 R"("patient":{"age":)"))
        << text;
    EXPECT_TRUE(text.ends_with(R"("convention":"deltoid.strip","time_up":true,"verdict":"off_target",)"
                               R"("points":0.0,"distance":0.0,"distal":0.0,"anterior":0.0,)"
                               R"("direction":"none"})"))
        << text;
}

TEST(AnswerTest, AMarkBesideTheBodyIsNotGradedAgain)
{
    Answer answer = answerOf(0, markedAt({}), kStrip, test::defaultPolicy());
    answer.mark = Point{900.0, 900.0};
    const auto again = regraded(answer, test::atlas(), test::defaultPolicy());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().problem, Problem::MarkOutsideBody);
}

TEST(AnswerTest, AnotherSitesConventionIsTheFaultOfLocate)
{
    Answer answer = answerOf(0, markedAt({}), Convention::VastusThirds, test::defaultPolicy());
    EXPECT_EQ(regraded(answer, test::atlas(), test::defaultPolicy()).error().problem,
              Problem::ConventionOfAnotherSite);
}

}  // namespace answer_test
