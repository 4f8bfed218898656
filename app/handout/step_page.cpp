// One step as a picture of its own: see handout_page.h.
#include <QPainter>
#include <algorithm>

#include "app/handout/handout_page.h"
#include "app/look/style.h"

namespace fb {

void paintStepPage(QPainter& painter, QSizeF size, const HandoutInk& ink, const LectureLook& look)
{
    const HandoutWords& words = ink.words;
    const SheetRoom room = roomOf(words, size.width(), 1.0);
    const SheetBlock head = headPiece(look.heading, {look.manner}, words.patient, room);
    const SetText caption = displayed(look.caption, room, room.width, Display::Caption);
    const SetText source = room.set(words.sources, room.width, Type::Small);
    const SheetBlock foot = footPiece(words.caution, {}, room);
    const double top = head.height + space::kApart;
    const double bottom =
        size.height() - foot.height - source.height() - caption.height() - 3.0 * space::kApart;
    head.paint(painter, 0.0);
    paintPlate(painter, ink, {0.0, top, room.width, bottom - top}, look, 1.0);
    painter.setPen(room.scheme.ink);
    caption.paint(painter, {0.0, bottom + space::kApart});
    painter.setPen(room.scheme.quietInk);
    source.paint(painter, {0.0, bottom + caption.height() + 2.0 * space::kApart});
    foot.paint(painter, size.height() - foot.height);
}

}  // namespace fb
