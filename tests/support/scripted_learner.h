// A learner by script: finds, builds and marks a site as a steady hand does, with scatter inside
// every tolerance, or with one error planted on purpose. For the laws of the grader.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/basics/seed_stream.h"
#include "core/grade/by_hand_grade.h"
#include "core/site/locate.h"

namespace fb::test {

// One thing done wrong; everything else is done right, or follows from it.
struct PlantedError {
    enum class Kind { FlagMissing, FlagOff, FlagMisnamed, Slip, Mark };
    Kind kind{};
    Landmark landmark{};       // of a flag
    Landmark called{};         // FlagMisnamed: by this name
    Slip slip{};               // Kind::Slip
    std::optional<Handle> at;  // which corner, end, line or foot
    std::optional<ThighCell> cell;
    Direction way{};  // None: no way of its own; of a mark: onto the nearest danger

    friend bool operator==(const PlantedError&, const PlantedError&) = default;
};
[[nodiscard]] std::string shown(const PlantedError& error);
// What a fair grader names first.
[[nodiscard]] Cause causeOf(const PlantedError& error);

struct Attempted {
    std::vector<Flag> flags;
    Build build;
    Point mark;
};

class ScriptedLearner {
public:
    // Measures of her hand are the policy's; the view is one that is asked.
    ScriptedLearner(const Patient& patient, Convention convention, View view, const Policy& policy);

    [[nodiscard]] const Target& target() const { return m_target; }
    [[nodiscard]] const Builder& builder() const { return m_builder; }
    [[nodiscard]] const Policy& policy() const { return m_policy; }

    // Everything that can be done wrong under this convention.
    [[nodiscard]] std::vector<PlantedError> everyError() const;

    // Each quantity off by up to six tenths of its tolerance.
    [[nodiscard]] Attempted flawless(SeedStream& stream) const;
    // Off by just more than the tolerance to three times it. A wrong landmark is built upon, and the mark
    // lies where the construction leads, if that is on the body. nullopt: no room for it on this body.
    [[nodiscard]] std::optional<Attempted> planted(const PlantedError& error, SeedStream& stream) const;

    [[nodiscard]] ByHandGrade graded(const Attempted& attempted) const;
    [[nodiscard]] Grade gradedMark(Point mark) const;
    [[nodiscard]] bool isOnBody(Point viewer) const;

private:
    [[nodiscard]] std::optional<Point> flagAt(Landmark landmark, const PlantedError* error,
                                              SeedStream& stream) const;
    [[nodiscard]] std::optional<std::vector<Flag>> flags(const PlantedError* error, SeedStream& stream) const;
    [[nodiscard]] Point steadyMark(SeedStream& stream) const;
    [[nodiscard]] std::optional<Point> wrongMark(Direction way, SeedStream& stream) const;

    Policy m_policy;
    Target m_target;
    Builder m_builder;
    const Plate& m_plate;
    BodyMap m_map;
};

}  // namespace fb::test
