// The sentence of reason at the vastus lateralis site: one for each place and direction; %1 is
// always the distance. "High" is toward the hip, "low" toward the knee.
#include <QCoreApplication>

#include "app/words/reason_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace thigh_reason_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ReasonWords)
};

// Clearances under this read as "here", not as a distance.
constexpr double kHere = 0.05;

QString insideSentence(const Reason& reason)
{
    if (reason.note != HazardCode::RectusFemoris)
        return Words::tr("On target: over the thick middle of the vastus lateralis, away from hip and knee "
                         "and from the large vessels and nerves.");
    if (reason.clearance.value() < kHere)
        return Words::tr("On target, at the border of the rectus femoris: vessels and a nerve run under it, "
                         "so a little farther back is safer.");
    return Words::tr("On target. The rectus femoris, with vessels and a nerve under it, begins %1 in front "
                     "of your mark.")
        .arg(cmText(reason.clearance.value()));
}

QString acceptableSentence(const Reason& reason)
{
    const QString cm = cmText(reason.amount.value());
    if (reason.direction == Direction::Forward && reason.tissue == Tissue::RectusFemoris)
        return Words::tr("%1 too far forward, within the margin your lab accepts; the rectus femoris, with "
                         "vessels and a nerve under it, lies here.")
            .arg(cm);
    if (reason.direction == Direction::Back && reason.tissue == Tissue::Hamstrings)
        return Words::tr("%1 too far back, within the margin your lab accepts; the hamstrings begin here.")
            .arg(cm);
    return withinMargin(reason.direction, reason.amount);
}

// Where the way off the region adds nothing to what lies there.
QString placeSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("On the greater trochanter, where a needle would strike bone.");
    case Tissue::PatellaBone: return Words::tr("On the patella, where a needle would strike bone.");
    case Tissue::HipRegion:
        return Words::tr("Too near the hip: tendon and joint lie here instead of thick muscle.");
    case Tissue::KneeRegion:
        return Words::tr("Too near the knee: tendon and joint lie here instead of thick muscle.");
    case Tissue::FemoralVessels:
        return Words::tr("On the inner side of the thigh, over the femoral vessels and nerve, which a needle "
                         "can injure.");
    case Tissue::SciaticNerve:
        return Words::tr("Behind the thigh, over the hamstrings and the sciatic nerve, which a needle can "
                         "injure.");
    case Tissue::RectusFemoris:
        return Words::tr("Over the rectus femoris: vessels and a nerve run under it, and an injection hurts "
                         "more there.");
    case Tissue::Hamstrings: return Words::tr("Over the hamstrings, toward the sciatic nerve.");
    case Tissue::ThickMuscle: return Words::tr("At the border of the target region.");
    case Tissue::ThinMuscle: return Words::tr("The muscle is thinner here, and the dose may miss it.");
    case Tissue::Pelvis:
        return Words::tr("On the hip: the vastus lateralis site lies lower, on the outer side of the thigh.");
    case Tissue::Leg:
        return Words::tr("On the knee or lower leg: the vastus lateralis site lies higher, on the outer side "
                         "of the thigh.");
    default:
        return Words::tr("Away from the thigh: the vastus lateralis site lies on its outer side, halfway "
                         "down.");
    }
}

QString highSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("%1 too high: on the greater trochanter, where a needle would strike bone.");
    case Tissue::HipRegion:
        return Words::tr("%1 too high: near the hip, where tendon and joint lie instead of thick muscle.");
    case Tissue::FemoralVessels:
        return Words::tr("%1 too high and on the inner side: over the femoral vessels and nerve, which a "
                         "needle can injure.");
    case Tissue::SciaticNerve:
        return Words::tr("%1 too high and behind the thigh: over the sciatic nerve, which a needle can "
                         "injure.");
    case Tissue::RectusFemoris:
        return Words::tr("%1 too high and on the front: over the rectus femoris, with vessels and a nerve "
                         "under it.");
    default:
        return Words::tr("%1 too high: still over muscle, but above the target region, where it is thinner.");
    }
}

QString lowSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::PatellaBone:
        return Words::tr("%1 too low: on the patella, where a needle would strike bone.");
    case Tissue::KneeRegion:
        return Words::tr("%1 too low: near the knee, where tendon and joint lie instead of thick muscle.");
    case Tissue::FemoralVessels:
        return Words::tr("%1 too low and on the inner side: over the femoral vessels and nerve, which a "
                         "needle can injure.");
    case Tissue::SciaticNerve:
        return Words::tr("%1 too low and behind the thigh: over the sciatic nerve, which a needle can "
                         "injure.");
    case Tissue::RectusFemoris:
        return Words::tr("%1 too low and on the front: over the rectus femoris, with vessels and a nerve "
                         "under it.");
    default:
        return Words::tr("%1 too low: still over muscle, but below the target region, where it thins into "
                         "tendon.");
    }
}

QString forwardSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::PatellaBone:
        return Words::tr("%1 too far forward: on the patella, where a needle would strike bone.");
    case Tissue::HipRegion:
        return Words::tr("%1 too far forward and near the hip, where tendon and joint lie instead of thick "
                         "muscle.");
    case Tissue::KneeRegion:
        return Words::tr("%1 too far forward and near the knee, where tendon and joint lie instead of thick "
                         "muscle.");
    case Tissue::FemoralVessels:
        return Words::tr("%1 too far forward: on the inner side of the thigh, over the femoral vessels and "
                         "nerve, which a needle can injure.");
    case Tissue::RectusFemoris:
        return Words::tr("%1 too far forward: over the rectus femoris, with vessels and a nerve under it; an "
                         "injection hurts more there.");
    default: return Words::tr("%1 too far forward: still over muscle, but in front of the target region.");
    }
}

QString backSentence(Tissue tissue)
{
    switch (tissue) {
    case Tissue::TrochanterBone:
        return Words::tr("%1 too far back: on the greater trochanter, where a needle would strike bone.");
    case Tissue::HipRegion:
        return Words::tr("%1 too far back and near the hip, where tendon and joint lie instead of thick "
                         "muscle.");
    case Tissue::KneeRegion:
        return Words::tr("%1 too far back and near the knee, where tendon and joint lie instead of thick "
                         "muscle.");
    case Tissue::SciaticNerve:
        return Words::tr("%1 too far back: behind the thigh, toward the sciatic nerve, which a needle can "
                         "injure.");
    case Tissue::Hamstrings:
        return Words::tr("%1 too far back: over the hamstrings, toward the sciatic nerve.");
    default: return Words::tr("%1 too far back: still over muscle, but behind the target region.");
    }
}

bool isElsewhere(Tissue tissue)
{
    switch (tissue) {
    case Tissue::ThickMuscle:
    case Tissue::ThinMuscle:
    case Tissue::RectusFemoris:
    case Tissue::FemoralVessels:
    case Tissue::SciaticNerve:
    case Tissue::HipRegion:
    case Tissue::KneeRegion:
    case Tissue::PatellaBone:
    case Tissue::TrochanterBone:
    case Tissue::Hamstrings: return false;
    default: return true;
    }
}

}  // namespace thigh_reason_detail

QString thighReason(Verdict verdict, const Reason& reason)
{
    using namespace thigh_reason_detail;
    static constexpr SiteSentences kSentences{isElsewhere,        placeSentence, insideSentence,
                                              acceptableSentence, highSentence,  lowSentence,
                                              forwardSentence,    backSentence};
    return fittingSentence(kSentences, verdict, reason);
}

}  // namespace fb
