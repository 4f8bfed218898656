#include "app/words/by_hand_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/words/grade_words.h"
#include "app/words/landmark_words.h"
#include "app/words/site_words.h"
#include "app/words/slip_words.h"

namespace fb {

namespace by_hand_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ByHandWords)
};

// What rounds to 0.0 cm on the screen.
constexpr double kOnIt = 0.05;

QString landmarkCause(Landmark landmark, FlagVerdict verdict)
{
    const QString name = landmarkName(landmark);
    switch (verdict) {
    //: What went wrong first, under that heading; %1 is the name of a landmark, as in a list.
    case FlagVerdict::Missing: return Words::tr("No flag was planted on “%1”.").arg(name);
    case FlagVerdict::Misnamed: return Words::tr("“%1” was felt, but it was given another name.").arg(name);
    case FlagVerdict::Off:
        return Words::tr("The flag “%1” does not stand on its place; what is built on it is off with "
                         "it.")
            .arg(name);
    case FlagVerdict::Near: return Words::tr("The flag “%1” stands a little beside its place.").arg(name);
    case FlagVerdict::Found: break;
    }
    return Words::tr("The flag “%1” stands on its place.").arg(name);
}

QString hipCause(Slip slip)
{
    switch (slip) {
    case Slip::WrongHand: return Words::tr("It was the wrong hand for this hip.");
    case Slip::PalmOff: return Words::tr("The palm did not lie over the greater trochanter.");
    case Slip::IndexOff:
        return Words::tr("The index fingertip did not rest on the anterior superior iliac spine.");
    case Slip::IndexOnCrest:
        return Words::tr("The index fingertip rested on the iliac crest instead of the anterior "
                         "superior iliac spine.");
    case Slip::FingersClosed: return Words::tr("The fingers were hardly opened.");
    case Slip::CornerTrochanterOff:
        return Words::tr("A corner of the triangle did not lie on the greater trochanter.");
    case Slip::CornerTubercleOff:
        return Words::tr("A corner of the triangle did not lie on the iliac tubercle.");
    case Slip::CornerSpineOff:
        return Words::tr("A corner of the triangle did not lie on the anterior superior iliac spine.");
    case Slip::MedianUneven: return Words::tr("A median missed the middle of its side.");
    default: return {};
    }
}

QString limbCause(Slip slip)
{
    switch (slip) {
    case Slip::FingersOff: return Words::tr("The fingers were not laid at the edge of the acromion.");
    case Slip::FingersTurned: return Words::tr("The fingers did not lie square to the arm.");
    case Slip::FingerCount: return Words::tr("The number of fingers did not suit this arm.");
    case Slip::BaseOff: return Words::tr("The base of the triangle did not lie on the acromion.");
    case Slip::ApexOff: return Words::tr("The apex of the triangle did not lie mid-lateral at armpit level.");
    //: The upper end of a line on the arm, or of the thigh.
    case Slip::TopOff: return Words::tr("The upper end was not set on its landmark.");
    case Slip::BottomOff: return Words::tr("The lower end was not set on its landmark.");
    case Slip::HalfUneven: return Words::tr("The line was not halved.");
    case Slip::ThirdsUneven: return Words::tr("The thigh was divided unevenly.");
    case Slip::FrontLineOff:
        return Words::tr("The front line did not run down the middle of the front of the thigh.");
    case Slip::OuterLineOff: return Words::tr("The outer line did not run down the outer side of the thigh.");
    case Slip::WrongCell: return Words::tr("The wrong field of the thigh was chosen.");
    default: return {};
    }
}

QString shareText(int right, int all)
{
    if (right == all)
        //: How many landmarks or steps were right: every one of so many.
        return Words::tr("all %1").arg(QLocale().toString(all));
    //: How many landmarks or steps were right: "3 of 4".
    return Words::tr("%1 of %2").arg(QLocale().toString(right), QLocale().toString(all));
}

}  // namespace by_hand_words_detail

QString flagVerdictName(FlagVerdict verdict)
{
    using namespace by_hand_words_detail;
    switch (verdict) {
    //: Of a landmark that was to be found.
    case FlagVerdict::Found: return Words::tr("Found");
    case FlagVerdict::Near: return Words::tr("Nearly found");
    case FlagVerdict::Off: return Words::tr("Not found");
    case FlagVerdict::Misnamed: return Words::tr("Wrong name");
    case FlagVerdict::Missing: return Words::tr("No flag");
    }
    return {};
}

