#include "app/canvas/flag_painter.h"

#include <QPainter>
#include <QPainterPath>

#include "app/look/type.h"

namespace fb {

namespace flag_detail {

inline constexpr double kPin = 30.0;
inline constexpr double kFly = 20.0;    // of the pennant, from the pin to its tip
inline constexpr double kHoist = 13.0;  // of the pennant, along the pin
inline constexpr double kRim = 3.0;

double weightOf(double textScale) { return 0.5 + 0.5 * heldTextScale(textScale); }

struct Ways {
    double fly;  // 1: to the right
    double up;   // -1: up the widget
};

Ways waysOf(QPointF foot, const QRectF& paper, double weight)
{
    return {foot.x() + (kFly + kRim) * weight > paper.right() ? -1.0 : 1.0,
            foot.y() - (kPin + kRim) * weight < paper.top() ? 1.0 : -1.0};
}

}  // namespace flag_detail

Scene flagScene(const QVector<FlagLook>& flags)
{
    Scene scene;
    for (const FlagLook& flag : flags)
        scene.push_back({Role::Landmark, Figure::Point, {flag.cm}, flag.name, flag.description});
    return scene;
}

QRectF flagBox(QPointF foot, const QRectF& paper, double textScale)
{
    using namespace flag_detail;
    const double w = weightOf(textScale);
    const Ways ways = waysOf(foot, paper, w);
    const QRectF box(foot, foot + QPointF(ways.fly * kFly * w, ways.up * kPin * w));
    return box.normalized().adjusted(-kRim * w, -kRim * w, kRim * w, kRim * w);
}

void paintFlag(QPainter& painter, QPointF foot, const QRectF& paper, const Scheme& scheme, double textScale)
{
    using namespace flag_detail;
    const double w = weightOf(textScale);
    const Ways ways = waysOf(foot, paper, w);
    const QPointF top = foot + QPointF(0, ways.up * kPin * w);
    const QPointF hoist = top - QPointF(0, ways.up * kHoist * w);
    const QPointF tip = (top + hoist) / 2 + QPointF(ways.fly * kFly * w, ways.up * 1.5 * w);
    const QPointF sag(0, -ways.up * 2.2 * w);
    QPainterPath pin(foot);
    pin.lineTo(top);
    QPainterPath pennant(top);
    pennant.quadTo((top + tip) / 2 + sag, tip);
    pennant.quadTo((hoist + tip) / 2 + sag, hoist);
    pennant.closeSubpath();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QColor halo = scheme.paper;
    halo.setAlphaF(0.9F);
    const QPen under(halo, 5.0 * w, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const QPen line(scheme.ink, 1.7 * w, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.strokePath(pin, under);
    painter.strokePath(pennant, under);
    painter.fillPath(pennant, scheme.accent);
    painter.strokePath(pennant, line);
    painter.strokePath(pin, line);
    painter.restore();
}

}  // namespace fb
