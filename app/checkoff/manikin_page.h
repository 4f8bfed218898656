// The assessor's page on the manikin: the observed steps on one side, the column on the other. Shows the
// presenter's state and passes on what is pressed; everything can be done by keyboard alone:
//
//   1 done, 2 prompted, 3 not done (the same again takes it back), R remark, up and down between steps,
//   Home and End, page up and down for what stands beside them, the space bar for the stopwatch wherever the
//   focus is.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_presenter.h"
#include "app/checkoff/in_turn.h"
#include "app/look/palette.h"

namespace fb {

class ManikinColumn;
class StepList;

class ManikinPage : public QWidget {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit ManikinPage(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void connectList();
    void connectColumn();
    void addKeys();
    void showState();
    void showTimes();
    void fit();
    void finish();
    void stopForSafety();
    void voidTechnical();
    void pause();

    CheckOffPresenter& m_presenter;
    InTurn m_turn;
    bool m_wasPaused = false;
    bool m_laidOut = false;  // fonts change before that
    Scheme m_scheme;
    StepList* m_list;
    ManikinColumn* m_column;
};

}  // namespace fb
