// The state behind a plate: which part of the picture is seen, what lies on it, and the
// drawing that is fetched for it. No widget: it says when to repaint and what was wished.
#pragma once

#include <QObject>
#include <QTimer>

#include "app/canvas/plate_input.h"
#include "app/canvas/plate_painter.h"
#include "app/canvas/plate_tools.h"
#include "app/canvas/scene_layer.h"

namespace fb {

class PlateStage : public QObject, public PlateHands {
    Q_OBJECT

public:
    static constexpr int kSettleMs = 90;  // of rest, after which the sharp drawing is asked for

    explicit PlateStage(QObject* parent = nullptr);

    void setWidget(const QRectF& widget, double devicePixelRatio);
    void setTextScale(double textScale);
    void setFocus(bool focused);
    void setPicture(std::shared_ptr<const Picture> picture);
    void setScene(const Scene& scene);
    void setMark(std::optional<QPointF> cm);
    void setHand(std::shared_ptr<const Picture> hand);
    void setHandShown(bool shown);
    void setLayers(const QSet<Layer>& layers);
    void setMarkable(bool markable);
    void setScheme(const Scheme& scheme);

    void setTool(PlateTool tool);
    void setPress(const std::optional<PressLook>& press);
    void setFlags(const QVector<FlagLook>& flags);
    void setHandles(const QVector<HandleLook>& handles);
    void setCurrentHandle(int id);
    void setHeldHand(const std::shared_ptr<const HandLook>& hand);
    void setHeldFingers(const std::optional<FingersLook>& fingers);
    void setDirection(Qt::LayoutDirection direction);
    [[nodiscard]] const PlateTools& tools() const { return m_tools; }

    [[nodiscard]] const ViewFrame& frame() const { return m_face.frame; }
    [[nodiscard]] QPointF crosshair() const { return m_crosshair; }
    [[nodiscard]] bool isSharp() const;
    [[nodiscard]] bool isHandShown() const { return m_handShown; }
    // As it is to be painted now. While a tool is in hand the scene is kept painted between two faces.
    [[nodiscard]] PlateFace face() const;
    [[nodiscard]] PlateFace paintedFace();

    // Hands
    [[nodiscard]] bool isMarkable() const override { return m_markable && m_face.hasPicture; }
    void carry(std::optional<QPointF> at) override;
    void markAt(QPointF at) override;
    void loupe(std::optional<QPointF> at) override;
    void panBy(QPointF pixels) override;
    void zoomAt(QPointF at, double factor) override;
    void zoom(double factor) override;
    void whole() override;
    void around(const QRectF& cm);
    void stepCrosshair(QPointF cm) override;
    void enter() override;
    void withdraw() override;
    void setByKeyboard(bool keyboard) override;
    void setMoving(bool moving) override;
    [[nodiscard]] PlateTool tool() const override { return m_tools.tool(); }
    void press(QPointF at) override;
    void lift() override { m_tools.lift(); }
    [[nodiscard]] bool grab(QPointF at, double reach) override;
    void drag(QPointF at) override { m_tools.drag(m_face.frame, at); }
    void letGo() override;
    void putBack() override;
    void hover(std::optional<QPointF> at) override;
    void endStep() override { m_tools.endStep(); }
    void enterBack() override { Q_EMIT handleStepped(-1); }
    void undo() override { Q_EMIT undoAsked(); }
    void redo() override { Q_EMIT redoAsked(); }

Q_SIGNALS:
    void changed();                            // repaint
    void changedWithin(const QRectF& widget);  // repaint that much
    void crosshairMoved();
    void marked(QPointF cm);
    void withdrawAsked();
    void gradeAsked();
    void sharpened();
    void pressed(QPointF cm);
    void lifted();
    void handleGrabbed(int id);
    void handleMoved(int id, QPointF cm);
    void handleReleased(int id);
    void handleStepped(int delta);
    void undoAsked();
    void redoAsked();
    void cursorWished(Qt::CursorShape shape);

private:
    [[nodiscard]] bool showsCrosshair() const;
    [[nodiscard]] bool movesHandle() const;  // keys go to a handle, not to the crosshair
    void lookAgain();                        // size or colours of what is held
    template <typename Change>
    void changeTools(Change change);
    [[nodiscard]] bool isOfNow(const InkJob& job) const;
    [[nodiscard]] std::shared_ptr<const Picture> shownHand() const { return m_handShown ? m_hand : nullptr; }
    void setFrame(const ViewFrame& frame);
    void ask(bool preview);
    void take(const InkResult& result);

    PlateFace m_face;
    std::shared_ptr<const Picture> m_picture;
    std::shared_ptr<const Picture> m_hand;
    bool m_handShown = true;
    QSet<Layer> m_layers;
    double m_pixelRatio = 1.0;
    bool m_markable = true;
    bool m_byKeyboard = false;
    bool m_moving = false;
    QPointF m_crosshair;
    std::optional<QPointF> m_carried;
    QTimer m_settle;
    PlateTools m_tools;
    SceneLayer m_sceneLayer;
    InkWorker m_worker;
};

}  // namespace fb
