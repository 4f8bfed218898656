// What the desk shows as long as nobody is on it: the way to the first students, or, after a damage, the
// backup that is offered.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_state.h"

class QLabel;
class QPushButton;
class QStackedLayout;

namespace fb {

class CalmPage;
class DeskOffer;

class DeskEmpty : public QWidget {
    Q_OBJECT

public:
    explicit DeskEmpty(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void say();
    // What the keys begin at.
    [[nodiscard]] QWidget* first() const;
    [[nodiscard]] DeskOffer& offer() { return *m_offer; }

Q_SIGNALS:
    void sampleAsked();
    void importAsked();

private:
    QStackedLayout* m_stack;
    CalmPage* m_nobody;
    QLabel* m_title;
    QLabel* m_words;
    QPushButton* m_useSample;
    QPushButton* m_import;
    DeskOffer* m_offer;
};

}  // namespace fb
