// Who signs or comes in, and their PIN, in one line: choose the name, type the PIN, Enter. One who is the
// only one is chosen; of several nobody is guessed.
#pragma once

#include <QWidget>
#include <vector>

#include "app/doors/records.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace fb {

class PinField : public QWidget {
    Q_OBJECT

public:
    // name: of its parts, as a test finds them: NAMEWho, NAMEPin.
    explicit PinField(const QString& name, QWidget* parent = nullptr);

    void say(const QString& title);                              // "Assessor"
    void showAssessors(const std::vector<Assessor>& assessors);  // keeps who was chosen
    void choose(qint64 assessor);
    [[nodiscard]] qint64 assessor() const;  // 0: nobody
    [[nodiscard]] QString assessorName() const;
    [[nodiscard]] QString pin() const;
    void setPin(const QString& pin);
    void clearPin();
    void setWrong(bool wrong);
    void focusPin();  // or the name, while nobody is chosen

Q_SIGNALS:
    void entered();
    void edited();

private:
    std::vector<Assessor> m_assessors;
    QLabel* m_title;
    QComboBox* m_who;
    QLineEdit* m_pin;
};

}  // namespace fb
