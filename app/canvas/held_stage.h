// The hand or the fingers a learner lays on the body, ready to be painted at any moment: one layer stands
// in, moved, turned and stretched, until a sharp one has been drawn off the UI thread. When the
// form itself changes (fingers open) a quick layer is drawn at once.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <atomic>
#include <optional>

#include "app/canvas/held_layer.h"

namespace fb {

class HeldStage : public QObject {
    Q_OBJECT

public:
    static constexpr int kSettleMs = 110;  // of rest, after which the sharp layer is asked for

    explicit HeldStage(QObject* parent = nullptr);
    ~HeldStage() override;

    void hold(std::optional<Held> held);
    void look(double devicePixelsPerCm, const Scheme& scheme);

    [[nodiscard]] std::optional<HeldImage> image() const;
    [[nodiscard]] bool isSharp() const;  // or there is nothing to hold

Q_SIGNALS:
    void changed();  // another layer has come

private:
    void drawQuick();
    void askSharp();
    void take(const HeldLayer& layer);

    std::optional<Held> m_held;
    std::optional<HeldLayer> m_layer;
    Scheme m_scheme;
    double m_pixelsPerCm = 1.0;
    QTimer m_settle;
    std::shared_ptr<std::atomic_bool> m_cancelled;  // of the sharp layer under way
    QThreadPool m_pool;                             // last: its work tells this object
};

}  // namespace fb
