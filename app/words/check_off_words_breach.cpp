// Orders that were broken, each in one sentence; a hard one with its harm: see check_off_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <iterator>

#include "app/words/check_off_words.h"

namespace fb {

// Translators find these beside the other words of a check-off, in one context.
struct CheckOffBreachWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CheckOffWords)
};

namespace check_off_breach_detail {

using enum ProcedureStep;

// What was still wanting when the needle went in, and may cost the patient dear.
QString unsafeNeedle(ProcedureStep first)
{
    switch (first) {
    case Assess:
        return CheckOffBreachWords::tr("Patient not assessed before the needle went in: an injection that "
                                       "may not be safe for this patient.");
    case CheckDrug:
        return CheckOffBreachWords::tr("Drug not checked before the needle went in: wrong drug, wrong dose "
                                       "or out of date.");
    case Identify:
        return CheckOffBreachWords::tr("Patient not identified before the needle went in: wrong patient.");
    case Allergies:
        return CheckOffBreachWords::tr("Allergies not asked about before the needle went in: an allergic "
                                       "reaction that could have been foreseen.");
    case BedsideCheck:
        return CheckOffBreachWords::tr("Label not checked at the bedside before the needle went in: the "
                                       "last chance to notice a wrong drug or dose.");
    case HandHygiene:
        return CheckOffBreachWords::tr("Hands not cleaned before the needle went in: infection carried by "
                                       "the hands.");
    case DrawUp:
        return CheckOffBreachWords::tr("Dose not drawn up before the needle went in: a puncture that gives "
                                       "nothing.");
    case Landmarks:
        return CheckOffBreachWords::tr("Landmarks not felt before the needle went in: bone, nerve or vessel "
                                       "may be hit.");
    case CleanSkin:
        return CheckOffBreachWords::tr("Skin not cleaned before the needle went in: infection carried in "
                                       "from the skin.");
    case ShiftSkin:
        return CheckOffBreachWords::tr("Skin not drawn aside before the needle went in: the drug can leak "
                                       "back along the needle's track.");
    case ChangeNeedle:
        return CheckOffBreachWords::tr("Filter needle not changed before the needle went in: what the "
                                       "filter held back is injected.");
    default: return {};
    }
}

// Hard orders between two other steps.
QString unsafeOrder(ProcedureStep first, ProcedureStep then)
{
    if (then == Insert)
        return unsafeNeedle(first);
    if (first == SwabStopper && then == DrawUp)
        return CheckOffBreachWords::tr("Stopper not wiped before drawing up: germs carried into the dose.");
    if (first == SelectSite && then == Landmarks)
        return CheckOffBreachWords::tr("Site not chosen before its landmarks were felt: injured skin or a "
                                       "site ruled out may be used.");
    if (first == DrawUp && then == ChangeNeedle)
        return CheckOffBreachWords::tr("Needle changed before drawing up through the filter: what the "
                                       "filter should hold back is injected.");
    if (first == Insert && then == Inject)
        return CheckOffBreachWords::tr("Plunger pushed before the needle was in: a dose that did not reach "
                                       "the muscle.");
    if (first == Inject && then == Withdraw)
        return CheckOffBreachWords::tr("Needle withdrawn before injecting: a dose that was not given.");
    if (first == Withdraw && then == ReleaseSkin)
        return CheckOffBreachWords::tr("Skin let go before the needle was out: torn tissue, and the drug can "
                                       "leak back along the track.");
    if (first == Inject && then == Document)
        return CheckOffBreachWords::tr("Documented before giving: a record of something that was not "
                                       "given.");
    if (first == Insert && then == Recap)
        return CheckOffBreachWords::tr("Used needle recapped: a needlestick, and infection carried by "
                                       "blood.");
    if (then == Sharps)
        return CheckOffBreachWords::tr("Used needle not put into the sharps container: a needlestick for "
                                       "whoever comes next.");
    return {};
}

QString untidyPreparing(ProcedureStep first, ProcedureStep then)
{
    if (first == HandHygiene && then == DrawUp)
        return CheckOffBreachWords::tr("Hands not cleaned before drawing up.");
    if (first == SwabStopper && then == StopperDry)
        return CheckOffBreachWords::tr("Stopper left to dry without having been wiped first.");
    if (first == StopperDry && then == DrawUp)
        return CheckOffBreachWords::tr("Drawn up before the stopper had dried.");
    if (first == DrawUp && then == ChangeNeedle)
        return CheckOffBreachWords::tr("Needle changed before drawing up, not after.");
    if (first == DrawUp && then == PreparedLabel)
        return CheckOffBreachWords::tr("Second label check made before anything was drawn up.");
    if (first == PreparedLabel)
        return CheckOffBreachWords::tr("Label not checked a second time once the dose was drawn up.");
    if (first == ChangeNeedle && then == Insert)
        return CheckOffBreachWords::tr("Needle not changed between stopper and skin.");
    if (first == GlovesOn && then == Insert)
        return CheckOffBreachWords::tr("Gloves not on when the needle went in.");
    if (first == Expose && then == Landmarks)
        return CheckOffBreachWords::tr("Landmarks felt before the site was bared and relaxed.");
    if (first == Landmarks && then == CleanSkin)
        return CheckOffBreachWords::tr("Skin cleaned before the landmarks were felt, so that it was touched "
                                       "again.");
    if (first == CleanSkin && then == SkinDry)
        return CheckOffBreachWords::tr("Skin left to dry without having been cleaned first.");
    if (first == SkinDry)
        return CheckOffBreachWords::tr("Cap taken off before the skin had dried.");
    if (first == CapOff && then == Insert)
        return CheckOffBreachWords::tr("Patient not told, and cap not off, before the needle went in.");
    return {};
}

QString untidyGiving(ProcedureStep first, ProcedureStep then)
{
    if (first == Insert && then == Aspirate)
        return CheckOffBreachWords::tr("Aspirated before the needle was in.");
    if (first == Aspirate && then == Inject)
        return CheckOffBreachWords::tr("Injected without having aspirated, as the protocol asks.");
    if (first == Inject && then == Wait)
        return CheckOffBreachWords::tr("Waited before injecting, not after.");
    if (first == Wait && then == Withdraw)
        return CheckOffBreachWords::tr("Needle withdrawn without waiting after the injection.");
    if (first == Withdraw && then == Pressure)
        return CheckOffBreachWords::tr("Site pressed on before the needle was out.");
    if (first == Withdraw && then == SafetyDevice)
        return CheckOffBreachWords::tr("Safety device activated before the needle was out.");
    if (first == SafetyDevice && then == Sharps)
        return CheckOffBreachWords::tr("Needle put into the sharps container without its safety device "
                                       "activated.");
    if (first == Sharps && then == GlovesOff)
        return CheckOffBreachWords::tr("Gloves taken off before the needle was in the sharps container.");
    if (first == GlovesOff && then == HandHygieneAfter)
        return CheckOffBreachWords::tr("Hands cleaned before the gloves were off, not after.");
    if (first == Inject && then == Evaluate)
        return CheckOffBreachWords::tr("Response evaluated before the injection was given.");
    return {};
}

// %1: how long it was; the other number is what was asked for, as a plural.
QString tooShort(const Breach& breach)
{
    const QString was = QLocale().toString(breach.was, 'f', 0);
    const int asked = static_cast<int>(breach.seconds + 0.5);
    if (breach.first == Inject)
        //: %1 is the time that was kept, %n the time asked for.
        return CheckOffBreachWords::tr("Needle kept in for %1 s after injecting, not for %n second(s).",
                                       nullptr, asked)
            .arg(was);
    if (breach.first == SwabStopper)
        return CheckOffBreachWords::tr("Stopper left to dry for %1 s, not for %n second(s).", nullptr, asked)
            .arg(was);
    if (breach.first == CleanSkin)
        return CheckOffBreachWords::tr("Skin left to dry for %1 s, not for %n second(s).", nullptr, asked)
            .arg(was);
    //: %1 and %2 are steps, %3 the time between them.
    return CheckOffBreachWords::tr("Between “%1” and “%2” lay %3 s, not %n second(s).", nullptr, asked)
        .arg(stepName(breach.first), stepName(breach.then), was);
}

bool wasSeen(ProcedureStep step, const std::vector<Observation>& seen)
{
    const auto of = std::ranges::find(seen, step, &Observation::step);
    return of != seen.end() && of->seen != Seen::NotDone;
}

}  // namespace check_off_breach_detail

std::vector<Breach> ordersBroken(const std::vector<Breach>& breaches, const std::vector<Observation>& seen)
{
    using namespace check_off_breach_detail;
    std::vector<Breach> orders;
    std::ranges::copy_if(breaches, std::back_inserter(orders), [&](const Breach& breach) {
        // A recap is never one of the steps that are listed.
        return breach.kind == ConstraintKind::Never ||
               (wasSeen(breach.first, seen) && wasSeen(breach.then, seen));
    });
    return orders;
}

QString breachSentence(const Breach& breach)
{
    using namespace check_off_breach_detail;
    if (breach.kind == ConstraintKind::AtLeast)
        return tooShort(breach);
    QString words;
    if (breach.severity == Severity::Hard)
        words = unsafeOrder(breach.first, breach.then);
    if (words.isEmpty())
        words = untidyPreparing(breach.first, breach.then);
    if (words.isEmpty())
        words = untidyGiving(breach.first, breach.then);
    return words.isEmpty() ? CheckOffBreachWords::tr("“%1” was not seen before “%2”.")
                                 .arg(stepName(breach.first), stepName(breach.then))
                           : words;
}

}  // namespace fb
