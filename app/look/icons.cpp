#include "app/look/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>
#include <array>

namespace fb {

namespace icons_detail {

inline constexpr std::array<const char*, kIconCount> kFiles{
    "layer-skin", "layer-muscle", "layer-nerves", "layer-bone", "on-target",  "acceptable",
    "off-target", "unsafe",       "zoom-in",      "zoom-out",   "zoom-whole", "left",
    "right",      "caution",      "done",         "undo",       "redo",       "start-over",
    "watch",      "prompted",     "not-done",     "remark",     "application"};

QByteArray drawing(Icon icon, const QColor& colour)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(QLatin1String(kFiles[static_cast<std::size_t>(icon)])));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QByteArray text = file.readAll();
    if (icon != Icon::Application)
        text.replace("#000000", colour.name().toLatin1());
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

// Draws when asked and not before: a window opens with a dozen icons of which it shows few sizes.
class TintedEngine : public QIconEngine {
public:
    TintedEngine(Icon icon, const QColor& colour, const QColor& disabled)
        : m_icon(icon),
          m_colour(colour),
          m_disabled(disabled)
    {
    }

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override
    {
        const double ratio = painter->device()->devicePixelRatioF();
        painter->drawPixmap(rect, scaledPixmap(rect.size() * ratio, mode, state, ratio));
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override
    {
        return scaledPixmap(size, mode, state, 1.0);
    }
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State, qreal ratio) override
    {
        const bool isDisabled = mode == QIcon::Disabled && m_icon != Icon::Application;
        const int pixels = std::max(1, qRound(std::min(size.width(), size.height()) / ratio));
        return pixmapFor(m_icon, isDisabled ? m_disabled : m_colour, pixels, ratio);
    }
    [[nodiscard]] QIconEngine* clone() const override { return new TintedEngine(*this); }

private:
    Icon m_icon;
    QColor m_colour;
    QColor m_disabled;
};

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
    QPainter painter(&pixmap);
    paintIcon(painter, icon, colour, QRectF(0, 0, pixels, pixels));
    return pixmap;
}

void paintIcon(QPainter& painter, Icon icon, const QColor& colour, const QRectF& at)
{
    QSvgRenderer renderer(icons_detail::drawing(icon, colour));
    if (renderer.isValid())
        renderer.render(&painter, at);
}

QIcon iconFor(Icon icon, const Scheme& scheme)
{
    return QIcon(new icons_detail::TintedEngine(icon, icons_detail::colourIn(icon, scheme), scheme.line));
}

}  // namespace fb
