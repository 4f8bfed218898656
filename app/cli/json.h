// Writes JSON into a string, front to back, without building a document first: one line, keys
// in the order they are written, numbers in their shortest form at 1e-6.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/geometry/point.h"

namespace fb {

class JsonWriter {
public:
    explicit JsonWriter(std::string& out) : m_out(out) {}

    // Containers are closed in the order they were opened; that is the caller's duty.
    JsonWriter& beginObject() { return open('{'); }
    JsonWriter& endObject() { return close('}'); }
    JsonWriter& beginArray() { return open('['); }
    JsonWriter& endArray() { return close(']'); }
    JsonWriter& key(std::string_view name);

    JsonWriter& text(std::string_view utf8);
    JsonWriter& number(double value);  // rounded to 1e-6; null when not finite
    JsonWriter& boolean(bool value);
    JsonWriter& null();
    JsonWriter& point(Point point);                     // [x, y]
    JsonWriter& points(std::span<const Point> points);  // [[x, y], ...]

private:
    JsonWriter& open(char bracket);
    JsonWriter& close(char bracket);
    void separate();
    void append(double value);

    std::string& m_out;
    bool m_first = true;  // nothing stands before in this container
};

}  // namespace fb
