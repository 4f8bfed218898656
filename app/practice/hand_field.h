// The length of the learner's own hand, typed or estimated from sex and stature.
#pragma once

#include <QWidget>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace fb {

class HandField : public QWidget {
    Q_OBJECT

public:
    explicit HandField(QWidget* parent = nullptr);

    void setLength(Cm length);
    void setEstimate(Sex sex, Cm stature);
    void setUsual(Cm length);  // shown faintly where nothing is typed
    [[nodiscard]] bool isBlank() const;
    [[nodiscard]] bool hasStature() const;  // anything typed for it
    // HandLengthOutOfRange for anything but a number from 13 to 24, with a point or a comma.
    [[nodiscard]] Result<Cm> length() const;
    // As typed for the estimate: StatureNotANumber.
    [[nodiscard]] Result<Cm> stature() const;
    [[nodiscard]] Sex sex() const;

Q_SIGNALS:
    void estimateAsked();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();

    QLabel* m_name;
    QLineEdit* m_length;
    QLabel* m_unit;
    QLabel* m_hint;
    QComboBox* m_sex;
    QLineEdit* m_stature;
    QLabel* m_statureUnit;
    QPushButton* m_estimate;
};

}  // namespace fb
