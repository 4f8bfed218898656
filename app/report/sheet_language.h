// Another language than the window's for as long as a sheet's words are being collected. Nothing on screen
// follows: no window is told.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <functional>

namespace fb {

// Runs the work in the window's thread, whichever thread asks, and comes back when it is done: words and
// numbers are then those of the locale's name, or those of the moment where it is empty or no words of ours
// are known for it. `direction` is the way that language runs.
//
// Were the window's thread not to come to it within some seconds (the program is closing), the work runs
// in the asking thread and in the language of the moment.
void inLanguage(const QString& name, const std::function<void(Qt::LayoutDirection direction)>& work);

// Those a sheet can be written in, by their locale names.
[[nodiscard]] QStringList sheetLanguages();

}  // namespace fb
