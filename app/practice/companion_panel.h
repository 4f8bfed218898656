// The other view of the same body, to look at only, and under it why a needle is not set there.
// Words that do not fit scroll, so that the picture keeps most of the room.
#pragma once

#include <QWidget>

#include "app/practice/practice_state.h"

class QBoxLayout;
class QLabel;
class QScrollArea;

namespace fb {

class CompanionPanel : public QWidget {
    Q_OBJECT

public:
    explicit CompanionPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);
    void setScheme(const Scheme& scheme);
    // Under a wide plate the words stand beside the picture instead of under it.
    void setBeside(bool beside);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void say();
    void fitWords();
    void fitLetters();

    QBoxLayout* m_parts;
    PlateView* m_plate;
    QLabel* m_title;
    QScrollArea* m_scroll;
    QLabel* m_words;
};

}  // namespace fb
