#include "app/records/records_page.h"

#include <QApplication>
#include <QHideEvent>
#include <QShowEvent>
#include <QStackedLayout>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/notice.h"
#include "app/records/gate_page.h"
#include "app/records/records_room.h"

namespace fb {

RecordsPage::RecordsPage(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_pages(new QStackedLayout),
      m_gate(new GatePage(presenter, this)),
      m_notice(new Notice(this))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addLayout(m_pages, 1);
    rows->addWidget(m_notice);
    m_notice->setContentsMargins(space::kMargin, 0, space::kMargin, space::kNear);
    m_pages->addWidget(m_gate);
    connect(&m_presenter, &RecordsPresenter::changed, this, &RecordsPage::showState);
    connect(&m_presenter, &RecordsPresenter::progressed, this, [this] {
        if (m_room)
            m_room->showProgress(m_presenter.state());
    });
    connect(&m_presenter, &RecordsPresenter::counted, this, &RecordsPage::showState);
    connect(m_notice, &Notice::dismissed, &m_presenter, &RecordsPresenter::dismissNotice);
    showState();
}

// Where no event loop runs any more, nobody else would: and its plate still paints in threads of its own.
RecordsPage::~RecordsPage() { delete m_left; }

void RecordsPage::showState()
{
    const RecordsState& state = m_presenter.state();
    const bool open = state.gate == RecordsGate::Open;
    if (open && !m_room) {
        m_room = new RecordsRoom(m_presenter, m_dialogs, m_scheme, this);
        m_pages->addWidget(m_room);
        m_pages->setCurrentWidget(m_room);
    } else if (!open && m_room) {
        shutRoom();
    }
    if (m_room)
        m_room->showState(state);
    m_gate->showState(state);
    // Whoever sets the focus on the page means what is asked at the gate.
    setFocusProxy(open ? nullptr : m_gate);
    m_notice->showFault(state.notice);
}

// It may be its own button that shut it, so it goes when nothing runs in it any more; but at once it belongs
// to nothing that is on screen or that a screen reader walks.
void RecordsPage::shutRoom()
{
    m_pages->setCurrentWidget(m_gate);
    m_pages->removeWidget(m_room);
    m_room->hide();
    m_room->setParent(nullptr);
    m_room->deleteLater();
    m_left = m_room;
    m_room = nullptr;
}

void RecordsPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_notice->setScheme(scheme);
    if (m_room)
        m_room->setScheme(scheme);
}

void RecordsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (event->spontaneous())
        return;
    qApp->installEventFilter(this);
    m_presenter.enter();
}

void RecordsPage::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (event->spontaneous())
        return;
    qApp->removeEventFilter(this);
    m_presenter.leave();
}

bool RecordsPage::eventFilter(QObject* watched, QEvent* event)
{
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TouchBegin:
        // The very act that comes too late does nothing any more.
        if (!m_presenter.used())
            return true;
        break;
    default: break;
    }
    return QWidget::eventFilter(watched, event);
}

void RecordsPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        m_presenter.retranslate();
    // In the next turn: what is dressed anew makes parts anew, and Qt still walks the old ones.
    if (event->type() == QEvent::FontChange)
        QMetaObject::invokeMethod(
            this, [this] { setScheme(m_scheme); }, Qt::QueuedConnection);
}

}  // namespace fb
