#include "app/look/icons.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>
#include <array>

namespace fb {

namespace icons_detail {

inline constexpr std::array<const char*, kIconCount> kFiles{
    "layer-skin", "layer-muscle", "layer-nerves", "layer-bone", "on-target",  "acceptable", "off-target", "unsafe",
    "zoom-in",    "zoom-out",     "zoom-whole",   "left",       "right",      "caution",    "application"};

inline constexpr std::array kSizes{16, 20, 24, 32, 48, 64};

QByteArray drawing(Icon icon, const QColor& colour)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(QLatin1String(kFiles[static_cast<std::size_t>(icon)])));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QByteArray text = file.readAll();
    if (icon != Icon::Application) text.replace("#000000", colour.name().toLatin1());
    return text;
}

QColor colourIn(Icon icon, const Scheme& scheme)
{
    switch (icon) {
    case Icon::OnTarget: return scheme.good;
    case Icon::Acceptable: return scheme.fair;
    case Icon::OffTarget: return scheme.bad;
    case Icon::Unsafe: return scheme.danger;
    default: return scheme.ink;
    }
}

}  // namespace icons_detail

Icon iconOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return Icon::OnTarget;
    case Verdict::Acceptable: return Icon::Acceptable;
    case Verdict::OffTarget: return Icon::OffTarget;
    case Verdict::Unsafe: return Icon::Unsafe;
    }
    return Icon::Unsafe;
}

QColor colourOf(Verdict verdict, const Scheme& scheme)
{
    return icons_detail::colourIn(iconOf(verdict), scheme);
}

QPixmap pixmapFor(Icon icon, const QColor& colour, int pixels, double devicePixelRatio)
{
    QPixmap pixmap(QSize(pixels, pixels) * devicePixelRatio);
    pixmap.setDevicePixelRatio(devicePixelRatio);
    pixmap.fill(Qt::transparent);
    QSvgRenderer renderer(icons_detail::drawing(icon, colour));
    if (!renderer.isValid()) return pixmap;
    QPainter painter(&pixmap);
    renderer.render(&painter, QRectF(0, 0, pixels, pixels));
    return pixmap;
}

QIcon iconFor(Icon icon, const Scheme& scheme)
{
    QIcon made;
    for (const int size : icons_detail::kSizes) {
        made.addPixmap(pixmapFor(icon, icons_detail::colourIn(icon, scheme), size));
        if (icon != Icon::Application) made.addPixmap(pixmapFor(icon, scheme.line, size), QIcon::Disabled);
    }
    return made;
}

}  // namespace fb
