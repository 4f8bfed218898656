// What was practised after a failed check-off: what is signed, or the form to sign it with a PIN.
#pragma once

#include <QWidget>

#include "app/records/records_presenter.h"

class QLabel;
class QPlainTextEdit;

namespace fb {

class PinForm;

class RemediationPanel : public QWidget {
    Q_OBJECT

public:
    explicit RemediationPanel(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // hidden where none is asked for

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    RecordsPresenter& m_presenter;
    qint64 m_shown = 0;
    QLabel* m_title;
    QLabel* m_done;
    QLabel* m_whatName;
    QPlainTextEdit* m_what;
    PinForm* m_pin;
};

}  // namespace fb
