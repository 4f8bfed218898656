#include "app/cli/json.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/basics/units.h"

namespace fb {

void JsonWriter::separate()
{
    if (!m_first)
        m_out += ',';
    m_first = false;
}

JsonWriter& JsonWriter::open(char bracket)
{
    separate();
    m_out += bracket;
    m_first = true;
    return *this;
}

JsonWriter& JsonWriter::close(char bracket)
{
    m_out += bracket;
    m_first = false;
    return *this;
}

JsonWriter& JsonWriter::key(std::string_view name)
{
    text(name);
    m_out += ':';
    m_first = true;
    return *this;
}

JsonWriter& JsonWriter::text(std::string_view utf8)
{
    constexpr std::string_view kHex = "0123456789abcdef";
    separate();
    m_out += '"';
    for (const char c : utf8) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            m_out += '\\';
            m_out += c;
        } else if (byte < 0x20) {
            m_out += "\\u00";
            m_out += kHex[byte >> 4];
            m_out += kHex[byte & 0xF];
        } else {
            m_out += c;
        }
    }
    m_out += '"';
    return *this;
}

JsonWriter& JsonWriter::number(double value)
{
    separate();
    append(value);
    return *this;
}

void JsonWriter::append(double value)
{
    if (!std::isfinite(value)) {
        m_out += "null";
        return;
    }
    constexpr double kWhole = 1e9;   // beyond it a millionth is past the last digit
    std::array<char, 400> digits{};  // the largest double written out in full fits
    const double shown = std::abs(value) < kWhole ? rounded6(value) : value;
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), shown, std::chars_format::fixed);
    m_out.append(digits.data(), end.ptr);
}

JsonWriter& JsonWriter::boolean(bool value)
{
    separate();
    m_out += value ? "true" : "false";
    return *this;
}

JsonWriter& JsonWriter::null()
{
    separate();
    m_out += "null";
    return *this;
}

JsonWriter& JsonWriter::point(Point point)
{
    separate();
    m_out += '[';
    append(point.x);
    m_out += ',';
    append(point.y);
    m_out += ']';
    return *this;
}

JsonWriter& JsonWriter::points(std::span<const Point> points)
{
    beginArray();
    for (const Point p : points)
        point(p);
    return endArray();
}

}  // namespace fb
