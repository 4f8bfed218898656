#include "app/demonstrate/lecture_stage_area.h"

#include <QPolygonF>
#include <algorithm>

#include "app/demonstrate/lecture_painter_signs.h"

namespace fb {

namespace lecture_area_detail {

class Area {
public:
    explicit Area(const LecturePage& page) : m_pane(page.panes.front()), m_unit(page.plan.unit) {}

    void add(const QPolygonF& cm, double reach)
    {
        const QRectF units = m_pane.cmToUnits.map(cm).boundingRect().adjusted(-reach, -reach, reach, reach);
        const QRectF pixels(units.topLeft() * m_unit, units.size() * m_unit);
        m_area += pixels.toAlignedRect() & sheet();
    }
    void addAll() { m_area += sheet(); }
    [[nodiscard]] const QRegion& area() const { return m_area; }

private:
    [[nodiscard]] QRect sheet() const { return m_pane.frame.sheet().toAlignedRect(); }

    const LecturePage::Pane& m_pane;
    double m_unit;
    QRegion m_area;
};

// Where two lines part, with the last corners they share: those are joined and capped anew.
qsizetype partingOf(const QPolygonF& one, const QPolygonF& other)
{
    constexpr qsizetype kCorners = 2;
    const auto parted = std::mismatch(one.begin(), one.end(), other.begin(), other.end()).first;
    return std::max<qsizetype>(0, parted - one.begin() - kCorners);
}

void addStroke(Area& area, const LectureFace& before, const LectureFace& now)
{
    const auto lineOf = [](const LectureFace& face) {
        return face.drawing ? QPolygonF(pointsOn(*face.drawing, *face.panes.front().body)) : QPolygonF();
    };
    const QPolygonF was = lineOf(before);
    const QPolygonF is = lineOf(now);
    const bool isOther = !before.drawing || !now.drawing || before.drawing->ink != now.drawing->ink ||
                         before.drawing->line != now.drawing->line;
    const qsizetype from = isOther ? 0 : partingOf(was, is);
    for (const QPolygonF& line : {was, is})
        if (from < line.size())
            area.add(line.mid(from), penReach());
}

}  // namespace lecture_area_detail

QRegion pointedArea(const LectureFace& before, const LectureFace& now, const LecturePage& page)
{
    using namespace lecture_area_detail;
    if (page.panes.empty())
        return {};
    Area area(page);
    // A spotlight darkens all that it does not light.
    if (now.spotlight && before.pointer.has_value() != now.pointer.has_value())
        area.addAll();
    if (before.pointer != now.pointer)
        for (const auto& at : {before.pointer, now.pointer})
            if (at)
                area.add({*at}, pointerReach(now.tool, now.spotlight));
    addStroke(area, before, now);
    return area.area();
}

}  // namespace fb
