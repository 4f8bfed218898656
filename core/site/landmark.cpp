#include "core/site/landmark.h"

#include <algorithm>
#include <array>
#include <string>

namespace fb {

namespace landmark_detail {

// The name of a landmark's point among those of a target; empty: it has none of its own there.
std::string_view pointName(Landmark landmark)
{
    switch (landmark) {
    case Landmark::Acromion: return "acromion";
    case Landmark::DeltoidTuberosity: return "deltoid_tuberosity";
    case Landmark::GreaterTrochanter: return "greater_trochanter";
    case Landmark::AnteriorSuperiorIliacSpine: return "asis";
    case Landmark::IliacTubercle: return "iliac_tubercle";
    case Landmark::LateralFemoralCondyle: return "lateral_femoral_epicondyle";
    case Landmark::Patella: return "patella";
    case Landmark::Clavicle: return "clavicle_medial";
    case Landmark::ScapularSpine: return "scapula_spine";
    case Landmark::ElbowEpicondyle: return "lateral_epicondyle";
    case Landmark::PosteriorSuperiorIliacSpine: return "psis";
    case Landmark::IschialTuberosity: return "ischial_tuberosity";
    default: return {};
    }
}

std::optional<StepCode> lineOf(Landmark landmark)
{
    switch (landmark) {
    case Landmark::ArmpitLevel: return StepCode::ArmpitLevel;
    case Landmark::IliacCrest: return StepCode::FeelCrest;
    default: return std::nullopt;
    }
}

Point nearestOn(Point a, Point b, Point p)
{
    const Point way = b - a;
    const double square = dot(way, way);
    return square > 0.0 ? lerp(a, b, std::clamp(dot(p - a, way) / square, 0.0, 1.0)) : a;
}

}  // namespace landmark_detail

using namespace landmark_detail;

std::span<const Landmark> askedLandmarks(Convention convention)
{
    using enum Landmark;
    static constexpr std::array kTriangle{Acromion, ArmpitLevel};
    static constexpr std::array kHalved{Acromion, DeltoidTuberosity};
    static constexpr std::array kThigh{GreaterTrochanter, LateralFemoralCondyle, Patella};
    static constexpr std::array kHand{GreaterTrochanter, AnteriorSuperiorIliacSpine, IliacCrest};
    static constexpr std::array kMedians{GreaterTrochanter, AnteriorSuperiorIliacSpine, IliacTubercle};
    switch (convention) {
    case Convention::DeltoidHalfway: return kHalved;
    case Convention::VastusThirds:
    case Convention::VastusHandbreadths: return kThigh;
    case Convention::VentroglutealHand: return kHand;
    case Convention::VentroglutealMedians: return kMedians;
    default: return kTriangle;
    }
}

std::vector<Landmark> offeredLandmarks(Site site)
{
    using enum Landmark;
    switch (site) {
    case Site::Deltoid:
        return {Acromion,    Clavicle,          CoracoidProcess, ScapularSpine,
                HumeralHead, DeltoidTuberosity, ElbowEpicondyle, ArmpitLevel};
    case Site::VastusLateralis:
        return {GreaterTrochanter,     LesserTrochanter,     AnteriorSuperiorIliacSpine, Patella,
                LateralFemoralCondyle, MedialFemoralCondyle, TibialTuberosity,           FibularHead};
    case Site::Ventrogluteal:
        return {GreaterTrochanter,
                LesserTrochanter,
                AnteriorSuperiorIliacSpine,
                AnteriorInferiorIliacSpine,
                PosteriorSuperiorIliacSpine,
                IliacCrest,
                IliacTubercle,
                IschialTuberosity,
                PubicSymphysis};
    }
    return {};
}

Point LandmarkPlace::nearest(Point viewer) const
{
    Point best = points.front();
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Point p = nearestOn(points[i], points[i + 1], viewer);
        if (distance(p, viewer) < distance(best, viewer))
            best = p;
    }
    return best;
}

std::optional<LandmarkPlace> placeOf(const Target& target, Landmark landmark)
{
    if (const auto code = lineOf(landmark)) {
        const auto step = std::ranges::find(target.construction, *code, &Step::code);
        if (step == target.construction.end())
            return std::nullopt;
        return LandmarkPlace{FigureKind::Line, step->points};
    }
    const auto point = target.landmarks.find(std::string(pointName(landmark)));
    if (point == target.landmarks.end())
        return std::nullopt;
    return LandmarkPlace{FigureKind::Point, {point->second}};
}

std::string_view wordOf(Landmark landmark)
{
    switch (landmark) {
    case Landmark::Acromion: return "acromion";
    case Landmark::ArmpitLevel: return "armpit_level";
    case Landmark::DeltoidTuberosity: return "deltoid_tuberosity";
    case Landmark::GreaterTrochanter: return "greater_trochanter";
    case Landmark::AnteriorSuperiorIliacSpine: return "anterior_superior_iliac_spine";
    case Landmark::IliacCrest: return "iliac_crest";
    case Landmark::IliacTubercle: return "iliac_tubercle";
    case Landmark::LateralFemoralCondyle: return "lateral_femoral_condyle";
    case Landmark::Patella: return "patella";
    case Landmark::Clavicle: return "clavicle";
    case Landmark::CoracoidProcess: return "coracoid_process";
    case Landmark::ScapularSpine: return "scapular_spine";
    case Landmark::HumeralHead: return "humeral_head";
    case Landmark::ElbowEpicondyle: return "elbow_epicondyle";
    case Landmark::LesserTrochanter: return "lesser_trochanter";
    case Landmark::AnteriorInferiorIliacSpine: return "anterior_inferior_iliac_spine";
    case Landmark::PosteriorSuperiorIliacSpine: return "posterior_superior_iliac_spine";
    case Landmark::IschialTuberosity: return "ischial_tuberosity";
    case Landmark::PubicSymphysis: return "pubic_symphysis";
    case Landmark::MedialFemoralCondyle: return "medial_femoral_condyle";
    case Landmark::TibialTuberosity: return "tibial_tuberosity";
    case Landmark::FibularHead: return "fibular_head";
    }
    return {};
}

}  // namespace fb
