// Dragging in the real window: the practice page in a run by hand of the hip, whose build, and with it the
// figures on the plate, changes at every move.
#pragma once

#include <QSize>

namespace fb::bench {

void measurePage(QSize window, int textPercent, double zoom);

}  // namespace fb::bench
