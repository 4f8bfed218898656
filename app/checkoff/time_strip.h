// Above the items of a check-off: which item, the time left for it and in all, which can be hidden, and the
// pause. A screen reader is told of the time only when a minute and when ten seconds are left.
#pragma once

#include <QString>
#include <QWidget>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QPushButton;
class QToolButton;

namespace fb {

class TimeStrip : public QWidget {
    Q_OBJECT

public:
    static constexpr Ms kMinute{60000};
    static constexpr Ms kLast{10000};

    explicit TimeStrip(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void showTimes(const CheckOffState& state);  // and nothing else
    void setScheme(const Scheme& scheme);
    void say();

Q_SIGNALS:
    void timeShownAsked(bool shown);
    void pauseAsked();
    void spoke(const QString& words);  // a screen reader is told

private:
    void layOut();
    void tell(const CheckOffState& state);
    void speak(const QString& words);

    QLabel* m_item;
    QLabel* m_upIcon;
    QLabel* m_up;
    QLabel* m_lastIcon;
    QLabel* m_time;
    QToolButton* m_show;
    QPushButton* m_pause;
    int m_toldItem = -1;  // what was last told of time belongs to it
    std::optional<Ms> m_itemLeft, m_screenLeft;
};

}  // namespace fb
