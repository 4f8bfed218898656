// Where students stand on a sheet, from what was signed.
#pragma once

#include <vector>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// Of every student, by family name.
[[nodiscard]] Result<std::vector<StudentStanding>> readStandings(const Store& store, const SheetOnFile& sheet,
                                                                 const Moment& now);
[[nodiscard]] Result<StudentStanding> readStanding(const Store& store, const SheetOnFile& sheet,
                                                   const Student& student, const Moment& now);

}  // namespace fb
