#include "app/profile/board_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/look/type.h"

namespace fb {

namespace board_detail {

constexpr double kGrip = 5.0;  // half a side, in pixels
constexpr double kArrow = 7.0;

// A closed hand as long as 1, thumb up: curves from one side of the wrist round to the other, as
// (along, across) of two handles and an end; drawn by us, no one's measure.
constexpr std::array<std::array<double, 6>, 11> kHand{{
    {0.06, -0.15, 0.12, -0.17, 0.18, -0.21},     // ball of the thumb
    {0.26, -0.27, 0.36, -0.32, 0.46, -0.335},    // thumb
    {0.52, -0.345, 0.55, -0.305, 0.51, -0.285},  // its tip
    {0.45, -0.265, 0.43, -0.245, 0.42, -0.215},  // web
    {0.50, -0.205, 0.66, -0.205, 0.83, -0.19},   // index finger
    {0.92, -0.185, 0.93, -0.10, 0.88, -0.095},
    {0.97, -0.115, 1.01, -0.08, 1.0, -0.045},  // middle finger
    {0.995, -0.005, 0.97, 0.005, 0.92, 0.005},
    {0.975, 0.015, 0.97, 0.095, 0.86, 0.10},  // ring finger
    {0.80, 0.10, 0.83, 0.18, 0.72, 0.19},     // little finger
    {0.50, 0.225, 0.20, 0.215, 0.0, 0.14},    // edge of the hand
}};
constexpr std::array<std::array<double, 4>, 3> kBetweenFingers{
    {{0.53, -0.10, 0.88, -0.095}, {0.545, 0.003, 0.92, 0.005}, {0.52, 0.10, 0.82, 0.10}}};

class Ink {
public:
    Ink(QPainter& painter, const BoardLook& look, const Scheme& scheme)
        : m_painter(painter),
          m_look(look),
          m_scheme(scheme),
          m_bold(scheme.kind == PaletteKind::Projector ? 1.5 : 1.0)
    {
    }

    void card()
    {
        const QRectF& f = m_look.figure;
        const double mm = m_look.pixelsPerMm;
        pen(m_scheme.ink, 1.4);
        m_painter.setBrush(m_scheme.panel);
        m_painter.drawRoundedRect(f, kCardCorner.value() * mm, kCardCorner.value() * mm);
        m_painter.setBrush(Qt::NoBrush);
        chip(QRectF(f.left() + 10.0 * mm, f.top() + 19.0 * mm, 12.5 * mm, 10.0 * mm));
        pen(m_scheme.line, 1.0);
        // Where a card has its letters.
        for (const double y : {36.0, 43.0})
            m_painter.drawLine(QPointF(f.left() + 10.0 * mm, f.top() + y * mm),
                               QPointF(f.left() + (y < 40.0 ? 62.0 : 40.0) * mm, f.top() + y * mm));
    }

    void ruler()
    {
        const QRectF& f = m_look.figure;
        constexpr int kParts = 10;
        pen(m_scheme.ink, 1.4);
        m_painter.drawLine(QPointF(f.left(), f.center().y()), QPointF(f.right(), f.center().y()));
        for (int i = 0; i <= kParts; ++i) {
            const double x = f.left() + f.width() * i / kParts;
            const double up = i % kParts == 0 ? f.height() / 2.0 : i % 5 == 0 ? 14.0 : 9.0;
            m_painter.drawLine(QPointF(x, f.center().y() - up), QPointF(x, f.center().y()));
            if (i % kParts == 0)
                m_painter.drawLine(QPointF(x, f.center().y()), QPointF(x, f.bottom()));
        }
    }

    void sides()
    {
        const QRectF& f = m_look.figure;
        pen(m_scheme.ink, 1.4);
        m_painter.drawLine(f.topLeft(), f.bottomLeft());
        m_painter.drawLine(f.topRight(), f.bottomRight());
    }

    // Tip and joint of a finger between its lines, faint: which way to lay it.
    void finger()
    {
        const QRectF& f = m_look.figure;
        const double half = f.width() / 2.0;
        const double tip = std::max(f.top(), f.center().y() - 5.4 * half);
        pen(m_scheme.line, 1.2);
        QPainterPath end(QPointF(f.left(), tip + half * 1.3));
        end.cubicTo(f.left(), tip - half * 0.4, f.right(), tip - half * 0.4, f.right(), tip + half * 1.3);
        m_painter.drawPath(end);
        for (const double y : {-0.13, 0.0, 0.13}) {
            const double at = f.center().y() + y * half;
            QPainterPath crease(QPointF(f.left() + half * 0.3, at));
            crease.quadTo(f.center().x(), at + half * 0.14, f.right() - half * 0.3, at);
            m_painter.drawPath(crease);
        }
    }

    // A hand between its lines, faint, from wrist to middle fingertip: which way to lay it.
    void hand()
    {
        const QRectF& f = m_look.figure;
        const auto at = [&](double along, double across) {
            return QPointF(f.left() + along * f.width(), f.center().y() + across * f.width());
        };
        QPainterPath outline(at(0.0, -0.14));
        for (const auto& c : kHand)
            outline.cubicTo(at(c[0], c[1]), at(c[2], c[3]), at(c[4], c[5]));
        for (const auto& seam : kBetweenFingers) {
            outline.moveTo(at(seam[0], seam[1]));
            outline.lineTo(at(seam[2], seam[3]));
        }
        pen(m_scheme.line, 1.2);
        m_painter.drawPath(outline);
    }

