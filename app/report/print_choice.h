// Which printer: asks the system, and says so where there is none.
#pragma once

#include <functional>
#include <memory>

#include "core/basics/problem.h"

class QPrinter;
class QWidget;

namespace fb {

// Printers of this machine are looked up; PrinterMissing without one. Then the system's own dialog is opened
// over the parent, and `then` gets the printer once the user has chosen; never when the user thinks better of
// it.
[[nodiscard]] Result<bool> choosePrinter(QWidget* parent,
                                         const std::function<void(std::shared_ptr<QPrinter>)>& then);

}  // namespace fb
