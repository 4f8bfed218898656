// From the presenter's state to the widgets: see practice_page.h.
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedLayout>
#include <QToolButton>

#include "app/canvas/side_picker.h"
#include "app/practice/by_hand_column.h"
#include "app/practice/by_hand_plate.h"
#include "app/practice/companion_panel.h"
#include "app/practice/grade_panel.h"
#include "app/practice/notice.h"
#include "app/practice/parts.h"
#include "app/practice/plate_bar.h"
#include "app/practice/practice_page.h"
#include "app/practice/refusal_panel.h"
#include "app/practice/request_panel.h"
#include "app/practice/summary_page.h"
#include "app/practice/why_panel.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"

namespace fb {

namespace practice_page_detail {

constexpr int kColumnWidth = 368;  // px at 100 percent text
constexpr double kWide = 1.7;      // a plate's breadth over its height

}  // namespace practice_page_detail

void PracticePage::showState()
{
    const PracticeState& state = m_presenter.state();
    m_practising->setEnabled(state.ready);
    m_bar->showState(state);
    showPlates(state);
    showColumn(state);
    showByHand(state);
    showSummary(state);
    const int request = state.request ? state.request->number : -1;
    if (state.phase != Phase::Graded)
        m_followsWhy = false;
    const bool watching = state.byHand && state.byHand->watching;
    const bool asksChoice = state.byHand && state.byHand->asksChoice;
    const bool isNew = m_shownPhase != state.phase || m_shownRequest != request ||
                       m_shownChoosing != state.choosingReason || m_shownWatching != watching ||
                       m_askedChoice != asksChoice;
    if (state.ready && isNew) {
        m_shownPhase = state.phase;
        m_shownRequest = request;
        m_shownChoosing = state.choosingReason;
        m_shownWatching = watching;
        m_askedChoice = asksChoice;
        focusFor(state);
    }
    showSaving(state);
}

void PracticePage::showPlates(const PracticeState& state)
{
    const bool asksSide = state.ready && state.phase == Phase::PickingSide;
    if (asksSide && !m_sidePicker)
        makeSidePicker();
    if (asksSide) {
        m_sidePicker->setSite(state.request->site);
        m_sidePicker->setFirst(state.firstFigure);
    }
    m_stage->setCurrentWidget(asksSide ? static_cast<QWidget*>(m_sidePicker) : m_plates);
    m_bar->setVisible(!asksSide);
    if (state.picture)
        m_plate->setPicture(state.picture);
    const bool watching = state.byHand && state.byHand->watching;
    m_plate->setMarkable(isAnswering(state.phase) && !state.choosingReason && !watching);
    m_plate->setScene(state.scene);
    const bool hasMark = state.graded && !state.graded->refusal;
    const auto mark = watching ? std::nullopt : state.mark;
    m_plate->setMark(hasMark ? QPointF(state.graded->mark.x, state.graded->mark.y) : mark);
    m_plate->setLayers(state.layers);
    // Where the chart rules the site out no hand is laid.
    const bool laid = state.graded && !isRuledOut(state.graded->request);
    const bool shownHow = watching && watchLaysHand(*state.target, *state.byHand->watching);
    m_plate->setHand(laid || shownHow ? state.hand : nullptr);
    m_plate->setHandShown(state.handShown);
    // Feedback is read from close by; the paper is laid whole again with the next request.
    const Picture* graded = hasMark ? state.picture.get() : nullptr;
    if (graded && graded != m_closeUp)
        m_plate->showAround(closeUp(state));
    m_closeUp = graded;
    showCompanion(state);
}

void PracticePage::showCompanion(const PracticeState& state)
{
    if (state.companionShown && !m_companion)
        makeCompanion();
    if (!m_companion)
        return;
    const bool moves = m_companion->isHidden() == state.companionShown;
    if (state.picture) {
        // Two wide plates stand one above the other, two high ones side by side.
        const Bounds& paper = state.picture->plate->paper;
        const bool wide =
            paper.high.x - paper.low.x > practice_page_detail::kWide * (paper.high.y - paper.low.y);
        static_cast<QBoxLayout*>(m_plates->layout())
            ->setDirection(wide ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
        m_companion->setBeside(wide);
    }
    m_companion->setVisible(state.companionShown);
    m_companion->showState(state);
    // What is looked at from close by stays in sight in the narrower or wider room.
    m_plates->layout()->activate();
    if (moves && m_closeUp)
        m_plate->showAround(closeUp(state));
}

void PracticePage::showColumn(const PracticeState& state)
{
    m_column->setFixedWidth(parts::columnWidth(this, practice_page_detail::kColumnWidth));
    m_request->showState(state);
    m_hint->setText(hintText(state));
    // What is found by hand has words of its own in every stage, but for the mark.
    const bool handed = state.byHand && (state.byHand->watching || state.phase == Phase::Feeling ||
                                         state.phase == Phase::Building);
    m_hint->setVisible(!state.graded && !state.choosingReason && !handed);
    m_refusal->setVisible(state.choosingReason);
    if (!state.choosingReason)
        m_refusal->clear();
    showFeedback(state);
    showButtons(state);
    m_notice->showFault(state.notice);
}

void PracticePage::showFeedback(const PracticeState& state)
{
    showByHandFeedback(state);
    m_grade->setVisible(state.graded.has_value());
    if (state.graded)
        m_grade->showAttempt(*state.graded, *state.target);
    // Where the chart rules the site out there is no right place to explain.
    const bool explains = state.graded && !isRuledOut(state.graded->request);
    m_whyButton->setVisible(explains);
    const bool why = explains && m_whyButton->isChecked();
    if (why && !m_why) {
        m_why = new WhyPanel(m_grade->parentWidget());
        m_words->insertWidget(m_words->indexOf(m_whyButton) + 1, m_why);
        connect(m_why, &WhyPanel::otherToggled, &m_presenter, &PracticePresenter::setOtherShown);
        connect(m_why, &WhyPanel::handToggled, &m_presenter, &PracticePresenter::setHandShown);
    }
    if (m_why) {
        m_why->setVisible(why);
        m_why->showState(state);
    }
}

void PracticePage::showButtons(const PracticeState& state)
{
    const bool watching = state.byHand && state.byHand->watching;
    const bool answers = !state.graded && !state.choosingReason && !watching;
    const bool marks = answers && state.phase != Phase::Feeling && state.phase != Phase::Building;
    const bool open = state.keeping == Keeping::Open;
    //: In a check-off: the mark is what the student wants to be graded; nothing is told of it.
    parts::say(m_gradeButton, state.exam ? tr("Confirm") : tr("Grade"));
    m_gradeButton->setVisible(marks);
    // By hand a grade that is asked too early is told what is missing.
    m_gradeButton->setEnabled(open ? state.mark.has_value() || (marks && state.byHand)
                                   : state.keeping == Keeping::Failed);
    m_withdrawButton->setVisible(marks);
    m_withdrawButton->setEnabled(open && state.mark.has_value());
    m_refuseButton->setVisible(answers && state.setup.mix.findings);
    m_refuseButton->setEnabled(state.canRefuse);
    m_confirmButton->setVisible(state.choosingReason);
    m_confirmButton->setEnabled(m_refusal->reason().has_value());
    m_backButton->setVisible(state.choosingReason);
    m_nextButton->setVisible(state.graded.has_value());
    const bool last = state.request && state.request->number + 1 >= state.setup.length;
    parts::say(m_nextButton, last ? tr("Summary") : tr("Next request"));
}

void PracticePage::showWhy()
{
    m_followsWhy = m_whyButton->isChecked();
    showState();
}

QString PracticePage::hintText(const PracticeState& state) const
{
    if (!state.request)
        return {};
    const bool left = state.request->patient.side() == Side::Left;
    if (state.phase == Phase::PickingSide && state.pickedWrongSide) {
        return left ? tr("Not that one. The figure faces you: its left side is on your right. Pick again.")
                    : tr("Not that one. The figure faces you: its right side is on your left. Pick again.");
    }
    if (state.phase == Phase::PickingSide) {
        return left ? tr("First pick the figure that shows the patient's left side.")
                    : tr("First pick the figure that shows the patient's right side.");
    }
    if (state.keeping == Keeping::Saving)
        return tr("Saving…");
    if (state.keeping == Keeping::Failed)
        return tr("This answer is not saved yet. Press Confirm to try again.");
    if (state.mark) {
        return state.exam ? tr("The mark can still be moved or withdrawn. Confirm it when you are sure.")
                          : tr("The mark can still be moved or withdrawn. Grade it when you are sure.");
    }
    return tr("Click the place on the plate, or move the cross with the arrow keys and press Enter.");
}

void PracticePage::showSummary(const PracticeState& state)
{
    const bool atEnd = state.ready && state.phase == Phase::Summary;
    if (atEnd && !m_summary) {
        m_summary = new SummaryPage(this);
        m_summary->setScheme(m_scheme);
        m_pages->addWidget(m_summary);
        connect(m_summary, &SummaryPage::repeatAsked, &m_presenter, &PracticePresenter::repeatRun);
        connect(m_summary, &SummaryPage::newRunAsked, &m_presenter, &PracticePresenter::newRun);
        connect(m_summary, &SummaryPage::siteAsked, &m_presenter, &PracticePresenter::setRunSite);
    }
    if (atEnd)
        m_summary->showState(state);
    m_pages->setCurrentWidget(atEnd ? static_cast<QWidget*>(m_summary) : m_practising);
}

void PracticePage::focusFor(const PracticeState& state)
{
    switch (state.phase) {
    case Phase::PickingSide: m_sidePicker->setFocus(); break;
    case Phase::Feeling:
    case Phase::Building:
    case Phase::Marking:
        if (state.choosingReason)
            m_refusal->focusFirst();
        else if (!m_byHand->takesFocus(state))
            m_plate->setFocus();
        break;
    case Phase::Graded:
        if (!state.exam)
            m_nextButton->setFocus();
        break;
    case Phase::Summary: m_summary->focusFirst(); break;
    }
}

// What could not be saved is tried again by the same key that confirmed it.
void PracticePage::showSaving(const PracticeState& state)
{
    if (m_shownKeeping != state.keeping && state.keeping == Keeping::Failed)
        m_gradeButton->setFocus();
    m_shownKeeping = state.keeping;
}

void PracticePage::takeKeys()
{
    if (m_presenter.state().ready)
        focusFor(m_presenter.state());
}

void PracticePage::makeSidePicker()
{
    m_sidePicker = new SidePicker(m_practising);
    m_sidePicker->setScheme(m_scheme);
    m_stage->addWidget(m_sidePicker);
    connect(m_sidePicker, &SidePicker::picked, &m_presenter, &PracticePresenter::pickSide);
}

void PracticePage::makeCompanion()
{
    constexpr int kShare = 2;
    m_companion = new CompanionPanel(m_plates);
    m_companion->setScheme(m_scheme);
    static_cast<QHBoxLayout*>(m_plates->layout())->addWidget(m_companion, kShare);
}

}  // namespace fb
