// What stands beside the steps on the manikin: who, how far, how long; the step that is due; the stopwatch;
// the orders broken so far; and what ends, stops or holds the phase.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QPushButton;
class QScrollArea;

namespace fb {

class BreachList;
class StepPanel;
class StepRow;
class Stopwatch;

class ManikinColumn : public QWidget {
    Q_OBJECT

public:
    explicit ManikinColumn(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void showTimes(const CheckOffState& state);  // and nothing else
    void showStep(const StepRow* row);
    void turnPage(bool down);  // where not all of it is in sight
    void setScheme(const Scheme& scheme);
    void say();

Q_SIGNALS:
    void seenPressed(fb::Seen seen);
    void remarkPressed();
    void holdingPressed();
    void recapPressed(bool already);  // already: it stands as seen
    void pausePressed();
    void safetyStopPressed();
    void voidPressed();
    void restPressed();
    void finishPressed();

private:
    void sayRecap();
    void sayFinish();
    void layOut();
    QWidget* words();
    void connectAll();

    QScrollArea* m_scroll;
    QLabel* m_student;
    QLabel* m_progress;
    QLabel* m_time;
    QLabel* m_timeIcon;
    StepPanel* m_step;
    Stopwatch* m_stopwatch;
    QLabel* m_ordersTitle;
    BreachList* m_orders;
    QPushButton* m_recap;
    QPushButton* m_pause;
    QPushButton* m_stop;
    QPushButton* m_void;
    QPushButton* m_rest;
    QPushButton* m_finish;
    bool m_recapped = false;
    int m_left = 0;  // steps that are not rated
    Scheme m_scheme;
};

}  // namespace fb
