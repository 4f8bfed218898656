// What an assessor watches for on the manikin: the lab's protocol, and every step that belongs to it with
// whether it is watched and whether it is critical. No step: no manikin.
#pragma once

#include <array>

#include "app/sheets/sheet_part.h"
#include "app/words/check_off_words.h"

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace fb {

class SheetSteps : public SheetPart {
    Q_OBJECT

public:
    explicit SheetSteps(QWidget* parent = nullptr);

    void fill(const Sheet& sheet) override;
    // Steps in the order of teaching; of those that do not belong to the protocol none.
    [[nodiscard]] Result<bool> writeTo(Sheet& sheet) const override;
    void say() override;

private:
    struct Row {
        QCheckBox* watched = nullptr;
        QCheckBox* critical = nullptr;
    };

    void layOut();
    void makeRow(ProcedureStep step);
    [[nodiscard]] Protocol protocol() const;
    void fitRows();
    void watchAll(bool on);

    QLabel* m_protocolName;
    std::array<QCheckBox*, 4> m_protocol{};  // in the order of Protocol
    QPushButton* m_all;
    QPushButton* m_none;
    QGridLayout* m_grid = nullptr;
    std::array<QLabel*, kStepGroupCount> m_groups{};
    std::array<Row, kProcedureStepCount - 1> m_rows{};  // every step but Recap
};

}  // namespace fb
