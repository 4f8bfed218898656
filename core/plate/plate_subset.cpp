#include "core/plate/plate_subset.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <span>
#include <string_view>
#include <vector>

namespace fb {

namespace subset_detail {

struct Allowed {
    std::string_view element;
    std::span<const std::string_view> attributes;
};

constexpr std::string_view kSvg[]{"xmlns",          "viewBox",      "id",
                                  "data-view",      "data-origin",  "data-tones",
                                  "data-reference", "data-azimuth", "data-markable"};
constexpr std::string_view kGroup[]{"id", "display", "data-parent", "data-joint", "data-angle"};
constexpr std::string_view kPath[]{"id", "d", "fill", "fill-opacity", "data-ink", "data-cue"};
constexpr std::string_view kCircle[]{"id", "cx", "cy", "r"};
constexpr std::string_view kLinear[]{"id", "gradientUnits", "x1", "y1", "x2", "y2", "data-limb"};
constexpr std::string_view kRadial[]{"id", "gradientUnits", "cx", "cy", "r", "data-limb"};
constexpr std::string_view kStop[]{"offset", "stop-color", "stop-opacity"};

const std::array<Allowed, 10> kAllowed{{{"svg", kSvg},
                                        {"g", kGroup},
                                        {"path", kPath},
                                        {"circle", kCircle},
                                        {"linearGradient", kLinear},
                                        {"radialGradient", kRadial},
                                        {"stop", kStop},
                                        {"defs", {}},
                                        {"title", {}},
                                        {"desc", {}}}};

constexpr int kDeepest = 8;           // elements inside each other
constexpr std::size_t kMost = 20000;  // elements in a plate

Result<bool> checkElement(const pugi::xml_node& node, const std::string& file)
{
    const auto it = std::ranges::find(kAllowed, std::string_view(node.name()), &Allowed::element);
    if (it == kAllowed.end())
        return fault(Problem::PlateForbidden, file, std::string("<") + node.name() + ">");
    for (const pugi::xml_attribute& attribute : node.attributes()) {
        if (std::ranges::find(it->attributes, std::string_view(attribute.name())) == it->attributes.end())
            return fault(Problem::PlateForbidden, file,
                         std::string("<") + node.name() + " " + attribute.name() + ">");
    }
    return true;
}

struct Open {
    pugi::xml_node node;
    int depth = 0;
};

}  // namespace subset_detail

Result<bool> checkSubset(const pugi::xml_document& document, const std::string& file)
{
    using namespace subset_detail;
    const pugi::xml_node root = document.child("svg");
    if (!root)
        return fault(Problem::PlateNotReadable, file, "0");
    for (const pugi::xml_node& node : document.children()) {
        if (node.type() == pugi::node_doctype)
            return fault(Problem::PlateForbidden, file, "<!DOCTYPE>");
        if (node.type() == pugi::node_pi)
            return fault(Problem::PlateForbidden, file, std::string("<?") + node.name() + "?>");
    }
    std::vector<Open> open{{root, 1}};
    std::size_t seen = 0;
    while (!open.empty()) {
        const Open top = open.back();
        open.pop_back();
        if (top.node.type() != pugi::node_element)
            continue;
        if (++seen > kMost || top.depth > kDeepest)
            return fault(Problem::PlateForbidden, file, std::string("<") + top.node.name() + ">");
        if (const auto allowed = checkElement(top.node, file); !allowed)
            return allowed;
        for (const pugi::xml_node& child : top.node.children())
            open.push_back({child, top.depth + 1});
    }
    return true;
}

}  // namespace fb
