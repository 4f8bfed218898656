#include "app/records/replay_view.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>

#include "app/canvas/plate_view.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/by_hand_panel.h"
#include "app/practice/by_hand_plate.h"
#include "app/practice/grade_panel.h"
#include "app/practice/parts.h"
#include "app/practice/plate_bar.h"
#include "app/practice/request_panel.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"
#include "app/words/check_off_words.h"
#include "app/words/grade_words.h"

namespace fb {

namespace replay_view_detail {

constexpr int kColumnWidth = 368;
constexpr int kReplayIcon = 20;

// Where to look: the construction and, where there is one, the mark.
QRectF areaOf(const PracticeState& shown)
{
    const Target& target = *shown.target;
    if (shown.graded && shown.graded->byHand)
        return gradedByHandArea(target, *shown.graded, Builder::from(*shown.policy));
    const bool marked = shown.graded && !shown.graded->refusal;
    return closeUpOf(target, marked ? shown.graded->mark : target.ideal);
}

}  // namespace replay_view_detail

using namespace replay_view_detail;

ReplayView::ReplayView(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_plate(new PlateView(this)),
      m_bar(new PlateBar(this)),
      m_back(parts::button(this, "replayBack")),
      m_counter(parts::text(this, "replayCounter", "small")),
      m_request(new RequestPanel(this)),
      m_recordedName(parts::text(this, "replayRecordedName", "small")),
      m_icon(new QLabel(this)),
      m_recorded(parts::text(this, "replayRecorded")),
      m_note(parts::text(this, "replayNote", "small")),
      m_grade(new GradePanel(this)),
      m_byHand(new ByHandPanel(this)),
      m_before(parts::button(this, "replayBefore")),
      m_next(parts::button(this, "replayNext"))
{
    m_plate->setObjectName(QStringLiteral("replayPlate"));
    m_plate->setMarkable(false);
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    // A record is looked at in the view it was given in.
    m_bar->findChild<QToolButton*>(QStringLiteral("companion"))->hide();
    layOut();
    say();
    connect(m_back, &QPushButton::clicked, &m_presenter, &RecordsPresenter::back);
    connect(m_before, &QPushButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { step(1); });
    connect(m_bar, &PlateBar::peelToggled, this, &ReplayView::peel);
    connect(m_bar, &PlateBar::zoomAsked, m_plate, &PlateView::zoomBy);
    connect(m_bar, &PlateBar::wholeAsked, m_plate, &PlateView::showWhole);
}

void ReplayView::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kMargin);
    auto* stage = new QVBoxLayout;
    stage->setSpacing(space::kNear);
    stage->addWidget(m_plate, 1);
    stage->addWidget(m_bar);
    row->addLayout(stage, 1);
    row->addWidget(column());
}

QWidget* ReplayView::column()
{
    m_column = new QWidget(this);
    auto* rows = new QVBoxLayout(m_column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kApart);
    rows->addWidget(m_back, 0, Qt::AlignLeading);
    auto* content = new QWidget;
    auto* words = new QVBoxLayout(content);
    words->setContentsMargins(0, 0, 0, 0);
    words->setSpacing(space::kNear);
    words->addWidget(m_counter);
    words->addWidget(m_request);
    words->addWidget(parts::rule(content));
    words->addWidget(m_recordedName);
    auto* recorded = new QHBoxLayout;
    recorded->setSpacing(space::kNear);
    recorded->addWidget(m_icon, 0, Qt::AlignTop);
    recorded->addWidget(m_recorded, 1);
    words->addLayout(recorded);
    words->addWidget(m_note);
    words->addWidget(parts::rule(content));
    words->addWidget(m_byHand);
    words->addWidget(m_grade);
    words->addStretch(1);
    auto* scroll = new QScrollArea(m_column);
    scroll->setObjectName(QStringLiteral("replayScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    parts::followFocus(scroll);
    rows->addWidget(scroll, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_before, 1);
    buttons->addWidget(m_next, 1);
    rows->addLayout(buttons);
    return m_column;
}

void ReplayView::say()
{
    parts::say(m_back, tr("Back to the check-off"));
    //: An answer of the same check-off.
    parts::say(m_before, tr("Answer before"));
    parts::say(m_next, tr("Next answer"));
    m_plate->setAccessibleName(tr("Plate with the recorded answer"));
    //: What was kept when the check-off was signed.
    m_recordedName->setText(tr("As recorded"));
}

void ReplayView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange)
        return;
    say();
    if (m_shown)
        showReplay();
}

void ReplayView::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_plate->setScheme(scheme);
    m_bar->setScheme(scheme);
    m_grade->setScheme(scheme);
    m_byHand->setScheme(scheme);
    if (m_shown)
        showReplay();
}

