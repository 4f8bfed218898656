// A row of the textbook's list of typical errors: made on purpose by a scripted learner, on many bodies,
// it must be named first, with the way it went and the harm a needle would do there.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <set>

#include "tests/property/sampling.h"
#include "tests/support/scripted_learner.h"

namespace fb::test::typical {

inline constexpr int kErrorBodies = 60;
inline constexpr std::uint64_t kErrorSeed = 101;

struct TypicalError {
    const char* what = "";
    Shown shown;
    PlantedError error;
    // The way and the tissue of a needle where the slip alone, or her own mark, leads; only those count
    // that leave the region.
    std::set<Direction> ways;
    std::set<Tissue> harms;
    const char* source = "";
};

inline PlantedError slipOf(Slip slip, std::optional<Handle> at, Direction way)
{
    return {PlantedError::Kind::Slip, {}, {}, slip, at, {}, way};
}

inline PlantedError cellOf(ThighRow row, ThighColumn column)
{
    return {PlantedError::Kind::Slip, {}, {}, Slip::WrongCell, {}, ThighCell{row, column}, {}};
}

inline PlantedError flagOf(Landmark landmark, Direction way)
{
    return {PlantedError::Kind::FlagOff, landmark, {}, {}, {}, {}, way};
}

inline PlantedError markOf(Direction way) { return {PlantedError::Kind::Mark, {}, {}, {}, {}, {}, way}; }

inline constexpr Shown kDeltoid{Convention::DeltoidStrip, View::ShoulderSide};
inline constexpr Shown kThighFront{Convention::VastusThirds, View::ThighFront};
inline constexpr Shown kThighSide{Convention::VastusThirds, View::ThighSide};
inline constexpr Shown kHip{Convention::VentroglutealHand, View::HipSide};
inline constexpr const char* kNoSource = "common practice, no source";

// Where the needle goes by this error: the slip's own effect, else her mark.
inline Grade needleOf(const TypicalError& row, const ScriptedLearner& learner, const Attempted& attempted,
                      const ByHandGrade& grade)
{
    if (row.error.kind == PlantedError::Kind::Slip) {
        const auto step = std::ranges::find(grade.steps, row.error.slip, &BuildStepGrade::slip);
        return step->effect->grade;
    }
    return learner.gradedMark(attempted.mark);
}

// How many of the bodies were harmed.
inline int harmed(const TypicalError& row)
{
    int count = 0;
    for (int number = 0; number < kErrorBodies; ++number) {
        SeedStream stream(kErrorSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kErrorSeed, number), row.shown.convention,
                                      row.shown.view, defaultPolicy());
        const auto attempted = learner.planted(row.error, stream);
        if (!attempted)
            continue;
        const ByHandGrade grade = learner.graded(*attempted);
        EXPECT_EQ(grade.first, causeOf(row.error)) << row.what << "\n  source: " << row.source;
        if (grade.first != causeOf(row.error))
            return count;
        const Grade needle = needleOf(row, learner, *attempted, grade);
        if (needle.inside)
            continue;
        ++count;
        EXPECT_TRUE(row.ways.contains(needle.reason.direction))
            << row.what << ": " << wordOf(needle.reason.direction) << ", seed " << kErrorSeed << " number "
            << number << "\n  source: " << row.source;
        EXPECT_TRUE(row.harms.contains(needle.reason.tissue))
            << row.what << ": " << wordOf(needle.reason.tissue) << ", seed " << kErrorSeed << " number "
            << number << "\n  source: " << row.source;
    }
    return count;
}

inline void expectNamed(const TypicalError& row)
{
    EXPECT_GE(harmed(row), 3) << row.what << " harms somebody\n  source: " << row.source;
}

}  // namespace fb::test::typical
