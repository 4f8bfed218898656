#include "app/scene/label_placement.h"

#include <QFontMetricsF>
#include <QLineF>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "app/scene/label_room.h"

namespace fb {

namespace placement_detail {

inline constexpr double kPadX = 6.0;
inline constexpr double kPadY = 2.0;
inline constexpr double kGap = 4.0;
inline constexpr double kPoint = 5.0;        // about a named point no label lies
inline constexpr double kColumnGap = 34.0;   // between the outermost point and a column
inline constexpr double kMostHidden = 0.12;  // share of an area that its words may cover over a figure
inline constexpr double kWidest = 0.34;      // share of the paper a label may take before it is broken

class Placer {
public:
    Placer(const QVector<LabelAsk>& asks, const QRectF& paper, const QVector<QRectF>& taken,
           const LabelShyness& shyness)
        : m_asks(asks),
          m_paper(paper.adjusted(kGap, kGap, -kGap, -kGap)),
          m_taken(taken),
          m_shyness(shyness),
          m_placed(asks.size())
    {
        for (const LabelAsk& ask : asks) {
            m_sizes.push_back(measured(ask));
            if (ask.kind == LabelKind::Name && !ask.outline.isEmpty())
                m_taken.push_back(QRectF(ask.outline.first() - QPointF(kPoint, kPoint),
                                         ask.outline.first() + QPointF(kPoint, kPoint)));
        }
    }

    QVector<PlacedLabel> run()
    {
        for (const LabelKind kind : {LabelKind::Plaque, LabelKind::Listed, LabelKind::Word})
            for (qsizetype i = 0; i < m_asks.size(); ++i)
                if (m_asks[i].kind == kind && isSeen(i))
                    placeOne(i);
        placeColumns();
        return m_placed;
    }

private:
    [[nodiscard]] QSizeF measured(const LabelAsk& ask, double share = kWidest) const
    {
        const QFontMetricsF metrics(ask.font);
        const double widest = std::max(60.0, m_paper.width() * share);
        const QRectF box =
            metrics.boundingRect(QRectF(0, 0, widest, 1e5), Qt::TextWordWrap | Qt::AlignLeft, ask.text);
        return {std::ceil(box.width()) + 2 * kPadX + 1, std::ceil(box.height()) + 2 * kPadY};
    }

    [[nodiscard]] QRectF held(const QRectF& box) const { return heldOn(m_paper, box); }

    [[nodiscard]] bool isFree(const QRectF& box) const { return isFreeOf(box, m_taken, kGap); }

    void settle(qsizetype i, const QRectF& box, Qt::Alignment alignment, bool leader, QPointF anchor)
    {
        m_placed[i] = {m_asks[i], box, leader, meetsAny(box, m_shyness.body), anchor, alignment};
        m_taken.push_back(box);
    }

    [[nodiscard]] bool isSeen(qsizetype i) const
    {
        const LabelAsk& ask = m_asks[i];
        if (ask.kind == LabelKind::Listed)
            return true;
        if (ask.kind == LabelKind::Name)
            return m_paper.contains(anchorOf(i));
        // A level line has a box without height.
        return ask.outline.boundingRect().adjusted(-1, -1, 1, 1).intersects(m_paper);
    }

    void placeOne(qsizetype i)
    {
        const LabelAsk& ask = m_asks[i];
        if (ask.kind == LabelKind::Listed)
            return placeInList(i);
        const bool done = ask.kind == LabelKind::Word ? placeInside(i) : placeBeside(i);
        if (!done)
            m_columns.push_back(i);
    }

    void placeInList(qsizetype i)
    {
        const QSizeF size = m_sizes[i];
        QRectF box(m_paper.topLeft() + QPointF(8, 8), size);
        for (int column = 0; column < 6; ++column, box.moveLeft(box.left() + m_paper.width() * kWidest * 0.8))
            for (box.moveTop(m_paper.top() + 8); box.bottom() <= m_paper.bottom(); box.moveTop(box.top() + 2))
                if (m_paper.contains(box) && isFree(box))
                    return settle(i, box, Qt::AlignLeft | Qt::AlignVCenter, false, {});
        if (const auto free = freed(i, QRectF(m_paper.topLeft() + QPointF(8, 8), size)))
            settle(i, *free, Qt::AlignLeft | Qt::AlignVCenter, false, {});
    }

