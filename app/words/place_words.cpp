// Names of landmarks, hazards and steps, as they stand on a plate: see site_words.h.
#include <QCoreApplication>
#include <array>
#include <utility>

#include "app/words/site_words.h"

namespace fb {

// Translators find these beside the other words of the sites, in one context.
struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(fb::SiteWords)
};

QString hazardName(HazardCode code)
{
    switch (code) {
    case HazardCode::Acromion: return PlaceWords::tr("Acromion (bone)");
    case HazardCode::JointAndBursa: return PlaceWords::tr("Shoulder joint and bursa");
    //: Axilla level: the height of the armpit.
    case HazardCode::BelowArmpit: return PlaceWords::tr("Below armpit level: radial nerve");
    case HazardCode::RadialNerveBehind: return PlaceWords::tr("Radial nerve, back of the arm");
    case HazardCode::BursaEdge: return PlaceWords::tr("Lower edge of the bursa");
    case HazardCode::AxillaryNerveFront: return PlaceWords::tr("Axillary nerve, front");
    case HazardCode::AxillaryNerveBack: return PlaceWords::tr("Axillary nerve, back");
    case HazardCode::Trochanter: return PlaceWords::tr("Greater trochanter (bone)");
    case HazardCode::Patella: return PlaceWords::tr("Patella (bone)");
    case HazardCode::HipEnd: return PlaceWords::tr("Near the hip: tendon and joint");
    case HazardCode::KneeEnd: return PlaceWords::tr("Near the knee: tendon and joint");
    case HazardCode::FemoralVessels: return PlaceWords::tr("Femoral vessels and nerve");
    case HazardCode::SciaticBehindThigh: return PlaceWords::tr("Hamstrings and sciatic nerve");
    //: A muscle down the front of the thigh.
    case HazardCode::RectusFemoris: return PlaceWords::tr("Rectus femoris");
    case HazardCode::CrestBone: return PlaceWords::tr("Iliac crest (bone)");
    case HazardCode::RoundTrochanter: return PlaceWords::tr("Too near the trochanter: tendon and bone");
    case HazardCode::AboveCrest: return PlaceWords::tr("Abdominal wall");
    //: In front of the line from the anterior superior iliac spine to the trochanter.
    case HazardCode::FrontOfHipLine: return PlaceWords::tr("In front of the gluteal muscles");
    case HazardCode::SciaticNerve: return PlaceWords::tr("Sciatic nerve");
    //: The old site in the buttock, with what a needle meets there.
    case HazardCode::Dorsogluteal: return PlaceWords::tr("Dorsogluteal: superior gluteal nerve and artery");
    case HazardCode::SuperiorGluteal: return PlaceWords::tr("Branches of the superior gluteal nerve");
    }
    return {};
}

