// Why a check-off was not passed, and what to practise: the longer texts of check_off_words.h.
#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>

#include "app/words/check_off_words.h"
#include "app/words/site_words.h"

namespace fb::test::check_off_words_outcome_test {

namespace check_off_outcome_test {

CheckOffSetup setupOfThree()
{
    CheckOffSetup setup;
    setup.sheet.title = "Sample";
    setup.sheet.cutPercent = 80.0;
    setup.sheet.items = {{Site::Deltoid, Side::Left, View::ShoulderSide, HelpLevel::Nothing},
                         {Site::VastusLateralis, Side::Right, View::ThighFront, HelpLevel::NamedOnly},
                         {Site::Ventrogluteal, std::nullopt, View::HipSide, HelpLevel::Nothing}};
    return setup;
}

Answer answered(Site site, Verdict verdict, Direction direction, double anterior, double distal)
{
    Answer answer{0,
                  {0, site, askedViews(site).front(),
                   Patient::make(30.0, Sex::Female, Cm{165.0}, Kg{65.0}, Side::Left).value()},
                  conventionsOf(site).front()};
    answer.mark = Point{1.0, 2.0};
    answer.verdict = verdict;
    answer.direction = direction;
    answer.offAnterior = Cm{anterior};
    answer.offDistal = Cm{distal};
    answer.distanceToIdeal = Cm{std::hypot(anterior, distal)};
    return answer;
}

Answer refusedFor(FindingCode reason, Verdict verdict)
{
    Answer answer = answered(Site::Deltoid, verdict, Direction::None, 0.0, 0.0);
    answer.mark.reset();
    answer.refusal = reason;
    return answer;
}

bool anyContains(const QStringList& lines, const char* words)
{
    return std::ranges::any_of(lines,
                               [&](const QString& line) { return line.contains(QString::fromUtf8(words)); });
}

Breach broken(ConstraintKind kind, Severity severity, ProcedureStep first, ProcedureStep then,
              double seconds = 0.0, double was = 0.0)
{
    return {1, kind, severity, first, then, seconds, was};
}

}  // namespace check_off_outcome_test

using namespace check_off_outcome_test;

TEST(CheckOffWordsTest, APassHasNoReasonAgainstIt)
{
    CheckOffResult result;
    result.decision.outcome = Outcome::Pass;
    result.procedure.breaches = {
        broken(ConstraintKind::Before, Severity::Soft, ProcedureStep::GlovesOn, ProcedureStep::Insert)};
    EXPECT_TRUE(reasonsOf(result, setupOfThree(), {}).isEmpty());
}

TEST(CheckOffWordsTest, EveryReasonIsToldTheDecidingOneFirst)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    CheckOffResult result;
    result.decision.outcome = Outcome::FailCritical;
    result.decision.alsoTrue = {Outcome::FailTime, Outcome::FailScore};
    result.decision.percent = 61.24;
    result.procedure.missedCritical = {ProcedureStep::Allergies, ProcedureStep::Sharps};
    result.procedure.breaches = {
        broken(ConstraintKind::Before, Severity::Hard, ProcedureStep::Identify, ProcedureStep::Insert),
        broken(ConstraintKind::Before, Severity::Soft, ProcedureStep::GlovesOn, ProcedureStep::Insert)};
    result.unsafeItems = {2};
    result.onScreenKept = false;
    result.onManikinKept = false;
    const QStringList reasons = reasonsOf(result, setupOfThree(), {});
    ASSERT_EQ(reasons.size(), 7) << reasons.join(QLatin1Char('\n')).toStdString();
    EXPECT_TRUE(reasons[0].contains(stepName(ProcedureStep::Allergies)));
    EXPECT_TRUE(reasons[1].contains(stepName(ProcedureStep::Sharps)));
    EXPECT_TRUE(reasons[2].contains(QStringLiteral("wrong patient")));
    const CheckOffSetup setup = setupOfThree();
    ASSERT_FALSE(setup.sheet.items[2].side) << "the sheet leaves it open, the patient has one";
    const Side drawn = requestsOf(setup.sheet, setup.seed)[2].request.patient.side();
    EXPECT_EQ(reasons[3], QStringLiteral("The mark of item 3 is unsafe (Ventrogluteal, %1, from the side; "
                                         "nothing drawn).")
                              .arg(sideName(drawn)));
    EXPECT_EQ(reasons[4], QStringLiteral("The time on screen was used up."));
    EXPECT_EQ(reasons[5], QStringLiteral("The time on the manikin was used up."));
    EXPECT_EQ(reasons[6], QStringLiteral("The score of 61.2 % does not reach the cut of 80 %."));
}