QString flagSentence(const FlagGrade& flag, Site site)
{
    using namespace by_hand_words_detail;
    const QString name = landmarkName(flag.asked);
    const QString away = awayText(site, {flag.direction, flag.second}, flag.distance);
    switch (flag.verdict) {
    case FlagVerdict::Found:
        return flag.distance.value() < kOnIt
                   //: In these %1 is the name of a landmark.
                   ? Words::tr("%1: found, right on it.").arg(name)
                   : Words::tr("%1: found, %2 away.").arg(name, cmText(flag.distance.value()));
    case FlagVerdict::Near:
        //: %2 is an offset: "1.4 cm too high".
        return Words::tr("%1: nearly found, your flag is %2.").arg(name, away);
    case FlagVerdict::Off:
        return flag.really
                   //: %3 is the name of the landmark on which the flag stands.
                   ? Words::tr("%1: not found, your flag is %2. It stands on another landmark: %3.")
                         .arg(name, away, landmarkName(*flag.really))
                   : Words::tr("%1: not found, your flag is %2.").arg(name, away);
    case FlagVerdict::Misnamed:
        return Words::tr("The place is right; its name is “%1”, not “%2”.")
            .arg(name, flag.flag ? landmarkName(flag.flag->name) : QString());
    case FlagVerdict::Missing: return Words::tr("%1: you planted no flag on it.").arg(name);
    }
    return {};
}

QString partHeading(Cause::Part part)
{
    using namespace by_hand_words_detail;
    switch (part) {
    //: The three parts of a grade, each with its verdict beside it.
    case Cause::Part::Landmark: return Words::tr("Landmarks found");
    case Cause::Part::Build: return Words::tr("Built right");
    case Cause::Part::Mark: return Words::tr("Marked right");
    }
    return {};
}

bool isRight(const ByHandGrade& grade, Cause::Part part)
{
    switch (part) {
    case Cause::Part::Landmark: return grade.landmarksFound;
    case Cause::Part::Build: return grade.builtRight;
    case Cause::Part::Mark: return grade.markedRight;
    }
    return false;
}

QString partVerdict(const ByHandGrade& grade, const Grade& mark, Cause::Part part)
{
    using namespace by_hand_words_detail;
    const auto found = [](const FlagGrade& flag) {
        return flag.verdict == FlagVerdict::Found || flag.verdict == FlagVerdict::Near;
    };
    const auto right = [](const BuildStepGrade& step) { return step.slip == Slip::None; };
    switch (part) {
    case Cause::Part::Landmark:
        return shareText(static_cast<int>(std::ranges::count_if(grade.flags, found)),
                         static_cast<int>(grade.flags.size()));
    case Cause::Part::Build:
        return shareText(static_cast<int>(std::ranges::count_if(grade.steps, right)),
                         static_cast<int>(grade.steps.size()));
    case Cause::Part::Mark: return verdictName(mark.verdict);
    }
    return {};
}

QString causeSentence(const Cause& cause)
{
    using namespace by_hand_words_detail;
    if (cause.part == Cause::Part::Landmark)
        return landmarkCause(cause.landmark, cause.verdict);
    if (cause.part == Cause::Part::Mark)
        return Words::tr("The mark misses the site.");
    const QString limb = limbCause(cause.slip);
    return limb.isEmpty() ? hipCause(cause.slip) : limb;
}

QString firstCauseSentence(const ByHandGrade& grade)
{
    using namespace by_hand_words_detail;
    if (!grade.first)
        return Words::tr("Found, built and marked as it is taught.");
    if (grade.landmarksFound && grade.builtRight)
        return Words::tr("Landmarks and construction were right; only the mark misses the site they show.");
    return causeSentence(*grade.first);
}

QString luckySentence(const ByHandGrade& grade)
{
    using namespace by_hand_words_detail;
    return grade.luckyMark ? Words::tr("The point is right, but your hand would not have led you there.")
                           : QString();
}

QString notedOnlySentence(const Policy& policy)
{
    using namespace by_hand_words_detail;
    return policy.value(PolicyKey::BuildCounts) > 0.5
               ? QString()
               : Words::tr("Your lab notes the construction, but does not count it.");
}

}  // namespace fb
