// What was asked on the command line or in one line of standard input: first as text, name by
// name, then, checked, as a patient and a choice of site, convention and view.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/body/patient.h"
#include "core/geometry/point.h"
#include "core/policy/policy.h"

namespace fb {

enum class Command { Locate, Grade, Draw, Help, Version };

// Options that take a value. The word is the same after -- and as a key of a request line.
enum class Option {
    Site,
    Side,
    Age,
    Sex,
    Stature,
    Weight,
    Convention,
    View,
    Individual,
    Hand,
    At,
    Policy,
    Out,
    Layers,
    Width
};

inline constexpr std::size_t kOptionCount = static_cast<std::size_t>(Option::Width) + 1;

[[nodiscard]] std::string_view wordOf(Command command);
[[nodiscard]] std::string_view wordOf(Option option);
[[nodiscard]] std::optional<Option> optionFrom(std::string_view word);  // without dashes
[[nodiscard]] bool takes(Command command, Option option);

struct Arguments {
    Command command = Command::Help;
    std::array<std::string, kOptionCount> values;  // empty: not given
    bool json = false;
    bool lines = false;  // requests come from standard input, one to a line

    [[nodiscard]] const std::string& value(Option option) const
    {
        return values[static_cast<std::size_t>(option)];
    }
    [[nodiscard]] std::string& value(Option option) { return values[static_cast<std::size_t>(option)]; }
};

// `words` without the program's own name. --help and --version, wherever they stand, win over
// everything else; a name may be joined to its value by "=". Faults: a command or option that
// is unknown (or unknown to this command), doubled, or without its value.
[[nodiscard]] Result<Arguments> parseArguments(std::span<const std::string_view> words);

// One request line, {"site": "deltoid", "stature": 163, ...}: its keys replace the values of
// `common`. Values are texts, numbers or lists of numbers.
// RequestNotReadable for anything but one JSON object of at most 16 KiB.
[[nodiscard]] Result<Arguments> overlaidBy(const Arguments& common, std::string_view line);

struct Query {
    Site site{};
    View view{};
    Convention convention{};
    Patient patient;
    std::optional<Cm> hand{};  // length of the hand that finds the site; none: the policy's
};

// Checks in the order site, side, age, sex, stature, weight; the first fault is told. Without
// a convention the policy's own is taken, without a view the one the site is asked in.
[[nodiscard]] Result<Query> queryOf(const Arguments& arguments, const Policy& policy);

// The policy with the hand that was asked for.
[[nodiscard]] Policy policyOf(const Query& query, const Policy& policy);

// --at as "X,Y" in cm: ArgumentMissing without it, MarkNotAPoint when it is something else.
[[nodiscard]] Result<Point> markOf(const Arguments& arguments);
// A comma-separated list of layers; nothing given is every layer. LayerUnknown otherwise.
[[nodiscard]] Result<std::vector<Layer>> layersFrom(std::string_view text);

}  // namespace fb
