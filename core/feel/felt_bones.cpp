#include "core/feel/felt_bones.h"

#include <algorithm>
#include <limits>

namespace fb {

namespace felt_bones_detail {

class BoneList {
public:
    explicit BoneList(const Places& places) : m_places(places) {}

    int edge(std::vector<Point> line) { return add({BoneShape::Edge, std::move(line)}); }
    int edge(std::string_view line) { return edge(m_places.boneLine(line)); }
    void point(std::string_view landmark, int on = -1, bool deep = false)
    {
        add({BoneShape::Point, {m_places.landmark(landmark)}, {}, on, deep});
    }
    void surface(std::string_view area) { add({BoneShape::Broad, {}, m_places.boneArea(area)}); }
    void knob(std::string_view area, std::string_view top)
    {
        point(top, add({BoneShape::Broad, {m_places.landmark(top)}, m_places.boneArea(area)}));
    }
    [[nodiscard]] Point landmark(std::string_view id) const { return m_places.landmark(id); }
    [[nodiscard]] std::vector<FeltBone> taken() { return std::move(m_bones); }

private:
    int add(FeltBone bone)
    {
        m_bones.push_back(std::move(bone));
        return static_cast<int>(m_bones.size()) - 1;
    }

    const Places& m_places;
    std::vector<FeltBone> m_bones;
};

void addShoulder(BoneList& list)
{
    // The acromion's lower rim goes on as the spine of the shoulder blade.
    list.edge({list.landmark("landmark.acromion.front"), list.landmark("landmark.acromion.lateral"),
               list.landmark("landmark.acromion.back"), list.landmark("landmark.scapula.spine")});
    list.edge("line.clavicle");
    list.surface("area.bone.acromion");
    list.surface("area.bone.clavicle");
    list.point("landmark.lateral-epicondyle");
    list.point("landmark.deltoid-tuberosity", -1, true);
}

void addHip(BoneList& list)
{
    const int crest = list.edge("line.iliac-crest");
    list.point("landmark.asis", crest);
    list.point("landmark.iliac-tubercle", crest);
    list.point("landmark.psis", crest);
    list.edge("line.sacrum-edge");
    list.knob("area.bone.greater-trochanter", "landmark.greater-trochanter");
    list.point("landmark.ischial-tuberosity", -1, true);
    list.point("landmark.lateral-femoral-epicondyle");
}

void addThigh(BoneList& list, View view)
{
    list.point("landmark.asis");
    // From the front only the trochanter's outer side lies under the skin.
    if (view == View::ThighFront)
        list.point("landmark.greater-trochanter");
    else
        list.knob("area.bone.greater-trochanter", "landmark.greater-trochanter");
    list.knob("area.bone.patella", "landmark.patella");
    list.point("landmark.lateral-femoral-epicondyle");
}

}  // namespace felt_bones_detail

std::vector<FeltBone> feltBones(const Places& places)
{
    felt_bones_detail::BoneList list(places);
    switch (places.plate().view) {
    case View::ShoulderSide: felt_bones_detail::addShoulder(list); break;
    case View::HipSide: felt_bones_detail::addHip(list); break;
    case View::ThighFront:
    case View::ThighSide: felt_bones_detail::addThigh(list, places.plate().view); break;
    default: break;
    }
    return list.taken();
}

Touch touched(const FeltBone& bone, Point frame)
{
    if (bone.area) {
        const double border = bone.area->signedDistance(frame);
        return border <= 0.0 ? Touch{0.0, frame} : Touch{border, bone.area->nearestBorderPoint(frame)};
    }
    if (bone.shape == BoneShape::Point)
        return {distance(frame, bone.line.front()), bone.line.front()};
    Touch best{std::numeric_limits<double>::max(), {}};
    double walked = 0.0;
    for (std::size_t i = 0; i + 1 < bone.line.size(); ++i) {
        const Point step = bone.line[i + 1] - bone.line[i];
        const double span = length(step);
        if (span <= 0.0)
            continue;
        const Point way = step * (1.0 / span);
        const double gone = std::clamp(dot(frame - bone.line[i], way), 0.0, span);
        const Point at = gone < span ? bone.line[i] + way * gone : bone.line[i + 1];
        const double away = distance(frame, at);
        if (away < best.away)
            best = {away, at, way, walked + gone};
        walked += span;
    }
    return best;
}

}  // namespace fb
