// The picture itself: see lecture_face.h.
#include <QPainter>

#include "app/demonstrate/lecture_painter_areas.h"
#include "app/demonstrate/lecture_painter_page.h"
#include "app/demonstrate/lecture_painter_signs.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace lecture_painter_detail {

// A drawing of another moment stands in, moved and stretched, until the right one comes.
void paintDrawing(QPainter& painter, const LecturePane& pane, const ViewFrame& frame)
{
    if (!pane.drawn)
        return;
    const ViewFrame& was = pane.drawn->job.frame;
    if (was == frame) {
        painter.drawImage(frame.sheet().topLeft(), pane.drawn->image);
        return;
    }
    const QRectF now(frame.toWidget(was.toCm(was.sheet().topLeft())),
                     frame.toWidget(was.toCm(was.sheet().bottomRight())));
    painter.setRenderHint(QPainter::SmoothPixmapTransform, was.pixelsPerCm() != frame.pixelsPerCm());
    painter.drawImage(now, pane.drawn->image);
}

// Areas, verdicts and words are painted apart.
Scene figuresOf(Scene scene)
{
    scene.removeIf([](const SceneShape& shape) { return isArea(shape) || isVerdict(shape); });
    for (SceneShape& shape : scene)
        shape.label.clear();
    return scene;
}

class Picture {
public:
    Picture(QPainter& painter, const LectureFace& face, const LecturePage& page)
        : m_painter(painter),
          m_face(face),
          m_page(page)
    {
    }

    void paint()
    {
        paper();
        m_painter.setLayoutDirection(m_face.direction);
        for (std::size_t i = 0; i < m_page.panes.size(); ++i)
            plate(i);
        m_painter.save();
        m_painter.scale(m_page.plan.unit, m_page.plan.unit);
        words();
        m_painter.restore();
    }

    void warm()
    {
        m_painter.setLayoutDirection(m_face.direction);
        m_painter.scale(m_page.plan.unit, m_page.plan.unit);
        for (const LecturePage::Pane& pane : m_page.panes)
            paintLabels(m_painter, pane.labels, m_face.scheme, m_face.direction);
        words();
    }

private:
    // Of a drawing in its place no paper is seen, but for a pixel's breadth that it may not fill.
    void paper()
    {
        QRegion bare(QRectF(QPointF(), m_face.size).toAlignedRect());
        for (std::size_t i = 0; i < m_page.panes.size(); ++i) {
            const ViewFrame& frame = m_page.panes[i].frame;
            const auto& drawn = m_face.panes[i].drawn;
            if (drawn && drawn->job.frame == frame)
                bare -= frame.sheet().toRect().adjusted(1, 1, -1, -1);
        }
        for (const QRect& part : bare)
            m_painter.fillRect(part, m_face.scheme.paper);
    }

    void plate(std::size_t index)
    {
        const LecturePane& shown = m_face.panes[index];
        const LecturePage::Pane& pane = m_page.panes[index];
        const ViewFrame& frame = pane.frame;
        m_painter.save();
        m_painter.setClipRect(frame.sheet(), Qt::IntersectClip);
        paintDrawing(m_painter, shown, frame);
        const Scene scene = shown.look.scene + shown.extra;
        const QTransform cmToPixels = frame.cmToWidget();
        paintAreas(m_painter, scene, m_face.scheme, cmToPixels, m_page.plan.unit);
        m_painter.save();
        m_painter.scale(m_page.plan.unit, m_page.plan.unit);
        paintScene(m_painter, figuresOf(scene), m_face.scheme, pane.cmToUnits, 2.0, pane.place);
        m_painter.restore();
        paintVerdicts(m_painter, scene, m_face.scheme, cmToPixels, m_page.plan.unit);
        m_painter.scale(m_page.plan.unit, m_page.plan.unit);
        const bool isFirst = index == 0;
        if (isFirst)
            strokes(pane);
        if (isFirst && m_face.pointer && m_face.spotlight)
            paintSpotlight(m_painter, pane.cmToUnits.map(*m_face.pointer), pane.place, m_face.scheme);
        if (shown.look.press)
            paintPress(m_painter, *shown.look.press, pane.press, m_face.scheme);
        paintLabels(m_painter, pane.labels, m_face.scheme, m_face.direction);
        if (isFirst && m_face.pointer)
            pointer(pane, pane.cmToUnits.map(*m_face.pointer));
        m_painter.restore();
    }

    void strokes(const LecturePage::Pane& pane)
    {
        const LectureBody& body = *m_face.panes.front().body;
        const auto paintOne = [&](const PenStroke& stroke) {
            paintStroke(m_painter, pane.cmToUnits.map(QPolygonF(pointsOn(stroke, body))), stroke.ink,
                        stroke.line, m_face.scheme);
        };
        m_painter.setRenderHint(QPainter::Antialiasing);
        for (const PenStroke& stroke : m_face.strokes)
            paintOne(stroke);
        if (m_face.drawing)
            paintOne(*m_face.drawing);
    }

    void pointer(const LecturePage::Pane& pane, QPointF at)
    {
        if (m_face.tool == LectureTool::Magnifier)
            paintLens(m_painter, m_face, {at, pane.place, pane.cmToUnits, m_page.plan.unit});
        if (m_face.tool == LectureTool::Point || m_face.tool == LectureTool::Ask)
            paintPointer(m_painter, at, m_face.scheme);
    }

    void words()
    {
        const LecturePlan& plan = m_page.plan;
        constexpr double kRule = 5.0;  // above the caution
        m_painter.setRenderHint(QPainter::Antialiasing);
        for (const LecturePage::Words& words : m_page.words)
            if (!words.backing.isEmpty())
                m_painter.fillRect(words.backing, m_face.scheme.paper);
        m_painter.setPen(QPen(m_face.scheme.line, 1.2));
        m_painter.drawLine(QPointF(plan.caution.left(), plan.caution.top() - kRule),
                           QPointF(plan.caution.right(), plan.caution.top() - kRule));
        for (const LecturePage::Words& words : m_page.words) {
            m_painter.setPen(words.ink);
            paintLines(m_painter, words.set, m_face.direction);
        }
    }

    QPainter& m_painter;
    const LectureFace& m_face;
    const LecturePage& m_page;
};

}  // namespace lecture_painter_detail

void warmWords(const LectureFace& face, double devicePixelRatio)
{
    QImage aside(1, 1, QImage::Format_ARGB32_Premultiplied);
    aside.setDevicePixelRatio(devicePixelRatio);
    QPainter painter(&aside);
    const LecturePage page = pageOf(face);
    lecture_painter_detail::Picture(painter, face, page).warm();
}

void paintLecture(QPainter& painter, const LectureFace& face, const LecturePage& page)
{
    painter.save();
    if (face.blank)
        painter.fillRect(QRectF(QPointF(), face.size), schemeOf(PaletteKind::Dark).window);
    else
        lecture_painter_detail::Picture(painter, face, page).paint();
    painter.restore();
}

void paintLecture(QPainter& painter, const LectureFace& face) { paintLecture(painter, face, pageOf(face)); }

}  // namespace fb
