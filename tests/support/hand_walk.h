// Through a request that is found by hand, with a look at every state a learner sees.
#pragma once

#include <QCoreApplication>
#include <QTest>

#include "tests/support/hand_learner.h"
#include "tests/support/open_window.h"

namespace fb::test {

// The window has a run by hand open, without a question for the side. look: called with a name.
template <class Look>
void throughHandStates(OpenWindow& open, const Look& look)
{
    HandLearner learner(open.practice());
    look("nothing felt");
    learner.hand().plant(QStringLiteral("nothing felt yet"));
    look("nothing to plant on");
    learner.press(askedLandmarks(open.state().convention).front());
    look("felt");
    learner.hand().plant(QStringLiteral("zygomatic arch"));
    look("no such name");
    learner.plant();
    look("flags");
    learner.hand().watch();
    look("first shown step");
    learner.hand().showStep(1000);
    look("last shown step");
    learner.hand().endWatching();
    learner.hand().goTo(ByHandStage::Marking);
    look("nothing built");
    learner.hand().goTo(ByHandStage::Building);
    look("building begins");
    learner.build(2);
    look("half built");
    learner.build();
    look("built");
    learner.hand().goTo(ByHandStage::Marking);
    look("to be marked");
    open.practice().grade();
    look("no mark");
    learner.set(handlesOf(open.state().byHand->kind).back(), {0.0, 0.0});
    learner.grade();
    look("graded");
    open.practice().next();
    learner.plant(1);
    learner.build();
    learner.set(handlesOf(open.state().byHand->kind).front(), {2.5, 2.5});
    learner.grade();
    look("graded with slips");
    open.practice().next();
    look("summary");
}

}  // namespace fb::test
