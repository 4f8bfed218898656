#include "core/basics/enums.h"

namespace fb {

namespace enums_detail {

template <class Enum, std::size_t N>
std::optional<Enum> find(const std::array<Enum, N>& all, std::string_view word)
{
    for (const Enum e : all) {
        if (wordOf(e) == word)
            return e;
    }
    return std::nullopt;
}

}  // namespace enums_detail

std::string_view wordOf(Sex sex) { return sex == Sex::Female ? "female" : "male"; }

std::string_view wordOf(Side side) { return side == Side::Left ? "left" : "right"; }

std::string_view wordOf(Site site)
{
    switch (site) {
    case Site::Deltoid: return "deltoid";
    }
    return {};
}

std::string_view wordOf(View view)
{
    switch (view) {
    case View::ShoulderSide: return "shoulder-side";
    case View::ShoulderThreeQuarter: return "shoulder-three-quarter";
    }
    return {};
}

std::string_view wordOf(Convention convention)
{
    switch (convention) {
    case Convention::DeltoidStrip: return "deltoid.strip";
    case Convention::DeltoidCentroid: return "deltoid.centroid";
    case Convention::DeltoidTwoInches: return "deltoid.two-inches";
    case Convention::DeltoidFingers: return "deltoid.fingers";
    case Convention::DeltoidHalfway: return "deltoid.halfway";
    }
    return {};
}

std::string_view wordOf(Layer layer)
{
    switch (layer) {
    case Layer::Bone: return "bone";
    case Layer::Vessel: return "vessel";
    case Layer::Nerve: return "nerve";
    case Layer::Muscle: return "muscle";
    case Layer::Skin: return "skin";
    case Layer::Surface: return "surface";
    case Layer::Cloth: return "cloth";
    }
    return {};
}

std::optional<Sex> sexFrom(std::string_view word) { return enums_detail::find(kSexes, word); }
std::optional<Side> sideFrom(std::string_view word) { return enums_detail::find(kSides, word); }
std::optional<Site> siteFrom(std::string_view word) { return enums_detail::find(kSites, word); }
std::optional<View> viewFrom(std::string_view word) { return enums_detail::find(kViews, word); }
std::optional<Convention> conventionFrom(std::string_view word)
{
    return enums_detail::find(kConventions, word);
}
std::optional<Layer> layerFrom(std::string_view word) { return enums_detail::find(kLayers, word); }

Site siteOf(Convention) { return Site::Deltoid; }

}  // namespace fb
