// Every problem as one clear sentence: what is wrong, where, and how to mend it. The same
// sentence stands in the window's notice and on the command line.
#pragma once

#include <QString>

#include "core/basics/problem.h"

namespace fb {

// One sentence, ending in a full stop, in the language of the program; numbers in the form of
// the default QLocale. Text taken from outside is shown in one line and shortened.
[[nodiscard]] QString sentenceOf(const Fault& fault);

// A fault's texts as sentenceOf() shows them.
struct ShownFault {
    QString where, what, low, high;
};

// The part of sentenceOf() that tells of what is found by hand and of what is kept; empty for any
// other problem.
[[nodiscard]] QString byHandFault(Problem problem, const ShownFault& fault);

// The same of check-offs, their files, records and lock.
[[nodiscard]] QString checkOffFault(Problem problem, const ShownFault& fault);

// The same of demonstrations and what they read.
[[nodiscard]] QString lectureFault(Problem problem, const ShownFault& fault);

}  // namespace fb