    // From side to side with its words in the middle, or beside it where they find no room.
    void dimension(double y)
    {
        const QRectF& f = m_look.figure;
        // In the text face: a number that is read off needs plain figures.
        const QFont font = fontOf(Type::Body, m_look.textScale);
        m_painter.setFont(font);
        const double words = QFontMetricsF(font).horizontalAdvance(m_look.size) + 14.0;
        const double high = QFontMetricsF(font).height();
        const bool isInside = words + 4.0 * kArrow < f.width();
        pen(m_scheme.quietInk, 1.0);
        if (isInside) {
            stretch({f.center().x() - words / 2.0, y}, {f.left(), y});
            stretch({f.center().x() + words / 2.0, y}, {f.right(), y});
        } else {
            stretch({f.left() - 3.0 * kArrow, y}, {f.left(), y});
            stretch({f.right() + 3.0 * kArrow, y}, {f.right(), y});
        }
        const QRectF box = isInside ? QRectF(f.center().x() - words / 2.0, y - high / 2.0, words, high)
                                    : QRectF(f.right() + 3.0 * kArrow, y - high / 2.0, words, high);
        pen(m_scheme.ink, 1.0);
        m_painter.drawText(box, Qt::AlignCenter, m_look.size);
    }

    // Outside its side, high on the paper: the hand covers the middle.
    void names(const QRectF& paper)
    {
        m_painter.setFont(fontOf(Type::PlateLabel, m_look.textScale));
        pen(m_scheme.quietInk, 1.0);
        constexpr double kOff = 10.0;
        const QRectF& f = m_look.figure;
        const double high = QFontMetricsF(m_painter.font()).height();
        const double top = f.top() - high - 2.0;
        const auto name = [&](double x, const QString& words) {
            const double wide = QFontMetricsF(m_painter.font()).horizontalAdvance(words);
            double left = x - wide / 2.0;
            left = qBound(paper.left() + kOff, left, paper.right() - kOff - wide);
            m_painter.drawText(QRectF(left, top, wide + 2.0, high), Qt::AlignLeft | Qt::AlignVCenter, words);
        };
        name(f.left(), m_look.sides[0]);
        name(f.right(), m_look.sides[1]);
    }

    void grips()
    {
        pen(m_scheme.accent, 1.6);
        m_painter.setBrush(m_scheme.paper);
        for (const QPointF& at : gripsOf(m_look.laid, m_look.figure))
            m_painter.drawRect(QRectF(at.x() - kGrip, at.y() - kGrip, 2.0 * kGrip, 2.0 * kGrip));
        m_painter.setBrush(Qt::NoBrush);
    }

private:
    void pen(const QColor& colour, double width)
    {
        m_painter.setPen(QPen(colour, width * m_bold, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    }

    // Our own: nine fields about a middle, no card's.
    void chip(const QRectF& chip)
    {
        pen(m_scheme.quietInk, 1.0);
        const double w = chip.width();
        const double h = chip.height();
        m_painter.drawRoundedRect(chip, w * 0.16, w * 0.16);
        const QRectF middle(chip.left() + w * 0.34, chip.top() + h * 0.28, w * 0.32, h * 0.44);
        m_painter.drawEllipse(middle);
        for (const double y : {0.33, 0.67}) {
            const double at = chip.top() + h * y;
            m_painter.drawLine(QPointF(chip.left(), at), QPointF(middle.left() + w * 0.03, at));
            m_painter.drawLine(QPointF(middle.right() - w * 0.03, at), QPointF(chip.right(), at));
        }
        m_painter.drawLine(QPointF(middle.center().x(), chip.top()),
                           QPointF(middle.center().x(), middle.top()));
        m_painter.drawLine(QPointF(middle.center().x(), middle.bottom()),
                           QPointF(middle.center().x(), chip.bottom()));
    }

    // A line with an arrow at its end.
    void stretch(QPointF from, QPointF to)
    {
        const double way = to.x() < from.x() ? 1.0 : -1.0;
        m_painter.drawLine(from, to);
        m_painter.drawLine(to, to + QPointF(way * kArrow, -kArrow * 0.4));
        m_painter.drawLine(to, to + QPointF(way * kArrow, kArrow * 0.4));
    }

    QPainter& m_painter;
    const BoardLook& m_look;
    const Scheme& m_scheme;
    double m_bold;
};

}  // namespace board_detail

std::vector<QPointF> gripsOf(Laid laid, const QRectF& figure)
{
    if (laid == Laid::Card)
        return {figure.topLeft(), figure.topRight(), figure.bottomLeft(), figure.bottomRight()};
    return {figure.bottomLeft(), figure.bottomRight()};
}

void paintBoard(QPainter& painter, const QRectF& paper, const BoardLook& look, const Scheme& scheme)
{
    painter.fillRect(paper, scheme.paper);
    painter.setRenderHint(QPainter::Antialiasing);
    board_detail::Ink ink(painter, look, scheme);
    const double below = look.figure.bottom();
    const double high = QFontMetricsF(fontOf(Type::PlateLabel, look.textScale)).height();
    switch (look.laid) {
    case Laid::Card: ink.card(); break;
    case Laid::Ruler: ink.ruler(); break;
    case Laid::Hand:
        ink.hand();
        ink.sides();
        break;
    case Laid::Finger:
        ink.finger();
        ink.sides();
        break;
    }
    ink.dimension(look.laid == Laid::Card || look.laid == Laid::Ruler ? below + high : below - 1.2 * high);
    ink.names(paper);
    ink.grips();
}

}  // namespace fb
