// The sentence of reason at the ventrogluteal site: one for each place and direction; %1 is
// always the distance. "High" is toward the head, "low" toward the foot.
#include <QCoreApplication>

#include "app/words/reason_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace hip_reason_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ReasonWords)
};

// Clearances under this read as "here", not as a distance.
constexpr double kHere = 0.05;

// No place here is called free of nerves: branches of the superior gluteal nerve cross the region.
QString insideSentence(const Reason& reason)
{
    const QString cm = cmText(reason.clearance.value());
    const bool here = reason.clearance.value() < kHere;
    if (reason.note == HazardCode::SuperiorGluteal)
        return here ? Words::tr("On target: over the gluteus medius and minimus. Small branches of the "
                                "superior gluteal nerve run in this muscle; the large nerves and vessels "
                                "lie farther back.")
                    : Words::tr("On target: over the gluteus medius and minimus. Small branches of the "
                                "superior gluteal nerve run %1 from your mark.")
                          .arg(cm);
    if (reason.note == HazardCode::FrontOfHipLine)
        return here ? Words::tr("On target, right at the line from spine to trochanter: a little farther "
                                "back is over thicker muscle.")
                    : Words::tr("On target. The line from spine to trochanter, where the gluteal muscles "
                                "end in front, lies %1 from your mark.")
                          .arg(cm);
    return Words::tr("On target: over the gluteus medius and minimus, away from bone; small branches of the "
                     "superior gluteal nerve are never far.");
}

QString acceptableSentence(const Reason& reason)
{
    if (reason.direction == Direction::Forward && reason.tissue == Tissue::FrontOfHip)
        return Words::tr("%1 too far forward, within the margin your lab accepts; the gluteal muscles end "
                         "here.")
            .arg(cmText(reason.amount.value()));
    return withinMargin(reason.direction, reason.amount);
}

// Where the way off the region adds nothing to what lies there.
QString placeSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("On the greater trochanter, where a needle would strike bone.");
    case Tissue::CrestBone: return Words::tr("On the iliac crest, where a needle would strike bone.");
    case Tissue::TrochanterTendons:
        return Words::tr("Too near the trochanter: tendon and bone lie here instead of thick muscle.");
    case Tissue::AbdominalWall:
        return Words::tr("Above the iliac crest, over the abdominal wall: no gluteal muscle lies here, and a "
                         "needle can reach the belly.");
    case Tissue::FrontOfHip:
        return Words::tr("In front of the line from spine to trochanter, off the gluteal muscles and toward "
                         "the groin.");
    case Tissue::SciaticNerve:
        return Words::tr("In the territory of the sciatic nerve: a needle can injure it and leave the leg "
                         "weak or numb.");
    case Tissue::SuperiorGluteal:
        return Words::tr("In the dorsogluteal territory: a needle can injure the superior gluteal nerve and "
                         "artery.");
    case Tissue::ThickMuscle: return Words::tr("At the border of the target region.");
    case Tissue::ThinMuscle:
    case Tissue::HipMuscle: return Words::tr("Still over muscle, but beside the target region.");
    case Tissue::ThighBelowHip:
        return Words::tr("On the thigh: the ventrogluteal site lies higher, between the trochanter and the "
                         "iliac crest.");
    case Tissue::Leg:
        return Words::tr("On the lower leg: the ventrogluteal site lies on the side of the hip, between the "
                         "trochanter and the iliac crest.");
    default:
        return Words::tr("Away from the hip: the ventrogluteal site lies on its side, between the trochanter "
                         "and the iliac crest.");
    }
}

QString highSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::CrestBone:
        return Words::tr("%1 too high: on the iliac crest, where a needle would strike bone.");
    case Tissue::AbdominalWall:
        return Words::tr("%1 too high: above the iliac crest, over the abdominal wall, where no gluteal "
                         "muscle lies and a needle can reach the belly.");
    case Tissue::SuperiorGluteal:
        return Words::tr("%1 too high and behind: in the dorsogluteal territory, where a needle can injure "
                         "the superior gluteal nerve and artery.");
    case Tissue::FrontOfHip:
        return Words::tr("%1 too high and in front: off the gluteal muscles, where the dose would miss "
                         "them.");
    default:
        return Words::tr("%1 too high: still over muscle, but toward the iliac crest, where it thins over "
                         "bone.");
    }
}