    // Beside the figure if the area has room there, in one line or broken; else over it, unless the
    // words would hide what they name.
    [[nodiscard]] bool placeInside(qsizetype i)
    {
        const QPolygonF seen = m_asks[i].outline.intersected(QPolygonF(m_paper));
        const QSizeF room = seen.boundingRect().size();
        for (const bool crossing : {false, true}) {
            for (const double share : {kWidest, 0.2, 0.12}) {
                const QSizeF size = measured(m_asks[i], share);
                const bool hides = size.width() * size.height() > kMostHidden * room.width() * room.height();
                if (!(crossing && hides) && placeInside(i, seen, size, crossing))
                    return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool placeInside(qsizetype i, const QPolygonF& seen, const QSizeF& size, bool crossing)
    {
        const auto box = roomWithin(seen, m_asks[i].over, size, [&](const QRectF& at) {
            return isFree(at) && (crossing || !meetsAny(at, m_shyness.figure));
        });
        if (box)
            settle(i, *box, Qt::AlignCenter, false, box->center());
        return box.has_value();
    }

    // On either side of the middle of the line, ever farther out.
    [[nodiscard]] bool placeBeside(qsizetype i)
    {
        const QPolygonF& line = m_asks[i].outline;
        if (line.size() < 2)
            return false;
        const QLineF whole(line.first(), line.last());
        const QLineF unit = whole.length() > 0 ? whole.normalVector().unitVector() : QLineF(0, 0, 1, 0);
        const QPointF normal(unit.dx(), unit.dy());
        const QSizeF size = m_sizes[i];
        const double reach =
            (std::abs(normal.x()) * size.width() + std::abs(normal.y()) * size.height()) / 2.0;
        for (int step = 0; step < 12; ++step) {
            for (const double way : {1.0, -1.0}) {
                QRectF box(QPointF(), size);
                box.moveCenter(whole.center() + normal * way * (reach + 9.0 + 12.0 * step));
                if (!m_paper.contains(box) || !isFree(box))
                    continue;
                settle(i, box, Qt::AlignCenter, step > 1, whole.center());
                return true;
            }
        }
        return false;
    }

    // A point itself; the middle of what is seen of anything larger, of an area a place on it.
    [[nodiscard]] QPointF anchorOf(qsizetype i) const
    {
        const QPolygonF& outline = m_asks[i].outline;
        if (outline.size() == 1)
            return outline.first();
        return m_asks[i].kind == LabelKind::Word ? placeOn(outline, m_paper)
                                                 : outline.boundingRect().intersected(m_paper).center();
    }

    // What could not be placed by its shape joins the names in the two columns.
    void placeColumns()
    {
        for (qsizetype i = 0; i < m_asks.size(); ++i)
            if (m_asks[i].kind == LabelKind::Name && isSeen(i))
                m_columns.push_back(i);
        if (m_columns.isEmpty())
            return;
        double low = anchorOf(m_columns.first()).x();
        double high = low;
        for (const LabelAsk& ask : m_asks) {
            if (ask.outline.isEmpty())
                continue;
            low = std::min(low, std::max(ask.outline.boundingRect().left(), m_paper.left()));
            high = std::max(high, std::min(ask.outline.boundingRect().right(), m_paper.right()));
        }
        std::stable_sort(m_columns.begin(), m_columns.end(),
                         [&](qsizetype a, qsizetype b) { return anchorOf(a).x() < anchorOf(b).x(); });
        const qsizetype split = nearerLeft(low - kColumnGap, high + kColumnGap);
        QVector<qsizetype> left = m_columns.first(split);
        QVector<qsizetype> right = m_columns.sliced(split);
        placeColumn(left, low - kColumnGap, true);
        placeColumn(right, high + kColumnGap, false);
    }

    // How many of the names, from the left, stand in the left column: those that are nearer to it than to the
    // right one, as long as either column has room.
    [[nodiscard]] qsizetype nearerLeft(double left, double right) const
    {
        const double middle = (clearEdge(m_columns, left, true) + clearEdge(m_columns, right, false)) / 2.0;
        qsizetype split =
            std::ranges::count_if(m_columns, [&](qsizetype i) { return anchorOf(i).x() <= middle; });
        const auto fits = [&](qsizetype from, qsizetype to) {
            double total = 0.0;
            for (qsizetype k = from; k < to; ++k)
                total += m_sizes[m_columns[k]].height() + kGap;
            return total <= m_paper.height();
        };
        const qsizetype all = m_columns.size();
        while (split > 0 && !fits(0, split) && fits(split - 1, all))
            --split;
        while (split < all && !fits(split, all) && fits(0, split + 1))
            ++split;
        return split;
    }

    void placeColumn(QVector<qsizetype>& column, double edge, bool left)
    {
        std::stable_sort(column.begin(), column.end(),
                         [&](qsizetype a, qsizetype b) { return anchorOf(a).y() < anchorOf(b).y(); });
        edge = clearEdge(column, edge, left);
        double total = 0.0;
        for (const qsizetype i : column)
            total += m_sizes[i].height() + kGap;
        double floor = m_paper.top();
        for (const qsizetype i : column) {
            const QSizeF size = m_sizes[i];
            const QPointF anchor = anchorOf(i);
            QRectF box(QPointF(left ? edge - size.width() : edge, anchor.y() - size.height() / 2), size);
            box = held(box);
            box.moveTop(std::clamp(box.top(), floor, std::max(floor, m_paper.bottom() - total)));
            total -= size.height() + kGap;
            const auto free = freed(i, box);
            if (!free)
                continue;
            settle(i, *free, (left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter, true, anchor);
            floor = free->bottom() + kGap;
        }
    }

    static bool meetsAny(const QRectF& box, const QVector<QRectF>& others)
    {
        return std::any_of(others.begin(), others.end(),
                           [&](const QRectF& other) { return other.intersects(box); });
    }

    [[nodiscard]] bool isClear(const QVector<qsizetype>& column, double edge, bool left,
                               bool crossingEdges) const
    {
        return std::all_of(column.begin(), column.end(), [&](qsizetype i) {
            const QSizeF size = m_sizes[i];
            const QRectF box(QPointF(left ? edge - size.width() : edge, anchorOf(i).y() - size.height()),
                             QSizeF(size.width(), 2.0 * size.height()));
            return box.left() >= m_paper.left() && box.right() <= m_paper.right() &&
                   !meetsAny(box, m_shyness.body) && (crossingEdges || !meetsAny(box, m_shyness.edges));
        });
    }

    // The nearest edge farther out at which the whole column stands beside the body, not on it;
    // the wished one where the paper has no such place.
    [[nodiscard]] double clearEdge(const QVector<qsizetype>& column, double wish, bool left) const
    {
        for (const bool crossingEdges : {false, true})
            for (double edge = wish; m_paper.left() <= edge && edge <= m_paper.right();
                 edge += left ? -6.0 : 6.0)
                if (isClear(column, edge, left, crossingEdges))
                    return edge;
        return wish;
    }

    // The nearest free place; where there is none, one for the words broken narrower. nullopt: the paper is
    // full.
    [[nodiscard]] std::optional<QRectF> freed(qsizetype i, const QRectF& wish) const
    {
        for (const QSizeF& size : {wish.size(), measured(m_asks[i], 0.2), measured(m_asks[i], 0.12)})
            if (const auto free = freePlace({wish.topLeft(), size}, m_paper, m_taken, kGap))
                return free;
        return std::nullopt;
    }

    const QVector<LabelAsk>& m_asks;
    QRectF m_paper;
    QVector<QRectF> m_taken;
    const LabelShyness& m_shyness;
    QVector<PlacedLabel> m_placed;
    QVector<QSizeF> m_sizes;
    QVector<qsizetype> m_columns;
};

}  // namespace placement_detail

QVector<PlacedLabel> placeLabels(const QVector<LabelAsk>& asks, const QRectF& paper,
                                 const QVector<QRectF>& taken, const LabelShyness& shyness)
{
    return placement_detail::Placer(asks, paper, taken, shyness).run();
}

}  // namespace fb