TEST(CheckOffWordsTest, AnEndOfTheAssessorsIsToldWithItsReason)
{
    for (const Outcome outcome : {Outcome::VoidTechnical, Outcome::NoShow, Outcome::StoppedSafety}) {
        CheckOffResult result;
        result.decision.outcome = outcome;
        const QStringList with = reasonsOf(result, setupOfThree(), QStringLiteral("power cut %1"));
        const QStringList without = reasonsOf(result, setupOfThree(), {});
        ASSERT_EQ(with.size(), 1);
        ASSERT_EQ(without.size(), 1);
        EXPECT_TRUE(with[0].endsWith(QStringLiteral("power cut %1"))) << with[0].toStdString();
        EXPECT_TRUE(without[0].endsWith(QLatin1Char('.'))) << without[0].toStdString();
    }
}

TEST(CheckOffWordsTest, AnAnswerIsToldByDistanceAndDirection)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto said = [](double anterior, double distal) {
        return answerFinding(answered(Site::Deltoid, Verdict::OffTarget, Direction::Low, anterior, distal));
    };
    EXPECT_EQ(said(1.2, 1.6), QStringLiteral("2.0 cm, too far forward and too low"));
    EXPECT_EQ(said(1.2, -1.6), QStringLiteral("2.0 cm, too far forward and too high"));
    EXPECT_EQ(said(-1.2, 1.6), QStringLiteral("2.0 cm, too far back and too low"));
    EXPECT_EQ(said(-1.2, -1.6), QStringLiteral("2.0 cm, too far back and too high"));
    EXPECT_EQ(said(0.04, 1.8), QStringLiteral("1.8 cm, too low"));
    EXPECT_EQ(said(0.0, -1.8), QStringLiteral("1.8 cm, too high"));
    EXPECT_EQ(said(1.8, 0.0), QStringLiteral("1.8 cm, too far forward"));
    EXPECT_EQ(said(-1.8, -0.04), QStringLiteral("1.8 cm, too far back"));
    EXPECT_EQ(said(0.03, -0.03), QStringLiteral("on the ideal point"));
}

TEST(CheckOffWordsTest, InsideTheRegionNothingIsTooFar)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto said = [](double anterior, double distal) {
        return answerFinding(answered(Site::Deltoid, Verdict::OnTarget, Direction::None, anterior, distal));
    };
    EXPECT_EQ(said(1.2, 1.6), QStringLiteral("2.0 cm, forward and down"));
    EXPECT_EQ(said(1.2, -1.6), QStringLiteral("2.0 cm, forward and up"));
    EXPECT_EQ(said(-1.2, 1.6), QStringLiteral("2.0 cm, back and down"));
    EXPECT_EQ(said(-1.2, -1.6), QStringLiteral("2.0 cm, back and up"));
    EXPECT_EQ(said(0.04, 1.8), QStringLiteral("1.8 cm, down"));
    EXPECT_EQ(said(0.0, -1.8), QStringLiteral("1.8 cm, up"));
    EXPECT_EQ(said(1.8, 0.0), QStringLiteral("1.8 cm, forward"));
    EXPECT_EQ(said(-1.8, -0.04), QStringLiteral("1.8 cm, back"));
    EXPECT_EQ(said(0.03, -0.03), QStringLiteral("on the ideal point"));
}

TEST(CheckOffWordsTest, ARefusalAndATimeUpAreToldForWhatTheyWere)
{
    EXPECT_EQ(answerFinding(refusedFor(FindingCode::Rash, Verdict::OnTarget)),
              QStringLiteral("not here, because of: Rash"));
    Answer late = refusedFor(FindingCode::Rash, Verdict::OffTarget);
    late.refusal.reset();
    late.timeUp = true;
    EXPECT_EQ(answerFinding(late), QStringLiteral("no answer in time"));
}

