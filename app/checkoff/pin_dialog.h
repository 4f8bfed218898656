// Asks an assessor's PIN before sheets or the roster are changed. A convenience lock: whoever may use this
// account of the system is kept out by nothing else.
#pragma once

#include <QDialog>
#include <functional>

#include "app/doors/records.h"

class QLabel;
class QPushButton;

namespace fb {

class PinField;

class PinDialog : public QDialog {
    Q_OBJECT

public:
    // The records outlive the dialog. Accepted: the PIN was right.
    PinDialog(RecordKeeper& records, const std::vector<Assessor>& assessors, QWidget* parent);

    // Calls `then` once a PIN is proved; at once where nobody is enrolled yet.
    static void ask(RecordKeeper& records, const std::vector<Assessor>& assessors, QWidget* parent,
                    std::function<void()> then);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void say();
    void prove();
    void take(const Result<Proof>& proof);

    RecordKeeper& m_records;
    bool m_asking = false;
    std::optional<Fault> m_fault;
    QLabel* m_title;
    QLabel* m_hint;
    PinField* m_pin;
    QLabel* m_told;
    QPushButton* m_back;
    QPushButton* m_open;
};

}  // namespace fb
