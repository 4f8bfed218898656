// The sentence of reason at the deltoid site: one for each place and direction; %1 is always the
// distance.
#include <QCoreApplication>

#include "app/words/reason_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace deltoid_reason_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ReasonWords)
};

// Clearances under this read as "here", not as a distance.
constexpr double kHere = 0.05;

QString onTarget()
{
    return Words::tr("On target: over the thick part of the deltoid, clear of bone, bursa and nerves.");
}

QString onIt(HazardCode note)
{
    switch (note) {
    case HazardCode::Acromion:
        return Words::tr("On target, but the acromion's edge is right here: feel for bone first.");
    case HazardCode::JointAndBursa:
        return Words::tr("On target, at the lower limit of the shoulder joint and bursa.");
    case HazardCode::BelowArmpit:
        return Words::tr("On target, at armpit level: the radial nerve lies below.");
    case HazardCode::RadialNerveBehind:
        return Words::tr("On target, close to where the radial nerve winds behind the "
                         "bone.");
    case HazardCode::BursaEdge:
        return Words::tr("On target. The bursa can reach down to this height: a little "
                         "lower is safer.");
    case HazardCode::AxillaryNerveFront:
        return Words::tr("On target. At this height the axillary nerve crosses the "
                         "front of the muscle.");
    case HazardCode::AxillaryNerveBack:
        return Words::tr("On target. At this height the axillary nerve enters the "
                         "muscle from the back.");
    default: return onTarget();
    }
}

QString nearIt(HazardCode note, const QString& cm)
{
    switch (note) {
    case HazardCode::Acromion: return Words::tr("On target. The acromion lies %1 above your mark.").arg(cm);
    case HazardCode::JointAndBursa:
        return Words::tr("On target. Shoulder joint and bursa begin %1 above your mark.").arg(cm);
    case HazardCode::BelowArmpit:
        return Words::tr("On target. Armpit level lies %1 below your mark.").arg(cm);
    case HazardCode::RadialNerveBehind:
        return Words::tr("On target. The radial nerve lies %1 away, behind the bone.").arg(cm);
    case HazardCode::BursaEdge:
        return Words::tr("On target. The lower edge of the bursa lies %1 above your mark.").arg(cm);
    case HazardCode::AxillaryNerveFront:
        return Words::tr("On target. The axillary nerve crosses the front of the muscle "
                         "%1 from your mark.")
            .arg(cm);
    case HazardCode::AxillaryNerveBack:
        return Words::tr("On target. The axillary nerve enters the back of the muscle %1 "
                         "from your mark.")
            .arg(cm);
    default: return onTarget();
    }
}

QString insideSentence(const Reason& reason)
{
    if (!reason.note)
        return onTarget();
    const double clearance = reason.clearance.value();
    return clearance < kHere ? onIt(*reason.note) : nearIt(*reason.note, cmText(clearance));
}

QString acceptableSentence(const Reason& reason)
{
    const QString cm = cmText(reason.amount.value());
    if (reason.tissue != Tissue::AxillaryNerve)
        return withinMargin(reason.direction, reason.amount);
    switch (reason.direction) {
    case Direction::None: return withinMargin(reason.direction, reason.amount);
    case Direction::High:
        return Words::tr("%1 too high, within the margin your lab accepts; the axillary nerve runs here.")
            .arg(cm);
    case Direction::Low:
        return Words::tr("%1 too low, within the margin your lab accepts; the axillary nerve runs here.")
            .arg(cm);
    case Direction::Forward:
        return Words::tr("%1 too far forward, within the margin your lab accepts; the axillary nerve runs "
                         "here.")
            .arg(cm);
    case Direction::Back:
        return Words::tr("%1 too far back, within the margin your lab accepts; the axillary nerve runs here.")
            .arg(cm);
    }
    return {};
}

QString highSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::AcromionBone:
        return Words::tr("%1 too high: on the bone of the acromion, which a needle would strike.");
    case Tissue::SubacromialBursa:
        return Words::tr("%1 too high: over the subacromial bursa, where a needle can injure the "
                         "shoulder.");
    case Tissue::AxillaryNerve:
        return Words::tr("%1 too high: over the axillary nerve, which a needle can injure.");
    case Tissue::RadialNerve:
        return Words::tr("%1 too high: over the radial nerve, which a needle can injure.");
    case Tissue::ThickMuscle:
        return Words::tr("%1 too high: still over thick muscle, but outside the target region.");
    default: return Words::tr("%1 too high: the muscle is thin here, and bone or joint may be struck.");
    }
}

