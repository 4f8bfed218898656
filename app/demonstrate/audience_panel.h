// The audience's window from the speaker's side: open and close it, blank it, swap it; and in words where the
// picture is.
#pragma once

#include <QWidget>

#include "app/demonstrate/audience_window.h"

class QLabel;
class QPushButton;
class QToolButton;

namespace fb {

class AudiencePanel : public QWidget {
    Q_OBJECT

public:
    // Both outlive it.
    AudiencePanel(LecturePresenter& presenter, AudienceWindow& audience, QWidget* parent = nullptr);

    void showState();
    void swap();  // nothing happens while it is closed
    void close();

protected:
    void changeEvent(QEvent* event) override;

private:
    void open();
    void forgetScreens();
    void say();

    LecturePresenter& m_presenter;
    AudienceWindow& m_audience;
    QLabel* m_where;
    QPushButton* m_open;
    QPushButton* m_close;
    QPushButton* m_swap;
    QToolButton* m_blank;
};

}  // namespace fb
