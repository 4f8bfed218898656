#include "app/checkoff/outcome_panel.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/checkoff/score_bar.h"
#include "app/records/records_look.h"
#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace outcome_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

CheckOffState closed(Outcome outcome, double percent)
{
    CheckOffState state = manikinState();
    state.stage = CheckOffStage::Closing;
    state.result.decision = {outcome, {}, percent};
    return state;
}

QString textIn(const OutcomePanel& panel, const char* name)
{
    return panel.findChild<QLabel*>(QLatin1String(name))->text();
}

TEST(OutcomePanelTest, BearsTheSignThatTheRecordsGiveTheOutcome)
{
    OutcomePanel panel;
    const Scheme scheme = dressed();
    panel.setScheme(scheme);
    for (int i = 0; i < kOutcomeCount; ++i) {
        const auto outcome = static_cast<Outcome>(i);
        panel.showState(closed(outcome, 50.0));
        const QPixmap shown = panel.findChild<QLabel*>("outcomeIcon")->pixmap();
        EXPECT_EQ(
            shown.toImage(),
            pixmapFor(iconOfOutcome(outcome), colourOfOutcome(outcome, scheme), shown.width()).toImage())
            << i;
    }
}

TEST(OutcomePanelTest, SaysTheOutcomeTheScoreAndTheCut)
{
    OutcomePanel panel;
    panel.setScheme(dressed());
    panel.showState(closed(Outcome::Pass, 92.5));
    EXPECT_EQ(textIn(panel, "outcome"), QStringLiteral("Passed"));
    EXPECT_EQ(textIn(panel, "score"), QStringLiteral("Score 92.5 %, needed 80 %"));
    EXPECT_TRUE(panel.findChild<QLabel*>("reasons")->isHidden());
    EXPECT_FALSE(panel.findChild<QLabel*>("outcomeIcon")->pixmap().isNull());
}

TEST(OutcomePanelTest, AScoreUnderTheCutIsNeverRoundedUpToIt)
{
    OutcomePanel panel;
    panel.showState(closed(Outcome::FailScore, 79.96));
    EXPECT_EQ(textIn(panel, "score"), QStringLiteral("Score 79.9 %, needed 80 %"));
    panel.showState(closed(Outcome::Pass, 80.0));
    EXPECT_EQ(textIn(panel, "score"), QStringLiteral("Score 80 %, needed 80 %"));
}

TEST(OutcomePanelTest, EveryReasonStandsInALineOfItsOwn)
{
    CheckOffState state = closed(Outcome::FailCritical, 41.0);
    state.result.decision.alsoTrue = {Outcome::FailTime, Outcome::FailScore};
    state.result.procedure.missedCritical = {ProcedureStep::Identify, ProcedureStep::Sharps};
    state.result.onManikinKept = false;
    OutcomePanel panel;
    panel.showState(state);
    const QString reasons = textIn(panel, "reasons");
    const CheckOffSetup setup{state.open->sheet.sheet, 1, 0};
    ASSERT_GE(reasonsOf(state.result, setup, {}).size(), 4);
    for (const QString& reason : reasonsOf(state.result, setup, {}))
        EXPECT_TRUE(reasons.contains(reason)) << reason.toStdString();
    EXPECT_EQ(reasons.count(QLatin1Char('\n')) + 1, reasonsOf(state.result, setup, {}).size());
}

TEST(OutcomePanelTest, AVoidAndANoShowHaveNoScore)
{
    OutcomePanel panel;
    CheckOffState state = closed(Outcome::VoidTechnical, 0.0);
    state.endNote = QStringLiteral("power cut");
    panel.showState(state);
    EXPECT_TRUE(panel.findChild<QLabel*>("score")->isHidden());
    EXPECT_TRUE(panel.findChild<ScoreBar*>("scoreBar")->isHidden());
    EXPECT_TRUE(textIn(panel, "reasons").contains(QLatin1String("power cut")));
}

}  // namespace

}  // namespace outcome_panel_test
