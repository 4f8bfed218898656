// How long the demonstration has been going on, by the presenter's clock, and the way to begin anew.
#pragma once

#include <QTimer>
#include <QWidget>

class QLabel;
class QPushButton;

namespace fb {

class LecturePresenter;

class LectureClock : public QWidget {
    Q_OBJECT

public:
    explicit LectureClock(LecturePresenter& presenter, QWidget* parent = nullptr);

    void showTime();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void say();

    LecturePresenter& m_presenter;
    QLabel* m_time;
    QLabel* m_word;
    QPushButton* m_restart;
    QTimer m_tick;
};

}  // namespace fb
