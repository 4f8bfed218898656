// Pointer and pen by keys alone: Control with an arrow moves the pointer by 5 mm, with Shift as well by 1 mm;
// Enter presses where it is. A pen stays down until Enter again, or Escape.
#pragma once

#include <QRectF>

class QKeyEvent;

namespace fb {

class LecturePresenter;

class PointerKeys {
public:
    static constexpr double kStepCm = 0.5;
    static constexpr double kFineStepCm = 0.1;

    // The presenter outlives it.
    explicit PointerKeys(LecturePresenter& presenter) : m_presenter(presenter) {}

    [[nodiscard]] bool isOf(const QKeyEvent& event) const;
    // seen: cm, low corner first, which the pointer does not leave. False: the key is none of them.
    bool take(const QKeyEvent& event, const QRectF& seen);
    void lift();  // a pen that is down

private:
    void move(QPointF by, const QRectF& seen);
    void press(const QRectF& seen);
    [[nodiscard]] QPointF pointer(const QRectF& seen) const;

    LecturePresenter& m_presenter;
    bool m_isDown = false;
};

}  // namespace fb
