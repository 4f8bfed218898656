#include "core/site/deltoid.h"

#include <algorithm>

#include "core/site/deltoid_hazards.h"

namespace fb {

namespace deltoid_detail {

constexpr int kRows = 6;  // points along a side of the region when it is laid round the arm

Polygon shownRegion(const DeltoidBand& band, const Arm& arm)
{
    std::vector<Point> corners;
    for (int i = 0; i <= kRows; ++i) {
        const double y = -band.top + (band.top - band.bottom) * i / kRows;
        corners.push_back(arm.showSkin({-band.halfWidth, y}));
    }
    for (int i = kRows; i >= 0; --i) {
        const double y = -band.top + (band.top - band.bottom) * i / kRows;
        corners.push_back(arm.showSkin({band.halfWidth, y}));
    }
    // A band has height and width, and the limb's skin is laid out without folds.
    return *Polygon::make(std::move(corners));
}

class Builder {
public:
    Builder(Convention convention, const Policy& policy, const Arm& arm, const DeltoidBand& band)
        : m_convention(convention),
          m_policy(policy),
          m_arm(arm),
          m_band(band)
    {
    }

    [[nodiscard]] Steps built(const Polygon& region)
    {
        add(StepCode::FeelAcromion, FigureKind::Point, {m_arm.acromion});
        switch (m_convention) {
        case Convention::DeltoidStrip:
        case Convention::DeltoidCentroid: addTriangle(); break;
        case Convention::DeltoidTwoInches: addMeasure(m_band.ideal); break;
        case Convention::DeltoidFingers: addFingers(); break;
        case Convention::DeltoidHalfway: addTuberosity(); break;
        default: break;  // of other sites: locate() lets none through
        }
        m_steps.push_back({StepCode::Region, FigureKind::Closed, region.corners()});
        add(StepCode::IdealPoint, FigureKind::Point, {{0.0, -m_band.ideal}});
        return std::move(m_steps);
    }

private:
    void add(StepCode code, FigureKind kind, std::vector<Point> frame)
    {
        for (Point& p : frame)
            p = m_arm.show(p);
        m_steps.push_back({code, kind, std::move(frame)});
    }
    [[nodiscard]] Point apex() const { return {0.0, -m_arm.axillaDepth}; }

    void addArmpitLevel()
    {
        const double y = -m_arm.axillaDepth;
        const Point back = m_arm.section.toFrame({-m_arm.section.quarterArc(y, false), y});
        const Point front = m_arm.section.toFrame({m_arm.section.quarterArc(y, true), y});
        add(StepCode::ArmpitLevel, FigureKind::Line, {back, front});
    }
    void addMidLateralLine(double bottom)
    {
        add(StepCode::MidLateralLine, FigureKind::Line, {m_arm.acromion, {0.0, -bottom}});
    }
    void addMeasure(double depth)
    {
        addArmpitLevel();
        addMidLateralLine(m_arm.axillaDepth);
        add(StepCode::MeasureDown, FigureKind::Line, {m_arm.acromion, {0.0, -depth}});
    }
    void addTriangle()
    {
        add(StepCode::AcromionBase, FigureKind::Line, {m_arm.acromionFront, m_arm.acromionBack});
        addArmpitLevel();
        add(StepCode::Apex, FigureKind::Point, {apex()});
        add(StepCode::Triangle, FigureKind::Closed, {m_arm.acromionBack, m_arm.acromionFront, apex()});
        addMidLateralLine(m_arm.axillaDepth);
        add(StepCode::MeasureDown, FigureKind::Line, {m_arm.acromion, {0.0, -m_band.top}});
    }
    void addFingers()
    {
        const double width = m_policy.value(PolicyKey::DeltoidFingerWidth);
        const double most = m_policy.value(PolicyKey::DeltoidFingersHigh);
        for (int finger = 1; finger <= static_cast<int>(most); ++finger) {
            const double y = -finger * width;
            add(StepCode::LayFingers, FigureKind::Line,
                {m_arm.section.toFrame({-m_band.halfWidth, y}),
                 m_arm.section.toFrame({m_band.halfWidth, y})});
        }
        addArmpitLevel();
        addMidLateralLine(m_arm.axillaDepth);
    }
    void addTuberosity()
    {
        add(StepCode::FeelTuberosity, FigureKind::Point, {m_arm.tuberosity});
        add(StepCode::MidLateralLine, FigureKind::Line, {m_arm.acromion, m_arm.tuberosity});
        addArmpitLevel();
    }

