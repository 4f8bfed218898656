// Words set in lines, as a printer sets the legend under a plate: as few lines as the measure allows, and
// those of nearly one length. Lengths are those of the painter.
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <QVector>

class QPainter;

namespace fb {

struct SetLines {
    struct Line {
        QString text;
        QRectF box;  // as high as the leading
    };
    QVector<Line> lines;
    QFont font;
    QRectF box;  // all of it
};

enum class Balance { Filled, Even };

// From the top of `room` down, whatever its height. alignment: where in the room's breadth; leading and
// trailing are the reading direction's.
[[nodiscard]] SetLines setLines(const QString& text, const QFont& font, const QRectF& room,
                                Qt::Alignment alignment, Qt::LayoutDirection direction, Balance balance);
[[nodiscard]] SetLines movedTo(SetLines lines, double top);

// In the painter's pen.
void paintLines(QPainter& painter, const SetLines& lines, Qt::LayoutDirection direction);

// How far one line is below the one before it.
[[nodiscard]] double leadingOf(const QFont& font);

}  // namespace fb
