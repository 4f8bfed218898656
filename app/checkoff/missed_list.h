// The steps that were not done, or only when prompted, each with its sign and word, critical ones named;
// with what the assessor remarked on any step.
#pragma once

#include <QWidget>
#include <vector>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QVBoxLayout;

namespace fb {

class MissedList : public QWidget {
    Q_OBJECT

public:
    explicit MissedList(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void setScheme(const Scheme& scheme);

private:
    void addLine(const SheetStep& step, const Observation* seen);
    void paint();

    QLabel* m_title;
    QLabel* m_none;
    QVBoxLayout* m_lines;
    std::vector<std::pair<QLabel*, Seen>> m_icons;
    Scheme m_scheme;
};

}  // namespace fb
