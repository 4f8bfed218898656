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

bool isSvg(const QPainter& painter)
{
    return painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::SVG;
}

inline constexpr double kLeastHatchOfHand = 0.34;

inline constexpr int kFull = 255;
inline constexpr int kWhole = 256;  // a share of one

// How much stays of a pixel of a grey and an alpha (premultiplied: light as the ink is where it
// covers). Washes let the body through, pen strokes hardly: the darker, the less.
const std::vector<QRgb>& sharesThatStay()
{
    static const std::vector<QRgb> shares = [] {
        constexpr double kOfLines = 0.94;
        std::vector<QRgb> made(static_cast<std::size_t>((kFull + 1) * (kFull + 1)), 0);
        for (int alpha = 1; alpha <= kFull; ++alpha) {
            for (int gray = 0; gray <= kFull; ++gray) {
                const double light = std::min(1.0, static_cast<double>(gray) / alpha);
                const double share = kHandOpacity + (kOfLines - kHandOpacity) * std::pow(1.0 - light, 1.5);
                made[static_cast<std::size_t>(alpha * (kFull + 1) + gray)] =
                    static_cast<QRgb>(std::lround(share * kWhole));
            }
        }
        return made;
    }();
    return shares;
}

// Two of the four parts of a pixel at once, rounded.
QRgb faded(QRgb pixel, QRgb share)
{
    constexpr QRgb kPair = 0x00ff00ff;
    constexpr QRgb kHalves = 0x00800080;
    const QRgb low = (((pixel & kPair) * share + kHalves) >> 8) & kPair;
    const QRgb high = (((pixel >> 8) & kPair) * share + kHalves) & (kPair << 8);
    return low | high;
}

void makeSeeThrough(QImage& layer)
{
    const std::vector<QRgb>& shares = sharesThatStay();
    for (int y = 0; y < layer.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(layer.scanLine(y));
        for (int x = 0; x < layer.width(); ++x) {
            const int alpha = qAlpha(line[x]);
            if (alpha == 0)
                continue;
            line[x] = faded(line[x], shares[static_cast<std::size_t>(alpha * (kFull + 1) + qGray(line[x]))]);
        }
    }
}

}  // namespace hand_painter_detail

std::shared_ptr<const Picture> handPicture(const std::shared_ptr<const Plate>& art,
                                           const std::optional<HandPose>& pose)
{
    if (!art || !pose)
        return nullptr;
    return std::make_shared<const Picture>(Picture{art, posedHand(*art, *pose), 0});
}

QRectF inkBounds(const ReadyInk& ink)
{
    QRectF bounds;
    for (const ReadyInk::Shape& shape : ink.shapes())
        bounds |= shape.bounds;
    return bounds;
}

std::optional<QImage> handLayer(const ReadyInk& hand, const std::vector<QColor>& tones,
                                const QTransform& cmToPixel, const QSize& size,
                                const std::atomic_bool& cancelled)
{
    QImage layer(size, QImage::Format_ARGB32_Premultiplied);
    layer.fill(Qt::transparent);
    QPainter painter(&layer);
    painter.setClipRect(layer.rect());
    const InkManner manner{
        cmToPixel, {Layer::Skin, Layer::Surface}, hand_painter_detail::kLeastHatchOfHand, QColor()};
    if (!paintInk(painter, hand, tones, manner, cancelled))
        return std::nullopt;
    painter.end();
    hand_painter_detail::makeSeeThrough(layer);
    return layer;
}

bool paintHand(QPainter& painter, const ReadyInk& hand, const std::vector<QColor>& tones,
               const QTransform& cmToDevice, const std::atomic_bool& cancelled)
{
    using namespace hand_painter_detail;
    QRectF seen = cmToDevice.mapRect(inkBounds(hand));
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
    const auto layer = handLayer(hand, tones, toLayer, pixels.size(), cancelled);
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
