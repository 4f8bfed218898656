// The commands of the program without a window: each takes checked names and returns what
// goes to standard output, or the one fault that is told instead.
#pragma once

#include <iosfwd>
#include <string>

#include "app/cli/arguments.h"
#include "app/cli/plate_sheet.h"
#include "app/doors/library.h"
#include "core/grade/grade.h"

namespace fb {

// The shipped policy, or the file of --policy over it.
[[nodiscard]] Result<Policy> policyFor(const Arguments& arguments, const Library& library);
[[nodiscard]] Result<Target> targetFor(const Query& query, const Policy& policy, const Library& library);
// MarkOutsideBody and ViewShowOnly before anything is judged.
[[nodiscard]] Result<Grade> gradeFor(const Query& query, const Policy& policy, const Target& target,
                                     const Library& library, Point mark);

[[nodiscard]] Result<std::string> locateAnswer(const Arguments& arguments, const Library& library);
[[nodiscard]] Result<std::string> gradeAnswer(const Arguments& arguments, const Library& library);
// Everything on one patient's plate: the target, or with a mark its grade. All layers are left
// to the caller.
[[nodiscard]] Result<PlateSheet> sheetOf(const Query& query, const Policy& policy, const Library& library,
                                         std::optional<Point> mark);
// Writes the plate file too; needs a QGuiApplication.
[[nodiscard]] Result<std::string> drawAnswer(const Arguments& arguments, const Library& library);

struct LineCount {
    int answered = 0;
    int failed = 0;  // answered with {"error": ...}

    friend bool operator==(const LineCount&, const LineCount&) = default;
};

// locate or grade for every line of `in` that is not blank, one line of `out` for each, in
// order. Whoever sends one line and waits gets its answer at once. A fault only for what holds
// for all lines: the policy, the plates, or an `out` that takes no more.
[[nodiscard]] Result<LineCount> answerLines(const Arguments& common, const Library& library, std::istream& in,
                                            std::ostream& out);

}  // namespace fb
