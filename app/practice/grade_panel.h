// What a mark came to: the verdict with its shape and word, the sentence of reason, the
// offsets in centimetres and the points.
#pragma once

#include <QWidget>
#include <optional>

#include "app/look/palette.h"
#include "core/session/practice.h"

class QLabel;

namespace fb {

class GradePanel : public QWidget {
    Q_OBJECT

public:
    explicit GradePanel(QWidget* parent = nullptr);

    void showAttempt(const Attempt& attempt);
    void setScheme(const Scheme& scheme);

private:
    enum Row { AlongRow, AcrossRow, IdealRow, BorderRow, PointsRow, RowCount };

    void paintVerdict();

    QLabel* m_icon;
    QLabel* m_verdict;
    QLabel* m_reason;
    QLabel* m_names[RowCount];
    QLabel* m_values[RowCount];
    Scheme m_scheme;
    std::optional<Verdict> m_shown;
};

}  // namespace fb
