// Which drawings a check-off was asked on, as hashes, so that a grade a year later is replayed on the same
// ones or said not to be.
#pragma once

#include <QString>
#include <vector>

#include "core/session/request.h"

namespace fb {

// "view=sha256" in hex of every plate those requests and their targets need, by view, separated by spaces.
[[nodiscard]] QString plateHashesOf(const std::vector<SetRequest>& requests);

}  // namespace fb
