// The student says who stands there, before anything is recorded.
#pragma once

#include "app/checkoff/calm_page.h"
#include "app/checkoff/check_off_presenter.h"

namespace fb {

class IdentityPage : public CalmPage {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit IdentityPage(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    // No button has the focus, so that Enter alone accepts nobody; Tab reaches both.
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showState();

    CheckOffPresenter& m_presenter;
    QLabel* m_sheet;
    QLabel* m_question;
    QLabel* m_name;
    QLabel* m_details;
    QLabel* m_attempt;
    QPushButton* m_yes;
    QPushButton* m_no;
};

}  // namespace fb
