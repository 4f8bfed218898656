#include "core/plate/path_reader.h"

#include <charconv>
#include <cmath>

#include "core/geometry/cubic.h"

namespace fb {

namespace path_detail {

class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    [[nodiscard]] bool atEnd()
    {
        skipBlanks();
        return m_text.empty();
    }
    [[nodiscard]] bool atLetter()
    {
        return !atEnd() && ((m_text.front() >= 'A' && m_text.front() <= 'Z') ||
                            (m_text.front() >= 'a' && m_text.front() <= 'z'));
    }
    [[nodiscard]] char letter()
    {
        const char c = m_text.front();
        m_text.remove_prefix(1);
        return c;
    }
    [[nodiscard]] std::optional<double> number()
    {
        skipBlanks();
        double value = 0.0;
        const auto [rest, error] = std::from_chars(m_text.data(), m_text.data() + m_text.size(), value);
        if (error != std::errc{} || !std::isfinite(value))
            return std::nullopt;
        m_text.remove_prefix(static_cast<std::size_t>(rest - m_text.data()));
        return value;
    }
    [[nodiscard]] std::optional<Point> point()
    {
        const auto x = number();
        const auto y = x ? number() : std::nullopt;
        return y ? std::optional(Point{*x, *y}) : std::nullopt;
    }

private:
    void skipBlanks()
    {
        while (!m_text.empty() && (m_text.front() == ' ' || m_text.front() == ',' || m_text.front() == '\n' ||
                                   m_text.front() == '\t' || m_text.front() == '\r'))
            m_text.remove_prefix(1);
    }
    std::string_view m_text;
};

void appendLine(Ring& ring, Point to)
{
    const Cubic line = Cubic::line(ring.points.back(), to);
    ring.points.insert(ring.points.end(), {line.b, line.c, line.d});
}

void close(Ring& ring)
{
    ring.closed = true;
    if (distance(ring.points.back(), ring.points.front()) > 1e-9)
        appendLine(ring, ring.points.front());
}

// One command with its arguments; a letter may carry several.
bool readCommand(char letter, Scanner& in, std::vector<Ring>& rings)
{
    if (letter == 'Z') {
        if (rings.empty())
            return false;
        close(rings.back());
        return true;
    }
    bool first = true;
    do {
        const auto a = in.point();
        if (!a)
            return false;
        if (letter == 'M' && first) {
            rings.push_back(Ring{{*a}, false});
        } else if (letter == 'L' || letter == 'M') {
            if (rings.empty())
                return false;
            appendLine(rings.back(), *a);
        } else {
            const auto b = in.point();
            const auto c = b ? in.point() : std::nullopt;
            if (letter != 'C' || !c || rings.empty())
                return false;
            rings.back().points.insert(rings.back().points.end(), {*a, *b, *c});
        }
        first = false;
    } while (!in.atEnd() && !in.atLetter());
    return true;
}

}  // namespace path_detail

std::optional<std::vector<Ring>> ringsFrom(std::string_view d)
{
    path_detail::Scanner in(d);
    std::vector<Ring> rings;
    while (!in.atEnd()) {
        if (!in.atLetter() || !path_detail::readCommand(in.letter(), in, rings))
            return std::nullopt;
    }
    for (const Ring& ring : rings) {
        if (ring.points.size() < 4)
            return std::nullopt;
    }
    if (rings.empty())
        return std::nullopt;
    return rings;
}

std::optional<std::vector<double>> numbersFrom(std::string_view text, std::size_t count)
{
    path_detail::Scanner in(text);
    std::vector<double> numbers;
    while (!in.atEnd()) {
        const auto n = in.number();
        if (!n)
            return std::nullopt;
        numbers.push_back(*n);
    }
    return numbers.size() == count ? std::optional(numbers) : std::nullopt;
}

}  // namespace fb
