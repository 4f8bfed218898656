// The log, what leaves the records and what comes back: verify, backup, a backup put back, exports; one at a
// time, with how far it is and a way out.
#pragma once

#include <QWidget>

#include "app/doors/dialogs.h"
#include "app/records/records_presenter.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace fb {

class PutBackPanel;

class LogPage : public QWidget {
    Q_OBJECT

public:
    LogPage(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void showState(const RecordsState& state);
    void showProgress(const RecordsState& state);
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    [[nodiscard]] QWidget* fields();
    void say();
    void backup();
    void chooseBackup();
    void write(ExportKind kind, SaveKind as, const QString& name);
    [[nodiscard]] QString doneText(const LongTaskDone& done) const;
    [[nodiscard]] QString verifiedText(const Verified& verified) const;

    RecordsPresenter& m_presenter;
    Dialogs& m_dialogs;
    Scheme m_scheme;
    std::vector<QString> m_sheets;  // keys, as listed after "every sheet"
    QLabel* m_logTitle;
    QLabel* m_logText;
    QPushButton* m_verify;
    QLabel* m_backupTitle;
    QLabel* m_backupText;
    QPushButton* m_backup;
    QPushButton* m_choose;  // a backup to put back
    PutBackPanel* m_putBack;
    QLabel* m_exportTitle;
    QLabel* m_exportText;
    QComboBox* m_sheet;
    QPushButton* m_gradebook;
    QPushButton* m_csv;
    QPushButton* m_json;
    QWidget* m_working;
    QLabel* m_doing;
    QProgressBar* m_bar;
    QPushButton* m_cancel;
    QLabel* m_icon;
    QLabel* m_done;
};

}  // namespace fb
