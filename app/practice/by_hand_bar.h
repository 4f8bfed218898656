// In the row under the plate, while a site is found by hand: undo, redo, this stage from the
// start, and the showing of how it is done.
#pragma once

#include <QWidget>

#include "app/look/palette.h"
#include "app/practice/practice_state.h"

class QToolButton;

namespace fb {

class ByHandBar : public QWidget {
    Q_OBJECT

public:
    explicit ByHandBar(QWidget* parent = nullptr);

    void showState(const PracticeState& state);
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void undoAsked();
    void redoAsked();
    void clearAsked();
    void watchAsked();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    QToolButton* m_undo;
    QToolButton* m_redo;
    QToolButton* m_clear;
    QToolButton* m_watch;
};

}  // namespace fb
