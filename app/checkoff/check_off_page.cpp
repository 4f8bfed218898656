#include "app/checkoff/check_off_page.h"

#include <QApplication>
#include <QEvent>
#include <QKeyEvent>
#include <QStackedLayout>

#include "app/checkoff/closing_page.h"
#include "app/checkoff/desk_page.h"
#include "app/checkoff/handover_page.h"
#include "app/checkoff/identity_page.h"
#include "app/checkoff/instructions_page.h"
#include "app/checkoff/items_page.h"
#include "app/checkoff/manikin_page.h"
#include "app/checkoff/pause_cover.h"
#include "app/checkoff/sign_panel.h"
#include "app/look/style.h"
#include "app/practice/notice.h"

namespace fb {

CheckOffPage::CheckOffPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_desk(new DeskPage(presenter, dialogs, this)),
      m_identity(new IdentityPage(presenter, this)),
      m_instructions(new InstructionsPage(presenter, this)),
      m_items(new ItemsPage(presenter, this)),
      m_handover(new HandoverPage(presenter, this)),
      m_manikin(new ManikinPage(presenter, this)),
      m_closing(new ClosingPage(presenter, dialogs, this)),
      m_cover(new PauseCover(presenter, this)),
      m_notice(new Notice(this))
{
    setObjectName(QStringLiteral("checkOffPage"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    m_stack = new QStackedLayout;
    for (QWidget* page : std::initializer_list<QWidget*>{m_desk, m_identity, m_instructions, m_items,
                                                         m_handover, m_manikin, m_closing, m_cover})
        m_stack->addWidget(page);
    rows->addLayout(m_stack, 1);
    m_notice->setContentsMargins(space::kMargin, 0, space::kMargin, space::kNear);
    rows->addWidget(m_notice);
    connect(&presenter, &CheckOffPresenter::changed, this, &CheckOffPage::showState);
    connect(m_notice, &Notice::dismissed, &presenter, &CheckOffPresenter::dismissNotice);
    qApp->installEventFilter(this);
    showPage();
    showState();
}

QWidget* CheckOffPage::pageNow() const
{
    const CheckOffState& state = m_presenter.state();
    if (!state.open)
        return m_desk;
    if (state.paused)
        return m_cover;
    switch (state.stage) {
    case CheckOffStage::Identity: return m_identity;
    case CheckOffStage::Instructions: return m_instructions;
    case CheckOffStage::OnScreen: return m_items;
    case CheckOffStage::Handover: return m_handover;
    case CheckOffStage::OnManikin: return m_manikin;
    case CheckOffStage::Closing:
    case CheckOffStage::Closed: break;
    }
    return m_closing;
}

void CheckOffPage::showState()
{
    const auto& notice = m_presenter.state().notice;
    const bool saidThere = notice && pageNow() == m_closing && isSaidInClosing(notice->problem);
    m_notice->showFault(saidThere ? std::nullopt : notice);
    if (pageNow() == m_stack->currentWidget())
        return;
    showPage();
    takeKeys();
}

// Only the page in sight asks for room.
void CheckOffPage::showPage()
{
    QWidget* now = pageNow();
    for (int i = 0; i < m_stack->count(); ++i) {
        const auto policy = m_stack->widget(i) == now ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        m_stack->widget(i)->setSizePolicy(policy, policy);
    }
    m_stack->setCurrentWidget(now);
}

void CheckOffPage::takeKeys()
{
    if (!isVisible())
        return;
    const QWidget* page = m_stack->currentWidget();
    if (page == m_desk)
        m_desk->focusFirst();
    else if (page == m_identity)
        m_identity->focusFirst();
    else if (page == m_instructions)
        m_instructions->focusFirst();
    else if (page == m_items)
        m_items->focusFirst();
    else if (page == m_handover)
        m_handover->focusFirst();
    else if (page == m_manikin)
        m_manikin->focusFirst();
    else if (page == m_closing)
        m_closing->focusFirst();
    else
        m_cover->focusFirst();
}

// A key that is held down must not press its way through a check-off, page after page and item after item.
bool CheckOffPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return false;
    const auto* key = static_cast<const QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    const auto* widget = qobject_cast<const QWidget*>(watched);
    return enter && key->isAutoRepeat() && widget && isAncestorOf(widget);
}

void CheckOffPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_desk->setScheme(scheme);
    m_items->setScheme(scheme);
    m_manikin->setScheme(scheme);
    m_closing->setScheme(scheme);
    m_notice->setScheme(scheme);
}

void CheckOffPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        m_presenter.retranslate();
}

}  // namespace fb
