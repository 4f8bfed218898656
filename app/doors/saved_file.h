// A file that is written whole or not at all.
#pragma once

#include <QByteArray>
#include <QString>

#include "core/basics/problem.h"

namespace fb {

// Takes the place of a file that is there, never of a device, a pipe or a folder. OutputNotWritable, also for
// no bytes at all.
[[nodiscard]] Result<bool> saveWhole(const QByteArray& bytes, const QString& file);

}  // namespace fb
