// A roster is looked at before it is saved: which column stands for what, what each row will do, who is left
// out and why. Reading and judging happen beside the window's thread.
#pragma once

#include <QDialog>
#include <array>
#include <memory>
#include <optional>
#include <vector>

#include "app/doors/dialogs.h"
#include "app/look/palette.h"
#include "app/roster/roster.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace fb {

class RosterTable;

class RosterDialog : public QDialog {
    Q_OBJECT

public:
    // `known`: already saved. The doors outlive the dialog.
    RosterDialog(std::vector<Student> known, Dialogs& dialogs, const Scheme& scheme, QWidget* parent);
    ~RosterDialog() override;

    // As if it had been chosen.
    void readFile(const QString& file);

Q_SIGNALS:
    // Who is new and who has changed; the dialog then closes as accepted.
    void imported(const std::vector<fb::Student>& students);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    using Rows = std::vector<RosterRow>;

    void layOut();
    QWidget* mapping();
    void furnishTable();
    void say();
    void fitTable();
    void choose();
    void take(const Result<std::shared_ptr<const RosterFile>>& file);
    void fillChoices();
    [[nodiscard]] QString columnOfFile(int index) const;
    [[nodiscard]] RosterMapping chosen() const;
    void judge();
    void showRows(const Result<std::shared_ptr<const Rows>>& rows);
    void showState();
    [[nodiscard]] QString noticeText() const;
    void import();

    const std::shared_ptr<const std::vector<Student>> m_known;
    Dialogs& m_dialogs;
    std::shared_ptr<const RosterFile> m_file;
    std::shared_ptr<const Rows> m_rows;
    std::optional<Fault> m_fault;
    int m_asked = 0;  // only the answer to the last question counts
    bool m_busy = false;

    QLabel* m_title;
    QLabel* m_hint;
    QLabel* m_fileName;
    QPushButton* m_choose;
    QProgressBar* m_progress;
    std::array<QLabel*, kRosterColumnCount> m_choiceNames{};
    std::array<QComboBox*, kRosterColumnCount> m_choices{};
    QWidget* m_mapping;  // holds them
    RosterTable* m_model;
    QTableView* m_table;
    QLabel* m_counts;
    QLabel* m_shown;
    QLabel* m_notice;
    QPushButton* m_cancel;
    QPushButton* m_import;
};

}  // namespace fb