QString lowSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::AcromionBone: return Words::tr("%1 too low: on bone, which a needle would strike.");
    case Tissue::SubacromialBursa:
        return Words::tr("%1 too low: over the bursa, where a needle can injure the shoulder.");
    case Tissue::AxillaryNerve:
        return Words::tr("%1 too low: over the band where the axillary nerve crosses, which a needle "
                         "can injure.");
    case Tissue::RadialNerve:
        return Words::tr("%1 too low: below armpit level, where a needle can injure the radial nerve.");
    case Tissue::ThickMuscle: return Words::tr("%1 too low: still over muscle, but below the target region.");
    default: return Words::tr("%1 too low: the deltoid narrows here and the dose may miss it.");
    }
}

QString forwardSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::AcromionBone:
        return Words::tr("%1 too far forward: on the front of the acromion, which a needle would "
                         "strike.");
    case Tissue::SubacromialBursa:
        return Words::tr("%1 too far forward: over the bursa, where a needle can injure the "
                         "shoulder.");
    case Tissue::AxillaryNerve:
        return Words::tr("%1 too far forward: over the axillary nerve as it crosses the front of the "
                         "muscle.");
    case Tissue::RadialNerve:
        return Words::tr("%1 too far forward: over the radial nerve, which a needle can injure.");
    case Tissue::ThickMuscle:
        return Words::tr("%1 too far forward: still over muscle, but in front of the target region.");
    default:
        return Words::tr(
            "%1 too far forward: toward the thin front edge of the deltoid, where the dose may miss it.");
    }
}

QString backSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::AcromionBone:
        return Words::tr("%1 too far back: on the back of the acromion, which a needle would strike.");
    case Tissue::SubacromialBursa:
        return Words::tr("%1 too far back: over the bursa, where a needle can injure the shoulder.");
    case Tissue::AxillaryNerve:
        return Words::tr("%1 too far back: over the axillary nerve where it enters the muscle from "
                         "behind.");
    case Tissue::RadialNerve:
        return Words::tr("%1 too far back: over the radial nerve behind the bone, which a needle can "
                         "injure.");
    case Tissue::ThickMuscle:
        return Words::tr("%1 too far back: still over muscle, but behind the target region.");
    default:
        return Words::tr(
            "%1 too far back: toward the thin back edge of the deltoid, where the dose may miss it.");
    }
}

QString placeSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::AcromionBone: return Words::tr("On the bone of the acromion, which a needle would strike.");
    case Tissue::SubacromialBursa:
        return Words::tr("Over the subacromial bursa, where a needle can injure the shoulder.");
    case Tissue::AxillaryNerve: return Words::tr("Over the axillary nerve, which a needle can injure.");
    case Tissue::RadialNerve: return Words::tr("Over the radial nerve, which a needle can injure.");
    case Tissue::ThickMuscle: return Words::tr("At the border of the target region.");
    case Tissue::ThinMuscle: return Words::tr("The muscle is thin here, and the dose may miss it.");
    case Tissue::Trunk:
        return Words::tr("On the trunk: the deltoid site lies on the upper arm, below the acromion.");
    case Tissue::Forearm:
        return Words::tr("On the forearm: the deltoid site lies on the upper arm, below the acromion.");
    default: return Words::tr("Away from the shoulder: the deltoid site lies on the upper arm.");
    }
}

bool isElsewhere(Tissue tissue) { return tissue == Tissue::Trunk || tissue == Tissue::Forearm; }

}  // namespace deltoid_reason_detail

QString deltoidReason(Verdict verdict, const Reason& reason)
{
    using namespace deltoid_reason_detail;
    static constexpr SiteSentences kSentences{isElsewhere,        placeSentence, insideSentence,
                                              acceptableSentence, highSentence,  lowSentence,
                                              forwardSentence,    backSentence};
    return fittingSentence(kSentences, verdict, reason);
}

}  // namespace fb
