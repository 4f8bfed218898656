// From the presenter's state to the widgets: see practice_page.h.
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedLayout>
#include <QToolButton>

#include "app/canvas/side_picker.h"
#include "app/practice/grade_panel.h"
#include "app/practice/notice.h"
#include "app/practice/parts.h"
#include "app/practice/plate_bar.h"
#include "app/practice/practice_page.h"
#include "app/practice/request_panel.h"
#include "app/practice/summary_page.h"
#include "app/practice/why_panel.h"
#include "app/scene/target_scene.h"

namespace fb {

namespace practice_page_detail {

constexpr int kColumnWidth = 368;  // px at 100 percent text

}  // namespace practice_page_detail

void PracticePage::showState()
{
    const PracticeState& state = m_presenter.state();
    m_practising->setEnabled(state.ready);
    m_bar->showState(state);
    showPlates(state);
    showColumn(state);
    showSummary(state);
    const int request = state.request ? state.request->number : -1;
    if (state.phase != Phase::Graded)
        m_followsWhy = false;
    if (state.ready && (m_shownPhase != state.phase || m_shownRequest != request)) {
        m_shownPhase = state.phase;
        m_shownRequest = request;
        focusFor(state.phase);
    }
}

void PracticePage::showPlates(const PracticeState& state)
{
    const bool asksSide = state.ready && state.phase == Phase::PickingSide;
    if (asksSide && !m_sidePicker)
        makeSidePicker();
    if (asksSide)
        m_sidePicker->setFirst(state.firstFigure);
    m_stage->setCurrentWidget(asksSide ? static_cast<QWidget*>(m_sidePicker) : m_plates);
    m_bar->setVisible(!asksSide);
    if (state.picture)
        m_plate->setPicture(state.picture);
    m_plate->setMarkable(state.phase == Phase::Marking);
    m_plate->setScene(state.scene);
    m_plate->setMark(state.graded ? QPointF(state.graded->mark.x, state.graded->mark.y) : state.mark);
    m_plate->setLayers(state.layers);
    // Feedback is read from close by; the paper is laid whole again with the next request.
    const Picture* graded = state.graded ? state.picture.get() : nullptr;
    if (graded && graded != m_closeUp)
        m_plate->showAround(closeUpOf(*state.target, state.graded->mark));
    m_closeUp = graded;
    if (state.companionShown && !m_companion)
        makeCompanion();
    if (!m_companion)
        return;
    m_companion->setVisible(state.companionShown);
    if (state.companion)
        m_companion->setPicture(state.companion);
    m_companion->setScene(state.companionScene);
    m_companion->setLayers(state.layers);
}

void PracticePage::showColumn(const PracticeState& state)
{
    m_column->setFixedWidth(parts::columnWidth(this, practice_page_detail::kColumnWidth));
    m_request->showState(state);
    m_hint->setText(hintText(state));
    m_hint->setVisible(!state.graded);
    m_grade->setVisible(state.graded.has_value());
    if (state.graded)
        m_grade->showAttempt(*state.graded);
    m_whyButton->setVisible(state.graded.has_value());
    const bool why = state.graded && m_whyButton->isChecked();
    if (why && !m_why) {
        m_why = new WhyPanel(m_grade->parentWidget());
        m_words->insertWidget(m_words->indexOf(m_whyButton) + 1, m_why);
        connect(m_why, &WhyPanel::otherToggled, &m_presenter, &PracticePresenter::setOtherShown);
    }
    if (m_why) {
        m_why->setVisible(why);
        m_why->showState(state);
    }
    m_notice->showFault(state.notice);
    m_gradeButton->setVisible(!state.graded);
    m_gradeButton->setEnabled(state.mark.has_value());
    m_withdrawButton->setVisible(!state.graded);
    m_withdrawButton->setEnabled(state.mark.has_value());
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
        return left ? tr("Not that one. The figure faces you: its left arm is on your right. Pick again.")
                    : tr("Not that one. The figure faces you: its right arm is on your left. Pick again.");
    }
    if (state.phase == Phase::PickingSide) {
        return left ? tr("First pick the figure that shows the patient's left arm.")
                    : tr("First pick the figure that shows the patient's right arm.");
    }
    if (state.mark)
        return tr("The mark can still be moved or withdrawn. Grade it when you are sure.");
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
    }
    if (atEnd)
        m_summary->showState(state);
    m_pages->setCurrentWidget(atEnd ? static_cast<QWidget*>(m_summary) : m_practising);
}

void PracticePage::focusFor(Phase phase)
{
    switch (phase) {
    case Phase::PickingSide: m_sidePicker->setFocus(); break;
    case Phase::Marking: m_plate->setFocus(); break;
    case Phase::Graded: m_nextButton->setFocus(); break;
    case Phase::Summary: m_summary->focusFirst(); break;
    }
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
    m_companion = new PlateView(m_plates);
    m_companion->setObjectName(QStringLiteral("companionPlate"));
    m_companion->setAccessibleName(tr("Other view, to look at only"));
    m_companion->setMarkable(false);
    m_companion->setScheme(m_scheme);
    static_cast<QHBoxLayout*>(m_plates->layout())->addWidget(m_companion, kShare);
}

}  // namespace fb
