// What is to be built now, in one sentence; the choice that belongs to it; and the parts of the
// construction, set and not set.
#pragma once

#include <QIcon>
#include <QWidget>
#include <array>

#include "app/practice/practice_state.h"

class QComboBox;
class QLabel;
class QListWidget;
class QToolButton;

namespace fb {

class BuildPanel : public QWidget {
    Q_OBJECT

public:
    explicit BuildPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // nothing happens where nothing is found by hand
    void setScheme(const Scheme& scheme);
    void focusChoice();

Q_SIGNALS:
    void handChosen(Side hand);
    void fingersChosen(int count);
    void cellChosen(ThighCell cell);
    void handleChosen(Handle handle);

protected:
    void changeEvent(QEvent* event) override;

private:
    static constexpr int kRows = static_cast<int>(ThighRow::Lower) + 1;
    static constexpr int kColumns = static_cast<int>(ThighColumn::Behind) + 1;

    void layOut();
    QLayout* choices();
    void connectAll();
    void say();
    void showChoice(const ByHandState& byHand);
    void showHandles(const ByHandState& byHand);
    void sayHandles(const ByHandState& byHand);
    void fitList();
    [[nodiscard]] QIcon doneIcon() const;
    void choose(bool second);
    void chooseCell();
    void chooseHandle(int row);
    [[nodiscard]] QString dueText(const PracticeState& state) const;

    QLabel* m_due;
    // Left or right hand, two or three fingers.
    std::array<QToolButton*, 2> m_either{};
    QLabel* m_cellName;
    QComboBox* m_row;
    QComboBox* m_column;
    QListWidget* m_list;
    std::optional<BuildChoice> m_choice;
    std::vector<Handle> m_handles;  // as listed
    Scheme m_scheme;
};

}  // namespace fb
