// Letters as large as a lecture hall asks for. A screen's engine keeps small glyphs and fills large ones as
// figures every time, half a millisecond each; so a line of large letters is kept as a picture and laid
// again as long as it stays as it is. For any thread; files get real text.
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace fb {

// One line or several, in the painter's pen and layout direction; flags as QPainter::drawText takes them.
void paintWords(QPainter& painter, const QRectF& box, int flags, const QString& text, const QFont& font);

// How many such pictures are kept now.
[[nodiscard]] qsizetype keptWords();

}  // namespace fb
