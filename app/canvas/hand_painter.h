// The hand of whoever gives the injection, laid over a plate: painted as one thing, so that the body
// shows evenly through it, with any QPainter.
#pragma once

#include <QImage>
#include <QTransform>
#include <atomic>
#include <memory>
#include <optional>

#include "app/canvas/ink_painter.h"
#include "app/look/palette.h"
#include "core/hand/hand_pose.h"

class QPainter;

namespace fb {

inline constexpr double kHandOpacity = 0.6;  // of its washes; its lines are firmer

// The hand as a picture of its own, in the frame of the pose; null without a pose or without art.
// art: the plate of View::OpenHand.
[[nodiscard]] std::shared_ptr<const Picture> handPicture(const std::shared_ptr<const Plate>& art,
                                                         const std::optional<HandPose>& pose);

// Where there is ink, cm.
[[nodiscard]] QRectF inkBounds(const ReadyInk& ink);

// The hand alone on nothing, see-through, premultiplied; nullopt when cancelled.
[[nodiscard]] std::optional<QImage> handLayer(const ReadyInk& hand, const std::vector<QColor>& tones,
                                              const QTransform& cmToPixel, const QSize& size,
                                              const std::atomic_bool& cancelled);

// Over the drawing, under the scene. What lies outside the painter's clip is skipped. A painter
// with pixels gets its own, one of a PDF those of its resolution, one of an SVG four to a unit.
// False when cancelled: then nothing is painted.
[[nodiscard]] bool paintHand(QPainter& painter, const ReadyInk& hand, const std::vector<QColor>& tones,
                             const QTransform& cmToDevice, const std::atomic_bool& cancelled);

// The same for a hand that is painted once, in a scheme's own colours.
void paintHand(QPainter& painter, const Picture& hand, const Scheme& scheme, const QTransform& cmToDevice);

}  // namespace fb
