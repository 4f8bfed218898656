// The current step in large letters and its three answers under the hand, each with the key that does the
// same: a mouse can rest here while the steps go by.
#pragma once

#include <QWidget>
#include <array>

#include "app/look/palette.h"
#include "core/procedure/observed.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace fb {

class SeenButton;
class StepRow;

class StepPanel : public QWidget {
    Q_OBJECT

public:
    explicit StepPanel(QWidget* parent = nullptr);

    void showStep(const StepRow* row);  // null: there are no steps
    void setScheme(const Scheme& scheme);
    void say();
    void fit(int width);  // lays its buttons into that

Q_SIGNALS:
    void seenPressed(fb::Seen seen);
    void remarkPressed();

private:
    QLabel* m_name;
    QGridLayout* m_grid;
    int m_columns = 0;
    std::array<SeenButton*, kSeenCount> m_buttons{};
    QPushButton* m_remark;
};

}  // namespace fb
