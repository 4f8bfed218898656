#include "app/shell/restart_dialog.h"

#include <QEvent>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

RestartDialog::RestartDialog(const QString& policyFile, QWidget* parent)
    : QDialog(parent),
      m_file(policyFile),
      m_title(parts::text(this, "restartTitle", "title")),
      m_question(parts::text(this, "restartQuestion")),
      m_keep(parts::button(this, "keepRun")),
      m_restart(parts::mainButton(this, "restartRun"))
{
    setObjectName(QStringLiteral("restartDialog"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kApart);
    column->addWidget(m_title);
    column->addWidget(m_question);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_keep);
    buttons->addWidget(m_restart);
    column->addLayout(buttons);
    constexpr int kWidth = 480;
    setMinimumWidth(parts::scaled(this, kWidth));
    connect(m_keep, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_restart, &QPushButton::clicked, this, &QDialog::accept);
    // Nothing is lost by a hasty Return.
    m_keep->setDefault(true);
    say();
}

void RestartDialog::say()
{
    setWindowTitle(tr("Start the run anew?"));
    m_title->setText(tr("Start the run anew?"));
    m_question->setText(m_file.isEmpty() ? tr("The shipped policy grades from the first request on. What has "
                                              "been marked in this run is lost.")
                                         : tr("The policy file %1 grades from the first request on. What has "
                                              "been marked in this run is lost.")
                                               .arg(QFileInfo(m_file).fileName()));
    parts::say(m_keep, tr("Keep this run"));
    parts::say(m_restart, tr("Start anew"));
}

void RestartDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
