// What a learner builds to find a site: the same figure the target is built from, set by hand,
// handle by handle. Everything is in the viewer's frame, cm.
//
//   deltoid, but for halfway   fingers laid below the acromion; a triangle of base and apex
//   deltoid.halfway            a line from acromion to tuberosity and its middle
//   vastus lateralis           ends of the thigh, two lines across, two lines along, one cell
//   vg.hand                    a hand: which, palm, index fingertip, opening
//   vg.medians                 a triangle of three corners and a line from each to its far side
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/hand/free_hand.h"
#include "core/hand/laid_fingers.h"
#include "core/policy/policy.h"
#include "core/site/construction.h"
#include "core/site/target.h"

namespace fb {

enum class BuildKind { FingersAndTriangle, HalvedLine, ThighGrid, HandOnHip, TriangleAndMedians };
[[nodiscard]] BuildKind buildKindOf(Convention convention);

// What can be taken hold of and moved.
enum class Handle {
    Fingers,  // slides the laid fingers
    FingersTurn,
    BaseFront,
    BaseBack,
    Apex,
    LineTop,
    LineBottom,
    LineMiddle,  // kept on the line
    ThighTop,
    ThighBottom,
    UpperLine,  // across the thigh
    LowerLine,
    FrontLine,  // along the thigh
    OuterLine,
    Palm,  // slides the hand
    IndexTip,
    MiddleTip,
    CornerTrochanter,
    CornerTubercle,
    CornerSpine,
    FootTrochanter,  // of the line from that corner: kept on the side facing it
    FootTubercle,
    FootSpine
};
inline constexpr int kHandleCount = static_cast<int>(Handle::FootSpine) + 1;

// A field of the thigh between its lines.
enum class ThighRow { Upper, Middle, Lower };
enum class ThighColumn { Inside, Between, Behind };  // of the front line, of both, of the outer line
struct ThighCell {
    ThighRow row{};
    ThighColumn column{};

    friend bool operator==(const ThighCell&, const ThighCell&) = default;
};

struct Build {
    Convention convention{};
    Side side{};  // of the patient
    std::optional<FreeHand> hand;
    std::optional<LaidFingers> fingers;
    std::array<std::optional<Point>, kHandleCount> points{};  // handles that are points of their own
    std::optional<ThighCell> cell;

    [[nodiscard]] const std::optional<Point>& point(Handle handle) const
    {
        return points[static_cast<std::size_t>(handle)];
    }
    [[nodiscard]] std::optional<Point>& point(Handle handle)
    {
        return points[static_cast<std::size_t>(handle)];
    }
    friend bool operator==(const Build&, const Build&) = default;
};

// What a build asks for beside handles.
enum class BuildChoice { WhichHand, HowManyFingers, WhichCell };
inline constexpr int kBuildChoiceCount = static_cast<int>(BuildChoice::WhichCell) + 1;

// In the order they are taught.
[[nodiscard]] std::span<const Handle> handlesOf(BuildKind kind);
[[nodiscard]] std::optional<BuildChoice> choiceOf(BuildKind kind);

// Whose measures lie on the skin: the learner's own, from the policy of the run.
struct Builder {
    HandSize hand;  // carries the finger's width

    [[nodiscard]] static Builder from(const Policy& policy);
};

[[nodiscard]] Build emptyBuild(const Target& target);
// Where a handle is now; nullopt while it is not set.
[[nodiscard]] std::optional<Point> handleAt(const Build& build, const Target& target, const Builder& builder,
                                            Handle handle);
// The build with a handle set or moved there, as far as lines, joints and fingers let it. A handle that
// needs others first (a line's middle, a foot, the lines of a thigh without ends, the tips of a hand that is
// not chosen) leaves the build as it was: see `isReady`.
[[nodiscard]] Build placed(Build build, const Target& target, const Builder& builder, Handle handle,
                           Point to);
[[nodiscard]] bool isReady(const Build& build, Handle handle);
// A hand of that side, or so many fingers, laid where nothing is found yet: beside the limb's far
// end. Chosen again, what lies there stays and changes hands.
[[nodiscard]] Build withHand(Build build, const Target& target, const Builder& builder, Side hand);
[[nodiscard]] Build withFingers(Build build, const Target& target, const Builder& builder, int count,
                                Side laysWith);
// The cell a point lies in, once all four lines are set.
[[nodiscard]] std::optional<ThighCell> cellAt(const Build& build, const Target& target, Point viewer);

[[nodiscard]] bool isEmpty(const Build& build);
// What is not set yet, in the order of teaching; empty: the build is whole.
[[nodiscard]] std::vector<Handle> missingHandles(const Build& build);
[[nodiscard]] bool isWhole(const Build& build);

// The figures of what is set so far, as a target's own construction names them.
[[nodiscard]] Steps figuresOf(const Build& build, const Target& target, const Builder& builder);
// The field of a cell as the view shows it; at least a corner of it lies in sight.
[[nodiscard]] std::vector<Point> cellOutline(const Build& build, const Target& target, ThighCell cell);

// The build a flawless learner with these measures makes on this target.
[[nodiscard]] Build flawlessBuild(const Target& target, const Builder& builder);
// The ideal point by this build; nullopt unless it is whole.
[[nodiscard]] std::optional<Point> siteBy(const Build& build, const Target& target, const Builder& builder);

[[nodiscard]] std::string_view wordOf(BuildKind kind);
[[nodiscard]] std::string_view wordOf(Handle handle);
[[nodiscard]] std::string_view wordOf(BuildChoice choice);
[[nodiscard]] std::string_view wordOf(ThighRow row);
[[nodiscard]] std::string_view wordOf(ThighColumn column);

}  // namespace fb
