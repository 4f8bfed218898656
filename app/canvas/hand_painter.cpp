#include "app/canvas/hand_painter.h"

#include <QImage>
#include <QPaintEngine>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/hand/posed_hand.h"

namespace fb {

namespace hand_painter_detail {

inline constexpr double kSvgFineness = 4.0;  // pixels to a unit
inline constexpr double kLeastHatchOfHand = 0.34;

QRectF boundsOfInk(const ReadyInk& hand)
{
    QRectF bounds;
    for (const ReadyInk::Shape& shape : hand.shapes())
        bounds |= shape.bounds;
    return bounds;
}

bool isSvg(const QPainter& painter)
{
    return painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::SVG;
}

// Washes let the body through, pen strokes hardly: the darker, the less.
void makeSeeThrough(QImage& layer)
{
    constexpr int kFull = 255;
    constexpr double kOfLines = 0.94;
    for (int y = 0; y < layer.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(layer.scanLine(y));
        for (int x = 0; x < layer.width(); ++x) {
            const int alpha = qAlpha(line[x]);
            if (alpha == 0)
                continue;
            // Premultiplied: light as the ink is where it covers.
            const double light = std::min(1.0, static_cast<double>(qGray(line[x])) / alpha);
            const double share = kHandOpacity + (kOfLines - kHandOpacity) * std::pow(1.0 - light, 1.5);
            const auto faded = [share](int part) { return static_cast<int>(std::lround(part * share)); };
            line[x] = qRgba(faded(qRed(line[x])), faded(qGreen(line[x])), faded(qBlue(line[x])),
                            std::min(kFull, faded(alpha)));
        }
    }
}

// One opaque hand on nothing, made see-through as a whole.
std::optional<QImage> layerOf(const ReadyInk& hand, const std::vector<QColor>& tones,
                              const QTransform& cmToPixel, const QSize& size,
                              const std::atomic_bool& cancelled)
{
    QImage layer(size, QImage::Format_ARGB32_Premultiplied);
    layer.fill(Qt::transparent);
    QPainter painter(&layer);
    painter.setClipRect(layer.rect());
    const InkManner manner{cmToPixel, {Layer::Skin, Layer::Surface}, kLeastHatchOfHand, QColor()};
    if (!paintInk(painter, hand, tones, manner, cancelled))
        return std::nullopt;
    painter.end();
    makeSeeThrough(layer);
    return layer;
}

}  // namespace hand_painter_detail

std::shared_ptr<const Picture> handPicture(const std::shared_ptr<const Plate>& art,
                                           const std::optional<HandPose>& pose)
{
    if (!art || !pose)
        return nullptr;
    return std::make_shared<const Picture>(Picture{art, posedHand(*art, *pose), 0});
}

bool paintHand(QPainter& painter, const ReadyInk& hand, const std::vector<QColor>& tones,
               const QTransform& cmToDevice, const std::atomic_bool& cancelled)
{
    using namespace hand_painter_detail;
    QRectF seen = cmToDevice.mapRect(boundsOfInk(hand));
    if (painter.hasClipping())
        seen &= painter.clipBoundingRect();
    QTransform toPixel = painter.deviceTransform();
    if (isSvg(painter))
        toPixel *= QTransform::fromScale(kSvgFineness, kSvgFineness);
    const QRect pixels = toPixel.mapRect(seen).toAlignedRect();
    if (seen.isEmpty() || pixels.isEmpty())
        return true;
    const QTransform toLayer =
        cmToDevice * toPixel * QTransform::fromTranslate(-pixels.left(), -pixels.top());
    const auto layer = layerOf(hand, tones, toLayer, pixels.size(), cancelled);
    if (layer)
        painter.drawImage(toPixel.inverted().mapRect(QRectF(pixels)), *layer);
    return layer.has_value();
}

void paintHand(QPainter& painter, const Picture& hand, const Scheme& scheme, const QTransform& cmToDevice)
{
    const std::atomic_bool never{false};
    static_cast<void>(
        paintHand(painter, ReadyInk(hand), toneColours(*hand.plate, scheme, 0), cmToDevice, never));
}

}  // namespace fb
