#include "core/site/vastus.h"

#include <algorithm>

namespace fb {

namespace vastus_detail {

constexpr int kSideRows = 8;  // points along a side of the region

enum class Laid { OnSkin, InPicture };

// Between two heights and two angles, as skin or as the view shows it.
Polygon band(const Thigh& thigh, const VastusBand& along, double front, double back, Laid laid)
{
    const auto at = [&](double degrees, int row) {
        const double t = along.top + (along.bottom - along.top) * row / kSideRows;
        return laid == Laid::OnSkin ? thigh.skinAt(degrees, t) : thigh.shownAt(degrees, t);
    };
    std::vector<Point> corners;
    for (int row = 0; row <= kSideRows; ++row)
        corners.push_back(at(front, row));
    for (int row = kSideRows; row >= 0; --row)
        corners.push_back(at(back, row));
    // The band has a height, and the skin is laid out without folds.
    return *Polygon::make(std::move(corners));
}

class VastusSteps {
public:
    VastusSteps(const Policy& policy, const Thigh& thigh, const VastusBand& band)
        : m_policy(policy),
          m_thigh(thigh),
          m_band(band)
    {
    }

    [[nodiscard]] Steps built(Convention convention, const Polygon& region, Point ideal)
    {
        add(StepCode::FeelTrochanter, FigureKind::Point, {{0.0, 0.0}});
        add(StepCode::FeelCondyle, FigureKind::Point, {m_thigh.condyle});
        add(StepCode::ThighLine, FigureKind::Line, {{0.0, 0.0}, m_thigh.condyle});
        if (convention == Convention::VastusThirds) {
            add(StepCode::UpperThird, FigureKind::Line, across(m_band.top));
            add(StepCode::LowerThird, FigureKind::Line, across(m_band.bottom));
        } else {
            addHand(StepCode::HandBelowHip, 0.0, m_band.top);
            addHand(StepCode::HandAboveKnee, m_band.bottom, 1.0);
        }
        add(StepCode::FrontLine, FigureKind::Line, frontLine());
        add(StepCode::Region, FigureKind::Closed, region.corners());
        add(StepCode::IdealPoint, FigureKind::Point, {ideal});
        return std::move(m_steps);
    }

private:
    void add(StepCode code, FigureKind kind, std::vector<Point> points)
    {
        m_steps.push_back({code, kind, std::move(points)});
    }
    // From spine to patella; from the side it is seen edge-on, along the front of the thigh.
    [[nodiscard]] std::vector<Point> frontLine() const
    {
        if (m_thigh.sight == LimbSight::FromFront)
            return {m_thigh.spine, m_thigh.patella};
        std::vector<Point> points;
        for (int i = 0; i <= kSideRows; ++i)
            points.push_back(m_thigh.shownAt(0.0, static_cast<double>(i) / kSideRows));
        return points;
    }
    // From the front line to the outer line, and as far behind as the view shows.
    [[nodiscard]] std::vector<Point> across(double along) const
    {
        std::vector<Point> points;
        const double back = m_policy.value(PolicyKey::VastusBack);
        for (int i = 0; i <= kSideRows; ++i)
            points.push_back(m_thigh.shownAt(back * i / kSideRows, along));
        return points;
    }
    void addHand(StepCode code, double top, double bottom)
    {
        const VastusBand hand{top, bottom, (top + bottom) / 2.0};
        const double back = m_policy.value(PolicyKey::VastusBack);
        add(code, FigureKind::Closed,
            band(m_thigh, hand, m_policy.value(PolicyKey::VastusFront), back, Laid::InPicture).corners());
    }

    const Policy& m_policy;
    const Thigh& m_thigh;
    const VastusBand& m_band;
    Steps m_steps;
};

}  // namespace vastus_detail

using namespace vastus_detail;

VastusBand vastusBand(Convention convention, const Policy& policy, double thighLength)
{
    using enum PolicyKey;
    if (convention == Convention::VastusThirds)
        return {policy.value(VastusTop), policy.value(VastusBottom), policy.value(VastusIdeal)};
    const double ends = policy.value(ThighEnds);
    const double hand = policy.value(HandLength) * policy.value(HandBreadth) / thighLength;
    const double top = std::clamp(hand, ends, policy.value(VastusIdeal) - ends);
    return {top, 1.0 - top, 0.5};
}

Target vastusTarget(Convention convention, const Policy& policy, const Thigh& thigh)
{
    using enum PolicyKey;
    const VastusBand along = vastusBand(convention, policy, thigh.length);
    const double front = policy.value(VastusFront);
    const double back = policy.value(VastusBack);
    Polygon region = band(thigh, along, front, back, Laid::InPicture);
    const Point ideal = thigh.shownAt(policy.value(VastusIdealRound), along.ideal);
    Steps construction = VastusSteps(policy, thigh, along).built(convention, region, ideal);
    Target target{Site::VastusLateralis,
                  std::move(region),
                  ideal,
                  band(thigh, along, front, back, Laid::OnSkin),
                  thigh.skinAt(policy.value(VastusIdealRound), along.ideal),
                  ThighSurface{thigh.limb, thigh.sight}};
    target.convention = convention;
    target.thighLength = Cm{thigh.length};
    target.scale = thigh.scale;
    target.hazards = vastusHazards(policy, thigh);
    target.construction = std::move(construction);
    return target;
}

}  // namespace fb
