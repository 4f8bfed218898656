// What a check-off came to: the outcome in large words with its sign (that of the records, so that one
// outcome looks the same everywhere), the score against the cut, and every reason that stands against
// passing.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;

namespace fb {

class ScoreBar;

class OutcomePanel : public QWidget {
    Q_OBJECT

public:
    explicit OutcomePanel(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void setScheme(const Scheme& scheme);

private:
    void paint();

    Outcome m_outcome = Outcome::Pass;
    QLabel* m_who;
    QLabel* m_icon;
    QLabel* m_name;
    QLabel* m_sentence;
    QLabel* m_score;
    ScoreBar* m_bar;
    QLabel* m_reasons;
    Scheme m_scheme;
};

}  // namespace fb
