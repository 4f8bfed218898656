#include "app/demonstrate/lecture_painter_lines.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "app/demonstrate/lecture_painter_words.h"

namespace fb {

namespace set_lines_detail {

// Of the font's size: closer than its own, which is cut for books and not for a wall.
constexpr double kLeading = 1.14;

QTextOption optionOf(Qt::LayoutDirection direction)
{
    QTextOption option;
    option.setWrapMode(QTextOption::WordWrap);
    option.setTextDirection(direction);
    return option;
}

struct Broken {
    QVector<QPair<int, int>> parts;  // start, length
    double widest = 0.0;
};

Broken broken(const QString& text, const QFont& font, double measure, Qt::LayoutDirection direction)
{
    QTextLayout layout(text, font);
    layout.setTextOption(optionOf(direction));
    layout.beginLayout();
    Broken made;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(measure);
        made.parts.push_back({line.textStart(), line.textLength()});
        made.widest = std::max(made.widest, line.naturalTextWidth());
    }
    layout.endLayout();
    return made;
}

// The narrowest measure that still takes as few lines.
Broken evened(const QString& text, const QFont& font, double measure, Qt::LayoutDirection direction)
{
    const Broken filled = broken(text, font, measure, direction);
    if (filled.parts.size() < 2)
        return filled;
    constexpr int kHalvings = 7;
    double low = measure / static_cast<double>(filled.parts.size() + 1);
    double high = measure;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (low + high) / 2.0;
        const Broken tried = broken(text, font, middle, direction);
        (tried.parts.size() <= filled.parts.size() && tried.widest <= middle ? high : low) = middle;
    }
    return broken(text, font, high, direction);
}

}  // namespace set_lines_detail

double leadingOf(const QFont& font) { return font.pixelSize() * set_lines_detail::kLeading; }

SetLines setLines(const QString& text, const QFont& font, const QRectF& room, Qt::Alignment alignment,
                  Qt::LayoutDirection direction, Balance balance)
{
    using namespace set_lines_detail;
    SetLines made;
    made.font = font;
    made.box = QRectF(room.topLeft(), QSizeF(0, 0));
    if (text.isEmpty() || room.width() <= 0.0)
        return made;
    const Broken parts = balance == Balance::Even ? evened(text, font, room.width(), direction)
                                                  : broken(text, font, room.width(), direction);
    const QFontMetricsF metrics(font);
    const bool atRight =
        (alignment & Qt::AlignLeading) != 0 ? direction == Qt::RightToLeft : direction == Qt::LeftToRight;
    double top = room.top();
    for (const auto& [start, length] : parts.parts) {
        const QString words = text.mid(start, length).trimmed();
        const double width = std::ceil(metrics.horizontalAdvance(words)) + 1.0;
        double left = room.center().x() - width / 2.0;
        if ((alignment & Qt::AlignHCenter) == 0)
            left = atRight ? room.right() - width : room.left();
        const QRectF taken(left, top, width, leadingOf(font));
        made.lines.push_back({words, taken});
        made.box = made.lines.size() == 1 ? taken : made.box.united(taken);
        top += leadingOf(font);
    }
    return made;
}

SetLines movedTo(SetLines lines, double top)
{
    const double by = top - lines.box.top();
    for (SetLines::Line& line : lines.lines)
        line.box.translate(0.0, by);
    lines.box.translate(0.0, by);
    return lines;
}

void paintLines(QPainter& painter, const SetLines& lines, Qt::LayoutDirection direction)
{
    painter.save();
    painter.setLayoutDirection(direction);
    const int flags = static_cast<int>(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter) |
                      Qt::TextDontClip | Qt::TextSingleLine |
                      (direction == Qt::RightToLeft ? Qt::TextForceRightToLeft : Qt::TextForceLeftToRight);
    for (const SetLines::Line& line : lines.lines)
        paintWords(painter, line.box, flags, line.text, lines.font);
    painter.restore();
}

}  // namespace fb
