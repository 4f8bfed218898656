// How a plate is read: the steps behind parsePlate, in the order they must run.
//
// One reader reads one document that has passed the subset check. Private to this room;
// everyone else calls parsePlate.
#pragma once

#include <map>
#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/plate/plate.h"

namespace fb {

class PlateReader {
public:
    explicit PlateReader(std::string file) : m_file(std::move(file)) {}

    [[nodiscard]] Result<Plate> read(std::string_view svg);

private:
    using Done = Result<bool>;
    using Node = pugi::xml_node;
    using Paths = std::map<std::string, NamedPath, std::less<>>;

    [[nodiscard]] Done readRoot(const Node& root);
    [[nodiscard]] Done readTones(std::string_view text);
    [[nodiscard]] Done readNames(const Node& root);  // every id once, every required name there
    [[nodiscard]] Done readLimbs(const Node& root);
    [[nodiscard]] Done readLimb(const Node& group, Limb& limb);
    [[nodiscard]] Done readLevels(Limb& limb);
    [[nodiscard]] Done readGradients(const Node& root);
    [[nodiscard]] Done readInk(const Node& root);
    [[nodiscard]] Done readLimbInk(const Node& group, Layer layer, int limb);
    [[nodiscard]] Done readShape(const Node& path, Structure& into);
    [[nodiscard]] Done readFill(std::string_view fill, const std::string& name, InkShape& shape) const;
    [[nodiscard]] Done readPaths(const Node& root, const char* layer, Paths& into);

    [[nodiscard]] tl::unexpected<Fault> missing(std::string name) const;
    [[nodiscard]] Point framed(Point mm) const;  // svg millimetres to the frame
    [[nodiscard]] int toneOf(std::string_view hex) const;
    // Nothing far from the paper, nor more ink than a hand could draw: it is cut small later.
    [[nodiscard]] std::optional<std::vector<Ring>> framedRings(const Node& path);
    // A number of an attribute, whatever the machine's locale; the fallback when there is none.
    [[nodiscard]] static double numberOf(const Node& node, const char* attribute, double fallback = 0.0);
    [[nodiscard]] static Node childNamed(const Node& parent, std::string_view id);

    std::string m_file;
    Point m_origin;
    Plate m_plate;
    std::map<std::string, int, std::less<>> m_gradientIds;
    double m_inkLength = 0.0;  // cm, so far
};

}  // namespace fb
