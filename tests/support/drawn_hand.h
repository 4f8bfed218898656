// What is drawn of a laid hand, or of laid fingers, in a look: by it a test measures how much of the hand
// lies under something else.
#pragma once

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <optional>

#include "app/canvas/held_layer.h"
#include "tests/support/lecture_faces.h"

namespace fb::test {

class DrawnHand {
public:
    explicit DrawnHand(const LectureLook& look)
    {
        std::optional<Held> held;
        if (look.hand)
            held = heldOf(HandLook{facesLibrary()->plate(View::OpenHand).value(), *look.hand});
        else if (look.fingers)
            held = heldOf(
                FingersLook{facesLibrary()
                                ->plate(look.fingers->count == 2 ? View::TwoFingers : View::ThreeFingers)
                                .value(),
                            *look.fingers, look.fingerCm});
        if (!held)
            return;
        m_image = QImage((QSizeF(look.area.size()) * kDots).toSize(), QImage::Format_Grayscale8);
        m_image.fill(Qt::white);
        m_low = look.area.topLeft();
        const ReadyInk ink(Picture{held->art, inkOf(*held), 0}, ReadyInk::Rows::None);
        QPainter painter(&m_image);
        painter.scale(kDots, kDots);
        painter.translate(held->at - m_low);
        for (const ReadyInk::Shape& shape : ink.shapes())
            painter.fillPath(shape.path, Qt::black);
    }

    // Of a box, cm.
    [[nodiscard]] double shareOf(const QRectF& cm) const
    {
        const QRect box = QRectF((cm.topLeft() - m_low) * kDots, cm.size() * kDots).toRect();
        int on = 0;
        for (int y = box.top(); y <= box.bottom(); ++y)
            for (int x = box.left(); x <= box.right(); ++x)
                on += m_image.rect().contains(x, y) && qGray(m_image.pixel(x, y)) < 128 ? 1 : 0;
        return static_cast<double>(on) / std::max(1, box.width() * box.height());
    }

private:
    static constexpr double kDots = 8.0;
    QImage m_image;
    QPointF m_low;
};

}  // namespace fb::test
