#include "app/demonstrate/lecture_label_place.h"

#include <QFontMetricsF>
#include <QLineF>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/scene/scene_painter.h"

namespace fb {

namespace label_place_detail {

constexpr double kPadX = 6.0;
constexpr double kPadY = 2.0;
constexpr double kGap = 4.0;
constexpr double kNear = 26.0;  // from what is named to its name, where nothing is in the way

// What a place costs.
constexpr double kOfCover = 9.0;     // the whole name on hand or region
constexpr double kOfNamed = 4.0;     // on the line it names
constexpr double kOfLine = 0.7;      // on any other line
constexpr double kOfCrossing = 1.6;  // a leader that runs over hand, region or another name
constexpr double kFar = 110.0;       // units of distance that cost 1
constexpr double kBreadth = 0.12;    // a name in one long line, or in many short ones
constexpr double kNothing = 0.05;    // so little is as good as a place can be

QSizeF setIn(const LabelAsk& ask, double widest)
{
    return QFontMetricsF(ask.font)
        .boundingRect(QRectF(0, 0, widest, 1e5), Qt::TextWordWrap | Qt::AlignLeft, ask.text)
        .size();
}

// As narrow as its number of lines allows, so that they come out about as long.
QSizeF measured(const LabelAsk& ask, double widest)
{
    constexpr double kStep = 8.0;
    QSizeF size = setIn(ask, widest);
    for (QSizeF narrower = setIn(ask, size.width() - kStep);
         narrower.height() <= size.height() && narrower.width() < size.width() && size.width() > kStep;
         narrower = setIn(ask, size.width() - kStep))
        size = narrower;
    return {std::ceil(size.width()) + 2 * kPadX + 1, std::ceil(size.height()) + 2 * kPadY};
}

double distanceTo(const QRectF& box, QPointF p)
{
    const double dx = std::max({box.left() - p.x(), 0.0, p.x() - box.right()});
    const double dy = std::max({box.top() - p.y(), 0.0, p.y() - box.bottom()});
    return std::hypot(dx, dy);
}

bool isOn(const NameGround::Bar& bar, QPointF p)
{
    const QPointF way = bar.to - bar.from;
    const double square = QPointF::dotProduct(way, way);
    const double t =
        square > 0.0 ? std::clamp(QPointF::dotProduct(p - bar.from, way) / square, 0.0, 1.0) : 0.0;
    const QPointF off = p - bar.from - way * t;
    return QPointF::dotProduct(off, off) < bar.half * bar.half;
}

// Whether any of a line lies in a box.
bool meets(const QRectF& box, QPointF a, QPointF b)
{
    constexpr int kPieces = 24;
    for (int i = 0; i <= kPieces; ++i)
        if (box.contains(a + (b - a) * i / kPieces))
            return true;
    return false;
}
bool meets(const QRectF& box, const QPolygonF& line)
{
    for (qsizetype i = 0; i + 1 < line.size(); ++i)
        if (meets(box, line[i], line[i + 1]))
            return true;
    return false;
}

class Search {
public:
    Search(const LabelAsk& ask, const NameGround& ground)
        : m_ask(ask),
          m_ground(ground),
          m_paper(ground.paper.adjusted(kGap, kGap, -kGap, -kGap))
    {
        for (const QPolygonF& area : ground.areas)
            m_bounds.push_back(area.boundingRect());
        findAnchors();
    }

    [[nodiscard]] std::optional<PlacedLabel> run()
    {
        if (m_anchors.isEmpty())
            return std::nullopt;
        for (const auto& [share, cost] :
             {std::pair(0.34, 0.0), std::pair(0.24, kBreadth), std::pair(0.5, kBreadth)})
            if (!m_best || m_best->cost > cost + kNothing)
                search(measured(m_ask, std::max(60.0, share * m_paper.width())), cost);
        if (!m_best)
            return std::nullopt;
        return PlacedLabel{m_ask, m_best->box, true, false, m_best->anchor, Qt::AlignCenter};
    }

private:
    struct Place {
        QRectF box;
        QPointF anchor;
        double cost = 1e9;
    };
    struct Anchor {
        QPointF at;
        double cost = 0.0;  // the farther from the middle, the more
    };

    void addAnchor(QPointF at, double cost)
    {
        if (m_ground.paper.contains(at))
            m_anchors.push_back({at, cost});
    }

    // A point itself; a line about its middle; an area a little within its outline.
    void findAnchors()
    {
        const QPolygonF& named = m_ask.outline;
        if (named.isEmpty())
            return;
        if (m_ask.kind == LabelKind::Name) {
            addAnchor(named.first(), 0.0);
        } else if (m_ask.kind == LabelKind::Plaque) {
            for (const double t : {0.5, 0.4, 0.6, 0.3, 0.7, 0.15, 0.85})
                addAnchor(named.first() + (named.last() - named.first()) * t, std::abs(t - 0.5));
        } else {
            constexpr double kWithin = 11.0;
            constexpr double kStride = 30.0;
            const QPointF middle = named.boundingRect().center();
            for (qsizetype i = 0; i < named.size(); ++i) {
                const QLineF side(named[i], named[(i + 1) % named.size()]);
                const int pieces = std::clamp(static_cast<int>(side.length() / kStride), 1, 12);
                for (int k = 0; k < pieces; ++k) {
                    QLineF inward(side.pointAt((k + 0.5) / pieces), middle);
                    inward.setLength(std::min(kWithin, inward.length() / 2.0));
                    addAnchor(inward.p2(), 0.0);
                }
            }
        }
    }

