// The closing page of a check-off whose manikin is finished, as an assessor finds it.
#pragma once

#include <gtest/gtest.h>

#include <QLabel>
#include <QTest>
#include <map>

#include "app/checkoff/closing_page.h"
#include "tests/support/manikin_run.h"
#include "tests/support/window_walk.h"

namespace fb::test {

// One assessor, everything done, the manikin finished.
[[nodiscard]] inline ManikinRun::Plan oneAssessor()
{
    ManikinRun::Plan plan;
    plan.people = QStringList{QStringLiteral("Vera Holm")};
    return plan;
}

class Closing {
public:
    explicit Closing(const ManikinRun::Plan& plan = oneAssessor(),
                     const std::map<ProcedureStep, Seen>& but = {})
        : run(plan),
          page(run.presenter, dialogs)
    {
        run.seeAll(but);
        run.presenter.finish();
        page.setScheme(dressed());
        page.resize(1280, 725);
        page.show();
        isOpen = QTest::qWaitForWindowActive(&page) && run.state().stage == CheckOffStage::Closing;
    }
    void key(Qt::Key which)
    {
        ++presses;
        QTest::keyClick(QApplication::focusWidget(), which);
    }
    void type(const QString& words)
    {
        for (const QChar& letter : words) {
            ++presses;
            QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
        }
    }
    template <class Widget>
    [[nodiscard]] Widget* find(const char* name) const
    {
        return page.findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] QString text(const char* name) const { return find<QLabel>(name)->text(); }
    [[nodiscard]] const CheckOffState& state() const { return run.state(); }

    ManikinRun run;
    AnsweringDialogs dialogs;
    ClosingPage page;
    bool isOpen = false;
    int presses = 0;
};

}  // namespace fb::test
