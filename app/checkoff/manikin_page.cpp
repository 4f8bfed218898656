#include "app/checkoff/manikin_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QShortcut>

#include "app/checkoff/manikin_column.h"
#include "app/checkoff/reason_dialog.h"
#include "app/checkoff/step_list.h"
#include "app/look/style.h"

namespace fb {

ManikinPage::ManikinPage(CheckOffPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_turn([this] { return m_presenter.state().saving; }),
      m_list(new StepList(this)),
      m_column(new ManikinColumn(this))
{
    setObjectName(QStringLiteral("manikinPage"));
    layOut();
    connectList();
    connectColumn();
    addKeys();
    connect(&presenter, &CheckOffPresenter::changed, this, &ManikinPage::showState);
    connect(&presenter, &CheckOffPresenter::ticked, this, &ManikinPage::showTimes);
    showState();
}

// Steps and column stay together in the middle of a wide screen.
void ManikinPage::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kMargin, space::kTight, space::kMargin, space::kTight);
    row->setSpacing(space::kApart);
    row->addStretch(1);
    row->addWidget(m_list);
    row->addWidget(m_column);
    row->addStretch(1);
    m_laidOut = true;
}

void ManikinPage::connectList()
{
    CheckOffPresenter* to = &m_presenter;
    connect(m_list, &StepList::observeAsked, to, &CheckOffPresenter::observe);
    connect(m_list, &StepList::withdrawAsked, to, &CheckOffPresenter::withdraw);
    connect(m_list, &StepList::currentChanged, this, [this] { m_column->showStep(m_list->current()); });
}

void ManikinPage::connectColumn()
{
    CheckOffPresenter* to = &m_presenter;
    connect(m_column, &ManikinColumn::seenPressed, m_list, &StepList::answer);
    connect(m_column, &ManikinColumn::remarkPressed, m_list, &StepList::editRemark);
    connect(m_column, &ManikinColumn::holdingPressed, to, &CheckOffPresenter::toggleHolding);
    connect(m_column, &ManikinColumn::recapPressed, this, [to](bool already) {
        if (already)
            to->withdraw(ProcedureStep::Recap);
        else
            to->observe(ProcedureStep::Recap, Seen::Done);
    });
    connect(m_column, &ManikinColumn::restPressed, to, &CheckOffPresenter::restNotDone);
    connect(m_column, &ManikinColumn::finishPressed, this, &ManikinPage::finish);
    connect(m_column, &ManikinColumn::pausePressed, this, &ManikinPage::pause);
    connect(m_column, &ManikinColumn::safetyStopPressed, this, &ManikinPage::stopForSafety);
    connect(m_column, &ManikinColumn::voidPressed, this, &ManikinPage::voidTechnical);
}

void ManikinPage::addKeys()
{
    const auto key = [this](Qt::Key which, bool repeats, const auto& then) {
        auto* shortcut = new QShortcut(QKeySequence(which), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        shortcut->setAutoRepeat(repeats);
        connect(shortcut, &QShortcut::activated, this, then);
    };
    for (int i = 0; i < kSeenCount; ++i)
        key(static_cast<Qt::Key>(static_cast<int>(Qt::Key_1) + i), false,
            [this, seen = static_cast<Seen>(i)] { m_list->answer(seen); });
    key(Qt::Key_R, false, [this] { m_list->editRemark(); });
    key(Qt::Key_Up, true, [this] { m_list->move(-1); });
    key(Qt::Key_Down, true, [this] { m_list->move(1); });
    key(Qt::Key_Home, false, [this] { m_list->move(-m_list->count()); });
    key(Qt::Key_End, false, [this] { m_list->move(m_list->count()); });
    key(Qt::Key_PageUp, true, [this] { m_column->turnPage(false); });
    key(Qt::Key_PageDown, true, [this] { m_column->turnPage(true); });
    key(Qt::Key_Space, false, [this] { m_presenter.toggleHolding(); });
}

void ManikinPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    if (!state.open || state.stage != CheckOffStage::OnManikin)
        return;
    // A disabled page has no keys; the cover over it says why.
    setEnabled(!state.paused);
    m_list->showState(state);
    m_column->showState(state);
    if (m_wasPaused && !state.paused)
        m_list->focusCurrent();
    m_wasPaused = state.paused;
    fit();
    m_turn.goOn();
}

void ManikinPage::showTimes()
{
    if (m_presenter.state().stage == CheckOffStage::OnManikin)
        m_column->showTimes(m_presenter.state());
}

void ManikinPage::fit() { m_list->fit(width() - 2 * space::kMargin - space::kApart - m_column->width()); }

// Says how many steps are without a word, and goes to the first of them.
void ManikinPage::finish()
{
    m_turn.ask([this] {
        m_presenter.finish();
        if (m_list->answered() < m_list->count())
            m_list->goToFirstOpen();
    });
}

void ManikinPage::pause()
{
    ReasonDialog::ask(ReasonFor::Pause, this,
                      [this](const QString& why) { m_turn.ask([this, why] { m_presenter.pause(why); }); });
}

void ManikinPage::stopForSafety()
{
    ReasonDialog::ask(ReasonFor::SafetyStop, this,
                      [this](const QString& why) { m_presenter.stopForSafety(why); });
}

void ManikinPage::voidTechnical()
{
    ReasonDialog::ask(ReasonFor::Void, this, [this](const QString& why) { m_presenter.voidTechnical(why); });
}

void ManikinPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_list->setScheme(scheme);
    m_column->setScheme(scheme);
}

void ManikinPage::focusFirst() { m_list->focusCurrent(); }

void ManikinPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void ManikinPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fit();
    focusFirst();
}

void ManikinPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        m_list->say();
        m_column->say();
        showState();
    } else if (event->type() == QEvent::FontChange && m_laidOut) {
        setScheme(m_scheme);
        showState();
    }
}

}  // namespace fb