void ReplayView::showState(const RecordsState& state)
{
    if (!state.item || !state.opened)
        return;
    m_item = *state.item;
    m_answers = static_cast<int>(state.opened->run.answers().size());
    m_before->setEnabled(m_item > 0);
    m_next->setEnabled(m_item + 1 < m_answers);
    if (!state.replay || state.replay == m_shown)
        return;
    const bool isNew = !m_shown || m_shown->item != state.replay->item ||
                       m_shown->shown.picture != state.replay->shown.picture;
    m_shown = state.replay;
    if (isNew)
        m_layers = allLayers();
    showReplay();
    if (isNew && m_shown->shown.picture)
        m_plate->showAround(areaOf(m_shown->shown));
}

void ReplayView::showReplay()
{
    m_column->setFixedWidth(parts::columnWidth(this, kColumnWidth));
    const QLocale locale;
    //: %1 number of an item, %2 how many there are.
    m_counter->setText(
        tr("Item %1 of %2").arg(locale.toString(m_shown->item + 1), locale.toString(m_shown->items)));
    PracticeState shown = m_shown->shown;
    shown.layers = m_layers;
    shown.exam = true;  // items are counted here
    m_request->showState(shown);
    m_bar->showState(shown);
    m_bar->setEnabled(shown.picture != nullptr);
    sayRecorded();
    showPlate();
    showGrade();
}

void ReplayView::showPlate()
{
    const PracticeState& shown = m_shown->shown;
    m_plate->setVisible(shown.picture != nullptr);
    if (!shown.picture)
        return;
    m_plate->setPicture(shown.picture);
    m_plate->setScene(shown.scene);
    const bool marked = shown.graded && !shown.graded->refusal;
    m_plate->setMark(marked ? std::optional(QPointF(shown.graded->mark.x, shown.graded->mark.y))
                            : std::nullopt);
    m_plate->setLayers(m_layers);
    m_plate->setHand(isRuledOut(*shown.request) ? nullptr : shown.hand);
    showHands(*m_plate, shown);
}

// What is graded again is shown only where it comes to what was recorded.
void ReplayView::showGrade()
{
    const PracticeState& shown = m_shown->shown;
    const bool graded = shown.graded && m_shown->sameGrade;
    m_grade->setVisible(graded);
    const bool byHand = graded && shown.graded->byHand;
    m_byHand->setVisible(byHand);
    if (graded)
        m_grade->showAttempt(*shown.graded, *shown.target);
    if (byHand)
        m_byHand->showAttempt(*shown.graded, *shown.target, *shown.policy);
}

void ReplayView::sayRecorded()
{
    const Answer& answer = m_shown->recorded;
    const QString finding = answerFinding(answer);
    const bool marked = !answer.timeUp && !answer.refusal;
    //: What was recorded of an answer: %1 the verdict, %2 how far off it lay.
    m_recorded->setText(marked ? tr("%1: %2").arg(verdictName(answer.verdict), finding)
                               : parts::alone(finding));
    m_icon->setPixmap(pixmapFor(answer.timeUp ? Icon::NotDone : iconOf(answer.verdict),
                                answer.timeUp ? m_scheme.ink : colourOf(answer.verdict, m_scheme),
                                parts::scaled(this, kReplayIcon), devicePixelRatioF()));
    m_note->setText(note());
}

QString ReplayView::note() const
{
    if (m_shown->broken)
        return tr("This answer cannot be drawn any more; what was recorded stands.");
    if (m_shown->recorded.timeUp)
        return m_shown->sameDrawing ? QString()
                                    : tr("This program’s drawing differs from the one that was shown.");
    if (m_shown->sameDrawing)
        return m_shown->sameGrade
                   ? tr("Graded again on the same drawing it comes to the same.")
                   : tr("Graded again by this program it comes to something else; what was recorded stands.");
    return m_shown->sameGrade ? tr("This program’s drawing differs from the one this was graded on; graded "
                                   "again it comes to the same.")
                              : tr("This program’s drawing differs from the one this was graded on, and "
                                   "graded again it comes to something else; what was recorded stands, and "
                                   "the mark may not fit the picture.");
}

void ReplayView::peel(Peel peel, bool shown)
{
    const QSet<Layer> layers = layersOf(peel);
    if (shown)
        m_layers.unite(layers);
    else
        m_layers.subtract(layers);
    showReplay();
}

void ReplayView::step(int delta) { m_presenter.replay(m_item + delta); }

void ReplayView::focusFirst() { (m_next->isEnabled() ? m_next : m_back)->setFocus(); }

}  // namespace fb
