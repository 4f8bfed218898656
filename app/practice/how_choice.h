// How the sites of a run are found: marked at once, or by hand first.
#pragma once

#include <QWidget>

class QLabel;
class QRadioButton;

namespace fb {

class HowChoice : public QWidget {
    Q_OBJECT

public:
    explicit HowChoice(QWidget* parent = nullptr);

    void setByHand(bool byHand);
    [[nodiscard]] bool isByHand() const;

Q_SIGNALS:
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    QLabel* m_name;
    QRadioButton* m_mark;
    QRadioButton* m_hand;
    QLabel* m_note;
};

}  // namespace fb
