#include "app/canvas/paper_shades.h"

#include <QPaintEngine>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace fb {

bool losesFading(const QPainter& painter)
{
    return painter.paintEngine() && painter.paintEngine()->type() == QPaintEngine::Pdf;
}

double dotsPerUnit(const QPainter& painter) { return painter.deviceTransform().m11(); }

QImage pictureOf(const QRectF& box, double dotsPerUnit, const std::function<void(QPainter&)>& paint)
{
    constexpr double kMostDots = 4.5e6;
    const double area = std::max(1e-6, box.width() * box.height());
    const double dots = std::min(dotsPerUnit, std::sqrt(kMostDots / area));
    const QSize size(std::max(1, static_cast<int>(std::ceil(box.width() * dots))),
                     std::max(1, static_cast<int>(std::ceil(box.height() * dots))));
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(size.width() / box.width(), size.height() / box.height());
    painter.translate(-box.topLeft());
    paint(painter);
    painter.end();
    return image;
}

}  // namespace fb
