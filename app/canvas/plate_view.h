// The plate on its paper: paints this patient's drawing, the scene over it and the learner's
// mark; pans, zooms, peels; marks by mouse, touch or keyboard crosshair. Knows no anatomy.
//
// Keys: arrows move the crosshair 5 mm, with Shift 1 mm; Enter places the mark, Enter again
// hands it in; Backspace or Delete withdraws it; + and - zoom, 0 shows the whole
// plate; Ctrl with arrows pans. Mouse: click marks, a drag carries the mark to where it ends, wheel
// zooms at the pointer, middle or right button or Space with left drags the paper. Touch: one
// finger shows a loupe above the finger and marks where it lifts, two fingers pan and zoom.
//
// That is the tool Mark. With Press, mouse, one finger or the arrows press a fingertip on the skin, and
// Enter says marked() of the crosshair: plant a flag here. With Handles, mouse, one finger or the arrows move
// a handle, and marked() says where a click or a touch met none. Enter goes on to the next handle,
// Shift+Enter to the one before; a current handle that is not among those set leaves the arrows to the
// crosshair, whose place Enter says by marked(). Escape puts back what is dragged. Ctrl+Z, Ctrl+Shift+Z and
// Ctrl+Y ask for undo and redo. Places that are pressed or moved to stay on the picture.
//
// The drawing is painted by a cancellable worker; the UI thread only blits. A screen reader is
// told only of what is painted: accessible children are the crosshair, the mark and the
// labelled scene shapes.
#pragma once

#include <QPointF>
#include <QSet>
#include <QVector>
#include <QWidget>
#include <memory>
#include <optional>

#include "app/canvas/ink_painter.h"
#include "app/canvas/plate_tool.h"
#include "app/canvas/plate_words.h"
#include "app/look/palette.h"
#include "app/scene/scene.h"
#include "core/basics/enums.h"

namespace fb {

class PlateView : public QWidget {
    Q_OBJECT

public:
    explicit PlateView(QWidget* parent = nullptr);
    ~PlateView() override;

    void setPicture(
        std::shared_ptr<const Picture> picture);  // starts the worker; keeps zoom on the same plate and body
    void setScene(const Scene& scene);
    void setMark(std::optional<QPointF> cm);
    void
    setHand(std::shared_ptr<const Picture> hand);  // laid over the drawing; null: none (see hand_painter.h)
    void setHandShown(bool shown);                 // whether it is seen; default true
    void setLayers(const QSet<Layer>& layers);     // which are shown; default all
    void setMarkable(bool markable);               // false: read-only, no crosshair
    void setScheme(const Scheme& scheme);          // look of paper, ink and scene; repaints

    void setTool(PlateTool tool);  // default Mark; what is on the plate stays whatever the tool
    void setPress(const std::optional<PressLook>& press);
    void setFlags(const QVector<FlagLook>& flags);
    void setHandles(const QVector<HandleLook>& handles);
    void setCurrentHandle(int id);                                  // the one keys move; -1: none
    void setHeldHand(const std::shared_ptr<const HandLook>& hand);  // painted live; null: none
    void setHeldFingers(const std::optional<FingersLook>& fingers);

    [[nodiscard]] PlateTool tool() const;
    [[nodiscard]] bool isHeldSharp() const;  // what is held is drawn as finely as the screen is
    [[nodiscard]] bool isHandShown() const;
    [[nodiscard]] QPointF toCm(QPointF widget) const;
    [[nodiscard]] QPointF toWidget(QPointF cm) const;
    [[nodiscard]] double pixelsPerCm() const;
    [[nodiscard]] QPointF crosshair() const;  // cm
    [[nodiscard]] bool isSharp() const;       // the drawing shown is the finished one of this size

    // What a screen reader is told of, in the order of the accessible children.
    [[nodiscard]] QVector<SpokenItem> spokenItems() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

public Q_SLOTS:
    void showWhole();
    void zoomBy(double factor);
    void showAround(const QRectF& cm);  // an area, cm: as large as it can be seen whole

Q_SIGNALS:
    void marked(QPointF cm);  // a place was chosen; whoever listens decides and calls setMark
    void withdrawAsked();
    void gradeAsked();
    void undoAsked();
    void redoAsked();
    void pressed(QPointF cm);  // a finger presses, again and again while it moves
    void lifted();
    void handleGrabbed(int id);  // by keys: once for a key, however long it is held
    void handleMoved(int id, QPointF cm);
    void handleReleased(int id);
    void spoke(const QString& words);  // a screen reader is told: the press or the current handle changed
    void handleStepped(int delta);     // 1: the next handle, -1: the one before
    void sharpened();                  // the worker's finished drawing is on screen

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    [[nodiscard]] QString describedKeys() const;
    void connectTools();
    void nameChanged(SpokenKind kind);
    void sayCurrentHandle();

    class Private;
    std::unique_ptr<Private> m_private;
};

}  // namespace fb
