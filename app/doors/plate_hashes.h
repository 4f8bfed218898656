// Which drawings a check-off was asked on, as hashes, so that a grade a year later is replayed on the same
// ones or said not to be.
#pragma once

#include <QString>
#include <vector>

#include "core/session/request.h"

namespace fb {

// SHA-256 of the plate this program ships for a view, hex; empty without one.
[[nodiscard]] QString plateHash(View view);
// "view=sha256" of every plate those requests and their targets need, by view, separated by spaces.
[[nodiscard]] QString plateHashesOf(const std::vector<SetRequest>& requests);
// Of such a list; empty where the view is not named.
[[nodiscard]] QString recordedHash(const QString& plateHashes, View view);

}  // namespace fb
