// The store's file on disk: for its owner alone from the first byte on, and put aside, never
// deleted, when it cannot be read.
#pragma once

#include <QDateTime>
#include <QString>
#include <QStringList>

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

// Where a good file is kept in whose place another is put: beside it, with the date and its own ending; no
// file is there yet.
[[nodiscard]] QString nameBefore(const QString& file, const QDateTime& when);

// What SQLite keeps beside a file that is open, or was not closed cleanly.
[[nodiscard]] QStringList besideOf(const QString& file);

// Takes away what lies beside it and was not there before: reading a file that nobody has open leaves it
// there.
void removeBeside(const QString& file, const QStringList& before);

// An empty file for its owner alone, in the place of what an end in the middle left there.
[[nodiscard]] bool makePart(const QString& part);

// Through to the disk: a file, or a folder after one was renamed in it. Never of a file SQLite has open.
[[nodiscard]] bool isFlushed(const QString& path);

}  // namespace fb