    [[nodiscard]] const Anchor& anchorFor(const QRectF& box) const
    {
        const auto costOf = [&](const Anchor& anchor) {
            return distanceTo(box, anchor.at) / kFar + anchor.cost;
        };
        return *std::min_element(m_anchors.begin(), m_anchors.end(),
                                 [&](const Anchor& a, const Anchor& b) { return costOf(a) < costOf(b); });
    }

    [[nodiscard]] bool isFree(const QRectF& box) const
    {
        const QRectF wide = box.adjusted(-kGap, -kGap, kGap, kGap);
        return m_paper.contains(box) &&
               std::none_of(m_ground.taken.begin(), m_ground.taken.end(),
                            [&](const QRectF& other) { return other.intersects(wide); });
    }

    [[nodiscard]] bool isCovering(QPointF p) const
    {
        if (std::any_of(m_ground.laid.begin(), m_ground.laid.end(),
                        [p](const NameGround::Bar& bar) { return isOn(bar, p); }))
            return true;
        for (qsizetype i = 0; i < m_ground.areas.size(); ++i)
            if (m_bounds[i].contains(p) && m_ground.areas[i].containsPoint(p, Qt::OddEvenFill))
                return true;
        return false;
    }

    [[nodiscard]] bool isTaken(QPointF p) const
    {
        return std::any_of(m_ground.taken.begin(), m_ground.taken.end(),
                           [p](const QRectF& taken) { return taken.contains(p); });
    }

    [[nodiscard]] double nearness(const QRectF& box, const Anchor& anchor) const
    {
        const double away = distanceTo(box, anchor.at);
        constexpr double kTooNear = 16.0;
        const double close = std::max(0.0, kTooNear - away) / kTooNear;
        return std::abs(away - kNear) / kFar + close + anchor.cost +
               QLineF(box.center(), anchor.at).length() / 2000.0;
    }

    // Share of a grid over the name that lies on hand or region.
    [[nodiscard]] double covered(const QRectF& box) const
    {
        constexpr int kAcross = 7;
        constexpr int kDown = 4;
        int on = 0;
        for (int i = 0; i < kAcross; ++i)
            for (int k = 0; k < kDown; ++k)
                on += isCovering({box.left() + box.width() * i / (kAcross - 1),
                                  box.top() + box.height() * k / (kDown - 1)})
                          ? 1
                          : 0;
        return static_cast<double>(on) / (kAcross * kDown);
    }

    // Share of the leader on hand or region; the last of it, on what is named, does not count.
    [[nodiscard]] double crossed(const QRectF& box, QPointF anchor) const
    {
        constexpr int kPieces = 10;
        constexpr double kEnd = 40.0;
        const PlacedLabel placed{m_ask, box, true, false, anchor, Qt::AlignCenter};
        const QLineF leader(leaderStart(placed), anchor);
        int on = 0;
        for (int i = 0; i <= kPieces; ++i) {
            const QPointF p = leader.pointAt(static_cast<double>(i) / kPieces);
            on += QLineF(p, anchor).length() > kEnd && (isCovering(p) || isTaken(p)) ? 1 : 0;
        }
        return static_cast<double>(on) / kPieces;
    }

    [[nodiscard]] double otherCost(const QRectF& box, QPointF anchor) const
    {
        double cost = kOfCover * covered(box) + kOfCrossing * crossed(box, anchor);
        const QRectF wide = box.adjusted(-kGap, -kGap, kGap, kGap);
        if (m_ask.kind == LabelKind::Plaque && meets(wide, m_ask.outline))
            cost += kOfNamed;
        for (const QPolygonF& line : m_ground.lines)
            cost += meets(wide, line) ? kOfLine : 0.0;
        return cost;
    }

    void take(const QRectF& box, double sizeCost)
    {
        const Anchor& anchor = anchorFor(box);
        const double near = nearness(box, anchor) + sizeCost;
        if ((m_best && near >= m_best->cost) || !isFree(box))
            return;
        const double cost = near + otherCost(box, anchor.at);
        if (!m_best || cost < m_best->cost)
            m_best = Place{box, anchor.at, cost};
    }

    // The nearest first, so that most are never looked at closely; then little by little from the best.
    void search(const QSizeF& size, double sizeCost)
    {
        constexpr int kColumns = 40;
        constexpr int kRows = 26;
        const double wide = m_paper.width() - size.width();
        const double high = m_paper.height() - size.height();
        if (wide < 0.0 || high < 0.0)
            return;
        std::vector<std::pair<double, QRectF>> places;
        for (int i = 0; i <= kColumns; ++i)
            for (int k = 0; k <= kRows; ++k) {
                const QRectF box(
                    QPointF(m_paper.left() + wide * i / kColumns, m_paper.top() + high * k / kRows), size);
                places.emplace_back(nearness(box, anchorFor(box)), box);
            }
        std::sort(places.begin(), places.end(),
                  [](const auto& a, const auto& b) { return a.first < b.first; });
        for (const auto& [near, box] : places) {
            if (m_best && near + sizeCost >= m_best->cost)
                break;
            take(box, sizeCost);
        }
        if (!m_best || m_best->box.size() != size)
            return;
        for (const double step : {12.0, 6.0, 3.0, 1.5})
            for (const QPointF way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
                take(m_best->box.translated(way * step), sizeCost);
    }

    const LabelAsk& m_ask;
    const NameGround& m_ground;
    QRectF m_paper;
    QVector<QRectF> m_bounds;
    QVector<Anchor> m_anchors;
    std::optional<Place> m_best;
};

}  // namespace label_place_detail

std::optional<PlacedLabel> placeName(const LabelAsk& ask, const NameGround& ground)
{
    return label_place_detail::Search(ask, ground).run();
}

}  // namespace fb
