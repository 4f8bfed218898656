// One number of a body: its name, a field to type it in, a slider under both. While the slider is held every
// value is told at once; a moment after the last key or when the hand lets go, that it rests.
#pragma once

#include <QTimer>
#include <QWidget>

#include "app/look/palette.h"
#include "core/body/body_values.h"

class QDoubleSpinBox;
class QLabel;
class QSlider;

namespace fb {

class ValueRow : public QWidget {
    Q_OBJECT

public:
    // name: of the widget's parts, nameSlider and nameField.
    ValueRow(const QString& name, int decimals, QWidget* parent = nullptr);

    // unit: a text with %1 for the number, such as "%1 cm".
    void say(const QString& title, const QString& unit);
    void setRange(const ValueRange& range);
    void setValue(double value);  // tells nobody
    [[nodiscard]] double value() const { return m_value; }
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void moved(double value);
    void rests();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void tell(double value);
    void showValue();
    void paintSlider();

    QLabel* m_title;
    QDoubleSpinBox* m_field;
    QSlider* m_slider;
    QTimer m_rest;
    Scheme m_scheme;
    double m_value = 0.0;
};

}  // namespace fb
