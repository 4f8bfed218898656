// Paints the drawing of one pane of a demonstration, and keeps what the next one can use again: a hand on its
// way is laid anew over a body that stays as it is, not drawn anew with it.
//
// One thread at a time. It may read plates from disk; never in the window's thread.
#pragma once

#include <atomic>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/canvas/held_layer.h"
#include "app/demonstrate/lecture_face.h"
#include "app/doors/library.h"

namespace fb {

struct PaneJob {
    LecturePane pane;  // with a body
    ViewFrame frame;   // the image covers its sheet
    double pixelRatio = 1.0;
    Scheme scheme;
    QSet<Layer> layers;
    std::shared_ptr<const Library> library;  // of the hands' art; null: no hand is drawn
    bool moving = false;                     // half as fine will do
};

// Whether the same is to be painted.
[[nodiscard]] bool sameDrawing(const PaneJob& a, const PaneJob& b);

class PanePainter {
public:
    // Whether sharp() would take long enough for quick() to be shown before it.
    [[nodiscard]] bool isSlow(const PaneJob& job) const;
    // At most half as fine, but for a body that is there in full; the image is as large as a sharp one.
    [[nodiscard]] InkResult quick(const PaneJob& job);
    // nullopt when cancelled.
    [[nodiscard]] std::optional<InkResult> sharp(const PaneJob& job, const std::atomic_bool& cancelled);

private:
    struct Body {
        InkJob job;
        QImage image;
        std::vector<std::string> bones;  // laid on it
    };
    [[nodiscard]] std::shared_ptr<const ReadyInk> readyOf(const std::shared_ptr<const Picture>& picture);
    void drawHand(const Held& held, const PaneJob& job);
    void layHand(QImage& image, const Held& held, const ViewFrame& frame) const;
    [[nodiscard]] const QImage& withBones(const Body& body, const PaneJob& job);
    [[nodiscard]] InkResult resultOf(const InkJob& job, const Body& body, const PaneJob& asked);
    [[nodiscard]] bool hasSharp(const PaneJob& job) const;
    [[nodiscard]] bool hasSharpHand(const Held& held, const PaneJob& job) const;
    [[nodiscard]] QImage canvas(const QSize& size);
    [[nodiscard]] QImage copied(const QImage& image);
    [[nodiscard]] QImage enlarged(QImage small, const InkJob& job);

    std::shared_ptr<const Picture> m_readyFor;
    std::shared_ptr<const ReadyInk> m_ready;
    std::optional<Body> m_sharp, m_quick;  // of one body, without hands; the sharp one without bones
    std::optional<Body> m_boned;           // the sharp one with them
    std::optional<HeldLayer> m_layer;
    std::vector<QImage> m_canvases;  // handed out; painted on again once nobody has them any more
};

}  // namespace fb
