// The gate of the records: a PIN once an assessor is enrolled; before that the offer to enrol the first.
#pragma once

#include <QWidget>

#include "app/records/records_presenter.h"

class QLabel;

namespace fb {

class AssessorForm;
class PinForm;

class GatePage : public QWidget {
    Q_OBJECT

public:
    explicit GatePage(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    RecordsPresenter& m_presenter;
    RecordsGate m_shown = RecordsGate::Open;
    QLabel* m_title;
    QLabel* m_putBack;
    QLabel* m_why;
    PinForm* m_pin;
    AssessorForm* m_enrol;
    QLabel* m_honest;
    QWidget* m_column;
};

}  // namespace fb
