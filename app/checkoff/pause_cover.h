// Plain paper over what is going on while a check-off is paused: why, and how it goes on.
#pragma once

#include "app/checkoff/calm_page.h"
#include "app/checkoff/check_off_presenter.h"

namespace fb {

class PauseCover : public CalmPage {
    Q_OBJECT

public:
    // The presenter outlives the cover.
    explicit PauseCover(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showState();
    void askVoid();

    CheckOffPresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_reason;
    QLabel* m_words;
    QPushButton* m_goOn;
    QPushButton* m_void;
};

}  // namespace fb
