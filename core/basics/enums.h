// The small closed vocabularies of the program, with their stable lower_snake_case or
// kebab-case words for files and the command line. Translated words live in app/words.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace fb {

enum class Sex { Female, Male };
enum class Side { Left, Right };

enum class Site { Deltoid, VastusLateralis, Ventrogluteal };

// What a plate shows. The hands are no views of a patient: they are laid over one.
enum class View {
    ShoulderSide,
    ShoulderThreeQuarter,
    HipSide,
    HipBehind,
    ThighFront,
    ThighSide,
    OpenHand,
    TwoFingers,
    ThreeFingers
};

// One published way to find a site.
enum class Convention {
    DeltoidStrip,
    DeltoidCentroid,
    DeltoidTwoInches,
    DeltoidFingers,
    DeltoidHalfway,
    VastusThirds,
    VastusHandbreadths,
    VentroglutealHand,
    VentroglutealMedians
};

// What can be peeled from a plate, outermost last. Surface belongs to Skin on screen.
enum class Layer { Bone, Vessel, Nerve, Muscle, Skin, Surface, Cloth };

inline constexpr std::array kSexes{Sex::Female, Sex::Male};
inline constexpr std::array kSides{Side::Left, Side::Right};
inline constexpr std::array kSites{Site::Deltoid, Site::VastusLateralis, Site::Ventrogluteal};
// The views of a patient.
inline constexpr std::array kViews{View::ShoulderSide, View::ShoulderThreeQuarter, View::HipSide,
                                   View::HipBehind,    View::ThighFront,           View::ThighSide};
inline constexpr std::size_t kPlateCount = kViews.size() + 3;  // and the hands
inline constexpr std::array kConventions{
    Convention::DeltoidStrip,       Convention::DeltoidCentroid,   Convention::DeltoidTwoInches,
    Convention::DeltoidFingers,     Convention::DeltoidHalfway,    Convention::VastusThirds,
    Convention::VastusHandbreadths, Convention::VentroglutealHand, Convention::VentroglutealMedians};
inline constexpr std::array kLayers{Layer::Bone, Layer::Vessel,  Layer::Nerve, Layer::Muscle,
                                    Layer::Skin, Layer::Surface, Layer::Cloth};

[[nodiscard]] std::string_view wordOf(Sex sex);
[[nodiscard]] std::string_view wordOf(Side side);
[[nodiscard]] std::string_view wordOf(Site site);
[[nodiscard]] std::string_view wordOf(View view);
[[nodiscard]] std::string_view wordOf(Convention convention);
[[nodiscard]] std::string_view wordOf(Layer layer);

// Exact, case-sensitive inverse of wordOf; nullopt for an unknown word.
[[nodiscard]] std::optional<Sex> sexFrom(std::string_view word);
[[nodiscard]] std::optional<Side> sideFrom(std::string_view word);
[[nodiscard]] std::optional<Site> siteFrom(std::string_view word);
[[nodiscard]] std::optional<View> viewFrom(std::string_view word);       // of a patient
[[nodiscard]] std::optional<View> plateViewFrom(std::string_view word);  // and the hands
[[nodiscard]] std::optional<Convention> conventionFrom(std::string_view word);
[[nodiscard]] std::optional<Layer> layerFrom(std::string_view word);

[[nodiscard]] Site siteOf(Convention convention);
// The site a view belongs to; of the open hand, the one it is laid for.
[[nodiscard]] Site siteOf(View view);
// The conventions of a site, in the order of kConventions.
[[nodiscard]] std::span<const Convention> conventionsOf(Site site);
// The views in which a site is asked, the usual one first.
[[nodiscard]] std::span<const View> askedViews(Site site);
// The view that opens beside another, to show only.
[[nodiscard]] View companionOf(View view);
[[nodiscard]] constexpr Side opposite(Side side) { return side == Side::Left ? Side::Right : Side::Left; }

}  // namespace fb
