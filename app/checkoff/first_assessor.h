// The first assessor: a name, and a PIN twice.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace fb {

class FirstAssessor : public QWidget {
    Q_OBJECT

public:
    explicit FirstAssessor(QWidget* parent = nullptr);

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString pin() const;
    [[nodiscard]] bool pinsAgree() const;
    void clear();
    void say();
    void focusFirst();
    void focusPin();

Q_SIGNALS:
    void enrolPressed();
    void edited();

private:
    void goOn();

    QLabel* m_title;
    QLabel* m_note;
    QLineEdit* m_name;
    QLineEdit* m_pin;
    QLineEdit* m_again;
    QPushButton* m_enrol;
};

}  // namespace fb
