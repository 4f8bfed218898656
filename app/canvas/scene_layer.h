// The scene of a plate with the flags planted on it and all their labels; and the same kept as an image,
// so that a hand that moves over it need not wait for labels to find their places. Figures that move with the
// hand are left out of the image: they are painted under it.
#pragma once

#include <QImage>
#include <memory>
#include <optional>

#include "app/canvas/plate_painter.h"

class QPainter;

namespace fb {

// With a scene layer that, and the figures it leaves out.
void paintFaceScene(QPainter& painter, const PlateFace& face);

// Where the labels of the scene and the flags' names stand, pixels: what tools painted over them keep clear
// of.
[[nodiscard]] QVector<QRectF> labelBoxes(const PlateFace& face);

[[nodiscard]] bool sameScene(const Scene& a, const Scene& b);

// Figures of a construction and nothing else: no label is of them, makes way for them or lies under them.
[[nodiscard]] bool isLoose(const Scene& scene);
// What the shapes of a loose scene cover, in the units of the transform.
[[nodiscard]] QRectF looseBox(const Scene& scene, const QTransform& cmToWidget, double textScale);

class SceneLayer {
public:
    // The scene of a face on nothing, over its sheet, without a loose one; null when there is nothing to
    // paint. Painted anew only when something it shows has changed.
    [[nodiscard]] const QImage& of(const PlateFace& face, double devicePixelRatio);

private:
    struct Shown {
        ViewFrame frame;
        Scheme scheme;
        double textScale = 1.0;
        double pixelRatio = 1.0;
        std::optional<QPointF> mark;
        std::shared_ptr<const ReadyInk> body, hand;
        Scene scene;
        QVector<FlagLook> flags;
    };
    [[nodiscard]] static Shown shownOf(const PlateFace& face, double devicePixelRatio);
    [[nodiscard]] bool shows(const Shown& wanted) const;

    std::optional<Shown> m_shown;
    QImage m_image;
};

}  // namespace fb
