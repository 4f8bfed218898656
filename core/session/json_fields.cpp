#include "core/session/json_fields.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace fb {

namespace json_fields_detail {

using nlohmann::json;

const json& emptyObject()
{
    static const json empty = json::object();
    return empty;
}

constexpr std::size_t kLongestTold = 60;  // bytes of a value that is told of

std::string told(const json& value)
{
    std::string text = value.is_structured() ? value.type_name()
                                             : value.dump(-1, ' ', false, json::error_handler_t::replace);
    if (text.size() > kLongestTold)
        text = text.substr(0, kLongestTold);
    // Cut inside a letter, or not UTF-8 at all: made whole again.
    const std::string whole = json(text).dump(-1, ' ', false, json::error_handler_t::ignore);
    return json::parse(whole, nullptr, false).get<std::string>();
}

// "line:column", both from 1.
std::string placeIn(std::string_view text, std::size_t byte)
{
    const auto upTo = text.substr(0, std::min(byte == 0 ? 0 : byte - 1, text.size()));
    const auto lineStart = upTo.rfind('\n');
    const std::size_t column = upTo.size() - (lineStart == std::string_view::npos ? 0 : lineStart + 1) + 1;
    return std::to_string(1 + std::ranges::count(upTo, '\n')) + ":" + std::to_string(column);
}

// Keys that stand twice in one object: which of them counts nobody could tell.
class DoubledKeys {
public:
    bool operator()(int, json::parse_event_t event, const json& parsed)
    {
        if (event == json::parse_event_t::object_start)
            m_open.emplace_back();
        if (event == json::parse_event_t::object_end && !m_open.empty())
            m_open.pop_back();
        if (event == json::parse_event_t::key && !m_open.back().insert(parsed.get<std::string>()).second &&
            m_doubled.empty())
            m_doubled = parsed.get<std::string>();
        return true;
    }
    [[nodiscard]] const std::string& doubled() const { return m_doubled; }

private:
    std::vector<std::set<std::string>> m_open;
    std::string m_doubled;
};

}  // namespace json_fields_detail

using namespace json_fields_detail;

JsonText::JsonText(std::string_view text, const JsonProblems& problems) : m_problems(problems)
{
    DoubledKeys keys;
    try {
        m_root = json::parse(text, [&keys](int depth, json::parse_event_t event, const json& parsed) {
            return keys(depth, event, parsed);
        });
    } catch (const json::parse_error& error) {
        refuse({problems.notReadable, placeIn(text, error.byte), {}, 0.0, 0.0});
    } catch (const json::out_of_range&) {
        refuse({problems.notReadable, "1:1", {}, 0.0, 0.0});
    }
    if (!m_fault && !m_root.is_object())
        refuse({problems.notReadable, "1:1", m_root.type_name(), 0.0, 0.0});
    if (!keys.doubled().empty())
        refuse({problems.wrongValue, keys.doubled(), keys.doubled(), 0.0, 0.0});
    if (m_fault)
        m_root = json::object();
}

void JsonText::refuse(Fault fault)
{
    if (!m_fault)
        m_fault = std::move(fault);
}

JsonFields::JsonFields(JsonText& text) : JsonFields(text, text.root(), {}) {}

JsonFields::JsonFields(JsonText& text, const json& value, std::string key)
    : m_text(&text),
      m_object(value.is_object() ? &value : &emptyObject()),
      m_key(std::move(key))
{
    if (!value.is_object())
        text.refuse({text.problems().wrongValue, m_key, told(value), 0.0, 0.0});
}

std::string JsonFields::keyOf(std::string_view name) const
{
    return m_key.empty() ? std::string(name) : m_key + "." + std::string(name);
}

const json* JsonFields::member(std::string_view name)
{
    m_asked.emplace_back(name);
    const auto it = m_object->find(name);
    if (it != m_object->end())
        return &*it;
    m_text->refuse({m_text->problems().missingKey, keyOf(name), {}, 0.0, 0.0});
    return nullptr;
}

void JsonFields::wrong(std::string_view name, std::string what, double low, double high)
{
    m_text->refuse({m_text->problems().wrongValue, keyOf(name), std::move(what), low, high});
}

void JsonFields::wrongKind(std::string_view name, const json& value) { wrong(name, told(value)); }

double JsonFields::number(std::string_view name, double low, double high)
{
    const json* value = member(name);
    if (!value)
        return low;
    if (!value->is_number()) {
        wrongKind(name, *value);
        return low;
    }
    const double number = value->get<double>();
    if (number >= low && number <= high)
        return number;
    wrong(name, told(*value), low, high);
    return low;
}

int JsonFields::whole(std::string_view name, int low, int high)
{
    const double value = number(name, low, high);
    if (std::floor(value) == value)
        return static_cast<int>(value);
    wrong(name, told(*member(name)), low, high);
    return low;
}

std::uint64_t JsonFields::natural(std::string_view name, std::uint64_t most)
{
    const json* value = member(name);
    if (!value)
        return 0;
    if (value->is_number_unsigned() && value->get<std::uint64_t>() <= most)
        return value->get<std::uint64_t>();
    wrong(name, told(*value), 0.0, static_cast<double>(most));
    return 0;
}

bool JsonFields::flag(std::string_view name)
{
    const json* value = member(name);
    if (value && !value->is_boolean())
        wrongKind(name, *value);
    return value && value->is_boolean() && value->get<bool>();
}

std::string JsonFields::text(std::string_view name)
{
    const json* value = member(name);
    if (value && !value->is_string())
        wrongKind(name, *value);
    return value && value->is_string() ? value->get<std::string>() : std::string();
}

Point JsonFields::point(std::string_view name, double most)
{
    const json* value = member(name);
    if (!value)
        return {};
    const auto isNear = [most](const json& v) { return v.is_number() && std::abs(v.get<double>()) <= most; };
    if (value->is_array() && value->size() == 2 && std::ranges::all_of(*value, isNear))
        return {(*value)[0].get<double>(), (*value)[1].get<double>()};
    wrong(name, told(*value), -most, most);
    return {};
}

JsonFields JsonFields::object(std::string_view name)
{
    const json* value = member(name);
    return {*m_text, value ? *value : emptyObject(), keyOf(name)};
}

std::vector<JsonFields> JsonFields::objects(std::string_view name)
{
    std::vector<JsonFields> all;
    const json* value = member(name);
    if (value && !value->is_array())
        wrongKind(name, *value);
    if (!value || !value->is_array())
        return all;
    for (std::size_t i = 0; i < value->size(); ++i)
        all.emplace_back(*m_text, (*value)[i], keyOf(name) + "[" + std::to_string(i + 1) + "]");
    return all;
}

void JsonFields::noMore()
{
    for (const auto& [name, value] : m_object->items())
        if (std::ranges::find(m_asked, name) == m_asked.end())
            m_text->refuse({m_text->problems().unknownKey, keyOf(name), {}, 0.0, 0.0});
}

std::string lineOf(const nlohmann::ordered_json& value)
{
    return value.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

std::string pageOf(const nlohmann::ordered_json& value)
{
    return value.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace fb
