// A signed check-off, opened: its words, its answers to be shown on the plate again, the practice signed
// after it, and the sheet to be printed or saved once more.
#pragma once

#include "app/doors/dialogs.h"
#include "app/records/record_view.h"
#include "app/records/records_presenter.h"

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace fb {

class CheckOffBody;
class CheckOffHead;
class RemediationPanel;

class CheckOffView : public RecordView {
    Q_OBJECT

public:
    CheckOffView(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // nothing happens without one that is open
    void showProgress(const RecordsState& state);
    void focusFirst();

private:
    void layOut();
    void say() override;
    void rebuild() override;
    [[nodiscard]] bool hasRecord() const override { return m_shown != nullptr; }
    void print();
    void save();

    RecordsPresenter& m_presenter;
    Dialogs& m_dialogs;
    std::shared_ptr<const OpenedCheckOff> m_shown;
    QPushButton* m_back;
    QLabel* m_name;
    QPushButton* m_print;
    QPushButton* m_save;
    QLabel* m_working;
    QVBoxLayout* m_leading = nullptr;
    QHBoxLayout* m_columns = nullptr;
    CheckOffHead* m_head = nullptr;
    CheckOffBody* m_body = nullptr;
    RemediationPanel* m_practice;
};

}  // namespace fb
