// One check against a value from outside: what, the value, how far off it may be, and who says so.
#pragma once

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

namespace fb::test {

// "(from memory)" in a source: not read again for this check. "common practice, no source":
// what it says.
struct OutsideRow {
    const char* what = "";
    double engine = 0.0;
    double published = 0.0;
    double tolerance = 0.0;  // either side, inclusive
    const char* source = "";
};

inline void expectOutside(const OutsideRow& row)
{
    EXPECT_NEAR(row.engine, row.published, row.tolerance) << row.what << "\n  source: " << row.source;
}

template <std::size_t N>
void expectAll(const OutsideRow (&rows)[N])
{
    for (const OutsideRow& row : rows)
        expectOutside(row);
}

// A body by its stature and body-mass index.
[[nodiscard]] inline Patient bodyOf(Sex sex, double stature, double index, double age = 35.0)
{
    return adult(sex, stature, weightOf(index, stature), Side::Right, age);
}

[[nodiscard]] inline double meanOf(Measure measure, const Patient& patient)
{
    return proportions().mean(measure, patient);
}

}  // namespace fb::test
