#include "app/demonstrate/audience_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace audience_panel_detail {

QString whereText(AudienceWindow::Where where)
{
    switch (where) {
    case AudienceWindow::Where::Closed: return AudiencePanel::tr("The audience sees nothing yet.");
    case AudienceWindow::Where::OtherScreen:
        return AudiencePanel::tr("The audience sees the picture on the other screen.");
    case AudienceWindow::Where::OverSpeaker:
        return AudiencePanel::tr("The audience sees the picture over this window; F6 comes back here.");
    case AudienceWindow::Where::PutAway:
        return AudiencePanel::tr("One screen: F6 shows the picture over this window.");
    }
    return {};
}

}  // namespace audience_panel_detail

AudiencePanel::AudiencePanel(LecturePresenter& presenter, AudienceWindow& audience, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_audience(audience),
      m_where(parts::text(this, "audienceWhere", "small")),
      m_open(parts::mainButton(this, "openAudience")),
      m_close(parts::button(this, "closeAudience")),
      m_swap(parts::button(this, "swapAudience")),
      m_blank(parts::toggle(this, "blankAudience"))
{
    m_blank->setToolButtonStyle(Qt::ToolButtonTextOnly);
    m_blank->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_where);
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kTight);
    row->addWidget(m_open, 1);
    row->addWidget(m_close, 1);
    row->addWidget(m_swap, 1);
    row->addWidget(m_blank);
    rows->addLayout(row);
    connect(m_open, &QPushButton::clicked, this, &AudiencePanel::open);
    connect(m_close, &QPushButton::clicked, this, &AudiencePanel::close);
    connect(m_swap, &QPushButton::clicked, this, &AudiencePanel::swap);
    connect(m_blank, &QToolButton::clicked, &m_presenter, &LecturePresenter::setBlank);
    connect(&m_audience, &AudienceWindow::moved, this, &AudiencePanel::showState);
    connect(&m_audience, &AudienceWindow::moved, this, &AudiencePanel::forgetScreens);
    connect(&m_audience, &AudienceWindow::screenLost, this, [this] {
        m_presenter.tell(Fault{Problem::ScreenLost, {}, {}, 0.0, 0.0});
    });
    say();
    showState();
}

void AudiencePanel::say()
{
    parts::say(m_open, tr("Open audience window"));
    parts::say(m_close, tr("Close window"));
    m_close->setAccessibleName(tr("Close the audience window"));
    //: Exchanges what is on which screen.
    parts::say(m_swap, tr("Swap"));
    m_swap->setAccessibleName(tr("Swap the screens (F6)"));
    m_swap->setToolTip(m_swap->accessibleName());
    //: A button that stays down: the audience sees an empty picture meanwhile.
    parts::say(m_blank, tr("Blank"));
    m_blank->setAccessibleName(tr("Blank the picture (B)"));
    m_blank->setToolTip(m_blank->accessibleName());
}

void AudiencePanel::open()
{
    m_audience.open(window());
    if (m_audience.where() == AudienceWindow::Where::OverSpeaker ||
        m_audience.where() == AudienceWindow::Where::PutAway)
        m_presenter.tell(Fault{Problem::NoSecondScreen, {}, {}, 0.0, 0.0});
}

void AudiencePanel::close()
{
    if (m_audience.where() != AudienceWindow::Where::Closed)
        m_audience.close();
}

void AudiencePanel::swap()
{
    if (m_audience.where() != AudienceWindow::Where::Closed)
        m_audience.swap();
}

// What was told of a missing screen is over once there is one.
void AudiencePanel::forgetScreens()
{
    const auto& notice = m_presenter.state().notice;
    const bool ofScreens =
        notice && (notice->problem == Problem::ScreenLost || notice->problem == Problem::NoSecondScreen);
    if (ofScreens && m_audience.where() == AudienceWindow::Where::OtherScreen)
        m_presenter.dismissNotice();
}

void AudiencePanel::showState()
{
    const auto where = m_audience.where();
    const bool isClosed = where == AudienceWindow::Where::Closed;
    const QString blank = tr("The picture is blank; B brings it back.");
    m_where->setText(m_presenter.state().blank && !isClosed ? blank
                                                            : audience_panel_detail::whereText(where));
    m_open->setVisible(isClosed);
    m_close->setVisible(!isClosed);
    m_swap->setVisible(!isClosed);
    m_blank->setChecked(m_presenter.state().blank);
}

void AudiencePanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
    }
}

}  // namespace fb
