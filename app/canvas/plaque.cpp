#include "app/canvas/plaque.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace fb {

namespace plaque_detail {

inline constexpr double kPadX = 8.0;
inline constexpr double kPadY = 4.0;
inline constexpr double kGap = 5.0;  // between a thing and its plaque

QRectF heldOn(const QRectF& paper, QRectF box)
{
    box.moveLeft(std::clamp(box.left(), paper.left(), std::max(paper.left(), paper.right() - box.width())));
    box.moveTop(std::clamp(box.top(), paper.top(), std::max(paper.top(), paper.bottom() - box.height())));
    return box;
}

// How much a box would hide of what is taken.
double coveredBy(const QRectF& box, const QVector<QRectF>& taken)
{
    double covered = 0.0;
    for (const QRectF& other : taken) {
        const QRectF hidden = box.intersected(other);
        covered += hidden.width() * hidden.height();
    }
    return covered;
}

}  // namespace plaque_detail

QSizeF plaqueSize(const QString& text, const QFont& font, double widest)
{
    using namespace plaque_detail;
    const QRectF room(0, 0, std::max(1.0, widest - 2 * kPadX), 1e5);
    const QSizeF words = QFontMetricsF(font)
                             .boundingRect(room, static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap, text)
                             .size();
    return {std::ceil(words.width()) + 2 * kPadX + 2, std::ceil(words.height()) + 2 * kPadY};
}

QRectF placeBeside(const QRectF& thing, const QSizeF& size, const QRectF& paper, const QVector<QRectF>& taken,
                   Qt::LayoutDirection direction)
{
    using plaque_detail::kGap;
    const double middleX = thing.center().x() - size.width() / 2;
    const double middleY = thing.center().y() - size.height() / 2;
    QVector<QPointF> spots{{thing.right() + kGap, middleY}, {thing.left() - kGap - size.width(), middleY}};
    if (direction == Qt::RightToLeft)
        std::swap(spots[0], spots[1]);
    spots += {{middleX, thing.bottom() + kGap}, {middleX, thing.top() - kGap - size.height()}};
    // Below and above it farther to either side, before it must lie over something else.
    for (const double y : {thing.bottom() + kGap, thing.top() - kGap - size.height()})
        for (const double x : {thing.right(), thing.left() - size.width()})
            spots.push_back({x, y});
    QRectF best = plaque_detail::heldOn(paper, {spots[0], size});
    double least = std::numeric_limits<double>::infinity();
    for (const QPointF& spot : std::as_const(spots)) {
        const QRectF box = plaque_detail::heldOn(paper, {spot, size});
        if (box.intersects(thing))
            continue;
        const double covered = plaque_detail::coveredBy(box, taken);
        if (covered < least) {
            least = covered;
            best = box;
        }
    }
    return best;
}

void paintPlaque(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
                 const Scheme& scheme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(scheme.ink, 1.2));
    painter.setBrush(scheme.paper);
    painter.drawRoundedRect(box.adjusted(0.6, 0.6, -0.6, -0.6), 3, 3);
    painter.setFont(font);
    painter.drawText(box, static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap, text);
    painter.restore();
}

}  // namespace fb
