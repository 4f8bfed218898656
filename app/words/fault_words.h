// Every problem as one clear sentence: what is wrong, where, and how to mend it. The same
// sentence stands in the window's notice and on the command line.
#pragma once

#include <QString>

#include "core/basics/problem.h"

namespace fb {

// One sentence, ending in a full stop, in the language of the program; numbers in the form of
// the default QLocale. Text taken from outside is shown in one line and shortened.
[[nodiscard]] QString sentenceOf(const Fault& fault);

}  // namespace fb
