#include "app/practice/by_hand_column.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/build_panel.h"
#include "app/practice/by_hand_presenter.h"
#include "app/practice/feel_panel.h"
#include "app/practice/parts.h"
#include "app/practice/watch_panel.h"
#include "app/words/build_words.h"

namespace fb {

ByHandColumn::ByHandColumn(ByHandPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_instruction(parts::text(this, "stageInstruction", "small")),
      m_feel(new FeelPanel(this)),
      m_build(new BuildPanel(this)),
      m_watch(new WatchPanel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    for (QWidget* part : std::initializer_list<QWidget*>{m_instruction, m_feel, m_build, m_watch})
        column->addWidget(part);
    connectAll(presenter);
}

void ByHandColumn::connectAll(ByHandPresenter& presenter)
{
    ByHandPresenter* to = &presenter;
    connect(m_feel, &FeelPanel::plantAsked, to, &ByHandPresenter::plant);
    connect(m_feel, &FeelPanel::pullOutAsked, to, &ByHandPresenter::pullOut);
    connect(m_build, &BuildPanel::handChosen, to, &ByHandPresenter::chooseHand);
    connect(m_build, &BuildPanel::fingersChosen, to, &ByHandPresenter::chooseFingers);
    connect(m_build, &BuildPanel::cellChosen, to, &ByHandPresenter::chooseCell);
    connect(m_build, &BuildPanel::handleChosen, to, &ByHandPresenter::hold);
    connect(m_watch, &WatchPanel::stepAsked, to, &ByHandPresenter::showStep);
    connect(m_watch, &WatchPanel::closeAsked, to, &ByHandPresenter::endWatching);
}

void ByHandColumn::showState(const PracticeState& state)
{
    const bool shown = state.byHand && !state.choosingReason && state.phase != Phase::PickingSide;
    setVisible(shown);
    const bool watching = shown && state.byHand->watching;
    m_watch->setVisible(watching);
    m_watch->showState(state);
    if (!shown)
        return;
    const ByHandStage stage = state.byHand->stage;
    m_instruction->setVisible(!watching && stage != ByHandStage::Building);
    m_instruction->setText(stageInstruction(stage, state.convention));
    m_feel->setVisible(!watching && stage == ByHandStage::Feeling);
    m_build->setVisible(!watching && stage == ByHandStage::Building);
    m_feel->showState(state);
    m_build->showState(state);
}

void ByHandColumn::showFelt(const PracticeState& state) { m_feel->showFelt(state); }

void ByHandColumn::showBuilt(const PracticeState& state) { m_build->showState(state); }

void ByHandColumn::setScheme(const Scheme& scheme) { m_build->setScheme(scheme); }

void ByHandColumn::plantOrAskName() { m_feel->plantOrAskName(); }

bool ByHandColumn::takesFocus(const PracticeState& state)
{
    if (!state.byHand)
        return false;
    if (state.byHand->watching) {
        m_watch->focusFirst();
        return true;
    }
    if (state.byHand->stage == ByHandStage::Building && state.byHand->asksChoice) {
        m_build->focusChoice();
        return true;
    }
    return false;
}

}  // namespace fb
