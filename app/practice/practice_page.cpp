#include "app/practice/practice_page.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedLayout>
#include <QToolButton>

#include "app/canvas/side_picker.h"
#include "app/look/style.h"
#include "app/practice/by_hand_column.h"
#include "app/practice/by_hand_panel.h"
#include "app/practice/companion_panel.h"
#include "app/practice/grade_panel.h"
#include "app/practice/notice.h"
#include "app/practice/parts.h"
#include "app/practice/plate_bar.h"
#include "app/practice/refusal_panel.h"
#include "app/practice/request_panel.h"
#include "app/practice/run_dialog.h"
#include "app/practice/stage_rail.h"
#include "app/practice/summary_page.h"
#include "app/practice/why_panel.h"

namespace fb {

namespace practice_page_layout {

constexpr int kRing = 6;  // px between a plate's widget and its paper

}  // namespace practice_page_layout

PracticePage::PracticePage(PracticePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_practising(new QWidget(this)),
      m_plate(new PlateView(m_practising)),
      m_bar(new PlateBar(m_practising)),
      m_rail(new StageRail(m_practising)),
      m_request(new RequestPanel),
      m_hint(parts::text(m_practising, "hint")),
      m_byHand(new ByHandColumn(presenter.byHand(), m_practising)),
      m_refusal(new RefusalPanel(m_practising)),
      m_grade(new GradePanel(m_practising)),
      m_whyButton(parts::toggle(m_practising, "why")),
      m_notice(new Notice(this)),
      m_goOnButton(parts::button(m_practising, "goOn")),
      m_gradeButton(parts::mainButton(m_practising, "grade")),
      m_refuseButton(parts::button(m_practising, "notHere")),
      m_confirmButton(parts::mainButton(m_practising, "confirmNotHere")),
      m_withdrawButton(parts::button(m_practising, "withdraw")),
      m_backButton(parts::button(m_practising, "backToPlate")),
      m_nextButton(parts::mainButton(m_practising, "next"))
{
    m_plate->setObjectName(QStringLiteral("plate"));
    layOut();
    connectAll();
    connectByHand();
    say();
    showState();
}

void PracticePage::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    m_pages = new QStackedLayout;
    rows->addLayout(m_pages, 1);
    rows->addWidget(m_notice);
    m_notice->setContentsMargins(space::kMargin, 0, space::kMargin, space::kNear);
    auto* row = new QHBoxLayout(m_practising);
    row->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    row->setSpacing(space::kMargin);
    row->addWidget(stage(), 1);
    row->addWidget(column());
    m_pages->addWidget(m_practising);
}

QWidget* PracticePage::stage()
{
    auto* whole = new QWidget(m_practising);
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    m_plates = new QWidget(whole);
    auto* beside = new QHBoxLayout(m_plates);
    beside->setContentsMargins(0, 0, 0, 0);
    beside->setSpacing(space::kApart);
    constexpr int kShare = 3;
    beside->addWidget(m_plate, kShare);
    m_stage = new QStackedLayout;
    m_stage->addWidget(m_plates);
    rows->addLayout(m_stage, 1);
    // The plate keeps room for its focus ring; what stands beside it keeps in line.
    m_bar->setContentsMargins(practice_page_layout::kRing, 0, practice_page_layout::kRing, 0);
    rows->addWidget(m_bar);
    return whole;
}

QWidget* PracticePage::column()
{
    m_column = new QWidget(m_practising);
    auto* rows = new QVBoxLayout(m_column);
    rows->setContentsMargins(0, practice_page_layout::kRing, 0, 0);
    rows->setSpacing(space::kApart);

    rows->addWidget(m_rail);
    auto* content = new QWidget;
    m_words = new QVBoxLayout(content);
    m_words->setContentsMargins(0, 0, 0, 0);
    m_words->setSpacing(space::kApart);
    m_words->addWidget(m_request);
    m_words->addWidget(parts::rule(content));
    m_words->addWidget(m_byHand);
    m_words->addWidget(m_hint);
    m_words->addWidget(m_refusal);
    m_words->addWidget(m_grade);
    m_words->addWidget(m_whyButton, 0, Qt::AlignLeading);
    m_words->addStretch(1);
    m_scroll = new QScrollArea(m_column);
    m_scroll->setObjectName(QStringLiteral("columnScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(content);
    parts::followFocus(m_scroll);
    connect(m_scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &PracticePage::scrollToWhy);
    rows->addWidget(m_scroll, 1);

    rows->addLayout(buttons());
    return m_column;
}

QLayout* PracticePage::buttons()
{
    auto* rows = new QVBoxLayout;
    rows->setSpacing(space::kNear);
    auto* first = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    for (QHBoxLayout* row : {first, second}) {
        row->setSpacing(space::kNear);
        rows->addLayout(row);
    }
    for (QPushButton* button : {m_goOnButton, m_gradeButton, m_refuseButton, m_confirmButton, m_nextButton})
        first->addWidget(button, 1);
    second->addWidget(m_withdrawButton, 1);
    second->addWidget(m_backButton, 1);
    return rows;
}

void PracticePage::connectAll()
{
    PracticePresenter* to = &m_presenter;
    connect(to, &PracticePresenter::changed, this, &PracticePage::showState);
    connect(m_plate, &PlateView::marked, this, &PracticePage::takeMark);
    connect(m_plate, &PlateView::withdrawAsked, to, &PracticePresenter::withdrawMark);
    connect(m_plate, &PlateView::gradeAsked, to, &PracticePresenter::grade);
    connect(m_gradeButton, &QPushButton::clicked, to, &PracticePresenter::grade);
    connect(m_withdrawButton, &QPushButton::clicked, to, &PracticePresenter::withdrawMark);
    connect(m_nextButton, &QPushButton::clicked, to, &PracticePresenter::next);
    connect(m_refuseButton, &QPushButton::clicked, to, [to] { to->chooseReason(true); });
    connect(m_backButton, &QPushButton::clicked, to, [to] { to->chooseReason(false); });
    connect(m_confirmButton, &QPushButton::clicked, this, &PracticePage::refuse);
    connect(m_refusal, &RefusalPanel::reasonChosen, this, [this] { m_confirmButton->setEnabled(true); });
    connect(m_notice, &Notice::dismissed, to, &PracticePresenter::dismissNotice);
    connect(m_bar, &PlateBar::peelToggled, to, &PracticePresenter::setPeelShown);
    connect(m_bar, &PlateBar::companionToggled, to, &PracticePresenter::setCompanionShown);
    connect(m_bar, &PlateBar::zoomAsked, m_plate, &PlateView::zoomBy);
    connect(m_bar, &PlateBar::wholeAsked, m_plate, &PlateView::showWhole);
    connect(m_whyButton, &QToolButton::toggled, this, &PracticePage::showWhy);
}

void PracticePage::say()
{
    parts::say(m_withdrawButton, tr("Withdraw mark"));
    //: Opens the convention's rule and its source.
    parts::say(m_whyButton, tr("Why"));
    m_whyButton->setToolButtonStyle(Qt::ToolButtonTextOnly);
    //: The site must not be used on this patient; opens a choice of reasons.
    parts::say(m_refuseButton, tr("Not here…"));
    parts::say(m_confirmButton, tr("Confirm: not here"));
    parts::say(m_backButton, tr("Back to the plate"));
}

void PracticePage::scrollToWhy()
{
    if (m_followsWhy)
        m_scroll->verticalScrollBar()->setValue(m_whyButton->mapTo(m_scroll->widget(), QPoint()).y());
}

void PracticePage::refuse()
{
    if (const auto reason = m_refusal->reason())
        m_presenter.refuse(*reason);
}

void PracticePage::askNewRun()
{
    if (!m_presenter.labPolicy())
        return;
    auto* dialog = new RunDialog(m_presenter, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &RunDialog::handAsked, this, [this, dialog] { Q_EMIT handAsked(dialog); });
    dialog->open();
}

void PracticePage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_plate->setScheme(scheme);
    m_bar->setScheme(scheme);
    m_grade->setScheme(scheme);
    m_rail->setScheme(scheme);
    m_byHand->setScheme(scheme);
    if (m_byHandGrade)
        m_byHandGrade->setScheme(scheme);
    m_notice->setScheme(scheme);
    if (m_companion)
        m_companion->setScheme(scheme);
    if (m_sidePicker)
        m_sidePicker->setScheme(scheme);
    if (m_summary)
        m_summary->setScheme(scheme);
}

void PracticePage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_presenter.state().choosingReason)
        m_presenter.chooseReason(false);
    else
        QWidget::keyPressEvent(event);
}

void PracticePage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        m_presenter.retranslate();
    } else if (event->type() == QEvent::FontChange && m_column) {
        setScheme(m_scheme);
        showState();
    }
}

}  // namespace fb
