#include "app/words/slip_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace slip_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::SlipWords)
};

QString degreesText(Degrees degrees) { return QLocale().toString(std::round(degrees.value()), 'f', 0); }

QString percentText(double share)
{
    constexpr double kPercent = 100.0;
    return QLocale().toString(std::round(share * kPercent), 'f', 0);
}

// In all of these %1 is an offset in words: "3.1 cm too low".
QString placeSentence(Slip slip, Site site)
{
    switch (slip) {
    //: In these %1 is an offset: "3.1 cm too low", "0.8 cm too far back".
    case Slip::FingersOff: return Words::tr("Upper edge of your fingers: %1.");
    case Slip::BaseOff: return Words::tr("Base of the triangle: %1.");
    case Slip::ApexOff: return Words::tr("Apex of the triangle: %1.");
    case Slip::TopOff:
        return site == Site::VastusLateralis ? Words::tr("Hip end of the thigh: %1.")
                                             : Words::tr("Upper end of the line: %1.");
    case Slip::BottomOff:
        return site == Site::VastusLateralis ? Words::tr("Knee end of the thigh: %1.")
                                             : Words::tr("Lower end of the line: %1.");
    case Slip::FrontLineOff: return Words::tr("Front line: %1.");
    case Slip::OuterLineOff: return Words::tr("Outer line: %1.");
    case Slip::PalmOff: return Words::tr("Palm: %1.");
    case Slip::IndexOff: return Words::tr("Index fingertip: %1, not on the anterior superior iliac spine.");
    case Slip::IndexOnCrest:
        return Words::tr(
            "Index fingertip: %1, on the iliac crest instead of the anterior superior iliac "
            "spine, so that the fingers open toward the dorsogluteal territory with its nerve and vessels.");
    case Slip::CornerTrochanterOff: return Words::tr("Corner at the greater trochanter: %1.");
    case Slip::CornerTubercleOff: return Words::tr("Corner at the iliac tubercle: %1.");
    case Slip::CornerSpineOff: return Words::tr("Corner at the anterior superior iliac spine: %1.");
    default: return {};
    }
}

QString countSentence(const BuildStepGrade& step)
{
    const QString end = cmText(step.amount.value());
    if (step.direction == Direction::Low)
        return Words::tr("Your fingers end %1 below the acromion, lower than the site: lay one fewer.")
            .arg(end);
    return Words::tr("Your fingers end %1 below the acromion, higher than the site: lay one more.").arg(end);
}

QString unevenSentence(const BuildStepGrade& step, const Target& target)
{
    const QString percent = percentText(step.share);
    const bool high = step.direction == Direction::High;
    switch (step.slip) {
    case Slip::HalfUneven:
        return high ? Words::tr("Middle of the line: too high by %1 percent of the line.").arg(percent)
                    : Words::tr("Middle of the line: too low by %1 percent of the line.").arg(percent);
    case Slip::ThirdsUneven:
        if (target.convention == Convention::VastusHandbreadths)
            return high
                       ? Words::tr(
                             "Handbreadths set off wrong: a line across is too near the hip by %1 percent of "
                             "the thigh.")
                             .arg(percent)
                       : Words::tr("Handbreadths set off wrong: a line across is too near the knee by %1 "
                                   "percent of "
                                   "the thigh.")
                             .arg(percent);
        return high
                   ? Words::tr("Thirds uneven: a line across is too near the hip by %1 percent of the thigh.")
                         .arg(percent)
                   : Words::tr(
                         "Thirds uneven: a line across is too near the knee by %1 percent of the thigh.")
                         .arg(percent);
    default:
        return Words::tr("A median misses the middle of its side by %1 percent of the side.").arg(percent);
    }
}

// Which hand belongs on which hip.
QString wrongHandSentence(Side hip)
{
    return hip == Side::Right
               ? Words::tr("The right hand on a right hip: it opens in front of the iliac spine or turns its "
                           "thumb to the buttock, off the gluteus medius. The left hand belongs here.")
               : Words::tr("The left hand on a left hip: it opens in front of the iliac spine or turns its "
                           "thumb to the buttock, off the gluteus medius. The right hand belongs here.");
}

bool isAny(Ways ways, Direction way) { return ways.first == way || ways.second == way; }

// A place that is off in both ways; the length is that of the way straight across.
QString aslantText(Site site, bool front, bool high)
{
    switch (site) {
    case Site::Deltoid:
        if (front)
            //: In all of these %1 is a length, straight to a place that is off in two ways at once.
            return high ? Words::tr("%1 too far forward and too high")
                        : Words::tr("%1 too far forward and too low");
        return high ? Words::tr("%1 too far back and too high") : Words::tr("%1 too far back and too low");
    case Site::Ventrogluteal:
        if (front)
            return high ? Words::tr("%1 too far forward and toward the head")
                        : Words::tr("%1 too far forward and toward the foot");
        return high ? Words::tr("%1 too far back and toward the head")
                    : Words::tr("%1 too far back and toward the foot");
    case Site::VastusLateralis:
        if (front)
            return high ? Words::tr("%1 too far forward and too near the hip")
                        : Words::tr("%1 too far forward and too near the knee");
        return high ? Words::tr("%1 too far back and too near the hip")
                    : Words::tr("%1 too far back and too near the knee");
    }
    return {};
}

}  // namespace slip_words_detail

