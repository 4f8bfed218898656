// What the hand does in each step that the program shows: see build_words.h.
#include <QCoreApplication>

#include "app/words/build_words.h"

namespace fb {

namespace watch_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::WatchWords)
};

QString shoulderCaption(const Target& target, StepCode code)
{
    switch (code) {
    case StepCode::FeelAcromion:
        return Words::tr("The fingertip feels for the lateral edge of the acromion: hard, and soft right "
                         "below it.");
    case StepCode::AcromionBase:
        return Words::tr("The base of the triangle runs along the acromion, from its front corner to its "
                         "back corner.");
    case StepCode::ArmpitLevel:
        return Words::tr("A level line is drawn across the arm at the height of the armpit.");
    case StepCode::Apex:
        return Words::tr("The apex lies halfway between front and back of the arm, at armpit level.");
    case StepCode::Triangle: return Words::tr("Base and apex make a triangle over the deltoid.");
    case StepCode::MidLateralLine:
        return target.convention == Convention::DeltoidHalfway
                   ? Words::tr("A line is drawn from the acromion to the deltoid tuberosity.")
                   : Words::tr("The mid-lateral line runs from the acromion down the outer side of the arm.");
    case StepCode::MeasureDown:
        if (target.convention == Convention::DeltoidHalfway)
            return Words::tr(
                "The line is halved: its middle lies as far from the acromion as from the deltoid "
                "tuberosity.");
        return Words::tr("Along this line the distance is measured down from the acromion.");
    case StepCode::LayFingers:
        return Words::tr("The fingers are laid across the arm below the acromion, one under the other.");
    case StepCode::FeelTuberosity:
        return Words::tr("The fingertip follows the deltoid down to the deltoid tuberosity, where it ends on "
                         "the bone.");
    default: return {};
    }
}

QString thighCaption(StepCode code)
{
    switch (code) {
    case StepCode::FeelTrochanter:
        return Words::tr("The fingertip feels for the greater trochanter: hard and broad, on the outer side "
                         "of the hip.");
    case StepCode::FeelCondyle:
        return Words::tr("The fingertip feels for the lateral femoral condyle: hard, on the outer side of "
                         "the knee.");
    case StepCode::ThighLine:
        return Words::tr("The outer line runs down the outer side of the thigh, from the greater trochanter "
                         "to the condyle.");
    case StepCode::FrontLine:
        return Words::tr("The front line runs down the thigh, from the iliac spine to the middle of the "
                         "patella.");
    case StepCode::UpperThird: return Words::tr("A line across ends the upper third of the thigh.");
    case StepCode::LowerThird: return Words::tr("A second line across begins the lower third.");
    case StepCode::HandBelowHip:
        return Words::tr("One handbreadth is set off below the greater trochanter: tendon and joint lie "
                         "there.");
    case StepCode::HandAboveKnee:
        return Words::tr("Another handbreadth is set off above the knee, for the same reason.");
    default: return {};
    }
}

// Which hand it is, on which hip.
QString palmCaption(const Target& target)
{
    const Side hand = target.hand ? target.hand->hand : handFor(target.side);
    return hand == Side::Left ? Words::tr("The left hand is laid on the right hip, its palm over the greater "
                                          "trochanter.")
                              : Words::tr("The right hand is laid on the left hip, its palm over the greater "
                                          "trochanter.");
}

QString hipCaption(const Target& target, StepCode code)
{
    switch (code) {
    case StepCode::FeelSpine:
        return Words::tr("The fingertip feels for the anterior superior iliac spine: a bony point at the "
                         "front end of the crest.");
    case StepCode::FeelCrest:
        return Words::tr("From there the fingertip follows the iliac crest back: a hard edge that runs on.");
    case StepCode::FeelTubercle:
        return Words::tr("On the outer lip of the crest the fingertip feels for the iliac tubercle.");
    case StepCode::LayPalm: return palmCaption(target);
    case StepCode::IndexOnSpine:
        return target.hand && target.hand->pin == Pin::Palm
                   ? Words::tr("The index finger points to the anterior superior iliac spine, which this "
                               "hand does not reach.")
                   : Words::tr("The hand turns until the index fingertip rests on the anterior superior "
                               "iliac spine.");
    case StepCode::MiddleAlongCrest: return Words::tr("The middle finger opens back toward the iliac crest.");
    case StepCode::FingerTriangle: return Words::tr("A triangle opens between the two fingers.");
    case StepCode::HipTriangle:
        return Words::tr("Greater trochanter, iliac tubercle and anterior superior iliac spine make a "
                         "triangle.");
    case StepCode::Median:
        return Words::tr("A line is drawn from a corner to the middle of the side facing it.");
    case StepCode::FeelBackSpine:
        return Words::tr("The fingertip feels for the posterior superior iliac spine, under the dimple of "
                         "the back.");
    case StepCode::BackLine:
        return Words::tr("A line is drawn from the posterior superior iliac spine to the greater "
                         "trochanter.");
    default: return {};
    }
}

}  // namespace watch_words_detail

QString watchCaption(const Target& target, const Step& step)
{
    using namespace watch_words_detail;
    if (step.code == StepCode::Region)
        return Words::tr("This is the target region: a needle here meets thick muscle.");
    if (step.code == StepCode::IdealPoint)
        return Words::tr("Last of all the site is marked, at the ideal point.");
    for (const QString& words :
         {shoulderCaption(target, step.code), thighCaption(step.code), hipCaption(target, step.code)})
        if (!words.isEmpty())
            return words;
    return {};
}

}  // namespace fb
