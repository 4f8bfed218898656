// Reads the members of a JSON object by name. What is missing, of the wrong kind, out of range or unknown
// is told once: the first fault stays, everything read after it is a default.
//
// Nothing here throws, whatever the text holds.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/basics/problem.h"
#include "core/geometry/point.h"

namespace fb {

// How a text of its kind calls its faults.
struct JsonProblems {
    Problem notReadable{};
    Problem unknownKey{};
    Problem missingKey{};
    Problem wrongValue{};  // where: key; what: the value; low..high for numbers
};

// One text: parsed once, its first fault kept.
class JsonText {
public:
    JsonText(std::string_view text, const JsonProblems& problems);

    [[nodiscard]] const nlohmann::json& root() const { return m_root; }
    [[nodiscard]] const JsonProblems& problems() const { return m_problems; }
    [[nodiscard]] const std::optional<Fault>& fault() const { return m_fault; }
    void refuse(Fault fault);

private:
    nlohmann::json m_root;
    JsonProblems m_problems;
    std::optional<Fault> m_fault;
};

class JsonFields {
public:
    // The text's own object; of a text that cannot be read an empty one.
    explicit JsonFields(JsonText& text);
    JsonFields(JsonText& text, const nlohmann::json& value, std::string key);

    [[nodiscard]] bool has(std::string_view name) const { return m_object->contains(name); }
    [[nodiscard]] double number(std::string_view name, double low, double high);
    [[nodiscard]] int whole(std::string_view name, int low, int high);
    [[nodiscard]] std::uint64_t natural(std::string_view name, std::uint64_t most);
    [[nodiscard]] bool flag(std::string_view name);
    [[nodiscard]] std::string text(std::string_view name);
    [[nodiscard]] Point point(std::string_view name, double most);  // an array of two numbers
    [[nodiscard]] JsonFields object(std::string_view name);
    [[nodiscard]] std::vector<JsonFields> objects(std::string_view name);  // an array of them

    // A word of a closed vocabulary: `from` gives an optional of it.
    template <class From>
    [[nodiscard]] auto word(std::string_view name, From from)
    {
        const std::string said = text(name);
        const auto known = from(std::string_view(said));
        if (!known)
            wrong(name, said);
        return known.value_or(typename decltype(known)::value_type{});
    }

    void wrong(std::string_view name, std::string what, double low = 0.0, double high = 0.0);
    // To be called last: whatever was not asked for is unknown.
    void noMore();

private:
    [[nodiscard]] const nlohmann::json* member(std::string_view name);
    void wrongKind(std::string_view name, const nlohmann::json& value);
    [[nodiscard]] std::string keyOf(std::string_view name) const;

    JsonText* m_text;
    const nlohmann::json* m_object;
    std::string m_key;
    std::vector<std::string> m_asked;
};

// One of an enumeration's words: the inverse of wordOf over so many enumerators from 0.
template <class Enum>
[[nodiscard]] std::optional<Enum> enumFrom(std::string_view word, int count)
{
    for (int i = 0; i < count; ++i)
        if (wordOf(static_cast<Enum>(i)) == word)
            return static_cast<Enum>(i);
    return std::nullopt;
}

// Never throws: what is not UTF-8 is replaced.
[[nodiscard]] std::string lineOf(const nlohmann::ordered_json& value);
[[nodiscard]] std::string pageOf(const nlohmann::ordered_json& value);  // indented, ends with a line break

}  // namespace fb
