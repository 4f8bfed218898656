#include "core/basics/enums.h"

#include <algorithm>

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
    case Site::VastusLateralis: return "vastus-lateralis";
    case Site::Ventrogluteal: return "ventrogluteal";
    }
    return {};
}

std::string_view wordOf(View view)
{
    switch (view) {
    case View::ShoulderSide: return "shoulder-side";
    case View::ShoulderThreeQuarter: return "shoulder-three-quarter";
    case View::HipSide: return "hip-side";
    case View::HipBehind: return "hip-behind";
    case View::ThighFront: return "thigh-front";
    case View::ThighSide: return "thigh-side";
    case View::OpenHand: return "open-hand";
    case View::TwoFingers: return "two-fingers";
    case View::ThreeFingers: return "three-fingers";
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
    case Convention::VastusThirds: return "vl.thirds";
    case Convention::VastusHandbreadths: return "vl.handbreadths";
    case Convention::VentroglutealHand: return "vg.hand";
    case Convention::VentroglutealMedians: return "vg.medians";
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
std::optional<View> plateViewFrom(std::string_view word)
{
    for (const View hand : {View::OpenHand, View::TwoFingers, View::ThreeFingers})
        if (word == wordOf(hand))
            return hand;
    return viewFrom(word);
}
std::optional<Convention> conventionFrom(std::string_view word)
{
    return enums_detail::find(kConventions, word);
}
std::optional<Layer> layerFrom(std::string_view word) { return enums_detail::find(kLayers, word); }

Site siteOf(Convention convention)
{
    switch (convention) {
    case Convention::DeltoidStrip:
    case Convention::DeltoidCentroid:
    case Convention::DeltoidTwoInches:
    case Convention::DeltoidFingers:
    case Convention::DeltoidHalfway: return Site::Deltoid;
    case Convention::VastusThirds:
    case Convention::VastusHandbreadths: return Site::VastusLateralis;
    case Convention::VentroglutealHand:
    case Convention::VentroglutealMedians: return Site::Ventrogluteal;
    }
    return {};
}

Site siteOf(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter: return Site::Deltoid;
    case View::ThighFront:
    case View::ThighSide: return Site::VastusLateralis;
    case View::HipSide:
    case View::HipBehind:
    case View::OpenHand: return Site::Ventrogluteal;
    case View::TwoFingers:
    case View::ThreeFingers: return Site::Deltoid;
    }
    return {};
}

std::span<const Convention> conventionsOf(Site site)
{
    const auto first = std::ranges::find(kConventions, site, [](Convention c) { return siteOf(c); });
    const auto last =
        std::find_if(first, kConventions.end(), [site](Convention c) { return siteOf(c) != site; });
    return {first, last};
}

std::span<const View> askedViews(Site site)
{
    static constexpr std::array kShoulder{View::ShoulderSide};
    static constexpr std::array kThigh{View::ThighSide, View::ThighFront};
    static constexpr std::array kHip{View::HipSide};
    switch (site) {
    case Site::Deltoid: return kShoulder;
    case Site::VastusLateralis: return kThigh;
    case Site::Ventrogluteal: return kHip;
    }
    return {};
}

View companionOf(View view)
{
    switch (view) {
    case View::ShoulderSide: return View::ShoulderThreeQuarter;
    case View::ShoulderThreeQuarter: return View::ShoulderSide;
    case View::HipSide: return View::HipBehind;
    case View::HipBehind: return View::HipSide;
    case View::ThighFront: return View::ThighSide;
    case View::ThighSide: return View::ThighFront;
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return view;
}

}  // namespace fb
