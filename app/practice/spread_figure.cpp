#include "app/practice/spread_figure.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/look/type.h"
#include "app/practice/parts.h"

namespace fb {

namespace spread_figure_detail {

constexpr double kLeastReach = 3.0;  // cm
constexpr int kMarkSize = 18;        // px

}  // namespace spread_figure_detail

SpreadFigure::SpreadFigure(QWidget* parent) : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setSizePolicy(policy);
}

QSize SpreadFigure::sizeHint() const
{
    constexpr int kSide = 460;
    return {parts::scaled(this, kSide), parts::scaled(this, kSide)};
}

QSize SpreadFigure::minimumSizeHint() const
{
    constexpr int kSide = 240;
    return {kSide, kSide};
}

void SpreadFigure::showRun(const Summary& summary, const Target& target)
{
    m_summary = summary;
    m_region.clear();
    m_reach = spread_figure_detail::kLeastReach;
    const auto widen = [this](Point p) { m_reach = std::max({m_reach, std::abs(p.x), std::abs(p.y)}); };
    for (const Point corner : target.regionSkin.corners()) {
        const Point off = (corner - target.idealSkin) * (1.0 / target.scale);
        m_region.push_back({off.x, -off.y});
        widen(m_region.back());
    }
    m_acromion = target.idealSkin.y / target.scale;
    m_armpit = m_acromion + target.axillaDepth.value() / target.scale;
    widen({0.0, m_acromion});
    widen({0.0, m_armpit});
    std::ranges::for_each(summary.marks, widen);
    update();
}

void SpreadFigure::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    update();
}

QPointF SpreadFigure::place(Point offset) const
{
    const double air = parts::scaled(this, space::kBroad);
    const double half = std::max(1.0, std::min(width(), height()) / 2.0 - air);
    const double perCm = half / m_reach;
    return {width() / 2.0 + offset.x * perCm, height() / 2.0 + offset.y * perCm};
}

void SpreadFigure::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setPen(QPen(m_scheme.line, 1.0));
    painter.setBrush(m_scheme.paper);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    painter.setRenderHint(QPainter::Antialiasing);
    paintRuler(painter);
    paintLevel(painter, m_acromion, tr("acromion"));
    //: The height of the armpit on the arm.
    paintLevel(painter, m_armpit, tr("armpit level"));
    QPolygonF region;
    for (const Point corner : m_region)
        region << place(corner);
    QColor wash = m_scheme.of(Role::Region);
    constexpr int kWashAlpha = 40;
    wash.setAlpha(kWashAlpha);
    painter.setBrush(wash);
    painter.setPen(QPen(m_scheme.of(Role::Region), 1.5));
    painter.drawPolygon(region);
    paintMarks(painter);
    paintWords(painter);
}

void SpreadFigure::paintRuler(QPainter& painter) const
{
    painter.setPen(QPen(m_scheme.line, 1.0));
    painter.drawLine(place({-m_reach, 0.0}), place({m_reach, 0.0}));
    painter.drawLine(place({0.0, -m_reach}), place({0.0, m_reach}));
    constexpr double kTick = 3.5;
    for (int cm = -static_cast<int>(m_reach); cm <= static_cast<int>(m_reach); ++cm) {
        const QPointF across = place({double(cm), 0.0});
        const QPointF along = place({0.0, double(cm)});
        painter.drawLine(across - QPointF(0.0, kTick), across + QPointF(0.0, kTick));
        painter.drawLine(along - QPointF(kTick, 0.0), along + QPointF(kTick, 0.0));
    }
}

void SpreadFigure::paintLevel(QPainter& painter, double distal, const QString& word) const
{
    constexpr double kShare = 0.62;  // of the reach, to each side
    const QPointF left = place({-kShare * m_reach, distal});
    const QPointF right = place({kShare * m_reach, distal});
    painter.setPen(QPen(m_scheme.quietInk, 1.0, Qt::DashDotLine));
    painter.drawLine(left, right);
    painter.setPen(m_scheme.quietInk);
    painter.setFont(fontOf(Type::PlateLabel, textScaleOf(font())));
    const double high = painter.fontMetrics().height() * 1.2;
    painter.drawText(QRectF(right.x() + space::kNear, right.y() - high / 2.0, width() - right.x(), high),
                     Qt::AlignLeft | Qt::AlignVCenter, word);
}

void SpreadFigure::paintMarks(QPainter& painter) const
{
    const QPointF ideal = place({});
    constexpr double kCross = 7.0;
    painter.setPen(QPen(m_scheme.of(Role::Ideal), 1.5));
    painter.drawLine(ideal - QPointF(kCross, 0.0), ideal + QPointF(kCross, 0.0));
    painter.drawLine(ideal - QPointF(0.0, kCross), ideal + QPointF(0.0, kCross));
    const int size = parts::scaled(this, spread_figure_detail::kMarkSize);
    for (std::size_t i = 0; i < m_summary.marks.size() && i < m_summary.verdicts.size(); ++i) {
        const Verdict verdict = m_summary.verdicts[i];
        const QPixmap shape =
            pixmapFor(iconOf(verdict), colourOf(verdict, m_scheme), size, devicePixelRatioF());
        painter.drawPixmap(place(m_summary.marks[i]) - QPointF(size / 2.0, size / 2.0), shape);
    }
}

void SpreadFigure::paintWords(QPainter& painter) const
{
    painter.setPen(m_scheme.quietInk);
    painter.setFont(fontOf(Type::PlateLabel, textScaleOf(font())));
    const double air = parts::scaled(this, space::kBroad);
    const QRectF whole = rect();
    const QPointF top = place({0.0, -m_reach});
    const QPointF left = place({-m_reach, 0.0});
    const QPointF right = place({m_reach, 0.0});
    const double high = painter.fontMetrics().height() * 1.2;
    const auto above = QRectF(whole.left(), top.y() - high - space::kTight, whole.width(), high);
    //: Words at the ends of a small figure's axes.
    painter.drawText(above, Qt::AlignHCenter | Qt::AlignBottom, tr("shoulder"));
    painter.drawText(QRectF(whole.left(), 2.0 * height() / 2.0 - (top.y()) + space::kTight, whole.width(), high),
                     Qt::AlignHCenter | Qt::AlignTop, tr("elbow"));
    painter.drawText(QRectF(left.x(), left.y() + space::kTight, 2.0 * air, high), Qt::AlignLeft | Qt::AlignTop,
                     tr("back"));
    painter.drawText(QRectF(right.x() - 2.0 * air, right.y() + space::kTight, 2.0 * air, high),
                     Qt::AlignRight | Qt::AlignTop, tr("front"));
}

}  // namespace fb
