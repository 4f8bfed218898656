// Whose bodies are drawn, whether all students mark the same, and the time there is.
#pragma once

#include <array>

#include "app/sheets/sheet_part.h"

class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QRadioButton;

namespace fb {

namespace fields {
class TimeField;
}

class SheetDraw : public SheetPart {
    Q_OBJECT

public:
    explicit SheetDraw(QWidget* parent = nullptr);

    void fill(const Sheet& sheet) override;
    // SeedNotANumber.
    [[nodiscard]] Result<bool> writeTo(Sheet& sheet) const override;
    void say() override;

private:
    void layOut();
    void showSeed();

    QLabel* m_populationName;
    QComboBox* m_population;
    std::array<QRadioButton*, 2> m_rules{};  // in the order of SeedRule
    QLabel* m_seedName;
    QLineEdit* m_seed;
    QLabel* m_itemTimeName;
    fields::TimeField* m_itemTime;
    QLabel* m_screenTimeName;
    fields::TimeField* m_screenTime;
    QLabel* m_manikinTimeName;
    fields::TimeField* m_manikinTime;
    QLabel* m_heldName;
    QDoubleSpinBox* m_held;
};

}  // namespace fb