namespace place_words_detail {

QString shoulderStep(StepCode code)
{
    switch (code) {
    case StepCode::FeelAcromion: return PlaceWords::tr("Feel the acromion's lateral edge");
    case StepCode::AcromionBase: return PlaceWords::tr("Base: the acromion from front to back");
    case StepCode::ArmpitLevel: return PlaceWords::tr("Armpit level");
    case StepCode::Apex: return PlaceWords::tr("Apex: mid-lateral at armpit level");
    case StepCode::Triangle: return PlaceWords::tr("Triangle");
    case StepCode::MidLateralLine: return PlaceWords::tr("Mid-lateral line");
    case StepCode::MeasureDown: return PlaceWords::tr("Measure down from the acromion");
    case StepCode::LayFingers: return PlaceWords::tr("Lay the fingers below the acromion");
    case StepCode::FeelTuberosity: return PlaceWords::tr("Feel where the deltoid ends");
    default: return {};
    }
}

QString thighStep(StepCode code)
{
    switch (code) {
    case StepCode::FeelTrochanter: return PlaceWords::tr("Feel the greater trochanter");
    //: The bony knob on the outer side of the knee.
    case StepCode::FeelCondyle: return PlaceWords::tr("Feel the lateral femoral condyle");
    case StepCode::ThighLine: return PlaceWords::tr("Outer line: trochanter to condyle");
    case StepCode::FrontLine: return PlaceWords::tr("Front line: iliac spine to the middle of the patella");
    case StepCode::UpperThird: return PlaceWords::tr("Upper limit of the middle third");
    case StepCode::LowerThird: return PlaceWords::tr("Lower limit of the middle third");
    case StepCode::HandBelowHip: return PlaceWords::tr("One handbreadth below the trochanter");
    case StepCode::HandAboveKnee: return PlaceWords::tr("One handbreadth above the knee");
    default: return {};
    }
}

QString hipStep(StepCode code)
{
    switch (code) {
    case StepCode::FeelSpine: return PlaceWords::tr("Feel the anterior superior iliac spine");
    case StepCode::FeelCrest: return PlaceWords::tr("Feel along the iliac crest");
    case StepCode::FeelTubercle: return PlaceWords::tr("Feel the iliac tubercle");
    case StepCode::LayPalm: return PlaceWords::tr("Lay the palm on the trochanter");
    case StepCode::IndexOnSpine: return PlaceWords::tr("Index finger to the anterior superior iliac spine");
    case StepCode::MiddleAlongCrest: return PlaceWords::tr("Middle finger opened back along the crest");
    case StepCode::FingerTriangle: return PlaceWords::tr("Triangle between the two fingers");
    case StepCode::HipTriangle: return PlaceWords::tr("Triangle of trochanter, tubercle and spine");
    //: From a corner of a triangle to the middle of the side facing it.
    case StepCode::Median: return PlaceWords::tr("Median of the triangle");
    case StepCode::FeelBackSpine: return PlaceWords::tr("Feel the posterior superior iliac spine");
    case StepCode::BackLine: return PlaceWords::tr("Line from posterior spine to trochanter");
    case StepCode::Region: return PlaceWords::tr("Target region");
    case StepCode::IdealPoint: return PlaceWords::tr("Ideal point");
    default: return {};
    }
}

}  // namespace place_words_detail

QString stepName(StepCode code)
{
    using namespace place_words_detail;
    for (const auto site : {&shoulderStep, &thighStep, &hipStep}) {
        QString words = site(code);
        if (!words.isEmpty())
            return words;
    }
    return {};
}

QString landmarkName(std::string_view key)
{
    //: Bony landmarks, as short labels on the plate.
    const std::array<std::pair<std::string_view, QString>, 19> names{{
        {"acromion", PlaceWords::tr("Acromion, lateral edge")},
        {"acromion_front", PlaceWords::tr("Acromion, front corner")},
        {"acromion_back", PlaceWords::tr("Acromion, back corner")},
        {"axilla", PlaceWords::tr("Armpit level")},
        {"axilla_front", PlaceWords::tr("Armpit, front fold")},
        {"axilla_back", PlaceWords::tr("Armpit, back fold")},
        {"deltoid_tuberosity", PlaceWords::tr("Deltoid tuberosity")},
        {"lateral_epicondyle", PlaceWords::tr("Lateral epicondyle")},
        {"clavicle_medial", PlaceWords::tr("Clavicle, inner end")},
        {"scapula_spine", PlaceWords::tr("Spine of the scapula")},
        {"greater_trochanter", PlaceWords::tr("Greater trochanter")},
        {"asis", PlaceWords::tr("Anterior superior iliac spine")},
        {"iliac_tubercle", PlaceWords::tr("Iliac tubercle")},
        {"iliac_crest", PlaceWords::tr("Iliac crest")},
        {"psis", PlaceWords::tr("Posterior superior iliac spine")},
        {"ischial_tuberosity", PlaceWords::tr("Ischial tuberosity")},
        {"lateral_femoral_epicondyle", PlaceWords::tr("Lateral femoral condyle")},
        {"patella", PlaceWords::tr("Patella")},
        {"coccyx", PlaceWords::tr("Coccyx")},
    }};
    for (const auto& [name, words] : names)
        if (name == key)
            return words;
    return {};
}

}  // namespace fb
