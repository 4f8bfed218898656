// What is said of a place before its bone is named, of what lies around a site, and of places where a needle
// must not go: see lecture_words.h.
#include <QCoreApplication>

#include "app/words/lecture_words.h"

namespace fb {

// Translators find these beside the other words of a demonstration, in one context.
struct LecturePlaceWords {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureWords)
};

namespace lecture_places_detail {

QString wrongOnTheArm(HazardCode hazard)
{
    switch (hazard) {
    case HazardCode::Acromion:
        return LecturePlaceWords::tr("Not on the acromion. A needle would strike bone.");
    case HazardCode::JointAndBursa:
        return LecturePlaceWords::tr("Not this high. A needle can reach the bursa and the joint and injure "
                                     "the shoulder.");
    case HazardCode::BelowArmpit:
        return LecturePlaceWords::tr("Not below armpit level. A needle can injure the radial nerve.");
    case HazardCode::RadialNerveBehind:
        return LecturePlaceWords::tr("Not on the back of the arm. The radial nerve lies against the bone "
                                     "here.");
    case HazardCode::BursaEdge:
        return LecturePlaceWords::tr("The bursa can reach down to this height. A little lower is safer.");
    case HazardCode::AxillaryNerveFront:
        return LecturePlaceWords::tr("At this height the axillary nerve crosses the front of the muscle.");
    case HazardCode::AxillaryNerveBack:
        return LecturePlaceWords::tr("At this height the axillary nerve enters the muscle from the back.");
    default: return {};
    }
}

QString wrongOnTheThigh(HazardCode hazard)
{
    switch (hazard) {
    case HazardCode::Patella: return LecturePlaceWords::tr("Not on the patella. A needle would strike bone.");
    case HazardCode::HipEnd:
        return LecturePlaceWords::tr("Not near the hip. Tendon and joint lie here instead of thick muscle.");
    case HazardCode::KneeEnd:
        return LecturePlaceWords::tr("Not near the knee. Tendon and joint lie here instead of thick muscle.");
    case HazardCode::FemoralVessels:
        return LecturePlaceWords::tr("Not on the inner side of the thigh. A needle can injure the femoral "
                                     "vessels and nerve.");
    case HazardCode::SciaticBehindThigh:
        return LecturePlaceWords::tr("Not behind the thigh. A needle can injure the sciatic nerve under the "
                                     "hamstrings.");
    case HazardCode::RectusFemoris:
        return LecturePlaceWords::tr("Not on the rectus femoris. Vessels and a nerve run under it, and it "
                                     "hurts more there.");
    default: return {};
    }
}

QString wrongOnTheHip(HazardCode hazard)
{
    switch (hazard) {
    case HazardCode::Trochanter:
        return LecturePlaceWords::tr("Not on the greater trochanter. A needle would strike bone.");
    case HazardCode::CrestBone:
        return LecturePlaceWords::tr("Not on the iliac crest. A needle would strike bone.");
    case HazardCode::RoundTrochanter:
        return LecturePlaceWords::tr("Not this near the trochanter. Tendon and bone lie here instead of "
                                     "thick muscle.");
    case HazardCode::AboveCrest:
        return LecturePlaceWords::tr("Not above the iliac crest. No gluteal muscle lies here, and a needle "
                                     "can reach the belly.");
    case HazardCode::FrontOfHipLine:
        return LecturePlaceWords::tr("In front of the line from spine to trochanter the gluteal muscles "
                                     "end. A dose would miss them.");
    case HazardCode::SciaticNerve:
        return LecturePlaceWords::tr("Not in the lower buttock. A needle can injure the sciatic nerve and "
                                     "leave the leg weak or numb.");
    case HazardCode::Dorsogluteal:
        return LecturePlaceWords::tr("Not in the dorsogluteal territory. A needle can injure the superior "
                                     "gluteal nerve and artery.");
    case HazardCode::SuperiorGluteal:
        return LecturePlaceWords::tr("Small branches of the superior gluteal nerve run here. No place over "
                                     "this muscle is free of them.");
    default: return {};
    }
}

}  // namespace lecture_places_detail

QString pressCaption(StepCode code)
{
    switch (code) {
    //: What a fingertip looks for; the bone is named only in the next step.
    case StepCode::FeelAcromion:
        return LecturePlaceWords::tr("Press along the outer edge of the shoulder. Where does bone end and "
                                     "soft flesh begin?");
    case StepCode::FeelTuberosity:
        return LecturePlaceWords::tr("Follow the muscle down the outer side of the arm. Where does it end?");
    case StepCode::FeelTrochanter:
        return LecturePlaceWords::tr("Press on the outer side of the hip, where it is widest. A hard knob "
                                     "stops the finger.");
    case StepCode::FeelCondyle:
        return LecturePlaceWords::tr("Press on the outer side of the knee. A hard knob stops the "
                                     "finger.");
    case StepCode::FeelSpine:
        return LecturePlaceWords::tr("Press at the front of the hip, beside the belly. A hard point stops "
                                     "the finger.");
    case StepCode::FeelCrest:
        return LecturePlaceWords::tr("Slide the fingertip back from there. A hard edge runs on under it.");
    case StepCode::FeelTubercle:
        return LecturePlaceWords::tr("Follow the edge back a little way. On its outer lip a small knob rises "
                                     "under the finger.");
    case StepCode::FeelBackSpine:
        return LecturePlaceWords::tr("Press at the dimple beside the lower back. A hard point lies under "
                                     "it.");
    default: return {};
    }
}

QString hazardsCaption(Site site)
{
    switch (site) {
    case Site::Deltoid:
        return LecturePlaceWords::tr("Around the site: joint and bursa above, the radial nerve below and "
                                     "behind, the axillary nerve across.");
    case Site::VastusLateralis:
        return LecturePlaceWords::tr("Around the site: a joint at either end, the femoral vessels to the "
                                     "inside, the sciatic nerve behind.");
    case Site::Ventrogluteal:
        return LecturePlaceWords::tr("Around the site: tendon and bone toward the feet, the belly toward "
                                     "the head, the large nerves behind.");
    }
    return {};
}

QString wrongPlaceCaption(HazardCode hazard)
{
    using namespace lecture_places_detail;
    for (const QString& words : {wrongOnTheArm(hazard), wrongOnTheThigh(hazard), wrongOnTheHip(hazard)})
        if (!words.isEmpty())
            return words;
    return {};
}

}  // namespace fb
