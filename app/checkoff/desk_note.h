// Over the desk, until it is put away: that a backup was put back, and where the other file lies.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QPushButton;

namespace fb {

class DeskNote : public QWidget {
    Q_OBJECT

public:
    explicit DeskNote(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);  // hidden where there is nothing to say
    void say();
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void dismissed();

private:
    QLabel* m_icon;
    QLabel* m_words;
    QPushButton* m_close;
};

}  // namespace fb
