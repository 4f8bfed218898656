// The few words that stand on the plate itself during a demonstration: see lecture_words.h.
#include <QCoreApplication>

#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

// Translators find these beside the other words of a demonstration, in one context.
struct LecturePlate {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureWords)
};

namespace lecture_plate_detail {

QString shoulderWord(StepCode code)
{
    switch (code) {
    case StepCode::FeelAcromion: return landmarkName("acromion");
    case StepCode::FeelTuberosity: return landmarkName("deltoid_tuberosity");
    case StepCode::ArmpitLevel: return landmarkName("axilla");
    //: Parts of a figure laid on the body, as short labels on the plate.
    case StepCode::AcromionBase: return LecturePlate::tr("Base");
    case StepCode::Apex: return LecturePlate::tr("Apex");
    case StepCode::Triangle: return LecturePlate::tr("Triangle");
    case StepCode::MidLateralLine: return LecturePlate::tr("Mid-lateral line");
    //: A distance that has been measured from the acromion downward.
    case StepCode::MeasureDown: return LecturePlate::tr("Measured down");
    case StepCode::LayFingers: return LecturePlate::tr("Fingerbreadths");
    default: return {};
    }
}

QString thighWord(StepCode code)
{
    switch (code) {
    case StepCode::FeelCondyle: return landmarkName("lateral_femoral_epicondyle");
    //: The line down the outer side of the thigh.
    case StepCode::ThighLine: return LecturePlate::tr("Outer line");
    case StepCode::FrontLine: return LecturePlate::tr("Front line");
    case StepCode::UpperThird: return LecturePlate::tr("End of the upper third");
    case StepCode::LowerThird: return LecturePlate::tr("Start of the lower third");
    case StepCode::HandBelowHip:
    case StepCode::HandAboveKnee: return LecturePlate::tr("One handbreadth");
    default: return {};
    }
}

QString hipWord(StepCode code)
{
    switch (code) {
    case StepCode::FeelTrochanter: return landmarkName("greater_trochanter");
    case StepCode::FeelSpine: return landmarkName("asis");
    case StepCode::FeelCrest: return landmarkName("iliac_crest");
    case StepCode::FeelTubercle: return landmarkName("iliac_tubercle");
    case StepCode::FeelBackSpine: return landmarkName("psis");
    //: Parts of the hand that is laid on the hip.
    case StepCode::LayPalm: return LecturePlate::tr("Palm");
    case StepCode::IndexOnSpine: return LecturePlate::tr("Index finger");
    case StepCode::MiddleAlongCrest: return LecturePlate::tr("Middle finger");
    case StepCode::FingerTriangle:
    case StepCode::HipTriangle: return LecturePlate::tr("Triangle");
    //: From a corner of a triangle to the middle of the side facing it.
    case StepCode::Median: return LecturePlate::tr("Median");
    case StepCode::BackLine: return LecturePlate::tr("Line to the trochanter");
    default: return {};
    }
}

}  // namespace lecture_plate_detail

QString plateWord(StepCode code)
{
    using namespace lecture_plate_detail;
    for (const QString& words : {shoulderWord(code), thighWord(code), hipWord(code)})
        if (!words.isEmpty())
            return words;
    return stepName(code);
}

QString fingerbreadths(int count)
{
    //: So many fingers of whoever gives the injection, laid side by side.
    return LecturePlate::tr("%n fingerbreadth(s)", nullptr, count);
}

QString plateWord(HazardCode hazard)
{
    switch (hazard) {
    //: What a needle would meet in an area of the plate, as a short label.
    case HazardCode::Acromion:
    case HazardCode::Trochanter:
    case HazardCode::Patella:
    case HazardCode::CrestBone: return LecturePlate::tr("Bone");
    case HazardCode::JointAndBursa: return LecturePlate::tr("Joint and bursa");
    case HazardCode::BelowArmpit:
    case HazardCode::RadialNerveBehind: return LecturePlate::tr("Radial nerve");
    case HazardCode::BursaEdge: return LecturePlate::tr("Edge of the bursa");
    case HazardCode::AxillaryNerveFront:
    case HazardCode::AxillaryNerveBack: return LecturePlate::tr("Axillary nerve");
    //: A joint beside the site.
    case HazardCode::HipEnd: return LecturePlate::tr("Hip joint");
    case HazardCode::KneeEnd: return LecturePlate::tr("Knee joint");
    case HazardCode::FemoralVessels: return LecturePlate::tr("Femoral vessels");
    case HazardCode::SciaticBehindThigh:
    case HazardCode::SciaticNerve: return LecturePlate::tr("Sciatic nerve");
    case HazardCode::RectusFemoris: return hazardName(hazard);
    case HazardCode::RoundTrochanter: return LecturePlate::tr("Tendon and bone");
    //: The wall of the belly.
    case HazardCode::AboveCrest: return LecturePlate::tr("Belly");
    //: No gluteal muscle lies here.
    case HazardCode::FrontOfHipLine: return LecturePlate::tr("Off the muscle");
    case HazardCode::Dorsogluteal: return LecturePlate::tr("Superior gluteal nerve and artery");
    case HazardCode::SuperiorGluteal: return LecturePlate::tr("Small nerve branches");
    }
    return {};
}

}  // namespace fb
