// Looks over a window as it stands on screen and lists what a careful eye would object to:
// words cut off, two pieces of text crossing, something hanging over the window's edge.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

namespace fb::test {

// Empty when all is well; one line for each fault otherwise.
[[nodiscard]] QStringList layoutFaults(const QWidget& window);

// Every control that can take the focus by Tab must have an object name and a name that a
// screen reader can say; one line for each that has not.
[[nodiscard]] QStringList namelessControls(const QWidget& window);

}  // namespace fb::test
