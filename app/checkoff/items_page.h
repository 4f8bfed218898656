// The student at the screen: time above, and the page of practice in exam manner below it.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_presenter.h"
#include "app/look/palette.h"

namespace fb {

class PracticePage;
class TimeStrip;

class ItemsPage : public QWidget {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit ItemsPage(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void showState();
    void askPause();
    void measureAnew();

    CheckOffPresenter& m_presenter;
    Scheme m_scheme;
    TimeStrip* m_strip;
    PracticePage* m_practice;
};

}  // namespace fb
