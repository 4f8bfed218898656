#include "app/demonstrate/speaker_page.h"

#include <QAbstractButton>
#include <QAbstractSlider>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QListView>
#include <QTableView>
#include <QVBoxLayout>

#include "app/demonstrate/audience_panel.h"
#include "app/demonstrate/audience_window.h"
#include "app/demonstrate/lecture_keys.h"
#include "app/demonstrate/lecture_view.h"
#include "app/demonstrate/site_row.h"
#include "app/demonstrate/speaker_column.h"
#include "app/demonstrate/step_rail.h"
#include "app/demonstrate/tool_bar.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/watch_panel.h"

namespace fb {

struct SpeakerPage::Private {
    LecturePresenter& presenter;
    std::unique_ptr<AudienceWindow> audience;
    SiteRow* sites = nullptr;
    LectureView* view = nullptr;
    ToolBar* tools = nullptr;
    StepRail* rail = nullptr;
    SpeakerColumn* column = nullptr;
};

namespace speaker_page_detail {

// A click on a control leaves the keys with the picture, so that a hand-held presenter goes on working; by
// Tab every control is reached.
void leaveKeysToPicture(QWidget& page)
{
    for (QWidget* widget : page.findChildren<QWidget*>()) {
        const bool isControl = qobject_cast<QAbstractButton*>(widget) ||
                               qobject_cast<QAbstractSlider*>(widget) || qobject_cast<QComboBox*>(widget) ||
                               qobject_cast<QListView*>(widget);
        if (isControl && (widget->focusPolicy() & Qt::TabFocus))
            widget->setFocusPolicy(Qt::TabFocus);
    }
}

}  // namespace speaker_page_detail

SpeakerPage::SpeakerPage(LecturePresenter& presenter, Dialogs& dialogs, Screens& screens, QWidget* parent)
    : QWidget(parent),
      m_private(
          std::make_unique<Private>(Private{presenter, std::make_unique<AudienceWindow>(presenter, screens)}))
{
    Private& d = *m_private;
    setObjectName(QStringLiteral("speakerPage"));
    d.view = new LectureView(presenter, LectureView::For::Speaker, this);
    d.view->setObjectName(QStringLiteral("lecturePicture"));
    d.sites = new SiteRow(presenter, this);
    d.tools = new ToolBar(presenter, this);
    d.rail = new StepRail(presenter, this);
    d.column = new SpeakerColumn(presenter, dialogs, *d.audience, this);
    layOut();
    connectAll();
    speaker_page_detail::leaveKeysToPicture(*this);
    setFocusProxy(d.view);
    showState();
}

SpeakerPage::~SpeakerPage() = default;

void SpeakerPage::layOut()
{
    Private& d = *m_private;
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kMargin, space::kNear, space::kMargin, space::kNear);
    row->setSpacing(space::kMargin);
    auto* stage = new QVBoxLayout;
    stage->setSpacing(space::kNear);
    stage->addWidget(d.sites);
    stage->addWidget(d.view, 1);
    stage->addWidget(d.tools);
    stage->addWidget(d.rail);
    row->addLayout(stage, 1);
    row->addWidget(d.column);
    QWidget::setTabOrder(d.view, d.sites);
    QWidget::setTabOrder(d.sites, d.tools);
    QWidget::setTabOrder(d.tools, d.rail);
    QWidget::setTabOrder(d.rail, d.column);
}

void SpeakerPage::connectAll()
{
    Private& d = *m_private;
    connect(&d.presenter, &LecturePresenter::changed, this, &SpeakerPage::showState);
    connect(&d.presenter, &LecturePresenter::pointerMoved, d.column, &SpeakerColumn::showFrame);
    auto* keys = new LectureKeys(d.presenter, *this);
    connect(keys, &LectureKeys::asksSwap, &d.column->audience(), &AudiencePanel::swap);
    connect(keys, &LectureKeys::asksClose, &d.column->audience(), &AudiencePanel::close);
    // The audience's window hears its own picture itself.
    connect(d.view, &LectureView::asksSwap, &d.column->audience(), &AudiencePanel::swap);
    connect(d.view, &LectureView::asksClose, &d.column->audience(), &AudiencePanel::close);
}

void SpeakerPage::showState()
{
    Private& d = *m_private;
    d.sites->showState();
    d.tools->showState();
    d.rail->showState();
    d.column->showState();
    for (QWidget* part : std::initializer_list<QWidget*>{d.sites, d.tools, d.rail})
        part->setEnabled(d.presenter.state().ready);
}

void SpeakerPage::useLibrary(const std::shared_ptr<const Library>& library)
{
    m_private->column->useLibrary(library);
    m_private->rail->useLibrary(library);
}

void SpeakerPage::useNotes(const Result<SpeakerNotes>& notes) { m_private->column->useNotes(notes); }

void SpeakerPage::setScheme(const Scheme& scheme)
{
    Private& d = *m_private;
    d.view->setScheme(scheme);
    d.audience->setScheme(scheme);
    d.sites->setScheme(scheme);
    d.tools->setScheme(scheme);
    d.rail->setScheme(scheme);
    d.column->setScheme(scheme);
}

AudienceWindow& SpeakerPage::audience() { return *m_private->audience; }

void SpeakerPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    m_private->presenter.setCalm(asksForCalm(*this));
}

void SpeakerPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        m_private->presenter.setCalm(asksForCalm(*this));
}

}  // namespace fb
