// On the desk after a damage: what happened, what the last backup holds, and the two ways on. While it is put
// back, how far that is and a way out.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace fb {

class CalmPage;

class DeskOffer : public QWidget {
    Q_OBJECT

public:
    explicit DeskOffer(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);  // with an offer in it
    void say();
    // What the keys begin at.
    [[nodiscard]] QWidget* first() const;

Q_SIGNALS:
    void putBackAsked();
    void cancelAsked();
    void declined();

private:
    CalmPage* m_page;
    QLabel* m_title;
    QLabel* m_happened;
    QLabel* m_holds;
    QLabel* m_kept;
    QLabel* m_file;
    QLabel* m_doing;
    QProgressBar* m_bar;
    QPushButton* m_putBack;
    QPushButton* m_decline;
    QPushButton* m_cancel;
    bool m_isCancelled = false;  // was pressed; the keys stay on it
};

}  // namespace fb
