// The three stages of finding a site by hand in a row: which one is open, which are done. Each can
// be asked for by click or by Alt and its number.
#pragma once

#include <QWidget>
#include <array>

#include "app/practice/practice_state.h"

class QToolButton;

namespace fb {

class StageRail : public QWidget {
    Q_OBJECT

public:
    explicit StageRail(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // nothing happens where nothing is found by hand
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void stageAsked(ByHandStage stage);

private:
    std::array<QToolButton*, kByHandStageCount> m_stages{};
    Scheme m_scheme;
};

}  // namespace fb
