// How the assessor's two pages sit in every look of the program: nothing cut, nothing too small to hit,
// nothing without a name.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "app/checkoff/closing_page.h"
#include "app/checkoff/manikin_page.h"
#include "tests/support/layout_audit.h"
#include "tests/support/manikin_run.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/window_walk.h"

namespace manikin_look_test {

namespace {

using namespace fb;
using namespace fb::test;

struct Look {
    const char* name;
    PaletteKind kind = PaletteKind::Light;
    double text = 1.0;
    QSize size{1280, 725};
    bool rightToLeft = false;
    bool wordy = false;  // a wordier language
};

const std::vector<Look> kLooks{{"light"},
                               {"dark, 150 %", PaletteKind::Dark, 1.5},
                               {"projector, 200 %", PaletteKind::Projector, 2.0},
                               {"right to left", PaletteKind::Light, 1.0, {1280, 725}, true},
                               {"wordy", PaletteKind::Light, 1.0, {1280, 725}, false, true},
                               {"wordy, 150 %", PaletteKind::Light, 1.5, {1280, 725}, false, true},
                               {"large screen", PaletteKind::Light, 1.0, {3840, 2085}}};

QStringList smallTargets(const QWidget& page)
{
    constexpr int kLeast = 32;
    QStringList small;
    for (const QWidget* control : page.findChildren<QWidget*>()) {
        const bool isTarget = qobject_cast<const QAbstractButton*>(control) ||
                              qobject_cast<const QComboBox*>(control) ||
                              qobject_cast<const QLineEdit*>(control);
        if (isTarget && control->isVisible() && (control->height() < kLeast || control->width() < kLeast) &&
            !control->objectName().startsWith(QLatin1String("qt_")))
            small << QStringLiteral("%1: %2 x %3")
                         .arg(control->objectName())
                         .arg(control->width())
                         .arg(control->height());
    }
    return small;
}

// Dressed before it is made, as the program does; undressed behind it.
class LookTest : public ::testing::TestWithParam<Look> {
protected:
    LookTest()
    {
        QGuiApplication::setLayoutDirection(GetParam().rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
        if (GetParam().wordy)
            QCoreApplication::installTranslator(&pseudo);
        scheme = dressed(GetParam().kind, GetParam().text);
    }
    ~LookTest() override
    {
        QCoreApplication::removeTranslator(&pseudo);
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        dressed();
    }
    void look(QWidget& page, const char* when)
    {
        page.resize(GetParam().size);
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        settle();
        for (const QStringList& faults : {layoutFaults(page), namelessControls(page), smallTargets(page)})
            EXPECT_TRUE(faults.isEmpty()) << when << "\n" << faults.join('\n').toStdString();
    }

    PseudoTranslator pseudo;
    Scheme scheme;
};

TEST_P(LookTest, TheManikinPage)
{
    ManikinRun run;
    ManikinPage page(run.presenter);
    page.setScheme(scheme);
    look(page, "at the beginning");
    run.presenter.observe(ProcedureStep::Identify, Seen::Prompted,
                          QStringLiteral("asked for the name alone"));
    run.presenter.observe(ProcedureStep::Document, Seen::Done);
    run.records.clock.now += Ms{1000};
    run.presenter.observe(ProcedureStep::Inject, Seen::Done);
    run.presenter.observe(ProcedureStep::Recap, Seen::Done);
    run.presenter.toggleHolding();
    run.records.clock.now += Ms{1500};
    run.presenter.toggleHolding();
    look(page, "with orders broken");
}

TEST_P(LookTest, TheClosingPage)
{
    ManikinRun::Plan plan;
    plan.second = true;
    plan.verdicts = {Verdict::OnTarget, Verdict::Unsafe, Verdict::OffTarget, Verdict::Acceptable};
    ManikinRun run(plan);
    run.seeAll({{ProcedureStep::Identify, Seen::NotDone}, {ProcedureStep::Explain, Seen::Prompted}});
    run.presenter.finish();
    AnsweringDialogs dialogs;
    ClosingPage page(run.presenter, dialogs);
    page.setScheme(scheme);
    look(page, "before signing");
    run.presenter.rate(2, QStringLiteral("To be practised: identify by two identifiers."));
    run.presenter.sign(1, QStringLiteral("000111"), 2, QStringLiteral("000111"));
    look(page, "with a wrong PIN");
    run.presenter.sign(1, QLatin1String(ManikinRun::kPin), 2, QLatin1String(ManikinRun::kPin));
    ASSERT_TRUE(run.state().signedOff.has_value());
    look(page, "signed");
}

TEST_P(LookTest, TheClosingPageWithoutAnAssessor)
{
    ManikinRun::Plan plan;
    plan.people.clear();
    ManikinRun run(plan);
    run.seeAll();
    run.presenter.finish();
    AnsweringDialogs dialogs;
    ClosingPage page(run.presenter, dialogs);
    page.setScheme(scheme);
    look(page, "nobody enrolled");
}

INSTANTIATE_TEST_SUITE_P(Looks, LookTest, ::testing::ValuesIn(kLooks),
                         [](const auto& look) { return "Look" + std::to_string(look.index); });

}  // namespace

}  // namespace manikin_look_test