TEST(CheckOffWordsTest, EachWayToMissASiteHasItsOwnAdvice)
{
    QSet<QString> advice;
    for (const Site site : kSites) {
        for (int way = 1; way < kDirectionCount; ++way) {
            const QStringList lines = practiceOf(
                {}, {answered(site, Verdict::OffTarget, static_cast<Direction>(way), 1.0, 1.0)}, {});
            ASSERT_EQ(lines.size(), 1);
            EXPECT_FALSE(lines[0].isEmpty());
            advice += lines[0];
        }
    }
    EXPECT_EQ(advice.size(), static_cast<int>(kSites.size()) * (kDirectionCount - 1));
}

TEST(CheckOffWordsTest, NothingOffMeansNothingToPractise)
{
    EXPECT_TRUE(practiceOf({},
                           {answered(Site::Deltoid, Verdict::OnTarget, Direction::None, 0.1, 0.1),
                            answered(Site::Deltoid, Verdict::Acceptable, Direction::Low, 0.1, 1.1),
                            refusedFor(FindingCode::Rash, Verdict::OnTarget)},
                           {})
                    .isEmpty());
}

TEST(CheckOffWordsTest, TheSameAdviceIsGivenOnce)
{
    const Answer low = answered(Site::Deltoid, Verdict::Unsafe, Direction::Low, 0.0, 3.0);
    EXPECT_EQ(practiceOf({}, {low, low, low}, {}).size(), 1);
}

TEST(CheckOffWordsTest, AMarkAgainstTheChartIsToldAsAMatterOfTheChart)
{
    Answer against = answered(Site::Deltoid, Verdict::Unsafe, Direction::Low, 0.0, 3.0);
    against.request.finding = Finding{FindingCode::Rash, BodyPart::UpperArm, Side::Left};
    const QStringList lines = practiceOf({}, {against}, {});
    ASSERT_EQ(lines.size(), 1);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("The chart: read it"))) << lines[0].toStdString();
    const QStringList refused = practiceOf({}, {refusedFor(FindingCode::Scar, Verdict::OffTarget)}, {});
    ASSERT_EQ(refused.size(), 1);
    EXPECT_NE(refused[0], lines[0]);
}

TEST(CheckOffWordsTest, StepsOrdersAndWaitingAreToBePractised)
{
    CheckOffResult result;
    result.procedure.missedCritical = {ProcedureStep::Allergies};
    result.procedure.breaches = {
        broken(ConstraintKind::Before, Severity::Hard, ProcedureStep::Allergies, ProcedureStep::Insert),
        broken(ConstraintKind::Never, Severity::Hard, ProcedureStep::Insert, ProcedureStep::Recap),
        broken(ConstraintKind::After, Severity::Hard, ProcedureStep::Withdraw, ProcedureStep::Sharps),
        broken(ConstraintKind::Before, Severity::Soft, ProcedureStep::Expose, ProcedureStep::Landmarks),
        broken(ConstraintKind::AtLeast, Severity::Soft, ProcedureStep::Inject, ProcedureStep::Withdraw, 10.0,
               4.0),
        broken(ConstraintKind::AtLeast, Severity::Soft, ProcedureStep::CleanSkin, ProcedureStep::Insert, 10.0,
               4.0)};
    Answer late = refusedFor(FindingCode::Rash, Verdict::OffTarget);
    late.refusal.reset();
    late.timeUp = true;
    std::vector<Observation> seen{{ProcedureStep::Allergies, Seen::Prompted, 3.0, {}}};
    for (const ProcedureStep step :
         {ProcedureStep::Insert, ProcedureStep::Withdraw, ProcedureStep::Sharps, ProcedureStep::Expose,
          ProcedureStep::Landmarks, ProcedureStep::Inject, ProcedureStep::CleanSkin})
        seen.push_back({step, Seen::Done, 9.0, {}});
    const QStringList lines = practiceOf(result, {late}, seen);
    ASSERT_EQ(lines.size(), 8) << lines.join(QLatin1Char('\n')).toStdString();
    EXPECT_EQ(QSet<QString>(lines.begin(), lines.end()).size(), 8);
    EXPECT_TRUE(anyContains(lines, "Without a hint: “Asks about allergies"));
    EXPECT_TRUE(anyContains(lines, "first “Asks about allergies")) << "it came too late as well";
    EXPECT_TRUE(anyContains(lines, "first “Positions the patient"));
    EXPECT_TRUE(anyContains(lines, "after “Withdraws"));
    EXPECT_TRUE(anyContains(lines, "leave the cap off"));
    EXPECT_TRUE(anyContains(lines, "count 10 second"));
    EXPECT_TRUE(anyContains(lines, "1 item"));
}

