// Everything a plate shows, from one value to pixels: the sheet, the drawing, what is laid on it,
// the scene, the tools, the mark, the crosshair, the loupe and the focus ring.
#pragma once

#include <QImage>
#include <memory>
#include <optional>

#include "app/canvas/ink_worker.h"
#include "app/canvas/plate_tools.h"
#include "app/canvas/view_frame.h"
#include "app/scene/scene.h"

class QPainter;

namespace fb {

struct PlateFace {
    QRectF widget;
    ViewFrame frame;
    Scheme scheme;
    double textScale = 1.0;
    bool hasPicture = false;
    QString placeholder;             // calm words while there is no picture
    std::optional<InkResult> drawn;  // the last drawing that came, of any frame
    Scene scene;
    std::optional<QPointF> mark;       // cm
    std::optional<QPointF> crosshair;  // cm, when it is shown
    std::optional<QPointF> loupe;      // widget: the place it enlarges
    bool focused = false;
    ToolFace tools;
    std::optional<QImage> sceneLayer;  // painted before (see scene_layer.h); nullopt: paint all of it
};

// The sheet of paper on a widget: all of it but a narrow rim.
[[nodiscard]] QRectF sheetOf(const QRectF& widget);
// What the mark covers, and labels keep clear of.
[[nodiscard]] QRectF markBox(QPointF widget, double textScale);

void paintFace(QPainter& painter, const PlateFace& face);

// The pressed edge an engraver's plate leaves in damp paper, with its film of ink inside.
void paintPlateMark(QPainter& painter, const QRectF& plate, const Scheme& scheme, double scale);
// Where the needle goes in: four short strokes about a dot, on a halo of paper.
void paintMark(QPainter& painter, QPointF at, const Scheme& scheme, double textScale);
void paintCrosshair(QPainter& painter, QPointF at, const QRectF& sheet, const Scheme& scheme,
                    double textScale);

}  // namespace fb
