// PlateReader: gradients, ink, hidden lines and areas.
#include <algorithm>
#include <cmath>
#include <cstring>
#include <utility>

#include "core/plate/path_reader.h"
#include "core/plate/plate_reader.h"
#include "core/plate/ring.h"

namespace fb {

namespace plate_ink_detail {

Cue cueFrom(std::string_view word)
{
    return word == "lean"    ? Cue::Lean
           : word == "full"  ? Cue::Full
           : word == "older" ? Cue::Older
                             : Cue::Always;
}

// Limits of sense for a file: cm from the first landmark, and cm of ink, ten times what the
// fullest plate holds.
constexpr double kFarthest = 300.0;
constexpr double kMostInk = 200'000.0;

bool isNear(Point p) { return std::abs(p.x) <= kFarthest && std::abs(p.y) <= kFarthest; }

// A pen stroke goes out in k pieces, across its tip, back in k pieces and, unless it ends in a
// point, across its start.
bool isPenStroke(const InkShape& shape)
{
    return shape.rings.size() == 1 && shape.rings.front().points.size() >= 10;
}

}  // namespace plate_ink_detail

PlateReader::Done PlateReader::readGradients(const Node& root)
{
    for (const Node& node : root.child("defs").children()) {
        Gradient gradient;
        gradient.radial = std::strcmp(node.name(), "radialGradient") == 0;
        gradient.limb = m_plate.limbNamed(node.attribute("data-limb").value());
        const std::string id = node.attribute("id").value();
        if (gradient.limb < 0)
            return missing(id + " data-limb");
        const auto at = [&](const char* x, const char* y) {
            return framed({numberOf(node, x), numberOf(node, y)});
        };
        gradient.from = gradient.radial ? at("cx", "cy") : at("x1", "y1");
        gradient.to =
            gradient.radial ? gradient.from + Point{numberOf(node, "r") / 10.0, 0.0} : at("x2", "y2");
        for (const Node& stop : node.children("stop")) {
            const int tone = toneOf(stop.attribute("stop-color").value());
            if (tone < 0)
                return fault(Problem::PlateForbidden, m_file, id + " stop-color");
            gradient.stops.push_back({numberOf(stop, "offset"), tone, numberOf(stop, "stop-opacity", 1.0)});
        }
        if (gradient.stops.empty())
            return missing(id + " stop");
        m_gradientIds[id] = static_cast<int>(m_plate.gradients.size());
        m_plate.gradients.push_back(std::move(gradient));
    }
    return true;
}

PlateReader::Done PlateReader::readInk(const Node& root)
{
    for (const Layer layer : kLayers) {
        for (const Node& group : childNamed(root, wordOf(layer)).children("g")) {
            const std::string id = group.attribute("id").value();
            const int limb = m_plate.limbNamed(id.substr(std::min(id.size(), wordOf(layer).size() + 1)));
            if (limb < 0)
                return missing(id + ": a limb of the skin layer");
            if (const auto done = readLimbInk(group, layer, limb); !done)
                return done;
        }
    }
    return true;
}

PlateReader::Done PlateReader::readLimbInk(const Node& group, Layer layer, int limb)
{
    Structure loose{layer, limb, {}, {}, {}};
    const auto flush = [&] {
        if (!loose.shapes.empty())
            m_plate.structures.push_back(std::exchange(loose, Structure{layer, limb, {}, {}, {}}));
    };
    for (const Node& child : group.children()) {
        if (std::strcmp(child.name(), "g") == 0) {
            flush();
            Structure named{
                layer, limb, child.attribute("id").value(), child.child("title").text().get(), {}};
            for (const Node& path : child.children("path")) {
                if (const auto done = readShape(path, named); !done)
                    return done;
            }
            m_plate.structures.push_back(std::move(named));
        } else if (std::strcmp(child.name(), "path") == 0) {
            if (const auto done = readShape(child, loose); !done)
                return done;
        }
    }
    flush();
    return true;
}

PlateReader::Done PlateReader::readShape(const Node& path, Structure& into)
{
    const std::string name = into.id.empty() ? std::string(wordOf(into.layer)) : into.id;
    auto rings = framedRings(path);
    if (!rings)
        return fault(Problem::PlateBadPath, m_file, name);
    InkShape shape;
    shape.rings = std::move(*rings);
    if (const auto done = readFill(path.attribute("fill").value(), name, shape); !done)
        return done;
    shape.opacity = std::clamp(numberOf(path, "fill-opacity", 1.0), 0.0, 1.0);
    shape.penStroke = std::strcmp(path.attribute("data-ink").value(), "stroke") == 0;
    shape.cue = plate_ink_detail::cueFrom(path.attribute("data-cue").value());
    if (shape.penStroke && !plate_ink_detail::isPenStroke(shape))
        return fault(Problem::PlateBadPath, m_file, name);
    into.shapes.push_back(std::move(shape));
    return true;
}

PlateReader::Done PlateReader::readFill(std::string_view fill, const std::string& name, InkShape& shape) const
{
    if (fill.starts_with("url(#") && fill.ends_with(")")) {
        const auto it = m_gradientIds.find(fill.substr(5, fill.size() - 6));
        if (it == m_gradientIds.end())
            return missing(std::string(fill));
        shape.gradient = it->second;
        return true;
    }
    shape.tone = toneOf(fill);
    if (shape.tone < 0)
        return fault(Problem::PlateForbidden, m_file, name + ": fill " + std::string(fill));
    return true;
}

std::optional<std::vector<Ring>> PlateReader::framedRings(const Node& path)
{
    auto rings = ringsFrom(path.attribute("d").value());
    if (!rings)
        return std::nullopt;
    for (Ring& ring : *rings) {
        std::ranges::transform(ring.points, ring.points.begin(), [this](Point p) { return framed(p); });
        if (!std::ranges::all_of(ring.points, plate_ink_detail::isNear))
            return std::nullopt;
        for (std::size_t i = 0; i < pieceCount(ring); ++i)
            m_inkLength += piece(ring, i).span();
    }
    if (m_inkLength > plate_ink_detail::kMostInk)
        return std::nullopt;
    return rings;
}

PlateReader::Done PlateReader::readPaths(const Node& root, const char* layer, Paths& into)
{
    for (const Node& group : childNamed(root, layer).children("g")) {
        const int limb =
            m_plate.limbNamed(std::string(group.attribute("id").value()).substr(std::strlen(layer) + 1));
        for (const Node& path : group.children("path")) {
            const std::string id = path.attribute("id").value();
            auto rings = framedRings(path);
            if (!rings || limb < 0)
                return fault(Problem::PlateBadPath, m_file, id);
            into[id] = {limb, std::move(rings->front())};
        }
    }
    return true;
}

}  // namespace fb
