// The state behind a plate: which part of the picture is seen, what lies on it, and the
// drawing that is fetched for it. No widget: it says when to repaint and what was wished.
#pragma once

#include <QObject>
#include <QTimer>

#include "app/canvas/plate_input.h"
#include "app/canvas/plate_painter.h"

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

    [[nodiscard]] const ViewFrame& frame() const { return m_face.frame; }
    [[nodiscard]] QPointF crosshair() const { return m_crosshair; }
    [[nodiscard]] bool isSharp() const;
    [[nodiscard]] bool isHandShown() const { return m_handShown; }
    [[nodiscard]] PlateFace face() const;  // as it is to be painted now

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

Q_SIGNALS:
    void changed();  // repaint
    void crosshairMoved();
    void marked(QPointF cm);
    void withdrawAsked();
    void gradeAsked();
    void sharpened();

private:
    [[nodiscard]] bool showsCrosshair() const { return isMarkable() && m_byKeyboard && m_face.focused; }
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
    InkWorker m_worker;
};

}  // namespace fb
