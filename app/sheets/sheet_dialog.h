// A sheet is edited: what is asked, of whom and in what time, what is watched, when it is passed. It is told
// in words as it stands, and refused in words while it cannot be used. Labs keep sheets as files.
#pragma once

#include <QDialog>
#include <array>
#include <optional>

#include "app/doors/dialogs.h"
#include "core/session/sheet.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QToolButton;

namespace fb {

class SheetPart;

class SheetDialog : public QDialog {
    Q_OBJECT

public:
    enum class Page { Items, Draw, Manikin, Rules };
    static constexpr int kPageCount = static_cast<int>(Page::Rules) + 1;

    // The doors outlive the dialog.
    SheetDialog(const Sheet& sheet, Dialogs& dialogs, QWidget* parent);

    // As it stands, or why it cannot be used.
    [[nodiscard]] Result<Sheet> sheet() const;
    void showPage(Page page);

Q_SIGNALS:
    // A sheet that passes checkedSheet(); the dialog then closes as accepted.
    void edited(const fb::Sheet& sheet);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    void say();
    void fill(const Sheet& sheet);
    void showState();
    [[nodiscard]] QString reasonOf(const Fault& fault) const;
    void openFile();
    void saveFile();
    void tellOfFile(const QString& words);
    void finish();

    Dialogs& m_dialogs;
    Sheet m_base;  // what no field shows stays as it is here
    bool m_filling = false;

    QLabel* m_heading;
    QLabel* m_titleName;
    QLineEdit* m_title;
    QCheckBox* m_invented;
    std::array<QToolButton*, kPageCount> m_tabs{};
    QStackedWidget* m_pages;
    std::array<SheetPart*, kPageCount> m_parts{};
    QLabel* m_words;
    QLabel* m_reason;
    QLabel* m_fileWords;
    QPushButton* m_open;
    QPushButton* m_save;
    QPushButton* m_cancel;
    QPushButton* m_use;
};

}  // namespace fb
