#include "app/practice/run_dialog.h"

#include <QCheckBox>
#include <QEvent>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/hand_field.h"
#include "app/practice/how_choice.h"
#include "app/practice/parts.h"
#include "app/practice/site_choice.h"
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
      m_how(new HowChoice(this)),
      m_helpName(parts::text(this, "runHelpName")),
      m_sites(new SiteChoice(this)),
      m_hand(new HandField(this)),
      m_moreHand(parts::button(this, "moreHand")),
      m_asksSide(new QCheckBox(this)),
      m_notice(parts::text(this, "runNotice", "notice")),
      m_scroll(new QScrollArea(this)),
      m_start(parts::mainButton(this, "startRun")),
      m_cancel(parts::button(this, "cancelRun"))
{
    setObjectName(QStringLiteral("runDialog"));
    m_seed->setObjectName(QStringLiteral("runSeed"));
    m_length->setObjectName(QStringLiteral("runLength"));
    m_asksSide->setObjectName(QStringLiteral("runAsksSide"));
    for (int level = 0; level < kHelpLevelCount; ++level) {
        QRadioButton*& button = m_help[static_cast<std::size_t>(level)];
        button = new QRadioButton(this);
        button->setObjectName(QStringLiteral("runHelp%1").arg(level));
    }
    m_notice->hide();
    m_start->setDefault(true);
    connect(m_fresh, &QPushButton::clicked, this, [this] { m_seed->setText(m_presenter.freshSeed()); });
    connect(m_hand, &HandField::estimateAsked, this, &RunDialog::estimateHand);
    connect(m_moreHand, &QPushButton::clicked, this, &RunDialog::handAsked);
    connect(m_how, &HowChoice::changed, this, &RunDialog::fitHelp);
    connect(m_start, &QPushButton::clicked, this, &RunDialog::start);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    layOut();
    say();
    fill();
}

void RunDialog::showEvent(QShowEvent* event)
{
    // Only now every part has its letters and knows its size.
    fitFields();
    QDialog::showEvent(event);
}

void RunDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kApart);
    column->addWidget(m_title);
    column->addWidget(parts::rule(this));
    m_scroll->setObjectName(QStringLiteral("runScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(fields());
    parts::followFocus(m_scroll);
    column->addWidget(m_scroll, 1);
    column->addWidget(m_notice);
    column->addWidget(parts::rule(this));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_cancel);
    buttons->addWidget(m_start);
    column->addLayout(buttons);
}

QWidget* RunDialog::fields()
{
    auto* whole = new QWidget;
    m_halves = new QBoxLayout(QBoxLayout::LeftToRight, whole);
    m_halves->setContentsMargins(0, 0, 0, 0);
    m_halves->setSpacing(space::kBroad);
    m_halves->addWidget(runFields(), 0, Qt::AlignTop);
    auto* sites = new QWidget(whole);
    auto* column = new QVBoxLayout(sites);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kApart);
    column->addWidget(m_sites);
    column->addWidget(parts::rule(sites));
    column->addWidget(m_hand);
    column->addWidget(m_moreHand, 0, Qt::AlignLeft);
    m_halves->addWidget(sites, 1, Qt::AlignTop);
    return whole;
}

QWidget* RunDialog::runFields()
{
    auto* whole = new QWidget;
    auto* grid = new QGridLayout(whole);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kApart);
    grid->setVerticalSpacing(space::kApart);
    grid->setColumnStretch(1, 1);
    grid->addWidget(m_seedName, 0, 0);
    grid->addWidget(m_seed, 0, 1);
    grid->addWidget(m_fresh, 0, 2);
    grid->addWidget(m_lengthName, 1, 0);
    grid->addWidget(m_length, 1, 1);
    auto* help = new QVBoxLayout;
    help->setSpacing(space::kTight);
    help->addWidget(m_helpName);
    for (QRadioButton* button : m_help)
        help->addWidget(button);
    grid->addWidget(m_how, 2, 0, 1, 3);
    grid->addLayout(help, 3, 0, 1, 3);
    grid->addWidget(m_asksSide, 4, 0, 1, 3);
    for (QLabel* name : {m_seedName, m_lengthName, m_helpName})
        name->setWordWrap(false);
    return whole;
}

