// The store's file on disk: for its owner alone from the first byte on, and put aside, never
// deleted, when it cannot be read.
#pragma once

#include <QDateTime>
#include <QString>

#include "core/basics/problem.h"

namespace fb {

// profile.db in the user's data folder.
[[nodiscard]] QString usualStoreFile();

// Makes folder (0700) and file (0600, empty) where they are missing and takes away what others may
// do with them where they are not; whatever SQLite lays beside the file gets the file's own mode.
// StoreNotWritable and, of a file that may only be read, StoreReadOnly name it.
[[nodiscard]] Result<bool> makeOwnerOnly(const QString& file);

// Where a file that cannot be read is put: beside it, with the date.
[[nodiscard]] QString nameAside(const QString& file, const QDateTime& when);

// Moves the file and what SQLite laid beside it there. StoreBroken names the file alone.
[[nodiscard]] Result<QString> putAside(const QString& file, const QDateTime& when);

}  // namespace fb
