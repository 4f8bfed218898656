// A sheet of paper at true scale to lay things against the glass on: the outline of a bank card, a
// line for a ruler, two lines for a hand or a finger. Its value is what lies between the two sides, in
// the screen's own pixels.
//
// A side is dragged by mouse anywhere on it, by a finger at its grips alone, because a hand that is being
// measured lies on the glass. Keys: plus, minus and the arrows move the right side by a pixel, with
// Shift by ten; the left side stays.
#pragma once

#include <QAbstractSlider>

#include "app/look/palette.h"
#include "app/profile/screen_scale.h"

namespace fb {

enum class Laid { Card, Ruler, Hand, Finger };

class MeasureBoard : public QAbstractSlider {
    Q_OBJECT

public:
    explicit MeasureBoard(QWidget* parent = nullptr);

    // What is laid on it, and how fine the screen is, as far as is known: it begins with a usual size.
    void lay(Laid laid, PixelsPerMm scale);
    void setScheme(const Scheme& scheme);

    [[nodiscard]] Laid laid() const { return m_laid; }
    // Of a hand or a finger: what lies between the lines.
    [[nodiscard]] Cm length() const { return lengthOn(m_scale, value()); }
    // The sides on the widget; of a card the card itself.
    [[nodiscard]] QRectF figure() const;

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;  // scrolls nothing by chance
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void sliderChange(SliderChange change) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Held { Nothing, Left, Right, Whole };

    [[nodiscard]] Held heldAt(QPointF at, bool byFinger) const;
    [[nodiscard]] double dips(double pixels) const { return pixels / devicePixelRatioF(); }
    void fitRange();
    void keepInside();
    void say();

    Laid m_laid = Laid::Card;
    PixelsPerMm m_scale{3.78};
    Scheme m_scheme;
    QPointF m_corner;  // of the figure: left and top
    Held m_held = Held::Nothing;
    QPointF m_grabbed;  // from the held side to where it was taken
};

}  // namespace fb
