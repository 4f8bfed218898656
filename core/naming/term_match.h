// Whether a typed word is the term that is meant: small slips are forgiven, the wrong bone not.
//
// The caller folds case and accents away and hands over every accepted term of its language,
// those of the near misses too: what is as near to another bone's term is not accepted.
//
// A slip is forgiven when both the whole term and each of its words stay within their allowance.
// The whole: one letter in four, at most three, from five letters on. A word: one from five letters
// on, two from eight if it begins with the right letter. More would make another bone of it:
// "anterior" and "posterior", "superior" and "inferior" are three letters apart; of "anterior" and
// "inferior", "external" and "internal", "mayor" and "menor" two decide. A space too many or
// missing between words counts as one.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace fb {

struct AcceptedTerm {
    int id = 0;           // of whoever asks; several terms may share one
    std::u32string text;  // folded: lower case, no accents, single spaces
};

enum class TermFit {
    Exact,
    Slip,     // misspelt, but no other term is as near
    Unclear,  // another bone's term is as near, or nearer
    Unknown   // no term is near
};

struct TermMatch {
    TermFit fit{};
    int id = -1;  // of the nearest term; -1 for Unclear and Unknown

    friend bool operator==(const TermMatch&, const TermMatch&) = default;
};

// Spaces before, behind and doubled within what was typed do not count.
[[nodiscard]] TermMatch matchedTerm(std::u32string_view typed, std::span<const AcceptedTerm> terms);

// Least number of letters put in, left out, changed, or swapped with their neighbour; no letter
// is touched twice (optimal string alignment).
[[nodiscard]] int editDistance(std::u32string_view a, std::u32string_view b);

}  // namespace fb
