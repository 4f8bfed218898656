// The showing of how it is done: which step, in a sentence, and the way through the steps. Goes on
// by itself, calmly, until it is held; where the platform asks for no motion it never does.
#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>

#include "app/practice/practice_state.h"

class QLabel;
class QPushButton;

namespace fb {

class WatchPanel : public QWidget {
    Q_OBJECT

public:
    static constexpr int kStepMs = 2500;

    explicit WatchPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // nothing happens where nothing is shown
    void focusFirst();

Q_SIGNALS:
    void stepAsked(int delta);
    void closeAsked();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void connectAll();
    void say();
    void setRunning(bool running);
    void step(int delta);  // by the learner: from there on only by the learner

    QLabel* m_counter;
    QLabel* m_caption;
    QLabel* m_note;
    QPushButton* m_back;
    QPushButton* m_next;
    QPushButton* m_run;
    QPushButton* m_close;
    QTimer m_timer;
    std::optional<int> m_shown;
};

// Whether the platform has its own moving effects turned off (what the user asked of it): the style's
// hint for animated widgets.
[[nodiscard]] bool asksForCalm(const QWidget& widget);

}  // namespace fb
