// The seconds the needle stays after injecting: big digits, what is asked, one button to start and stop.
// Counts nothing itself.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace fb {

class Stopwatch : public QWidget {
    Q_OBJECT

public:
    explicit Stopwatch(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);  // also for every tick
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void pressed();

protected:
    void changeEvent(QEvent* event) override;

private:
    void paint();

    QLabel* m_title;
    QLabel* m_seconds;
    QLabel* m_icon;
    QProgressBar* m_bar;
    QPushButton* m_button;
    Scheme m_scheme;
    bool m_short = false;  // held, and not long enough
    bool m_held = false;
};

}  // namespace fb