QString buildStepName(BuildStep step)
{
    using namespace slip_words_detail;
    switch (step) {
    //: Steps of the construction, as a list with a verdict beside each.
    case BuildStep::FingersLaid: return Words::tr("Fingers at the acromion");
    case BuildStep::FingersLevel: return Words::tr("Fingers square to the arm");
    case BuildStep::FingerCount: return Words::tr("Number of fingers");
    case BuildStep::Base: return Words::tr("Base of the triangle");
    case BuildStep::Apex: return Words::tr("Apex of the triangle");
    case BuildStep::LineEnds: return Words::tr("Ends of the line");
    case BuildStep::LineHalved: return Words::tr("Middle of the line");
    case BuildStep::ThighEnds: return Words::tr("Ends of the thigh");
    case BuildStep::Thirds: return Words::tr("Lines across the thigh");
    case BuildStep::FrontLine: return Words::tr("Front line");
    case BuildStep::OuterLine: return Words::tr("Outer line");
    //: A field of the thigh between the lines laid over it.
    case BuildStep::Cell: return Words::tr("Choice of the field");
    case BuildStep::WhichHand: return Words::tr("Choice of the hand");
    case BuildStep::Palm: return Words::tr("Palm on the greater trochanter");
    case BuildStep::IndexFinger: return Words::tr("Index finger to the iliac spine");
    case BuildStep::MiddleFinger: return Words::tr("Middle finger toward the crest");
    case BuildStep::Corners: return Words::tr("Corners of the triangle");
    case BuildStep::Medians: return Words::tr("Medians of the triangle");
    }
    return {};
}

QString awayText(Site site, Ways ways, Cm amount)
{
    using namespace slip_words_detail;
    const QString cm = cmText(amount.value());
    if (ways.second != Direction::None)
        return aslantText(site, isAny(ways, Direction::Forward), isAny(ways, Direction::High)).arg(cm);
    // On a patient who lies down, high and low would be read off the picture.
    if (site != Site::Deltoid && ways.first == Direction::High)
        //: %1 is a length.
        return site == Site::Ventrogluteal ? Words::tr("%1 too far toward the head").arg(cm)
                                           : Words::tr("%1 too near the hip").arg(cm);
    if (site != Site::Deltoid && ways.first == Direction::Low)
        return site == Site::Ventrogluteal ? Words::tr("%1 too far toward the foot").arg(cm)
                                           : Words::tr("%1 too near the knee").arg(cm);
    switch (ways.first) {
    case Direction::High: return alongText(-amount);
    case Direction::Low: return alongText(amount);
    case Direction::Forward: return acrossText(Site::Ventrogluteal, amount);
    case Direction::Back: return acrossText(Site::Ventrogluteal, -amount);
    case Direction::None: break;
    }
    //: A distance without a direction.
    return Words::tr("%1 away").arg(cm);
}

QString slipSentence(const BuildStepGrade& step, const Target& target)
{
    using namespace slip_words_detail;
    switch (step.slip) {
    case Slip::None:
        return step.carried
                   //: %1 is a step that is right in itself, taken along by an earlier one; %2 is an offset.
                   ? Words::tr("%1: right in itself, but carried along, %2.")
                         .arg(buildStepName(step.step),
                              awayText(target.site, {step.direction, step.second}, step.amount))
                   : Words::tr("Right.");
    case Slip::FingersTurned:
        return Words::tr("Your fingers are turned by %1 degrees: they measure aslant instead of straight "
                         "down the arm.")
            .arg(degreesText(step.degrees));
    case Slip::FingerCount: return countSentence(step);
    case Slip::HalfUneven:
    case Slip::ThirdsUneven:
    case Slip::MedianUneven: return unevenSentence(step, target);
    case Slip::WrongCell:
        return Words::tr("Wrong field: the site lies in the middle one, between front line and outer line.");
    case Slip::WrongHand: return wrongHandSentence(target.side);
    case Slip::FingersClosed:
        return Words::tr("Your fingers are open by only %1 degrees: there is no room between them, and the "
                         "needle can prick your own finger.")
            .arg(degreesText(step.degrees));
    default:
        return placeSentence(step.slip, target.site)
            .arg(awayText(target.site, {step.direction, step.second}, step.amount));
    }
}

QString effectSentence(const BuildStepGrade& step, const Target& target)
{
    using namespace slip_words_detail;
    if (step.slip == Slip::None)
        return {};
    if (!step.effect)
        return Words::tr("What is built on it is off with it.");
    const QString moved = cmText(step.effect->moved.value());
    const QString reason = reasonSentence(target.site, step.effect->grade);
    switch (step.effect->grade.verdict) {
    case Verdict::OnTarget:
        return Words::tr("That alone would have moved the needle %1, still inside the target region.")
            .arg(moved);
    case Verdict::Acceptable:
        return Words::tr("That alone would have moved the needle %1, just outside the target region but "
                         "within the margin your lab accepts.")
            .arg(moved);
    case Verdict::OffTarget:
        //: %2 is a whole sentence that says where the needle goes and what harm it does there.
        return Words::tr("That alone would have moved the needle %1, off the target region. %2")
            .arg(moved, reason);
    case Verdict::Unsafe:
        //: %2 is a whole sentence that says where the needle goes and what harm it does there.
        return Words::tr("That alone would have moved the needle %1, to an unsafe place. %2")
            .arg(moved, reason);
    }
    return {};
}

}  // namespace fb
