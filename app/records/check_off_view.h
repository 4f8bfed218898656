// A signed check-off, opened: its words, its answers to be shown on the plate again, the practice signed
// after it, and the sheet to be printed or saved once more.
#pragma once

#include <QWidget>

#include "app/doors/dialogs.h"
#include "app/records/records_presenter.h"

class QHBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace fb {

class CheckOffBody;
class CheckOffHead;
class RemediationPanel;

class CheckOffView : public QWidget {
    Q_OBJECT

public:
    CheckOffView(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // nothing happens without one that is open
    void showProgress(const RecordsState& state);
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void rebuild();
    void print();
    void save();

    RecordsPresenter& m_presenter;
    Dialogs& m_dialogs;
    Scheme m_scheme;
    std::shared_ptr<const OpenedCheckOff> m_shown;
    QPushButton* m_back;
    QLabel* m_name;
    QPushButton* m_print;
    QPushButton* m_save;
    QLabel* m_working;
    QScrollArea* m_scroll;
    QVBoxLayout* m_leading = nullptr;
    QHBoxLayout* m_columns = nullptr;
    CheckOffHead* m_head = nullptr;
    CheckOffBody* m_body = nullptr;
    RemediationPanel* m_practice;
};

}  // namespace fb
