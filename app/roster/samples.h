// What comes with the program to try a check-off with: a sheet and fifteen students of a college that does
// not exist, invented and labelled so in the files (resources/samples). The sheet's title is English in every
// language, like any lab's own.
#pragma once

#include <vector>

#include "app/doors/records.h"

namespace fb {

// A fault only where the program was built with a broken file.
[[nodiscard]] Result<Sheet> sampleSheet();
[[nodiscard]] std::vector<Student> sampleStudents();

}  // namespace fb
