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

bool isSvg(const QPainter& painter)
{
    return painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::SVG;
}

inline constexpr int kFull = 255;

// How much stays of a pixel of a grey and an alpha (premultiplied: light as the ink is where it
// covers). Washes let the body through, pen strokes hardly: the darker, the less.
const std::vector<double>& sharesThatStay()
{
    static const std::vector<double> shares = [] {
        constexpr double kOfLines = 0.94;
        std::vector<double> made(static_cast<std::size_t>((kFull + 1) * (kFull + 1)), 0.0);
        for (int alpha = 1; alpha <= kFull; ++alpha) {
            for (int gray = 0; gray <= kFull; ++gray) {
                const double light = std::min(1.0, static_cast<double>(gray) / alpha);
                made[static_cast<std::size_t>(alpha * (kFull + 1) + gray)] =
                    kHandOpacity + (kOfLines - kHandOpacity) * std::pow(1.0 - light, 1.5);
            }
        }
        return made;
    }();
    return shares;
}

void makeSeeThrough(QImage& layer)
{
    const std::vector<double>& shares = sharesThatStay();
    for (int y = 0; y < layer.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(layer.scanLine(y));
        for (int x = 0; x < layer.width(); ++x) {
            const int alpha = qAlpha(line[x]);
            if (alpha == 0)
                continue;
            const double share = shares[static_cast<std::size_t>(alpha * (kFull + 1) + qGray(line[x]))];
            const auto faded = [share](int part) { return static_cast<int>(std::lround(part * share)); };
            line[x] = qRgba(faded(qRed(line[x])), faded(qGreen(line[x])), faded(qBlue(line[x])),
                            std::min(kFull, faded(alpha)));
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
