#include "app/canvas/view_frame.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace frame_detail {

// Half of what is seen may hang over the edge of the picture, but only once it is larger than the sheet.
double heldMiddle(double middle, double low, double extent, double seen)
{
    if (seen >= extent)
        return low + extent / 2.0;
    const double inset = seen * 0.25;
    return std::clamp(middle, low + inset, low + extent - inset);
}

}  // namespace frame_detail

ViewFrame ViewFrame::whole(const QRectF& sheet, const QRectF& picture)
{
    ViewFrame frame;
    frame.m_sheet = sheet;
    if (picture.width() > 0.0 && picture.height() > 0.0)
        frame.m_picture = picture;
    frame.m_middle = frame.m_picture.center();
    frame.m_scale = frame.wholeScale();
    return frame;
}

double ViewFrame::wholeScale() const
{
    const double width = std::max(40.0, m_sheet.width() - 2.0 * kMargin);
    const double height = std::max(40.0, m_sheet.height() - 2.0 * kMargin);
    return std::min(width / m_picture.width(), height / m_picture.height());
}

double ViewFrame::zoom() const { return m_scale / wholeScale(); }

QPointF ViewFrame::toCm(QPointF widget) const
{
    const QPointF off = widget - m_sheet.center();
    return m_middle + QPointF(off.x(), -off.y()) / m_scale;
}

QPointF ViewFrame::toWidget(QPointF cm) const
{
    const QPointF off = (cm - m_middle) * m_scale;
    return m_sheet.center() + QPointF(off.x(), -off.y());
}

QTransform ViewFrame::cmToWidget() const
{
    const QPointF origin = toWidget({0, 0});
    return {m_scale, 0, 0, -m_scale, origin.x(), origin.y()};
}

void ViewFrame::hold()
{
    const double least = wholeScale();
    m_scale = std::clamp(m_scale, least, least * kLargestZoom);
    m_middle.setX(frame_detail::heldMiddle(m_middle.x(), m_picture.left(), m_picture.width(),
                                           m_sheet.width() / m_scale));
    m_middle.setY(frame_detail::heldMiddle(m_middle.y(), m_picture.top(), m_picture.height(),
                                           m_sheet.height() / m_scale));
}

ViewFrame ViewFrame::zoomedAt(QPointF widget, double factor) const
{
    if (!std::isfinite(factor) || factor <= 0.0)
        return *this;
    ViewFrame made = *this;
    const QPointF kept = toCm(widget);
    const double least = wholeScale();
    made.m_scale = std::clamp(m_scale * factor, least, least * kLargestZoom);
    made.m_middle += kept - made.toCm(widget);
    made.hold();
    return made;
}

ViewFrame ViewFrame::panned(QPointF pixels) const
{
    ViewFrame made = *this;
    made.m_middle -= QPointF(pixels.x(), -pixels.y()) / m_scale;
    made.hold();
    return made;
}

ViewFrame ViewFrame::resized(const QRectF& sheet) const
{
    ViewFrame made = *this;
    made.m_sheet = sheet;
    made.m_scale = made.wholeScale() * zoom();
    made.hold();
    return made;
}

ViewFrame ViewFrame::showing(QPointF cm, double margin) const
{
    const QPointF at = toWidget(cm);
    const QRectF inner = m_sheet.adjusted(margin, margin, -margin, -margin);
    const QPointF held(std::clamp(at.x(), inner.left(), std::max(inner.left(), inner.right())),
                       std::clamp(at.y(), inner.top(), std::max(inner.top(), inner.bottom())));
    return held == at ? *this : panned(held - at);
}

ViewFrame ViewFrame::around(const QRectF& cm) const
{
    if (!(cm.width() > 0.0 && cm.height() > 0.0))
        return *this;
    ViewFrame made = *this;
    made.m_scale = std::min(m_sheet.width() / cm.width(), m_sheet.height() / cm.height());
    made.m_middle = cm.center();
    made.hold();
    return made;
}

}  // namespace fb
