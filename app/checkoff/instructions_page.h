// What a student is told before the first item: how many, how long, what follows, and that marks are
// told of at the end.
#pragma once

#include <QStringList>

#include "app/checkoff/calm_page.h"
#include "app/checkoff/check_off_presenter.h"

namespace fb {

class InstructionsPage : public CalmPage {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit InstructionsPage(CheckOffPresenter& presenter, QWidget* parent = nullptr);

    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showState();

    CheckOffPresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_words;
    QPushButton* m_begin;
};

// Each a sentence or two, in the order they are told. `extraPercent`: the student's own.
[[nodiscard]] QStringList instructionsFor(const Sheet& sheet, int extraPercent);

}  // namespace fb
