// Which part of a picture is seen where: centimetres of the viewer's frame (y up) to pixels
// of a widget (y down), and back. A value; every change returns a new frame.
//
// Laws: toCm(toWidget(p)) == p; zooming keeps the point under the pointer; the scale stays
// between the whole picture and kLargestZoom times that; the picture never leaves the sheet.
#pragma once

#include <QRectF>
#include <QTransform>

namespace fb {

class ViewFrame {
public:
    static constexpr double kLargestZoom = 14.0;
    static constexpr double kMargin = 22.0;  // pixels around the whole picture

    // picture: what there is to see, in cm, low corner first (so "top" is the lowest y).
    [[nodiscard]] static ViewFrame whole(const QRectF& sheet, const QRectF& picture);

    [[nodiscard]] const QRectF& sheet() const { return m_sheet; }
    [[nodiscard]] const QRectF& picture() const { return m_picture; }
    [[nodiscard]] double pixelsPerCm() const { return m_scale; }
    [[nodiscard]] double zoom() const;  // 1: the whole picture

    [[nodiscard]] QPointF toCm(QPointF widget) const;
    [[nodiscard]] QPointF toWidget(QPointF cm) const;
    [[nodiscard]] QTransform cmToWidget() const;

    [[nodiscard]] ViewFrame zoomedAt(QPointF widget, double factor) const;
    [[nodiscard]] ViewFrame panned(QPointF pixels) const;
    // The same zoom and middle on another sheet.
    [[nodiscard]] ViewFrame resized(const QRectF& sheet) const;
    // Moved as little as needed for a point to lie within the sheet, `margin` pixels from its edge.
    [[nodiscard]] ViewFrame showing(QPointF cm, double margin) const;

    // As large as an area (cm, low corner first) can be shown whole, with it in the middle.
    [[nodiscard]] ViewFrame around(const QRectF& cm) const;

    friend bool operator==(const ViewFrame&, const ViewFrame&) = default;

private:
    [[nodiscard]] double wholeScale() const;
    void hold();

    QRectF m_sheet;
    QRectF m_picture{0, 0, 1, 1};
    QPointF m_middle;  // cm at the middle of the sheet
    double m_scale = 1.0;
};

}  // namespace fb