    Convention m_convention;
    const Policy& m_policy;
    const Arm& m_arm;
    const DeltoidBand& m_band;
    Steps m_steps;
};

}  // namespace deltoid_detail

DeltoidBand deltoidBand(Convention convention, const Policy& policy, double armLength)
{
    using enum PolicyKey;
    const double scale = armLength / policy.value(DeltoidReferenceArm);
    const double halfWidth = policy.value(DeltoidStripHalfWidth) * scale;
    const auto aroundPoint = [&](double distance) {
        const double along = policy.value(PointHalfAlong) * scale;
        return DeltoidBand{distance - along, distance + along, distance,
                           policy.value(PointHalfAcross) * scale};
    };
    switch (convention) {
    case Convention::DeltoidStrip:
        return {policy.value(DeltoidStripTop) * armLength, policy.value(DeltoidStripBottom) * armLength,
                policy.value(DeltoidStripIdeal) * armLength, halfWidth};
    case Convention::DeltoidCentroid: return aroundPoint(policy.value(DeltoidCentroidDistance) * scale);
    case Convention::DeltoidTwoInches: return aroundPoint(policy.value(DeltoidTwoInches) * scale);
    case Convention::DeltoidFingers: {
        const double finger = policy.value(DeltoidFingerWidth);
        const double low = policy.value(DeltoidFingersLow) * finger;
        const double high = policy.value(DeltoidFingersHigh) * finger;
        return {low, high, (low + high) / 2.0, halfWidth};
    }
    case Convention::DeltoidHalfway:
        return aroundPoint(policy.value(DeltoidMuscleLength) * scale * policy.value(DeltoidHalfwayShare));
    default: return {};  // of other sites: locate() lets none through
    }
}

DeltoidBand heldBand(DeltoidBand band, const Policy& policy, double armLength, double axillaDepth)
{
    using enum PolicyKey;
    const double margin = policy.value(ArmpitMargin) * armLength / policy.value(DeltoidReferenceArm);
    const double strike = policy.value(JointShare) * armLength;
    // A band that would lie wholly above the strike line or below the armpit keeps two margins'
    // height on the near side of it.
    const double floor = std::max(axillaDepth, strike + margin);
    const double least = std::min(2.0 * margin, floor - strike);
    band.bottom = std::clamp(band.bottom, strike + least, floor);
    band.top = std::clamp(band.top, strike, band.bottom - least);
    band.ideal = std::clamp(std::min(band.ideal, axillaDepth - margin), band.top, band.bottom);
    if (band.ideal - band.top < margin / 2.0)
        band.ideal = std::min(band.top + margin / 2.0, (band.top + band.bottom) / 2.0);
    return band;
}

Target deltoidTarget(Convention convention, const Policy& policy, const Arm& arm)
{
    const DeltoidBand band =
        heldBand(deltoidBand(convention, policy, arm.armLength), policy, arm.armLength, arm.axillaDepth);
    const Point idealSkin{0.0, -band.ideal};
    Polygon region = deltoid_detail::shownRegion(band, arm);
    Steps construction = deltoid_detail::Builder(convention, policy, arm, band).built(region);
    Target target{Site::Deltoid,
                  std::move(region),
                  arm.showSkin(idealSkin),
                  Polygon::rectangle(-band.halfWidth, band.halfWidth, -band.bottom, -band.top),
                  idealSkin,
                  arm.section};
    target.convention = convention;
    target.armLength = Cm{arm.armLength};
    target.axillaDepth = Cm{arm.axillaDepth};
    target.scale = arm.armLength / policy.value(PolicyKey::DeltoidReferenceArm);
    target.hazards = deltoidHazards(policy, arm);
    target.construction = std::move(construction);
    return target;
}

}  // namespace fb
