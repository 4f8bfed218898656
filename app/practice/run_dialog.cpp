#include "app/practice/run_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/fault_words.h"
#include "app/words/site_words.h"

namespace fb {

RunDialog::RunDialog(PracticePresenter& presenter, QWidget* parent)
    : QDialog(parent),
      m_presenter(presenter),
      m_title(parts::text(this, "runTitle", "title")),
      m_seedName(parts::text(this, "runSeedName")),
      m_seed(new QLineEdit(this)),
      m_fresh(parts::button(this, "freshSeed")),
      m_lengthName(parts::text(this, "runLengthName")),
      m_length(new QLineEdit(this)),
      m_helpName(parts::text(this, "runHelpName")),
      m_conventionName(parts::text(this, "runConventionName")),
      m_convention(new QComboBox(this)),
      m_asksSide(new QCheckBox(this)),
      m_notice(parts::text(this, "runNotice", "notice")),
      m_start(parts::mainButton(this, "startRun")),
      m_cancel(parts::button(this, "cancelRun"))
{
    setObjectName(QStringLiteral("runDialog"));
    m_seed->setObjectName(QStringLiteral("runSeed"));
    m_length->setObjectName(QStringLiteral("runLength"));
    m_convention->setObjectName(QStringLiteral("runConvention"));
    m_asksSide->setObjectName(QStringLiteral("runAsksSide"));
    for (int level = 0; level < kHelpLevelCount; ++level) {
        QRadioButton*& button = m_help[static_cast<std::size_t>(level)];
        button = new QRadioButton(this);
        button->setObjectName(QStringLiteral("runHelp%1").arg(level));
    }
    m_notice->hide();
    m_start->setDefault(true);
    connect(m_fresh, &QPushButton::clicked, this, [this] { m_seed->setText(m_presenter.freshSeed()); });
    connect(m_start, &QPushButton::clicked, this, &RunDialog::start);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    layOut();
    say();
    fill();
}

void RunDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kApart);
    column->addWidget(m_title);
    column->addWidget(parts::rule(this));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kApart);
    grid->setVerticalSpacing(space::kApart);
    grid->setColumnStretch(1, 1);
    grid->addWidget(m_seedName, 0, 0);
    grid->addWidget(m_seed, 0, 1);
    grid->addWidget(m_fresh, 0, 2);
    grid->addWidget(m_lengthName, 1, 0);
    grid->addWidget(m_length, 1, 1);
    grid->addWidget(m_conventionName, 2, 0);
    grid->addWidget(m_convention, 2, 1, 1, 2);
    auto* help = new QVBoxLayout;
    help->setSpacing(space::kTight);
    for (QRadioButton* button : m_help)
        help->addWidget(button);
    grid->addWidget(m_helpName, 3, 0, Qt::AlignTop);
    grid->addLayout(help, 3, 1, 1, 2);
    grid->addWidget(m_asksSide, 4, 1, 1, 2);
    column->addLayout(grid);
    column->addWidget(m_notice);
    column->addWidget(parts::rule(this));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_cancel);
    buttons->addWidget(m_start);
    column->addLayout(buttons);
    for (QLabel* name : {m_seedName, m_lengthName, m_conventionName, m_helpName})
        name->setWordWrap(false);
    constexpr int kWidth = 560;
    setMinimumWidth(parts::scaled(this, kWidth));
}

void RunDialog::say()
{
    setWindowTitle(tr("New run"));
    m_title->setText(tr("New run"));
    m_seedName->setText(tr("Seed"));
    m_seed->setAccessibleName(tr("Seed of the new run"));
    parts::say(m_fresh, tr("Fresh seed"));
    m_lengthName->setText(tr("Requests"));
    m_length->setAccessibleName(tr("Number of requests"));
    m_conventionName->setText(tr("Convention"));
    m_convention->setAccessibleName(tr("Convention"));
    m_helpName->setText(tr("Help"));
    for (int level = 0; level < kHelpLevelCount; ++level) {
        QRadioButton* button = m_help[static_cast<std::size_t>(level)];
        button->setText(helpLevelName(static_cast<HelpLevel>(level)));
        button->setAccessibleName(button->text());
    }
    m_asksSide->setText(tr("Ask for the patient's left or right first"));
    m_asksSide->setAccessibleName(m_asksSide->text());
    parts::say(m_start, tr("Start"));
    parts::say(m_cancel, tr("Cancel"));
}

void RunDialog::fill()
{
    const PracticeState& state = m_presenter.state();
    m_seed->setText(m_presenter.freshSeed());
    m_length->setText(QString::number(state.setup.length));
    for (const Convention convention : kConventions)
        m_convention->addItem(conventionName(convention), static_cast<int>(convention));
    m_convention->setCurrentIndex(m_convention->findData(static_cast<int>(state.convention)));
    m_help[static_cast<std::size_t>(state.setup.help)]->setChecked(true);
    m_asksSide->setChecked(state.setup.asksSide);
}

void RunDialog::start()
{
    PracticeSetup setup = m_presenter.state().setup;
    // Text that is no number is as wrong as a number out of range, and told alike.
    setup.length = m_length->text().trimmed().toInt();
    for (int level = 0; level < kHelpLevelCount; ++level) {
        if (m_help[static_cast<std::size_t>(level)]->isChecked())
            setup.help = static_cast<HelpLevel>(level);
    }
    setup.asksSide = m_asksSide->isChecked();
    const auto convention = static_cast<Convention>(m_convention->currentData().toInt());
    const auto started = m_presenter.startRun(m_seed->text(), setup, convention);
    if (started) {
        accept();
        return;
    }
    m_notice->setText(sentenceOf(started.error()));
    m_notice->show();
}

}  // namespace fb
