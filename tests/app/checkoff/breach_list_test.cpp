#include "app/checkoff/breach_list.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace breach_list_test {

namespace {

using namespace fb;
using namespace fb::test;

QStringList linesOf(const BreachList& list)
{
    QStringList lines;
    for (const QLabel* line : list.findChildren<QLabel*>("breach"))
        lines << line->text();
    return lines;
}

TEST(BreachListTest, EveryBreachIsASentenceAndAnUnsafeOneSaysSo)
{
    CheckOffState state = manikinState();
    observe(state, ProcedureStep::Document, Seen::Done, 10.0);
    observe(state, ProcedureStep::Inject, Seen::Done, 20.0);
    const auto breaches = breachesSoFar(state);
    const auto hard = std::ranges::find(breaches, Severity::Hard, &Breach::severity);
    ASSERT_NE(hard, breaches.end());
    BreachList list;
    list.setScheme(dressed());
    list.showBreaches(breaches);
    const QStringList lines = linesOf(list);
    ASSERT_EQ(lines.size(), static_cast<qsizetype>(breaches.size()));
    for (std::size_t i = 0; i < breaches.size(); ++i) {
        EXPECT_TRUE(lines[static_cast<qsizetype>(i)].endsWith(breachSentence(breaches[i])));
        EXPECT_EQ(lines[static_cast<qsizetype>(i)].startsWith(QLatin1String("Unsafe")),
                  breaches[i].severity == Severity::Hard);
    }
    EXPECT_TRUE(list.findChild<QLabel*>("noBreach")->isHidden());
    list.showBreaches({});
    EXPECT_TRUE(linesOf(list).isEmpty());
    EXPECT_FALSE(list.findChild<QLabel*>("noBreach")->isHidden());
    const QString soFar = list.findChild<QLabel*>("noBreach")->text();
    list.showBreaches({}, true);
    EXPECT_NE(list.findChild<QLabel*>("noBreach")->text(), soFar) << "nothing more is to come";
}

// The needle is out and not yet in the box: that is no breach while it may still go there.
TEST(BreachListTest, WhatMayYetComeIsNoBreachBeforeItWasSaidNotToHaveBeenDone)
{
    constexpr double kCalm = 30.0;  // s from step to step: everything has time to dry
    CheckOffState state = manikinState();
    for (const SheetStep& step : state.open->sheet.sheet.steps) {
        if (step.step == ProcedureStep::Sharps)
            break;
        observe(state, step.step, Seen::Done, kCalm * static_cast<int>(step.step));
    }
    const auto all = state.result.procedure.breaches;
    ASSERT_TRUE(
        std::ranges::any_of(all, [](const Breach& breach) { return breach.kind == ConstraintKind::After; }));
    EXPECT_TRUE(breachesSoFar(state).empty());
    observe(state, ProcedureStep::Sharps, Seen::NotDone, 1000.0);
    EXPECT_FALSE(breachesSoFar(state).empty());
}

}  // namespace

}  // namespace breach_list_test
