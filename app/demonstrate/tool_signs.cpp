#include "app/demonstrate/tool_signs.h"

#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace fb {

namespace tool_signs_detail {

constexpr double kSquare = 24.0;
constexpr double kPen = 1.8;

QPainterPath polyline(std::initializer_list<QPointF> points, bool closed = false)
{
    QPainterPath path(*points.begin());
    for (auto it = points.begin() + 1; it != points.end(); ++it)
        path.lineTo(*it);
    if (closed)
        path.closeSubpath();
    return path;
}

QPainterPath ring(QPointF middle, double radius)
{
    QPainterPath path;
    path.addEllipse(middle, radius, radius);
    return path;
}

// Four fingers up and a thumb, in one stroke round.
QPainterPath raisedHand()
{
    QPainterPath path({7.2, 12.6});
    path.lineTo(7.2, 6.4);
    path.cubicTo({7.2, 4.4}, {10.0, 4.4}, {10.0, 6.4});
    path.lineTo(10.0, 11.2);
    path.moveTo(10.0, 6.2);
    path.lineTo(10.0, 4.6);
    path.cubicTo({10.0, 2.6}, {12.8, 2.6}, {12.8, 4.6});
    path.lineTo(12.8, 11.2);
    path.moveTo(12.8, 5.4);
    path.cubicTo({12.8, 3.6}, {15.6, 3.6}, {15.6, 5.4});
    path.lineTo(15.6, 11.6);
    path.moveTo(15.6, 7.4);
    path.cubicTo({15.6, 5.8}, {18.2, 5.8}, {18.2, 7.6});
    path.lineTo(18.2, 14.4);
    path.cubicTo({18.2, 18.6}, {16.0, 21.0}, {12.6, 21.0});
    path.cubicTo({9.6, 21.0}, {8.0, 19.6}, {6.6, 17.2});
    path.lineTo(4.2, 13.4);
    path.cubicTo({3.4, 11.8}, {5.6, 10.6}, {6.6, 12.0});
    path.lineTo(7.2, 12.8);
    return path;
}

void paint(QPainter& painter, ToolSign sign, const QColor& ink)
{
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(ink, kPen, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.setPen(pen);
    const auto line = [&](double y, double width, Qt::PenStyle style = Qt::SolidLine) {
        QPen drawn(ink, width, Qt::SolidLine, Qt::FlatCap);
        if (style == Qt::DashLine)
            drawn.setDashPattern({4.4 / width, 2.9 / width});
        painter.setPen(drawn);
        painter.drawLine(QPointF(3.0, y), QPointF(21.0, y));
    };
    switch (sign) {
    case ToolSign::Pointer:
        painter.drawPath(ring({12, 12}, 7.4));
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawPath(ring({12, 12}, 2.2));
        break;
    case ToolSign::Spotlight: {
        QPainterPath dark;
        dark.addRect(QRectF(3, 3.6, 18, 16.8));
        dark.addPath(ring({12, 12}, 5.4));
        painter.fillPath(dark, ink);
        break;
    }
    case ToolSign::Pen:
        painter.drawPath(polyline({{4.6, 19.4}, {5.8, 15.0}, {16.4, 4.4}, {19.6, 7.6}, {9.0, 18.2}}, true));
        painter.drawPath(polyline({{14.0, 6.8}, {17.2, 10.0}}));
        break;
    case ToolSign::Eraser:
        painter.drawPath(polyline({{8.4, 19.4}, {3.8, 14.8}, {13.4, 5.2}, {19.4, 11.2}, {11.2, 19.4}}, true));
        painter.drawPath(polyline({{8.6, 10.0}, {14.6, 16.0}}));
        painter.drawPath(polyline({{11.2, 19.4}, {20.4, 19.4}}));
        break;
    case ToolSign::Lens:
        painter.drawPath(ring({10.4, 10.4}, 6.6));
        painter.drawPath(polyline({{15.4, 15.4}, {20.6, 20.6}}));
        break;
    case ToolSign::Ask: painter.drawPath(raisedHand()); break;
    case ToolSign::PlainLine: line(12.0, 3.4); break;
    case ToolSign::EdgedLine:
        line(9.2, 1.7);
        line(14.8, 1.7);
        break;
    case ToolSign::DashedLine: line(12.0, 3.0, Qt::DashLine); break;
    case ToolSign::Wipe:
        painter.drawPath(polyline({{5.0, 6.6}, {19.0, 6.6}}));
        painter.drawPath(polyline({{9.4, 6.4}, {9.4, 4.0}, {14.6, 4.0}, {14.6, 6.4}}));
        painter.drawPath(polyline({{6.8, 6.8}, {7.8, 20.2}, {16.2, 20.2}, {17.2, 6.8}}));
        break;
    case ToolSign::Stay:
        painter.drawPath(ring({12.0, 6.4}, 3.4));
        painter.drawPath(polyline({{12.0, 9.8}, {12.0, 19.6}}));
        painter.drawPath(polyline({{4.0, 19.6}, {20.0, 19.6}}));
        break;
    }
}

class SignEngine : public QIconEngine {
public:
    SignEngine(ToolSign sign, const QColor& ink, const QColor& faint)
        : m_sign(sign),
          m_ink(ink),
          m_faint(faint)
    {
    }

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override
    {
        painter->save();
        const double scale = std::min(rect.width(), rect.height()) / kSquare;
        painter->translate(rect.center().x() + 0.5 - kSquare * scale / 2.0,
                           rect.center().y() + 0.5 - kSquare * scale / 2.0);
        painter->scale(scale, scale);
        tool_signs_detail::paint(*painter, m_sign, mode == QIcon::Disabled ? m_faint : m_ink);
        painter->restore();
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override
    {
        QPixmap drawn(size);
        drawn.fill(Qt::transparent);
        QPainter painter(&drawn);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return drawn;
    }
    [[nodiscard]] QIconEngine* clone() const override { return new SignEngine(*this); }

private:
    ToolSign m_sign;
    QColor m_ink;
    QColor m_faint;
};

}  // namespace tool_signs_detail

QIcon toolIcon(ToolSign sign, const QColor& ink, const QColor& faint)
{
    return QIcon(new tool_signs_detail::SignEngine(sign, ink, faint));
}

}  // namespace fb
