// What an answer came to: the verdict with its shape and word and the sentence of reason; of a
// mark also the offsets in centimetres, which centimetres they are, and the points.
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

    void showAttempt(const Attempt& attempt, const Target& target);
    void setScheme(const Scheme& scheme);

private:
    enum Row { AlongRow, AcrossRow, IdealRow, BorderRow, PointsRow, RowCount };

    void sayVerdict(const Attempt& attempt);
    void sayOffsets(const Attempt& attempt, const Target& target);
    void paintVerdict();

    QLabel* m_icon;
    QLabel* m_verdict;
    QLabel* m_reason;
    QLabel* m_names[RowCount];
    QLabel* m_values[RowCount];
    QLabel* m_measure;
    Scheme m_scheme;
    std::optional<Verdict> m_shown;
};

}  // namespace fb
