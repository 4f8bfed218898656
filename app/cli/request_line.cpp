// One line of standard input as arguments: see overlaidBy in arguments.h.
#include <nlohmann/json.hpp>

#include "app/cli/arguments.h"

namespace fb {

namespace request_line_detail {

using nlohmann::json;

constexpr std::size_t kLongestLine = 1 << 14;

// What a line may say; files belong to the command line.
bool inLines(Command command, Option option) { return takes(command, option) && option != Option::Policy; }

std::optional<std::string> textOf(const json& value)
{
    if (value.is_string())
        return value.get<std::string>();
    if (value.is_number())
        return value.dump();
    if (!value.is_array())
        return std::nullopt;
    std::string list;
    for (const json& part : value) {
        if (!part.is_number())
            return std::nullopt;
        if (!list.empty())
            list += ',';
        list += part.dump();
    }
    return list;
}

Result<Arguments> overlaid(Arguments arguments, const json& request)
{
    for (const auto& [name, value] : request.items()) {
        const auto option = optionFrom(name);
        if (!option || !inLines(arguments.command, *option))
            return fault(Problem::ArgumentUnknown, name, std::string(wordOf(arguments.command)));
        auto text = textOf(value);
        if (!text)
            return fault(Problem::ArgumentBadValue, name, value.type_name());
        if (text->empty())
            return fault(Problem::ArgumentNeedsValue, name);
        arguments.value(*option) = std::move(*text);
    }
    return arguments;
}

}  // namespace request_line_detail

Result<Arguments> overlaidBy(const Arguments& common, std::string_view line)
{
    if (line.size() > request_line_detail::kLongestLine)
        return fault(Problem::RequestNotReadable);
    const auto request = nlohmann::json::parse(line.begin(), line.end(), nullptr, false);
    if (!request.is_object())
        return fault(Problem::RequestNotReadable);
    return request_line_detail::overlaid(common, request);
}

}  // namespace fb