// Side by side where the screen is wide enough, else one half above the other; what is too high
// for the screen scrolls.
void RunDialog::fitFields()
{
    constexpr double kShare = 0.92;
    const QSize most =
        (parentWidget() ? parentWidget()->window()->size() : screen()->availableSize()) * kShare;
    const QWidget* fields = m_scroll->widget();
    const int beside = m_scroll->verticalScrollBar()->sizeHint().width() + 2 * space::kMargin;
    m_halves->setDirection(QBoxLayout::LeftToRight);
    m_halves->activate();
    if (fields->minimumSizeHint().width() + beside > most.width())
        m_halves->setDirection(QBoxLayout::TopToBottom);
    m_halves->activate();
    const QSize needed = fields->sizeHint();
    m_scroll->setMinimumWidth(fields->minimumSizeHint().width() +
                              m_scroll->verticalScrollBar()->sizeHint().width());
    const int around = sizeHint().height() - m_scroll->sizeHint().height();
    resize(std::min(needed.width() + beside, most.width()),
           std::min(needed.height() + around, most.height()));
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
    m_helpName->setText(tr("Help"));
    for (int level = 0; level < kHelpLevelCount; ++level) {
        QRadioButton* button = m_help[static_cast<std::size_t>(level)];
        button->setText(helpLevelName(static_cast<HelpLevel>(level)));
        button->setAccessibleName(button->text());
    }
    m_asksSide->setText(tr("Ask for the patient's left or right first"));
    m_asksSide->setAccessibleName(m_asksSide->text());
    if (m_fault)
        m_notice->setText(sentenceOf(*m_fault));
    //: Of the learner: opens what is known of the hand, with measuring.
    parts::say(m_moreHand, tr("Finger, writing hand, measuring…"));
    parts::say(m_start, tr("Start"));
    parts::say(m_cancel, tr("Cancel"));
}

void RunDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void RunDialog::fill()
{
    const PracticeState& state = m_presenter.state();
    m_seed->setText(m_presenter.freshSeed());
    m_length->setText(QString::number(state.setup.length));
    const Policy& policy = *m_presenter.labPolicy();
    m_sites->fill(state.setup.mix, policy, state.own);
    showHand(state.own.handLength.value_or(Cm{policy.value(PolicyKey::HandLength)}));
    m_help[static_cast<std::size_t>(state.setup.help)]->setChecked(true);
    m_asksSide->setChecked(state.setup.asksSide);
    m_how->setByHand(state.setup.byHand);
}

void RunDialog::showHand(Cm length)
{
    m_hand->setLength(length);
    m_fault.reset();
    m_notice->hide();
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
    setup.byHand = m_how->isByHand();
    setup.mix = m_sites->mix();
    OwnChoices own = m_presenter.state().own;
    own.conventions = m_sites->conventions().conventions;
    const auto hand = m_hand->length();
    if (!hand)
        return tell(hand.error());
    own.handLength = *hand;
    const auto started = m_presenter.startRun(m_seed->text(), setup, own);
    if (started)
        accept();
    else
        tell(started.error());
}

void RunDialog::estimateHand()
{
    const auto length = m_hand->stature().and_then(
        [this](Cm stature) { return m_presenter.estimatedHand(m_hand->sex(), stature); });
    if (!length)
        return tell(length.error());
    constexpr double kTenths = 10.0;
    m_hand->setLength(Cm{std::round(length->value() * kTenths) / kTenths});
    m_fault.reset();
    m_notice->hide();
}

void RunDialog::fitHelp()
{
    m_helpName->setEnabled(!m_how->isByHand());
    for (QRadioButton* button : m_help)
        button->setEnabled(!m_how->isByHand());
}

void RunDialog::tell(const Fault& fault)
{
    m_fault = fault;
    m_notice->setText(sentenceOf(fault));
    m_notice->show();
}

}  // namespace fb
