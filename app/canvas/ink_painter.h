// Paints a patient's drawing with any QPainter: on screen, into a PDF or an SVG.
//
// A skin that is shown hides what lies under it, so nothing under it is painted then. The
// surface belongs to the skin. Where the skin is peeled a ghost of its contours may stay.
#pragma once

#include <QColor>
#include <QPainterPath>
#include <QSet>
#include <QTransform>
#include <atomic>
#include <memory>
#include <vector>

#include "core/basics/enums.h"
#include "core/body/moved_ink.h"
#include "core/plate/plate.h"

class QPainter;

namespace fb {

// One patient's drawing on one plate. Shared with the painting worker, never changed.
struct Picture {
    std::shared_ptr<const Plate> plate;
    MovedInk ink;
    int skinTone = 0;
};

// The shapes of a picture as paths, made once and painted often. Keeps nothing of the picture
// but its plate. Safe to paint from several threads at once.
class ReadyInk {
public:
    enum class Rows { Kept, None };  // of the silhouette: ink beside which no label stands needs none
    explicit ReadyInk(const Picture& picture, Rows rows = Rows::Kept);

    struct Shape {
        QPainterPath path;              // cm
        std::vector<qsizetype> starts;  // element of each ring's first point
        QRectF bounds;                  // cm
        Layer layer{};
        int tone = -1;
        int gradient = -1;
        double opacity = 1.0;
        double width = 0.0;    // cm, widest part of a pen stroke; 0 for an area
        bool contour = false;  // a long pen stroke: never left out
    };

    [[nodiscard]] const std::vector<Shape>& shapes() const { return m_shapes; }
    [[nodiscard]] const std::vector<Gradient>& gradients() const { return m_gradients; }
    // What skin and cloth cover, in rows of kRowCm from left to right: where labels should not stand.
    [[nodiscard]] const std::vector<QRectF>& silhouette() const { return m_silhouette; }
    static constexpr double kRowCm = 1.0;

private:
    std::vector<Shape> m_shapes;
    std::vector<Gradient> m_gradients;
    std::vector<QRectF> m_silhouette;
};

struct InkManner {
    QTransform cmToDevice;
    QSet<Layer> layers;
    double leastHatchPx = 0.7;  // hatches thinner than this are left out
    QColor ghost;               // contours of a peeled skin; an invalid colour: none
};

// tones: one colour for each tone of the plate (see toneColours). False when cancelled, which
// leaves the device half painted. What lies outside the painter's clip is skipped.
[[nodiscard]] bool paintInk(QPainter& painter, const ReadyInk& ink, const std::vector<QColor>& tones,
                            const InkManner& manner, const std::atomic_bool& cancelled);

// The same for a picture that is painted once, without a ghost.
[[nodiscard]] bool paintInk(QPainter& painter, const Picture& picture, const std::vector<QColor>& tones,
                            const QTransform& cmToDevice, const QSet<Layer>& layers, double leastHatchPx,
                            const std::atomic_bool& cancelled);

}  // namespace fb