QString lowSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("%1 too low: on the greater trochanter, where a needle would strike bone.");
    case Tissue::TrochanterTendons:
        return Words::tr("%1 too low: close to the trochanter, where tendon and bone lie instead of thick "
                         "muscle.");
    case Tissue::SciaticNerve:
        return Words::tr("%1 too low: in the territory of the sciatic nerve, which a needle can injure; the "
                         "leg can stay weak or numb.");
    case Tissue::SuperiorGluteal:
        return Words::tr("%1 too low and behind: in the dorsogluteal territory, where a needle can injure "
                         "the superior gluteal nerve and artery.");
    case Tissue::FrontOfHip:
        return Words::tr("%1 too low and in front: off the gluteal muscles and toward the groin.");
    default:
        return Words::tr("%1 too low: still over muscle, but nearer the trochanter than the target region.");
    }
}

QString forwardSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("%1 too far forward: on the greater trochanter, where a needle would strike bone.");
    case Tissue::TrochanterTendons:
        return Words::tr("%1 too far forward and close to the trochanter, where tendon and bone lie instead "
                         "of thick muscle.");
    case Tissue::CrestBone:
        return Words::tr("%1 too far forward: on the edge of the hip bone by the iliac spine, where a needle "
                         "would strike bone.");
    case Tissue::AbdominalWall:
        return Words::tr("%1 too far forward: past the iliac crest, over the abdominal wall, where a needle "
                         "can reach the belly.");
    case Tissue::FrontOfHip:
        return Words::tr("%1 too far forward: in front of the line from spine to trochanter, off the gluteal "
                         "muscles and toward the groin.");
    default: return Words::tr("%1 too far forward: still over muscle, but in front of the target region.");
    }
}

QString backSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("%1 too far back: on the greater trochanter, where a needle would strike bone.");
    case Tissue::TrochanterTendons:
        return Words::tr("%1 too far back and close to the trochanter, where tendon and bone lie instead of "
                         "thick muscle.");
    case Tissue::CrestBone:
        return Words::tr("%1 too far back: on the iliac crest, where a needle would strike bone.");
    case Tissue::AbdominalWall:
        return Words::tr("%1 too far back: above the iliac crest, where no gluteal muscle lies.");
    case Tissue::SciaticNerve:
        return Words::tr("%1 too far back: in the territory of the sciatic nerve, which a needle can injure; "
                         "the leg can stay weak or numb.");
    case Tissue::SuperiorGluteal:
        return Words::tr("%1 too far back: in the dorsogluteal territory, where a needle can injure the "
                         "superior gluteal nerve and artery.");
    default: return Words::tr("%1 too far back: still over muscle, but behind the target region.");
    }
}

bool isElsewhere(Tissue tissue)
{
    switch (tissue) {
    case Tissue::ThickMuscle:
    case Tissue::ThinMuscle:
    case Tissue::TrochanterBone:
    case Tissue::TrochanterTendons:
    case Tissue::CrestBone:
    case Tissue::AbdominalWall:
    case Tissue::FrontOfHip:
    case Tissue::SciaticNerve:
    case Tissue::SuperiorGluteal:
    case Tissue::HipMuscle: return false;
    default: return true;
    }
}

}  // namespace hip_reason_detail

QString hipReason(Verdict verdict, const Reason& reason)
{
    using namespace hip_reason_detail;
    static constexpr SiteSentences kSentences{isElsewhere,        placeSentence, insideSentence,
                                              acceptableSentence, highSentence,  lowSentence,
                                              forwardSentence,    backSentence};
    return fittingSentence(kSentences, verdict, reason);
}

}  // namespace fb
