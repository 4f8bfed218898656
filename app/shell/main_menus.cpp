// The menus of the window, filled when they are opened: see main_window.h.
#include <QAction>
#include <QActionGroup>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QWidgetAction>
#include <functional>

#include "app/practice/parts.h"
#include "app/practice/run_dialog.h"
#include "app/profile/profile_dialog.h"
#include "app/shell/about_dialog.h"
#include "app/shell/main_window.h"
#include "app/shell/restart_dialog.h"

namespace fb {

namespace main_menus_detail {

// Our style sheet leaves the words of Qt's own sections out.
void addHeading(QMenu& menu, const QString& words)
{
    if (!menu.isEmpty())
        menu.addSeparator();
    auto* heading = new QWidgetAction(&menu);
    QLabel* label = parts::text(&menu, "menuHeading", "small");
    label->setText(words);
    label->setContentsMargins(22, 6, 26, 2);  // as the entries below it
    heading->setDefaultWidget(label);
    heading->setEnabled(false);
    menu.addAction(heading);
}

// One of several choices, the one in force ticked.
void addChoice(QMenu& menu, QActionGroup* group, const char* name, const QString& words, bool inForce,
               const std::function<void()>& choose)
{
    QAction* action = menu.addAction(words);
    action->setObjectName(QLatin1String(name));
    action->setCheckable(true);
    action->setChecked(inForce);
    group->addAction(action);
    QObject::connect(action, &QAction::triggered, &menu, choose);
}

}  // namespace main_menus_detail

void MainWindow::fillView(QMenu& menu)
{
    using namespace main_menus_detail;
    const auto choose = [this](auto member, auto value) {
        return [this, member, value] {
            Preferences preferences = m_preferences;
            preferences.*member = value;
            change(preferences);
        };
    };
    auto* look = new QActionGroup(&menu);
    const auto addLook = [&](const char* name, const QString& words, PaletteKind kind) {
        addChoice(menu, look, name, words, m_preferences.palette == kind,
                  choose(&Preferences::palette, kind));
    };
    addHeading(menu, tr("Appearance"));
    addLook("lookLight", tr("Light"), PaletteKind::Light);
    addLook("lookDark", tr("Dark"), PaletteKind::Dark);
    //: High contrast for a projector in a bright room.
    addLook("lookProjector", tr("Projector"), PaletteKind::Projector);

    addHeading(menu, tr("Text size"));
    auto* size = new QActionGroup(&menu);
    const auto addSize = [&](const char* name, const QString& words, int percent) {
        addChoice(menu, size, name, words, m_preferences.textPercent == percent,
                  choose(&Preferences::textPercent, percent));
    };
    addSize("text0", tr("To suit the screen"), 0);
    //: A text size in percent.
    const auto percent = [](int value) { return tr("%1 %").arg(QLocale().toString(value)); };
    addSize("text100", percent(100), 100);
    addSize("text125", percent(125), 125);
    addSize("text150", percent(150), 150);
    addSize("text200", percent(200), 200);

    addHeading(menu, tr("Language"));
    auto* language = new QActionGroup(&menu);
    const auto addLanguage = [&](const QString& words, const QString& locale) {
        const QByteArray name = "language." + (locale.isEmpty() ? "system" : locale.toLatin1());
        addChoice(menu, language, name.constData(), words, m_preferences.language == locale,
                  choose(&Preferences::language, locale));
    };
    addLanguage(tr("As the system"), QString());
    for (const OfferedLanguage& each : offeredLanguages())
        addLanguage(each.name, each.locale);

    menu.addSeparator();
    //: Of the learner: length, finger, writing hand.
    QAction* hand = menu.addAction(tr("Your hand…"));
    hand->setObjectName(QStringLiteral("yourHand"));
    hand->setEnabled(m_doors.practice.labPolicy() != nullptr);
    connect(hand, &QAction::triggered, this, [this] { showHand(nullptr); });
}

void MainWindow::fillPolicy(QMenu& menu)
{
    const QString file = m_doors.practice.state().policyFile;
    QAction* choose = menu.addAction(tr("Choose a policy file…"));
    choose->setObjectName(QStringLiteral("choosePolicy"));
    connect(choose, &QAction::triggered, this, &MainWindow::choosePolicy);
    QAction* shipped = menu.addAction(tr("Use the shipped policy"));
    shipped->setObjectName(QStringLiteral("shippedPolicy"));
    shipped->setEnabled(!file.isEmpty());
    connect(shipped, &QAction::triggered, this, [this] { m_doors.practice.usePolicyFile({}); });
    if (!file.isEmpty())
        main_menus_detail::addHeading(menu, file);
}

void MainWindow::fillHelp(QMenu& menu)
{
    QAction* about = menu.addAction(tr("About Fingerbreadth"));
    about->setObjectName(QStringLiteral("about"));
    connect(about, &QAction::triggered, this, &MainWindow::showAbout);
}

void MainWindow::choosePolicy()
{
    const QString file = m_doors.dialogs.askPolicyFile(this);
    if (!file.isEmpty())
        m_doors.practice.usePolicyFile(file);
}

void MainWindow::showAbout()
{
    auto* about = new AboutDialog(m_doors.practice.state().policy.get(), this);
    about->setAttribute(Qt::WA_DeleteOnClose);
    about->open();
}

void MainWindow::showHand(RunDialog* run)
{
    const Policy& policy = *m_doors.practice.labPolicy();
    const Cm usualHand{policy.value(PolicyKey::HandLength)};
    const auto estimate = [this](Sex sex, Cm stature) {
        return m_doors.practice.estimatedHand(sex, stature);
    };
    auto* dialog =
        new ProfileDialog({m_doors.learner, estimate, usualHand,
                           Cm{policy.value(PolicyKey::DeltoidFingerWidth)}, schemeOf(m_preferences.palette)},
                          run ? static_cast<QWidget*>(run) : this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (run) {
        connect(dialog, &QDialog::accepted, run, [this, run, usualHand] {
            run->showHand(m_doors.learner.profile().handLength.value_or(usualHand));
        });
    }
    dialog->open();
}

void MainWindow::askRestart()
{
    const PracticeState& state = m_doors.practice.state();
    if (!state.policyOffered || findChild<RestartDialog*>())
        return;
    auto* dialog = new RestartDialog(state.offeredPolicy, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this,
            [this](int result) { m_doors.practice.answerOffer(result == QDialog::Accepted); });
    dialog->open();
}

}  // namespace fb
