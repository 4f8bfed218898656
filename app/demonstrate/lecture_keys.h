// The keys of a presenter (see presenting_keys.h) on a whole page, wherever on it the focus is; F6 swaps,
// Escape closes the audience's window.
//
// What a field in use needs itself stays with it: all but Page Up and Page Down, which a hand-held presenter
// sends and which must never turn a number instead. A button keeps Space and Enter.
#pragma once

#include <QObject>

class QKeyEvent;
class QWidget;

namespace fb {

class LecturePresenter;

class LectureKeys : public QObject {
    Q_OBJECT

public:
    // The presenter outlives it; it lives as long as the page.
    LectureKeys(LecturePresenter& presenter, QWidget& page);

Q_SIGNALS:
    void asksSwap();
    void asksClose();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool take(const QKeyEvent& key, const QWidget& at);

    LecturePresenter& m_presenter;
    QWidget& m_page;
};

}  // namespace fb
