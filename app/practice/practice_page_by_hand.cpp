// The page while a site is found by hand, and after it: see practice_page.h.
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/practice/by_hand_bar.h"
#include "app/practice/by_hand_column.h"
#include "app/practice/by_hand_panel.h"
#include "app/practice/by_hand_plate.h"
#include "app/practice/grade_panel.h"
#include "app/practice/parts.h"
#include "app/practice/plate_bar.h"
#include "app/practice/practice_page.h"
#include "app/practice/stage_rail.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"

namespace fb {

namespace page_by_hand_detail {

// Dressed as the page's main button or as one beside it.
void dress(QPushButton* button, bool main)
{
    const QString look = main ? QStringLiteral("main") : QString();
    if (button->property("look").toString() == look)
        return;
    button->setProperty("look", look);
    button->style()->unpolish(button);
    button->style()->polish(button);
}

}  // namespace page_by_hand_detail

void PracticePage::connectByHand()
{
    ByHandPresenter* to = &m_presenter.byHand();
    connect(m_rail, &StageRail::stageAsked, to, &ByHandPresenter::goTo);
    const ByHandBar* bar = &m_bar->hand();
    connect(bar, &ByHandBar::undoAsked, to, &ByHandPresenter::undo);
    connect(bar, &ByHandBar::redoAsked, to, &ByHandPresenter::redo);
    connect(bar, &ByHandBar::clearAsked, to, &ByHandPresenter::clearStage);
    connect(bar, &ByHandBar::watchAsked, to, &ByHandPresenter::watch);
    connect(m_goOnButton, &QPushButton::clicked, this, &PracticePage::goOn);
    connect(m_plate, &PlateView::undoAsked, to, &ByHandPresenter::undo);
    connect(m_plate, &PlateView::redoAsked, to, &ByHandPresenter::redo);
    connect(m_plate, &PlateView::pressed, to, &ByHandPresenter::feel);
    connect(m_plate, &PlateView::lifted, to, &ByHandPresenter::lift);
    connect(m_plate, &PlateView::handleGrabbed, to, [to](int id) { to->grab(static_cast<Handle>(id)); });
    connect(m_plate, &PlateView::handleMoved, to,
            [to](int id, QPointF cm) { to->move(static_cast<Handle>(id), cm); });
    connect(m_plate, &PlateView::handleReleased, to, &ByHandPresenter::letGo);
    connect(m_plate, &PlateView::handleStepped, to, &ByHandPresenter::stepHandle);
    // A flag planted, the hand goes back to the skin.
    connect(to, &ByHandPresenter::planted, m_plate, qOverload<>(&QWidget::setFocus));
    // What changes many times a second is shown without the rest of the page.
    connect(to, &ByHandPresenter::felt, this, [this] {
        showPress(*m_plate, m_presenter.state());
        m_byHand->showFelt(m_presenter.state());
        keepHandInSight();
    });
    connect(m_scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this, &PracticePage::keepHandInSight);
    connect(to, &ByHandPresenter::handled, this, [this] {
        m_plate->setScene(m_presenter.state().scene);
        showBuild(*m_plate, m_presenter.state());
    });
}

void PracticePage::takeMark(QPointF cm)
{
    switch (m_presenter.state().phase) {
    case Phase::Feeling:
        m_presenter.byHand().feel(cm);
        m_byHand->plantOrAskName();
        break;
    case Phase::Building: m_presenter.byHand().place(cm); break;
    default: m_presenter.placeMark(cm); break;
    }
}

void PracticePage::goOn()
{
    const auto& byHand = m_presenter.state().byHand;
    if (byHand)
        m_presenter.byHand().goTo(byHand->stage == ByHandStage::Feeling ? ByHandStage::Building
                                                                        : ByHandStage::Marking);
}

void PracticePage::showByHand(const PracticeState& state)
{
    const bool shown = state.byHand && state.phase != Phase::PickingSide;
    m_rail->setVisible(shown);
    const bool open = state.keeping == Keeping::Open;
    m_rail->setEnabled(shown && open && !state.choosingReason && !state.byHand->watching);
    m_rail->showState(state);
    m_byHand->showState(state);
    m_byHand->setEnabled(open);
    showHands(*m_plate, state);
    m_plate->setAccessibleName(plateName(state));
    lookClose(state);
    const bool goesOn = shown && open && !state.choosingReason && !state.byHand->watching &&
                        state.byHand->stage != ByHandStage::Marking;
    m_goOnButton->setVisible(goesOn);
    const bool feeling = state.phase == Phase::Feeling;
    parts::say(m_goOnButton, feeling ? tr("Go on to build") : tr("Go on to mark"));
    if (!goesOn)
        return;
    // While flags are planted, planting is the main thing.
    page_by_hand_detail::dress(m_goOnButton, state.byHand->isDone(state.byHand->stage) && !feeling);
}

// Where letters are large the column is longer than the window. A request is read from its top; once the
// finger has pressed, what names, builds and shows is what the learner needs to see.
void PracticePage::keepHandInSight()
{
    const auto& byHand = m_presenter.state().byHand;
    if (!byHand || m_byHand->isHidden())
        return;
    QScrollBar* bar = m_scroll->verticalScrollBar();
    if (byHand->stage == ByHandStage::Feeling && !byHand->finger && !byHand->watching)
        return bar->setValue(0);
    const int top = m_byHand->mapTo(m_scroll->widget(), QPoint()).y();
    const int bottom = top + m_byHand->height();
    const int view = m_scroll->viewport()->height();
    if (top < bar->value() || bottom > bar->value() + view)
        bar->setValue(std::min(top, bottom - view));
}

// Feeling is done on the whole plate, building close to where the landmarks were found; the showing is
// looked at close to the site, and then the learner is back where he was.
void PracticePage::lookClose(const PracticeState& state)
{
    const bool shown = state.byHand && state.phase != Phase::PickingSide;
    const bool watching = shown && state.byHand->watching;
    const auto stage = shown ? std::optional(state.byHand->stage) : std::nullopt;
    const bool begins =
        stage != m_shownStage && (stage == ByHandStage::Feeling || m_shownStage == ByHandStage::Feeling);
    const bool moves = watching != m_watchedClose || begins;
    m_watchedClose = watching;
    m_shownStage = stage;
    if (!shown || !moves)
        return;
    if (watching)
        m_plate->showAround(watchArea(*state.target));
    else if (stage == ByHandStage::Feeling)
        m_plate->showWhole();
    else
        m_plate->showAround(workArea(state));
}

QString PracticePage::plateName(const PracticeState& state) const
{
    switch (state.phase) {
    case Phase::Feeling: return tr("Plate: press here to feel what lies under the skin");
    case Phase::Building: return tr("Plate: build the site here");
    default: return tr("Plate: mark the place here");
    }
}

void PracticePage::showByHandFeedback(const PracticeState& state)
{
    const bool found = state.graded && state.graded->byHand;
    if (found && !m_byHandGrade) {
        m_byHandGrade = new ByHandPanel(m_grade->parentWidget());
        m_byHandGrade->setScheme(m_scheme);
        m_words->insertWidget(m_words->indexOf(m_grade), m_byHandGrade);
    }
    if (!m_byHandGrade)
        return;
    if (found && m_byHandGrade->isHidden())
        m_scroll->verticalScrollBar()->setValue(0);  // a grade is read from its top as well
    m_byHandGrade->setVisible(found);
    if (found)
        m_byHandGrade->showAttempt(*state.graded, *state.target, *state.policy);
}

QRectF PracticePage::closeUp(const PracticeState& state) const
{
    if (state.graded->byHand)
        return gradedByHandArea(*state.target, *state.graded, Builder::from(*state.policy));
    return closeUpOf(*state.target, state.graded->mark);
}

}  // namespace fb
