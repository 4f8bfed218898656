// Ways through the window that several tests take.
#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QPushButton>

#include "tests/support/open_window.h"

namespace fb::test {

// Walks the window through every state a learner sees, with a look at each.
template <class Look>
void throughEveryState(OpenWindow& open, const Look& look)
{
    const auto side = open.state().request->patient.side();
    if (open.state().phase == Phase::PickingSide) {
        look("side question");
        open.practice().pickSide(side == Side::Left ? Side::Right : Side::Left);
        look("wrong side");
        open.practice().pickSide(side);
    }
    look("marking");
    open.practice().placeMark({90.0, 90.0});
    look("mark outside the body");
    const Point ideal = open.state().target->ideal;
    open.practice().placeMark({ideal.x, ideal.y + 2.6});
    look("marked");
    open.practice().grade();
    look("graded");
    open.find<QAbstractButton>("why")->setChecked(true);
    open.practice().setCompanionShown(true);
    look("why");
    open.practice().next();
    if (open.state().phase == Phase::PickingSide)
        open.practice().pickSide(open.state().request->patient.side());
    open.practice().placeMark({0.0, -4.0});
    open.practice().grade();
    open.practice().next();
    look("summary");
}

// The same for a run of any site, with charts: marks every other request and refuses the rest.
template <class Look>
void throughARun(OpenWindow& open, const Look& look)
{
    constexpr int kLongest = 20000;  // ms; a Debug build reads a plate slowly
    while (open.state().phase != Phase::Summary) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return open.state().picture != nullptr; }, kLongest));
        if (open.state().phase == Phase::PickingSide) {
            look("side question");
            open.practice().pickSide(open.state().request->patient.side());
        }
        look("marking");
        if (open.state().request->number % 2 == 0) {
            const Point ideal = open.state().target->ideal;
            open.practice().placeMark({ideal.x + 1.0, ideal.y + 2.0});
            look("marked");
            open.practice().grade();
            look("graded");
            open.find<QAbstractButton>("why")->setChecked(true);
            open.practice().setCompanionShown(true);
            look("why");
        } else {
            open.practice().chooseReason(true);
            look("choosing a reason");
            open.practice().refuse(FindingCode::Rash);
            look("refused");
        }
        open.practice().next();
    }
    look("summary");
}

// Layouts ask for a new layout through the event loop, more than once when words wrap.
inline void settle()
{
    constexpr int kRounds = 5;
    for (int i = 0; i < kRounds; ++i) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
}

// Chooses an entry of a menu as a user does: opens it, then triggers the action.
inline void choose(OpenWindow& open, const char* button, const char* action)
{
    QTest::mouseClick(open.find(button), Qt::LeftButton);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr) << button;
    auto* entry = menu->findChild<QAction*>(QLatin1String(action));
    ASSERT_NE(entry, nullptr) << action;
    QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(entry).center());
}

}  // namespace fb::test
