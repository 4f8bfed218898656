#include "core/feel/feel.h"

#include <algorithm>
#include <array>

#include "core/body/moved_ink.h"

namespace fb {

namespace feel_detail {

constexpr double kMiddle = 0.1;         // cm: a bone so near the finger's middle lies under it
constexpr double kSameGround = 0.1;     // cm: of two bones so alike in distance the finer one tells
constexpr double kDeepReach = 0.5;      // share of the reach left under muscle
constexpr double kLongestStride = 2.0;  // cm between two presses of one sweep

constexpr std::array<std::string_view, kFirmnessCount> kFirmnessWords{"soft", "firm", "hard"};
constexpr std::array<std::string_view, kBoneShapeCount> kShapeWords{"none", "point", "edge", "broad"};
constexpr std::array<std::string_view, kClearnessCount> kClearnessWords{"plain", "dull", "faint"};

std::optional<Point> towards(Point from, Point to)
{
    const double away = distance(from, to);
    if (away <= kMiddle)
        return std::nullopt;
    return (to - from) * (1.0 / away);
}

bool tellsBefore(const FeltBone& a, const FeltBone& b) { return a.shape < b.shape; }

}  // namespace feel_detail

using namespace feel_detail;

FeelMap::FeelMap(const Plate& plate, const Policy& policy, BodyMap map, Flesh flesh, Side side)
    : m_plate(&plate),
      m_map(std::move(map)),
      m_flesh(std::move(flesh)),
      m_side(side),
      m_bones(feltBones(Places(plate, m_map))),
      m_reachLean(policy.value(PolicyKey::FeelReachLean)),
      m_reachThick(policy.value(PolicyKey::FeelReachThick)),
      m_fatLean(policy.value(PolicyKey::FeelFatLean)),
      m_fatThick(policy.value(PolicyKey::FeelFatThick)),
      m_fatSoft(policy.value(PolicyKey::FeelFatSoft))
{
}

Result<FeelMap> FeelMap::make(const Atlas& atlas, const Policy& policy, const Patient& patient, View view)
{
    const auto asked = askedViews(siteOf(view));
    if (std::ranges::find(asked, view) == asked.end())
        return fault(Problem::ViewShowOnly, {}, std::string(wordOf(view)));
    return bodyMap(atlas, view, patient).map([&](BodyMap map) {
        const Plate& plate = atlas.plate(view);
        Flesh flesh(plate, map, *atlas.proportions, patient);
        return FeelMap(plate, policy, std::move(map), std::move(flesh), patient.side());
    });
}

Cm FeelMap::reach(Mm fat) const
{
    if (fat.value() <= m_fatLean)
        return Cm{m_reachLean};
    if (fat.value() >= m_fatThick)
        return Cm{m_reachThick};
    const double share = (fat.value() - m_fatLean) / (m_fatThick - m_fatLean);
    return Cm{m_reachLean + (m_reachThick - m_reachLean) * share};
}

Clearness FeelMap::clearness(Mm fat) const
{
    if (fat.value() <= m_fatLean)
        return Clearness::Plain;
    return fat.value() < m_fatThick ? Clearness::Dull : Clearness::Faint;
}

FeelMap::Found FeelMap::found(Point frame, double underFinger, double reach) const
{
    Found best;
    for (const FeltBone& bone : m_bones) {
        const Touch touch = touched(bone, frame);
        if (touch.away > (bone.deep ? kDeepReach * reach : reach))
            continue;
        const auto better = [&] {
            if (best.bone == nullptr)
                return true;
            const bool under = touch.away <= underFinger;
            const bool bestUnder = best.touch.away <= underFinger;
            if (under != bestUnder)
                return under;
            const bool even = under || std::abs(touch.away - best.touch.away) <= kSameGround;
            if (even && bone.shape != best.bone->shape)
                return tellsBefore(bone, *best.bone);
            return touch.away < best.touch.away;
        };
        if (better())
            best = {&bone, touch};
    }
    return best;
}

void FeelMap::tellBone(Feel& feel, const Found& found, Point frame, double underFinger) const
{
    const FeltBone& bone = *found.bone;
    // The top of a knob is felt as broad as the knob: there nothing of it lies to any side.
    const bool onKnob = bone.on >= 0 && m_bones[static_cast<std::size_t>(bone.on)].area;
    feel.shape = onKnob ? BoneShape::Broad : bone.shape;
    feel.away = Cm{found.touch.away};
    feel.bone = bone.on >= 0 ? bone.on : static_cast<int>(&bone - m_bones.data());
    if (bone.deep)
        feel.clearness = feel.clearness == Clearness::Plain ? Clearness::Dull : Clearness::Faint;
    else if (found.touch.away <= underFinger)
        feel.firmness = Firmness::Hard;
    const bool overKnob = bone.area && found.touch.away <= 0.0 && !bone.line.empty();
    feel.toward = towards(frame, overKnob ? bone.line.front() : found.touch.at);
    const Touch edge =
        bone.on >= 0 ? touched(m_bones[static_cast<std::size_t>(bone.on)], frame) : found.touch;
    feel.along = edge.along;
    feel.place = Cm{edge.place};
}

Result<Feel> FeelMap::at(Point viewer, Cm fingerWidth) const
{
    if (!isFinite(viewer))
        return fault(Problem::MarkNotAPoint);
    const int limb = limbAt(*m_plate, m_map, m_side, viewer);
    if (limb < 0)
        return fault(Problem::MarkOutsideBody);
    const bool left = m_side == Side::Left;
    const Point frame = left ? mirrored(viewer) : viewer;
    Feel feel;
    feel.fat = m_flesh.fat(limb);
    feel.clearness = clearness(feel.fat);
    feel.firmness =
        m_flesh.isMuscle(limb, frame) && feel.fat.value() <= m_fatSoft ? Firmness::Firm : Firmness::Soft;
    const double underFinger = fingerWidth.value() / 2.0;
    if (const Found bone = found(frame, underFinger, reach(feel.fat).value()); bone.bone != nullptr)
        tellBone(feel, bone, frame, underFinger);
    if (left && feel.toward)
        feel.toward = mirrored(*feel.toward);
    if (left && feel.along)
        feel.along = mirrored(*feel.along);
    return feel;
}

void Sweep::add(Point viewer, const Feel& feel)
{
    const bool edge = feel.firmness == Firmness::Hard && feel.along.has_value();
    const bool goesOn = edge && m_last && feel.bone == m_bone && distance(*m_last, viewer) <= kLongestStride;
    if (edge) {
        m_from = goesOn ? std::min(m_from, feel.place.value()) : feel.place.value();
        m_to = goesOn ? std::max(m_to, feel.place.value()) : feel.place.value();
        m_followed = m_to - m_from;
        m_last = viewer;
        m_bone = feel.bone;
    } else {
        lift();
    }
}

void Sweep::lift()
{
    m_last.reset();
    m_followed = 0.0;
}

std::string_view wordOf(Firmness firmness) { return kFirmnessWords[static_cast<std::size_t>(firmness)]; }
std::string_view wordOf(BoneShape shape) { return kShapeWords[static_cast<std::size_t>(shape)]; }
std::string_view wordOf(Clearness clearness) { return kClearnessWords[static_cast<std::size_t>(clearness)]; }

}  // namespace fb
