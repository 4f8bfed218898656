// What ships inside the program: plates, proportions and the default policy, read once from
// its resources and shared by the window and the command line.
//
// Proportions and policy are read at once; a plate is read and checked the first time it is
// asked for, so that a start pays only for what it shows. Every call is safe from any thread.
#pragma once

#include <QString>
#include <array>
#include <atomic>
#include <memory>
#include <mutex>
#include <optional>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/body/proportions.h"
#include "core/plate/plate.h"
#include "core/policy/policy.h"
#include "core/site/locate.h"

namespace fb {

class Library : public std::enable_shared_from_this<Library> {
public:
    // The first fault of proportions or policy, in that order.
    [[nodiscard]] static Result<std::shared_ptr<const Library>> load();

    [[nodiscard]] const Proportions& proportions() const { return *m_proportions; }
    [[nodiscard]] const Policy& defaultPolicy() const { return *m_policy; }

    // The plate of a view or the open hand, read on first use; it keeps the library alive. The same fault
    // again for a plate that could not be read.
    [[nodiscard]] Result<std::shared_ptr<const Plate>> plate(View view) const;

    // Whether plate() would answer at once, with the plate or its fault.
    [[nodiscard]] bool isRead(View view) const;

    // What a target in this view is computed from: exactly the plates of neededPlates(view), the
    // pointers of all others null. The library must outlive the atlas.
    [[nodiscard]] Result<Atlas> atlas(View view = View::ShoulderSide) const;

    // A lab's own policy file over the shipped one. PolicyNotReadable names the file.
    [[nodiscard]] Result<Policy> policyWith(const QString& file) const;

private:
    Library() = default;

    struct Shelf {
        std::once_flag once;
        std::atomic<bool> isRead = false;
        std::optional<Result<Plate>> plate;
    };
    [[nodiscard]] const Result<Plate>& read(View view) const;

    std::optional<Proportions> m_proportions;
    std::optional<Policy> m_policy;
    mutable std::array<Shelf, kPlateCount> m_shelves;
};

}  // namespace fb
