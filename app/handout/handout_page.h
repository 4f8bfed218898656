// The pages of a hand-out, each painted into a room of so many units (see handout_pieces.h) from its upper
// left corner; margins lie outside. Whatever the language, each is one page.
#pragma once

#include <QSizeF>

#include "app/handout/handout_pieces.h"

namespace fb {

// The whole way: every key step as a small plate, what lies around, the rule, its sources.
void paintStepsPage(QPainter& painter, QSizeF size, const HandoutInk& ink);

// To practise on: the bare plate, large, with lines to write on; and its key, with the plate in the same
// place.
void paintPracticePage(QPainter& painter, QSizeF size, const HandoutInk& ink);
void paintKeyPage(QPainter& painter, QSizeF size, const HandoutInk& ink);

// One step, as large as the room.
void paintStepPage(QPainter& painter, QSizeF size, const HandoutInk& ink, const LectureLook& look);

}  // namespace fb
