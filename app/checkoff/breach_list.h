// The orders that were broken, each a sentence in words, unsafe ones first and with the sign of danger.
#pragma once

#include <QWidget>
#include <vector>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QVBoxLayout;

namespace fb {

class BreachList : public QWidget {
    Q_OBJECT

public:
    explicit BreachList(QWidget* parent = nullptr);

    void showBreaches(const std::vector<Breach>& breaches, bool isOver = false);  // no step is to come
    void setScheme(const Scheme& scheme);

private:
    void paint();

    std::vector<Breach> m_breaches;
    std::vector<QLabel*> m_icons;
    QVBoxLayout* m_lines;
    QLabel* m_none;
    Scheme m_scheme;
};

// Those of a phase that still runs: what may yet come in time is no breach before it was said not to have
// been done.
[[nodiscard]] std::vector<Breach> breachesSoFar(const CheckOffState& state);

}  // namespace fb
