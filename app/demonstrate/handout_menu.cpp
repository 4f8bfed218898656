#include "app/demonstrate/handout_menu.h"

#include <QEvent>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>

#include "app/doors/background.h"
#include "app/lecture/lecture_presenter.h"
#include "app/practice/parts.h"
#include "app/report/feedback_sheet.h"
#include "app/words/site_words.h"

namespace fb {

namespace handout_menu_detail {

constexpr std::array kNames{"handStepPdf", "handStepSvg", "handStepPng", "handSite", "handBlank"};
constexpr std::array kKinds{SaveKind::Pdf, SaveKind::Svg, SaveKind::Png, SaveKind::Pdf, SaveKind::Pdf};

}  // namespace handout_menu_detail

HandoutMenu::HandoutMenu(LecturePresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QPushButton(parent),
      m_presenter(presenter),
      m_dialogs(dialogs)
{
    setObjectName(QStringLiteral("handOut"));
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("handOutMenu"));
    for (int i = 0; i < WhatCount; ++i) {
        if (i == SitePage)
            menu->addSeparator();
        QAction*& action = m_actions[static_cast<std::size_t>(i)];
        action = menu->addAction(QString());
        action->setObjectName(QLatin1String(handout_menu_detail::kNames[static_cast<std::size_t>(i)]));
        connect(action, &QAction::triggered, this, [this, i] { write(static_cast<What>(i)); });
    }
    setMenu(menu);
    setStyleSheet(QStringLiteral("QPushButton::menu-indicator { image: none; width: 0; }"));
    setAutoDefault(true);
    say();
    showState();
}

void HandoutMenu::say()
{
    //: A menu: papers and pictures for the learners.
    parts::say(this, tr("Hand out"));
    m_actions[StepPdf]->setText(tr("This step as PDF…"));
    m_actions[StepSvg]->setText(tr("This step as SVG…"));
    m_actions[StepPng]->setText(tr("This step as PNG…"));
    m_actions[SitePage]->setText(tr("Whole site on one page…"));
    m_actions[BlankPage]->setText(tr("Blank page to practise on, with its key…"));
}

void HandoutMenu::useLibrary(const std::shared_ptr<const Library>& library)
{
    m_library = library;
    showState();
}

void HandoutMenu::showState()
{
    const LectureState& state = m_presenter.state();
    const bool isOpen = m_library && state.shown && state.policy && !state.steps.empty() && !m_busy;
    for (QAction* action : m_actions)
        action->setEnabled(isOpen);
}

QString HandoutMenu::suggestedName(What what) const
{
    const LectureState& state = m_presenter.state();
    const QString site = siteName(siteOf(state.convention));
    //: Names of files: %1 is a site.
    switch (what) {
    case SitePage: return tr("%1, hand-out").arg(site);
    case BlankPage: return tr("%1, to practise on").arg(site);
    default: return tr("%1, step %2").arg(site, QLocale().toString(state.step + 1));
    }
}

void HandoutMenu::write(What what)
{
    const LectureState& state = m_presenter.state();
    if (m_busy || !m_library || !state.shown || !state.policy)
        return;
    // What is shown now, whatever happens while the system asks for a name.
    const HandoutAsk ask{*state.shown, *state.policy, m_library, state.steps, layoutDirection()};
    const int step = state.step;
    const QString file = m_dialogs.askSaveFile(window(), suggestedName(what),
                                               handout_menu_detail::kKinds[static_cast<std::size_t>(what)]);
    if (file.isEmpty())
        return;
    m_busy = true;
    showState();
    Q_EMIT said(tr("Writing…"));
    inBackground<Result<bool>>(
        this,
        [ask, step, what, file]() -> Result<bool> {
            switch (what) {
            case StepSvg: return writeStep(ask, step, PictureKind::Svg, file);
            case StepPng: return writeStep(ask, step, PictureKind::Png, file);
            case SitePage: return writeHandout(ask, file, usualPaper());
            case BlankPage: return writeBlankHandout(ask, file, usualPaper());
            default: return writeStep(ask, step, PictureKind::Pdf, file);
            }
        },
        [this, file](const Result<bool>& written) {
            m_busy = false;
            showState();
            if (written) {
                //: %1 is the name of a file.
                Q_EMIT said(tr("Written to %1.").arg(QFileInfo(file).fileName()));
            } else {
                Q_EMIT said({});
                m_presenter.tell(written.error());
            }
        });
}

void HandoutMenu::changeEvent(QEvent* event)
{
    QPushButton::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
