// A file made ready takes the place of the records, in one step of the disk: at any moment, a crash included,
// what stands there is whole, either the one or the other. The one before is kept aside, whole.
#pragma once

#include <functional>

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

// Opens the file of the records again, without letting another program in meanwhile.
using OpenAgain = std::function<Result<Store::Opened>(const std::shared_ptr<FileLock>& alone)>;

struct Replaced {
    Result<QString> aside;         // where the one before lies; NotPutBack, naming the records
    std::unique_ptr<Store> store;  // whichever stands there now, open; null: it could not be opened
};

// `ready` is closed and on the disk, with nothing beside it; the store is the only one of this program on its
// file. Another program that reads the file hinders it. Where it does not succeed, or is cancelled before the
// step, the store from before stands there again.
[[nodiscard]] Replaced replaceRecords(std::unique_ptr<Store> records, const QString& ready,
                                      const QString& aside, const LongWork& work, const OpenAgain& openAgain);

// What an end in the middle left: a copy that was being made, and another name of the file that is in use.
// The file is open and nobody else's.
void tidyReplacing(const QString& records);

// What is in the way of putting any backup back: CheckOffRunning; AssessorUnknown, where somebody is enrolled
// and nobody of them is proved.
[[nodiscard]] Result<bool> mayPutBack(const Store& records, const std::optional<Proof>& by);

}  // namespace fb
