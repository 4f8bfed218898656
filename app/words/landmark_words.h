// Landmarks by name: what stands in the list to choose from, and what a learner may type instead.
//
// Every landmark has its accepted terms in one translated text, so that each language brings its
// own. Typed words are folded before they are compared: capitals, accents, signs and doubled
// spaces do not count. Short forms (ASIS, GT) are taken as they are or not at all.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/naming/term_match.h"
#include "core/site/landmark.h"

namespace fb {

[[nodiscard]] QString landmarkName(Landmark landmark);

// Of every landmark offered at a site; the id is the landmark's number (landmarkAt).
[[nodiscard]] std::vector<AcceptedTerm> acceptedTerms(Site site);

// Which landmark of the site is meant by what was typed.
[[nodiscard]] TermMatch named(const QString& typed, Site site);

// Lower case, without accents and signs, single spaces.
[[nodiscard]] std::u32string folded(const QString& text);

}  // namespace fb
