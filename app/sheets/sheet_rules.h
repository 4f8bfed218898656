// When a check-off is passed and what comes after one that is not.
#pragma once

#include "app/sheets/sheet_part.h"

class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QSpinBox;

namespace fb {

class SheetRules : public SheetPart {
    Q_OBJECT

public:
    explicit SheetRules(QWidget* parent = nullptr);

    void fill(const Sheet& sheet) override;
    [[nodiscard]] Result<bool> writeTo(Sheet& sheet) const override;
    void say() override;

private:
    void layOut();

    QLabel* m_cutName;
    QDoubleSpinBox* m_cut;
    QLabel* m_promptedName;
    QDoubleSpinBox* m_prompted;
    QLabel* m_weightName;
    QDoubleSpinBox* m_weight;
    QLabel* m_always;
    QLabel* m_attemptsName;
    QSpinBox* m_attempts;
    QLabel* m_daysName;
    QSpinBox* m_days;
    QCheckBox* m_remediation;
    QCheckBox* m_second;
    QCheckBox* m_noShow;
};

}  // namespace fb
