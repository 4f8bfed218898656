#include "app/demonstrate/speaker_column.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedLayout>
#include <QToolButton>
#include <algorithm>

#include "app/demonstrate/audience_panel.h"
#include "app/demonstrate/body_panel.h"
#include "app/demonstrate/compare_panel.h"
#include "app/demonstrate/handout_menu.h"
#include "app/demonstrate/lecture_clock.h"
#include "app/demonstrate/notes_panel.h"
#include "app/demonstrate/room_panel.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/notice.h"
#include "app/practice/parts.h"

namespace fb {

namespace speaker_column_detail {

constexpr std::array kTabNames{"tabStep", "tabBody", "tabCompare", "tabRoom"};
constexpr std::array kScrollNames{"stepScroll", "bodyScroll", "compareScroll", "roomScroll"};
constexpr int kWidth = 360;  // px at 100 percent text

}  // namespace speaker_column_detail

SpeakerColumn::SpeakerColumn(LecturePresenter& presenter, Dialogs& dialogs, AudienceWindow& audience,
                             QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_notes(new NotesPanel(presenter)),
      m_body(new BodyPanel(presenter)),
      m_compare(new ComparePanel(presenter)),
      m_room(new RoomPanel(presenter, dialogs)),
      m_notice(new Notice(this)),
      m_told(parts::text(this, "lectureTold", "small")),
      m_clock(new LectureClock(presenter, this)),
      m_handouts(new HandoutMenu(presenter, dialogs, this)),
      m_audience(new AudiencePanel(presenter, audience, this))
{
    using namespace speaker_column_detail;
    for (std::size_t i = 0; i < m_tabs.size(); ++i) {
        m_tabs[i] = parts::toggle(this, kTabNames[i]);
        m_tabs[i]->setToolButtonStyle(Qt::ToolButtonTextOnly);
        m_tabs[i]->setSizePolicy(QSizePolicy::MinimumExpanding, QSizePolicy::Fixed);
        const auto show = [this, i] { open(static_cast<Tab>(i)); };
        connect(m_tabs[i], &QToolButton::clicked, this, show);
        const auto key = static_cast<Qt::Key>(static_cast<int>(Qt::Key_1) + static_cast<int>(i));
        connect(new QShortcut(QKeySequence(Qt::ALT | key), this), &QShortcut::activated, this, show);
    }
    layOut();
    say();
    m_told->hide();
    connect(m_handouts, &HandoutMenu::said, this, &SpeakerColumn::tell);
    connect(m_notice, &Notice::dismissed, &m_presenter, &LecturePresenter::dismissNotice);
    open(StepTab);
    fit();
}

QScrollArea* SpeakerColumn::scrolled(QWidget* panel, const char* name)
{
    auto* area = new QScrollArea(this);
    area->setObjectName(QLatin1String(name));
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(panel);
    parts::followFocus(area);
    return area;
}

void SpeakerColumn::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    auto* tabs = new QHBoxLayout;
    tabs->setSpacing(space::kTight);
    for (QToolButton* tab : m_tabs)
        tabs->addWidget(tab);
    rows->addLayout(tabs);
    rows->addSpacing(space::kNear);
    m_stack = new QStackedLayout;
    const std::array<QWidget*, TabCount> panels{m_notes, m_body, m_compare, m_room};
    for (std::size_t i = 0; i < panels.size(); ++i) {
        m_scrolls[i] = scrolled(panels[i], speaker_column_detail::kScrollNames[i]);
        m_stack->addWidget(m_scrolls[i]);
        connect(m_scrolls[i]->verticalScrollBar(), &QScrollBar::rangeChanged, this,
                [this, i] { fitScroll(static_cast<Tab>(i)); });
    }
    rows->addLayout(m_stack, 1);
    rows->addWidget(m_notice);
    rows->addWidget(m_told);
    rows->addWidget(parts::rule(this));
    auto* below = new QHBoxLayout;
    below->setSpacing(space::kNear);
    below->addWidget(m_clock, 1);
    below->addWidget(m_handouts, 0, Qt::AlignVCenter);
    rows->addLayout(below);
    rows->addWidget(m_audience);
}

void SpeakerColumn::say()
{
    //: Tabs of the speaker's column: the step that is shown, the body, comparing, what the room answers.
    parts::say(m_tabs[StepTab], tr("Step"));
    parts::say(m_tabs[BodyTab], tr("Patient"));
    parts::say(m_tabs[CompareTab], tr("Compare"));
    //: The lecture room and who sits in it.
    parts::say(m_tabs[RoomTab], tr("Room"));
    for (std::size_t i = 0; i < m_tabs.size(); ++i) {
        const QKeySequence keys(QStringLiteral("Alt+%1").arg(i + 1));
        m_tabs[i]->setToolTip(
            //: %1 is what a button leads to, %2 the keys that do the same.
            tr("%1 (%2)").arg(m_tabs[i]->accessibleName(), keys.toString(QKeySequence::NativeText)));
        m_scrolls[i]->setAccessibleName(m_tabs[i]->accessibleName());
    }
}

void SpeakerColumn::fit()
{
    constexpr int kScrollBar = 13;
    // What was never shown does not know yet how large its letters make it.
    for (const QWidget* each : findChildren<QWidget*>())
        each->ensurePolished();
    // A choice keeps the least width it had while it was empty, so it is told anew.
    for (QComboBox* box : findChildren<QComboBox*>())
        box->setMinimumWidth(box->sizeHint().width());
    constexpr int kSlack = 2;  // a tab that is chosen is a hair wider
    for (QToolButton* tab : m_tabs)
        tab->setMinimumWidth(tab->sizeHint().width() + kSlack);
    layout()->invalidate();
    for (const QScrollArea* area : m_scrolls) {
        area->widget()->layout()->invalidate();
        area->widget()->layout()->activate();
    }
    int wide =
        std::max(parts::columnWidth(this, speaker_column_detail::kWidth), layout()->minimumSize().width());
    for (const QScrollArea* area : m_scrolls)
        wide = std::max(wide, area->widget()->minimumSizeHint().width() + kScrollBar);
    setFixedWidth(wide);
}

void SpeakerColumn::fitScroll(Tab tab)
{
    // Only the notes have nothing in them that takes the focus and so brings itself into sight.
    QScrollArea* area = m_scrolls[tab];
    const bool scrolls = tab == StepTab && area->verticalScrollBar()->maximum() > 0;
    area->setFocusPolicy(scrolls ? Qt::TabFocus : Qt::NoFocus);
}

void SpeakerColumn::open(Tab tab)
{
    m_stack->setCurrentIndex(tab);
    for (std::size_t i = 0; i < m_tabs.size(); ++i)
        m_tabs[i]->setChecked(i == static_cast<std::size_t>(tab));
}

void SpeakerColumn::showState()
{
    const bool isReady = m_presenter.state().ready;
    for (QScrollArea* area : m_scrolls)
        area->widget()->setEnabled(isReady);
    m_notes->showState();
    m_body->showState();
    m_compare->showState();
    m_room->showState();
    m_audience->showState();
    m_handouts->showState();
    if (m_fitted != siteOf(m_presenter.state().convention)) {
        m_fitted = siteOf(m_presenter.state().convention);
        fit();
    }
    m_notice->showFault(m_presenter.state().notice);
}

void SpeakerColumn::showFrame() { m_body->showBody(); }

void SpeakerColumn::tell(const QString& sentence)
{
    m_told->setText(sentence);
    m_told->setVisible(!sentence.isEmpty());
}

void SpeakerColumn::useLibrary(const std::shared_ptr<const Library>& library)
{
    m_handouts->useLibrary(library);
}

void SpeakerColumn::useNotes(const Result<SpeakerNotes>& notes) { m_notes->useNotes(notes); }

void SpeakerColumn::setScheme(const Scheme& scheme)
{
    m_body->setScheme(scheme);
    m_room->setScheme(scheme);
    m_notice->setScheme(scheme);
}

void SpeakerColumn::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fit();
}

void SpeakerColumn::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    // What it is made of follows a moment later.
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        QMetaObject::invokeMethod(this, &SpeakerColumn::fit, Qt::QueuedConnection);
}

}  // namespace fb
