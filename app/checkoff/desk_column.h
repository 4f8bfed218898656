// Beside the list of students: the check-off that stands open, if one does, and the sheet in words.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"

class QComboBox;
class QFrame;
class QLabel;
class QPushButton;
class QScrollArea;

namespace fb {

class DeskColumn : public QWidget {
    Q_OBJECT

public:
    explicit DeskColumn(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void say();
    [[nodiscard]] QWidget* first() const;  // of the check-off that stands open

Q_SIGNALS:
    void goOnAsked();
    void voidAsked();
    void sheetChosen(const QString& key);
    void editSheetAsked();
    void importAsked();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void layOutWords();
    void connectAll();
    void showRunning(const CheckOffState& state);
    void showSheets(const CheckOffState& state);
    void fit();

    QWidget* m_open;
    QLabel* m_openTitle;
    QLabel* m_openWords;
    QPushButton* m_goOn;
    QPushButton* m_void;
    QLabel* m_sheetName;
    QComboBox* m_sheets;
    QLabel* m_sheetTitle;
    QScrollArea* m_scroll;
    QLabel* m_sheetWords;
    QPushButton* m_edit;
    QPushButton* m_import;
};

// "Item 3 of 6, 2:14 used": how far one is that stands open.
[[nodiscard]] QString howFar(const RunningCheckOff& running);

}  // namespace fb
