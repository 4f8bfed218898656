// Who may sign and open the records, and how another is let in.
#pragma once

#include <QWidget>

#include "app/records/records_presenter.h"

class QLabel;
class QVBoxLayout;

namespace fb {

class AssessorForm;

class AssessorsPage : public QWidget {
    Q_OBJECT

public:
    explicit AssessorsPage(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    RecordsPresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_names;
    QLabel* m_newTitle;
    QLabel* m_honest;
    AssessorForm* m_form;
};

}  // namespace fb
