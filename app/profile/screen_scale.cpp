#include "app/profile/screen_scale.h"

#include <QScreen>
#include <QStringList>
#include <cmath>

namespace fb {

namespace screen_scale_detail {

constexpr double kMmPerInch = 25.4;
// A system that knows nothing says 0 or a round 96 for a screen of any size; beyond these it is wrong.
constexpr double kLeastDots = 60.0;
constexpr double kMostDots = 600.0;
constexpr double kUsualDots = 96.0;

}  // namespace screen_scale_detail

std::optional<PixelsPerMm> scaleFrom(double pixels, Mm length)
{
    const double scale = pixels / length.value();
    if (!(scale >= kCoarsest.value() && scale <= kFinest.value()))
        return std::nullopt;
    return PixelsPerMm{scale};
}

Cm lengthOn(PixelsPerMm scale, double pixels) { return toCm(Mm{pixels / scale.value()}); }

QString screenKey(const QScreen& screen)
{
    const QSize pixels = screen.size() * screen.devicePixelRatio();
    return QStringList{screen.name(), screen.manufacturer(), screen.model(), screen.serialNumber(),
                       QStringLiteral("%1x%2").arg(pixels.width()).arg(pixels.height())}
        .join(QLatin1Char('|'));
}

PixelsPerMm guessedScale(const QScreen& screen)
{
    using namespace screen_scale_detail;
    double dots = screen.physicalDotsPerInch() * screen.devicePixelRatio();
    if (!std::isfinite(dots) || dots < kLeastDots || dots > kMostDots)
        dots = kUsualDots * screen.devicePixelRatio();
    return PixelsPerMm{dots / kMmPerInch};
}

}  // namespace fb
