// PlateReader: the root, the names, the limbs and their levels.
#include "core/plate/plate_reader.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <numbers>
#include <set>

#include "core/plate/path_reader.h"
#include "core/plate/plate_subset.h"

namespace fb {

namespace plate_reader_detail {

// "male 35y 172cm 70kg"
std::optional<ReferenceBody> referenceFrom(std::string_view text)
{
    std::vector<std::string> words;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        words.emplace_back(text.substr(at, end - at));
        at = end + 1;
    }
    const auto number = [&](std::size_t i, std::string_view unit) -> std::optional<double> {
        if (i >= words.size() || !words[i].ends_with(unit))
            return std::nullopt;
        const auto n = numbersFrom(std::string_view(words[i]).substr(0, words[i].size() - unit.size()), 1);
        return n ? std::optional(n->front()) : std::nullopt;
    };
    const auto sex = words.empty() ? std::nullopt : sexFrom(words[0]);
    const auto age = number(1, "y");
    const auto stature = number(2, "cm");
    const auto weight = number(3, "kg");
    if (words.size() != 4 || !sex || !age || !stature || !weight)
        return std::nullopt;
    return ReferenceBody{*sex, *age, Cm{*stature}, Kg{*weight}};
}

}  // namespace plate_reader_detail

Result<Plate> parsePlate(std::string_view svg, const std::string& file)
{
    return PlateReader(file).read(svg);
}

Result<Plate> PlateReader::read(std::string_view svg)
{
    pugi::xml_document document;
    const auto parsed = document.load_buffer(svg.data(), svg.size(),
                                             pugi::parse_default | pugi::parse_doctype | pugi::parse_pi |
                                                 pugi::parse_declaration);
    if (!parsed)
        return fault(Problem::PlateNotReadable, m_file, std::to_string(parsed.offset));
    if (const auto allowed = checkSubset(document, m_file); !allowed)
        return tl::unexpected(allowed.error());
    const Node root = document.child("svg");
    const auto done = readRoot(root)
                          .and_then([&](bool) { return readNames(root); })
                          .and_then([&](bool) { return readLimbs(root); })
                          .and_then([&](bool) { return readGradients(root); })
                          .and_then([&](bool) { return readInk(root); })
                          .and_then([&](bool) { return readPaths(root, "lines", m_plate.lines); })
                          .and_then([&](bool) { return readPaths(root, "areas", m_plate.areas); });
    if (!done)
        return tl::unexpected(done.error());
    return std::move(m_plate);
}

tl::unexpected<Fault> PlateReader::missing(std::string name) const
{
    return fault(Problem::PlateMissingName, m_file, std::move(name));
}

Point PlateReader::framed(Point mm) const { return {(mm.x - m_origin.x) / 10.0, (m_origin.y - mm.y) / 10.0}; }

int PlateReader::toneOf(std::string_view hex) const
{
    const auto it = std::ranges::find(m_plate.tones, hex, &Tone::hex);
    return it == m_plate.tones.end() ? -1 : static_cast<int>(it - m_plate.tones.begin());
}

double PlateReader::numberOf(const Node& node, const char* attribute, double fallback)
{
    const auto number = numbersFrom(node.attribute(attribute).value(), 1);
    return number ? number->front() : fallback;
}

PlateReader::Node PlateReader::childNamed(const Node& parent, std::string_view id)
{
    return parent.find_child([&](const Node& n) { return id == n.attribute("id").value(); });
}

PlateReader::Done PlateReader::readRoot(const Node& root)
{
    const auto view = plateViewFrom(root.attribute("data-view").value());
    const auto box = numbersFrom(root.attribute("viewBox").value(), 4);
    const auto origin = numbersFrom(root.attribute("data-origin").value(), 2);
    const auto azimuth = numbersFrom(root.attribute("data-azimuth").value(), 1);
    const auto reference = plate_reader_detail::referenceFrom(root.attribute("data-reference").value());
    if (!view)
        return missing("data-view");
    if (!box || !((*box)[2] > 0.0 && (*box)[3] > 0.0))
        return missing("viewBox");
    if (!origin)
        return missing("data-origin");
    if (!azimuth)
        return missing("data-azimuth");
    if (!reference)
        return missing("data-reference");
    m_origin = {(*origin)[0], (*origin)[1]};
    m_plate.view = *view;
    m_plate.markable = std::strcmp(root.attribute("data-markable").value(), "yes") == 0;
    m_plate.azimuth = Degrees{(*azimuth)[0]};
    m_plate.reference = *reference;
    const Point topLeft{(*box)[0], (*box)[1]};
    const Point lowLeft = framed({topLeft.x, topLeft.y + (*box)[3]});
    const Point highRight = framed({topLeft.x + (*box)[2], topLeft.y});
    m_plate.paper = {lowLeft, highRight};
    return readTones(root.attribute("data-tones").value());
}

