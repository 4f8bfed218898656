// The score as a thin bar with the cut marked on it: filled against outlined, so that no colour is needed.
#pragma once

#include <QWidget>

#include "app/look/palette.h"

namespace fb {

class ScoreBar : public QWidget {
    Q_OBJECT

public:
    explicit ScoreBar(QWidget* parent = nullptr);

    void showScore(double percent, double cut);  // both 0 to 100
    void setScheme(const Scheme& scheme);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double m_percent = 0.0;
    double m_cut = 0.0;
    Scheme m_scheme;
};

}  // namespace fb
