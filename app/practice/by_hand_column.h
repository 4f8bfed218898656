// The words of a request that is found by hand: what there is to do in this stage, and the panel for
// it. The showing takes their place while it lasts.
#pragma once

#include <QWidget>

#include "app/practice/practice_state.h"

class QLabel;

namespace fb {

class BuildPanel;
class ByHandPresenter;
class FeelPanel;
class WatchPanel;

class ByHandColumn : public QWidget {
    Q_OBJECT

public:
    // The presenter outlives the column.
    explicit ByHandColumn(ByHandPresenter& presenter, QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // hidden where nothing is found by hand
    void showFelt(const PracticeState& state);
    void showBuilt(const PracticeState& state);
    void setScheme(const Scheme& scheme);
    // With a name at hand a flag is planted where the finger is; else the name has the focus.
    void plantOrAskName();
    // To where the keys are wanted in this stage; false: on the plate.
    [[nodiscard]] bool takesFocus(const PracticeState& state);

private:
    void connectAll(ByHandPresenter& presenter);

    QLabel* m_instruction;
    FeelPanel* m_feel;
    BuildPanel* m_build;
    WatchPanel* m_watch;
};

}  // namespace fb
