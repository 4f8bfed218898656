// Why the target lies where it lies: the convention's rule with this body's numbers, its
// source, the hand it is found with, and where the other conventions put their point on the
// same body.
#pragma once

#include <QWidget>
#include <vector>

#include "app/practice/practice_state.h"

class QCheckBox;
class QGridLayout;
class QLabel;

namespace fb {

class WhyPanel : public QWidget {
    Q_OBJECT

public:
    explicit WhyPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);

Q_SIGNALS:
    void otherToggled(Convention convention, bool shown);
    void handToggled(bool shown);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;  // a click on a name ticks its box

private:
    struct OtherRow {
        Convention convention{};
        QCheckBox* box = nullptr;
        QLabel* name = nullptr;  // beside the box, because a box cannot wrap its words
        QLabel* place = nullptr;
    };
    void makeRows(const std::vector<OtherPoint>& others);

    QLabel* m_name;
    QLabel* m_rule;
    QLabel* m_source;
    QLabel* m_hand;
    QCheckBox* m_handShown;
    QLabel* m_othersTitle;
    QGridLayout* m_grid;
    std::vector<OtherRow> m_rows;
};

// Where another convention's point lies from the chosen one: "1.2 cm lower on the arm",
// "1.4 cm away, mostly toward the foot", "at the same place".
[[nodiscard]] QString otherPlaceText(Site site, const OtherPoint& other);
// Which hand is laid on this hip, how long it is and what holds it in place.
[[nodiscard]] QString handText(const HandPose& pose);

}  // namespace fb
