#include "app/checkoff/items_page.h"

#include <QEvent>
#include <QFrame>
#include <QVBoxLayout>

#include "app/checkoff/reason_dialog.h"
#include "app/checkoff/time_strip.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/practice/practice_page.h"

namespace fb {

ItemsPage::ItemsPage(CheckOffPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_strip(new TimeStrip(this)),
      m_practice(new PracticePage(presenter.items(), this))
{
    setObjectName(QStringLiteral("itemsPage"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    m_strip->setContentsMargins(space::kMargin, space::kTight, space::kMargin, space::kTight);
    rows->addWidget(m_strip);
    rows->addWidget(parts::rule(this));
    rows->addWidget(m_practice, 1);
    connect(&presenter, &CheckOffPresenter::changed, this, &ItemsPage::showState);
    connect(&presenter, &CheckOffPresenter::ticked, this, [this] {
        if (m_presenter.state().stage == CheckOffStage::OnScreen)
            m_strip->showTimes(m_presenter.state());
    });
    connect(m_strip, &TimeStrip::timeShownAsked, &presenter, &CheckOffPresenter::setTimeShown);
    connect(m_strip, &TimeStrip::pauseAsked, this, &ItemsPage::askPause);
    showState();
    measureAnew();
}

// Out of sight a page keeps the room it asked for before its parts were shown, hidden or pressed.
void ItemsPage::measureAnew()
{
    for (QWidget* part : findChildren<QWidget*>())
        part->updateGeometry();
}

void ItemsPage::showState()
{
    if (m_presenter.state().stage == CheckOffStage::OnScreen)
        m_strip->showState(m_presenter.state());
}

void ItemsPage::askPause()
{
    ReasonDialog::ask(ReasonFor::Pause, this, [this](const QString& why) { m_presenter.pause(why); });
}

void ItemsPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_strip->setScheme(scheme);
    m_practice->setScheme(scheme);
}

void ItemsPage::focusFirst() { m_practice->takeKeys(); }

void ItemsPage::showEvent(QShowEvent* event)
{
    measureAnew();
    QWidget::showEvent(event);
}

void ItemsPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        m_strip->say();
        showState();
    } else if (event->type() == QEvent::FontChange && m_strip) {
        m_strip->setScheme(m_scheme);
        measureAnew();
    }
}

}  // namespace fb
