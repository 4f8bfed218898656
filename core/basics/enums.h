// The small closed vocabularies of the program, with their stable lower_snake_case or
// kebab-case words for files and the command line. Translated words live in app/words.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace fb {

enum class Sex { Female, Male };
enum class Side { Left, Right };

enum class Site { Deltoid };

enum class View { ShoulderSide, ShoulderThreeQuarter };

// One published way to find a site.
enum class Convention { DeltoidStrip, DeltoidCentroid, DeltoidTwoInches, DeltoidFingers, DeltoidHalfway };

// What can be peeled from a plate, outermost last. Surface belongs to Skin on screen.
enum class Layer { Bone, Vessel, Nerve, Muscle, Skin, Surface, Cloth };

inline constexpr std::array kSexes{Sex::Female, Sex::Male};
inline constexpr std::array kSides{Side::Left, Side::Right};
inline constexpr std::array kSites{Site::Deltoid};
inline constexpr std::array kViews{View::ShoulderSide, View::ShoulderThreeQuarter};
inline constexpr std::array kConventions{Convention::DeltoidStrip, Convention::DeltoidCentroid,
                                         Convention::DeltoidTwoInches, Convention::DeltoidFingers,
                                         Convention::DeltoidHalfway};
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
[[nodiscard]] std::optional<View> viewFrom(std::string_view word);
[[nodiscard]] std::optional<Convention> conventionFrom(std::string_view word);
[[nodiscard]] std::optional<Layer> layerFrom(std::string_view word);

[[nodiscard]] Site siteOf(Convention convention);

}  // namespace fb