TEST(CheckOffWordsTest, AStepLeftOutIsToBePractisedAsThatAndNotAsAnOrder)
{
    CheckOffResult result;
    result.procedure.missedCritical = {ProcedureStep::Identify, ProcedureStep::Sharps};
    result.procedure.breaches = {
        broken(ConstraintKind::Before, Severity::Hard, ProcedureStep::Identify, ProcedureStep::Insert),
        broken(ConstraintKind::After, Severity::Hard, ProcedureStep::Withdraw, ProcedureStep::Sharps),
        broken(ConstraintKind::Before, Severity::Soft, ProcedureStep::GlovesOn, ProcedureStep::Insert)};
    const QStringList lines = practiceOf(result, {},
                                         {{ProcedureStep::Identify, Seen::NotDone, 0.0, {}},
                                          {ProcedureStep::GlovesOn, Seen::NotDone, 0.0, {}},
                                          {ProcedureStep::Explain, Seen::NotDone, 0.0, {}},
                                          {ProcedureStep::Evaluate, Seen::Prompted, 80.0, {}},
                                          {ProcedureStep::Insert, Seen::Done, 50.0, {}},
                                          {ProcedureStep::Withdraw, Seen::Done, 60.0, {}}});
    ASSERT_EQ(lines.size(), 3) << lines.join(QLatin1Char('\n')).toStdString();
    EXPECT_EQ(lines[0], QStringLiteral("Never to be left out: “%1”.").arg(stepName(ProcedureStep::Identify)));
    EXPECT_EQ(lines[1], QStringLiteral("Steps left out: “%1” and “%2”.")
                            .arg(stepName(ProcedureStep::Explain), stepName(ProcedureStep::GlovesOn)));
    EXPECT_EQ(lines[2],
              QStringLiteral("Steps that took a hint: “%1”.").arg(stepName(ProcedureStep::Evaluate)));
    EXPECT_FALSE(anyContains(lines, "Order")) << "an omission is no order";
    EXPECT_FALSE(anyContains(lines, "sharps")) << "nobody said a word of it: it was not reached";
}

TEST(CheckOffWordsTest, ALongListOfStepsLeftOutIsToldByItsNumber)
{
    std::vector<Observation> seen;
    for (int index = 0; index < 12; ++index)
        seen.push_back({procedureStepAt(index), Seen::NotDone, 0.0, {}});
    const QStringList lines = practiceOf({}, {}, seen);
    ASSERT_EQ(lines.size(), 1);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("12 step"))) << lines[0].toStdString();
}

TEST(CheckOffWordsTest, AStopForSafetyAccusesNobodyOfStepsThatWereNotReached)
{
    CheckOffResult result;
    result.decision.outcome = Outcome::StoppedSafety;
    result.decision.alsoTrue = {Outcome::FailCritical, Outcome::FailScore};
    result.procedure.missedCritical = {ProcedureStep::Sharps};
    result.procedure.breaches = {
        broken(ConstraintKind::Before, Severity::Hard, ProcedureStep::Inject, ProcedureStep::Document)};
    const QStringList reasons = reasonsOf(result, setupOfThree(), QStringLiteral("needle near a bystander"));
    ASSERT_EQ(reasons.size(), 2) << reasons.join(QLatin1Char('\n')).toStdString();
    EXPECT_TRUE(reasons[0].endsWith(QStringLiteral("needle near a bystander")));
    EXPECT_TRUE(reasons[1].startsWith(QStringLiteral("Documented before giving")));
}

}  // namespace fb::test::check_off_words_outcome_test
