// The student is done at the screen and calls the assessor, who goes on from here.
#pragma once

#include "app/checkoff/calm_page.h"
#include "app/checkoff/check_off_presenter.h"

namespace fb {

class HandoverPage : public CalmPage {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit HandoverPage(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    // No button has the focus, so that the key that confirmed the last item does not go on by itself.
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showState();

    CheckOffPresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_timeUp;
    QLabel* m_words;
    QPushButton* m_goOn;
};

}  // namespace fb
