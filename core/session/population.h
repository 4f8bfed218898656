// Whom practice draws: the spread of adults a learner may meet. The only home of these
// numbers.
#pragma once

#include "core/basics/enums.h"

namespace fb {

struct StatureSpread {
    double mean = 0.0;  // cm
    double sd = 0.0;
};

// ANSUR II 2012 public data (Gordon et al. 2014, NATICK/TR-15/007), stature of US Army women
// and men, 17 to 58 years.
[[nodiscard]] constexpr StatureSpread statureSpread(Sex sex)
{
    return sex == Sex::Female ? StatureSpread{162.85, 6.42} : StatureSpread{175.62, 6.86};
}

// Body-mass index of practice patients: lab's choice, wide enough to meet lean and very heavy
// arms often. Log-normal about the median, cut at both ends.
inline constexpr double kIndexMedian = 26.0;
inline constexpr double kIndexLogSd = 0.22;
inline constexpr double kIndexLow = 17.5;
inline constexpr double kIndexHigh = 45.0;

// Ages of practice patients, years: lab's choice.
inline constexpr int kYoungest = 18;
inline constexpr int kOldest = 90;

// Correlation of what is left of arm length and of the gap from acromion to axilla after
// stature and body-mass index: 0.09 in women, 0.11 in men, computed from the residual
// correlations of the ANSUR II 2012 public data.
inline constexpr double kArmAxillaCorrelation = 0.10;

// Correlation of what is left of crest height above the trochanter and of thigh length after
// stature and body-mass index: -0.40 in women, -0.63 in men, computed from the residual
// correlations of the ANSUR II 2012 public data; both hang on the trochanter.
inline constexpr double kCrestThighCorrelation = -0.5;

// Of a hundred requests that may carry a note of the chart, so many do, and in so many the note
// rules the site out: lab's choice.
inline constexpr int kFindingPercent = 55;
inline constexpr int kRulingPercent = 28;

// Individual deviations are cut here, in residual standard deviations (design of the engine).
inline constexpr double kIndividualCut = 3.0;

}  // namespace fb
