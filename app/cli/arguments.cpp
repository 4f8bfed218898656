#include "app/cli/arguments.h"

#include <algorithm>

namespace fb {

namespace arguments_detail {

constexpr std::array<std::string_view, kOptionCount> kOptionWords{
    "site",       "side", "age", "sex",    "stature", "weight", "convention", "view",
    "individual", "hand", "at",  "policy", "out",     "layers", "width"};

constexpr std::array kCommands{Command::Locate, Command::Grade, Command::Draw};

std::optional<Command> commandFrom(std::string_view word)
{
    const auto* it = std::ranges::find_if(kCommands, [&](Command c) { return wordOf(c) == word; });
    return it == kCommands.end() ? std::nullopt : std::optional(*it);
}

bool isDashed(std::string_view word) { return word.starts_with("--"); }

// Takes the words one by one; `next` stands on the word to be read.
class ArgumentReader {
public:
    ArgumentReader(Command command, std::span<const std::string_view> words) : m_words(words)
    {
        m_read.command = command;
    }

    [[nodiscard]] Result<Arguments> all()
    {
        for (; m_next < m_words.size(); ++m_next) {
            if (const auto read = one(m_words[m_next]); !read)
                return tl::unexpected(read.error());
        }
        return m_read;
    }

private:
    [[nodiscard]] bool canList() const
    {
        return m_read.command == Command::Locate || m_read.command == Command::Grade;
    }

    [[nodiscard]] tl::unexpected<Fault> unknown(std::string_view word) const
    {
        return fault(Problem::ArgumentUnknown, std::string(word), std::string(wordOf(m_read.command)));
    }

    [[nodiscard]] Result<bool> one(std::string_view word)
    {
        if (canList() && (word == "--json" || word == "--lines" || word == "-")) {
            bool& flag = word == "--json" ? m_read.json : m_read.lines;
            if (flag)
                return fault(Problem::ArgumentDoubled, std::string(word));
            return flag = true;
        }
        if (!isDashed(word))
            return unknown(word);
        const std::size_t equals = word.find('=');
        const std::string_view name = word.substr(0, equals);
        const auto option = optionFrom(name.substr(2));
        if (!option || !takes(m_read.command, *option))
            return unknown(name);
        return equals == std::string_view::npos ? value(*option, name)
                                                : keep(*option, name, word.substr(equals + 1));
    }

    [[nodiscard]] Result<bool> value(Option option, std::string_view name)
    {
        if (m_next + 1 >= m_words.size() || isDashed(m_words[m_next + 1]))
            return fault(Problem::ArgumentNeedsValue, std::string(name));
        return keep(option, name, m_words[++m_next]);
    }

    [[nodiscard]] Result<bool> keep(Option option, std::string_view name, std::string_view text)
    {
        if (text.empty())
            return fault(Problem::ArgumentNeedsValue, std::string(name));
        if (!m_read.value(option).empty())
            return fault(Problem::ArgumentDoubled, std::string(name));
        m_read.value(option) = text;
        return true;
    }

    std::span<const std::string_view> m_words;
    std::size_t m_next = 0;
    Arguments m_read;
};

}  // namespace arguments_detail

using namespace arguments_detail;

std::string_view wordOf(Command command)
{
    switch (command) {
    case Command::Locate: return "locate";
    case Command::Grade: return "grade";
    case Command::Draw: return "draw";
    case Command::Help: return "--help";
    case Command::Version: return "--version";
    }
    return {};
}

std::string_view wordOf(Option option) { return kOptionWords[static_cast<std::size_t>(option)]; }

std::optional<Option> optionFrom(std::string_view word)
{
    const auto* it = std::ranges::find(kOptionWords, word);
    if (it == kOptionWords.end())
        return std::nullopt;
    return static_cast<Option>(it - kOptionWords.begin());
}

bool takes(Command command, Option option)
{
    switch (option) {
    case Option::At: return command == Command::Grade || command == Command::Draw;
    case Option::Out:
    case Option::Layers:
    case Option::Width: return command == Command::Draw;
    default: return command == Command::Locate || command == Command::Grade || command == Command::Draw;
    }
}

Result<Arguments> parseArguments(std::span<const std::string_view> words)
{
    Arguments arguments;
    for (const Command asked : {Command::Help, Command::Version}) {
        if (words.empty() || std::ranges::find(words, wordOf(asked)) != words.end()) {
            arguments.command = asked;
            return arguments;
        }
    }
    const auto command = commandFrom(words.front());
    if (command)
        return ArgumentReader(*command, words.subspan(1)).all();
    return isDashed(words.front()) ? fault(Problem::ArgumentUnknown, std::string(words.front()))
                                   : fault(Problem::CommandUnknown, {}, std::string(words.front()));
}

}  // namespace fb