PlateReader::Done PlateReader::readTones(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string_view pair = text.substr(at, end - at);
        at = end + 1;
        if (pair.empty())
            continue;
        const std::size_t colon = pair.find(':');
        if (colon == std::string_view::npos || pair.size() - colon != 8)
            return fault(Problem::PlateForbidden, m_file, "data-tones: " + std::string(pair));
        m_plate.tones.push_back({std::string(pair.substr(0, colon)), std::string(pair.substr(colon + 1))});
    }
    return m_plate.tones.empty() ? Done(missing("data-tones")) : Done(true);
}

// Every id once, every required name there.
PlateReader::Done PlateReader::readNames(const Node& root)
{
    std::set<std::string, std::less<>> seen;
    std::vector<Node> open{root};
    while (!open.empty()) {
        const Node node = open.back();
        open.pop_back();
        const std::string id = node.attribute("id").value();
        if (!id.empty() && !seen.insert(id).second)
            return fault(Problem::PlateDoubledName, m_file, id);
        for (const Node& child : node.children())
            open.push_back(child);
    }
    for (const std::string& name : requiredNames(m_plate.view)) {
        if (!seen.contains(name))
            return missing(name);
    }
    for (const Layer layer : kLayers) {
        if (!childNamed(root, wordOf(layer)))
            return missing(std::string(wordOf(layer)));
    }
    return true;
}

PlateReader::Done PlateReader::readLimbs(const Node& root)
{
    // Painter's order of the limbs is the order of their groups in the skin layer.
    for (const Node& group : childNamed(root, "skin").children("g"))
        m_plate.limbs.push_back(Limb{std::string(group.attribute("id").value()).substr(5), -1, {}, {}, {}});
    const Node points = childNamed(root, "points");
    for (Limb& limb : m_plate.limbs) {
        const Node group = childNamed(points, "points." + limb.name);
        if (!group)
            return missing("points." + limb.name);
        if (const auto done = readLimb(group, limb); !done)
            return done;
    }
    return true;
}

PlateReader::Done PlateReader::readLimb(const Node& group, Limb& limb)
{
    const int index = m_plate.limbNamed(limb.name);
    for (const Node& circle : group.children("circle"))
        m_plate.points[circle.attribute("id").value()] = {
            index, framed({numberOf(circle, "cx"), numberOf(circle, "cy")})};
    const std::string parent = group.attribute("data-parent").value();
    limb.parent = parent.empty() ? -1 : m_plate.limbNamed(parent);
    if (!parent.empty() && limb.parent < 0)
        return missing("points." + parent);
    limb.angle = Degrees{numberOf(group, "data-angle")};
    const auto joint = m_plate.points.find(group.attribute("data-joint").value());
    if (joint == m_plate.points.end())
        return missing(std::string("points.") + limb.name + " data-joint");
    limb.joint = joint->second.at;
    return readLevels(limb);
}

PlateReader::Done PlateReader::readLevels(Limb& limb)
{
    const double turn = limb.angle.value() * std::numbers::pi / 180.0;
    const Point axis{std::sin(turn), -std::cos(turn)};
    const Point across{std::cos(turn), std::sin(turn)};
    const int index = m_plate.limbNamed(limb.name);
    for (const auto& [id, point] : m_plate.points) {
        if (point.limb != index || !id.starts_with("level."))
            continue;
        const std::string name = id.substr(6);
        std::array<Cm, 4> edges;
        const auto names = edgeNames(m_plate.view);
        for (std::size_t e = 0; e < edges.size(); ++e) {
            const std::string edgeName = "edge." + name + "." + std::string(names[e]);
            const auto edge = m_plate.points.find(edgeName);
            if (edge == m_plate.points.end() || edge->second.limb != index)
                return missing(edgeName);
            edges[e] = Cm{dot(edge->second.at - limb.joint, across)};
        }
        if (!(edges[0] < edges[1] && edges[1] < Cm{} && Cm{} < edges[2] && edges[2] < edges[3]))
            return fault(Problem::PlateDisordered, m_file, id);
        limb.levels.push_back(
            {name, Cm{dot(point.at - limb.joint, axis)}, edges[0], edges[1], edges[2], edges[3]});
    }
    if (limb.levels.size() < 2)
        return missing("level.* of " + limb.name);
    std::ranges::sort(limb.levels, {}, &Level::along);
    return true;
}

}  // namespace fb
