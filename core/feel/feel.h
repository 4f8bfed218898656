// What a fingertip feels where it presses: hard and edged over bone, firm over muscle, soft
// over fat; and how plainly, by the patient's fat there. Says nothing of which bone it is.
//
// How far beside a bone it is still felt: a number of the policy for lean patients, sinking to
// another where fat is thick; above that thickness no farther. All of them the lab's choice.
//
// Under the fingertip a corner or knob tells before an edge, an edge before a surface, so that the
// tubercle is felt on its crest; beside the fingertip the nearest bone tells.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/body/patient.h"
#include "core/feel/felt_bones.h"
#include "core/feel/flesh.h"
#include "core/policy/policy.h"
#include "core/site/locate.h"

namespace fb {

enum class Firmness {
    Soft,  // fat, or nothing firm within reach
    Firm,  // muscle
    Hard   // bone, under the fingertip
};
inline constexpr int kFirmnessCount = static_cast<int>(Firmness::Hard) + 1;

// How plainly it is felt through the fat there; a bone under muscle one step less so.
enum class Clearness { Plain, Dull, Faint };
inline constexpr int kClearnessCount = static_cast<int>(Clearness::Faint) + 1;

struct Feel {
    Firmness firmness{};
    BoneShape shape{};  // of the bone under the fingertip, or within reach beside it
    Clearness clearness{};
    Mm fat;   // between the finger and what it feels
    Cm away;  // from the middle of the fingertip to the bone; 0: over it, or no bone
    // Viewer's frame, unit: to a bone that lies beside the fingertip's middle; on a knob, to its top.
    std::optional<Point> toward;
    std::optional<Point> along;  // viewer's frame, unit: the way an edge runs, under a point of it too
    int bone = -1;               // which bone of the map, so that a sweep knows it is still on it
    Cm place;                    // how far along an edge, from where its line starts

    friend bool operator==(const Feel&, const Feel&) = default;
};

class FeelMap {
public:
    // The bones, the muscles and the fat of this patient in a view that can be marked; ViewShowOnly
    // for any other. The plate of the view outlives the map.
    [[nodiscard]] static Result<FeelMap> make(const Atlas& atlas, const Policy& policy,
                                              const Patient& patient, View view);

    // MarkNotAPoint, MarkOutsideBody; HandLengthOutOfRange's fellow FingerWidthOutOfRange is the
    // caller's to rule out (checkedFingerWidth). fingerWidth: of the learner's own finger.
    [[nodiscard]] Result<Feel> at(Point viewer, Cm fingerWidth) const;

    // How far beside a bone it is felt through this much fat.
    [[nodiscard]] Cm reach(Mm fat) const;

private:
    FeelMap(const Plate& plate, const Policy& policy, BodyMap map, Flesh flesh, Side side);
    struct Found {
        const FeltBone* bone = nullptr;
        Touch touch;
    };
    [[nodiscard]] Found found(Point frame, double underFinger, double reach) const;
    void tellBone(Feel& feel, const Found& found, Point frame, double underFinger) const;
    [[nodiscard]] Clearness clearness(Mm fat) const;

    const Plate* m_plate = nullptr;
    BodyMap m_map;
    Flesh m_flesh;
    Side m_side{};
    std::vector<FeltBone> m_bones;
    double m_reachLean = 0.0, m_reachThick = 0.0;  // cm
    double m_fatLean = 0.0, m_fatThick = 0.0;      // mm
    double m_fatSoft = 0.0;                        // mm: above it muscle is felt as soft
};

// A finger that moves while it presses: how far it has followed the edge it is on without leaving it.
class Sweep {
public:
    void add(Point viewer, const Feel& feel);
    void lift();  // the finger left the edge or the skin: nothing is followed any more
    // Between the two farthest places of the edge felt hard on the way, cm of the edge.
    [[nodiscard]] Cm followed() const { return Cm{m_followed}; }

private:
    std::optional<Point> m_last;
    int m_bone = -1;
    double m_from = 0.0, m_to = 0.0;  // places along the edge
    double m_followed = 0.0;
};

[[nodiscard]] std::string_view wordOf(Firmness firmness);
[[nodiscard]] std::string_view wordOf(BoneShape shape);
[[nodiscard]] std::string_view wordOf(Clearness clearness);

}  // namespace fb
