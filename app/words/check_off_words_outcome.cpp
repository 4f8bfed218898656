// How a check-off ended and why, and where a student stands: see check_off_words.h.
#include <QCoreApplication>
#include <QLocale>

#include "app/words/check_off_words.h"

namespace fb {

// Translators find these beside the other words of a check-off, in one context.
struct CheckOffOutcomeWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CheckOffWords)
};

QString outcomeName(Outcome outcome)
{
    switch (outcome) {
    //: How a check-off ended, in a few words.
    case Outcome::VoidTechnical: return CheckOffOutcomeWords::tr("void, technical");
    case Outcome::NoShow: return CheckOffOutcomeWords::tr("did not come");
    case Outcome::StoppedSafety: return CheckOffOutcomeWords::tr("not passed: stopped for safety");
    //: A critical step, an unsafe order or an unsafe mark.
    case Outcome::FailCritical: return CheckOffOutcomeWords::tr("not passed: a critical point");
    case Outcome::FailTime: return CheckOffOutcomeWords::tr("not passed: time");
    case Outcome::FailScore: return CheckOffOutcomeWords::tr("not passed: score");
    case Outcome::Pass: return CheckOffOutcomeWords::tr("passed");
    }
    return {};
}

QString outcomeSentence(Outcome outcome)
{
    switch (outcome) {
    case Outcome::VoidTechnical:
        return CheckOffOutcomeWords::tr("This check-off is void for a technical reason and uses up no "
                                        "attempt.");
    case Outcome::NoShow: return CheckOffOutcomeWords::tr("The student did not come to this check-off.");
    case Outcome::StoppedSafety:
        return CheckOffOutcomeWords::tr("The assessor stopped this check-off before harm could be done.");
    case Outcome::FailCritical:
        return CheckOffOutcomeWords::tr("Something that must never be missed was missed; no score makes up "
                                        "for it.");
    case Outcome::FailTime:
        return CheckOffOutcomeWords::tr("Everything else may be right, but the time was used up.");
    case Outcome::FailScore:
        return CheckOffOutcomeWords::tr("Nothing unsafe was seen, but the score does not reach the cut.");
    case Outcome::Pass:
        return CheckOffOutcomeWords::tr("Every critical step was done, no mark was unsafe, time was kept and "
                                        "the score reaches the cut.");
    }
    return {};
}

namespace check_off_outcome_detail {

QString withNote(const QString& sentence, const QString& withNote, const QString& note)
{
    return note.isEmpty() ? sentence : withNote.arg(note);
}

// As it was asked: where the sheet leaves the side open, with the one that was drawn.
QString askedItem(const CheckOffSetup& setup, int item)
{
    const auto at = static_cast<std::size_t>(item);
    SheetItem asked = setup.sheet.items[at];
    if (!asked.side)
        asked.side = requestsOf(setup.sheet, setup.seed)[at].request.patient.side();
    return itemName(asked);
}

void addCritical(QStringList& reasons, const CheckOffResult& result, const CheckOffSetup& setup)
{
    for (const ProcedureStep step : result.procedure.missedCritical)
        //: %1 is a step of the assessor's sheet.
        reasons += CheckOffOutcomeWords::tr("Critical step not done without help: “%1”.").arg(stepName(step));
    for (const Breach& breach : result.procedure.breaches)
        if (breach.severity == Severity::Hard)
            reasons += breachSentence(breach);
    for (const int item : result.unsafeItems)
        //: %2 is what was asked: "Deltoid, left, from the side; nothing drawn".
        reasons += CheckOffOutcomeWords::tr("The mark of item %1 is unsafe (%2).")
                       .arg(QLocale().toString(item + 1), askedItem(setup, item));
}

void addTime(QStringList& reasons, const CheckOffResult& result)
{
    if (!result.onScreenKept)
        reasons += CheckOffOutcomeWords::tr("The time on screen was used up.");
    if (!result.onManikinKept)
        reasons += CheckOffOutcomeWords::tr("The time on the manikin was used up.");
}

void add(QStringList& reasons, Outcome outcome, const CheckOffResult& result, const CheckOffSetup& setup,
         const QString& note)
{
    switch (outcome) {
    case Outcome::VoidTechnical:
        reasons += withNote(CheckOffOutcomeWords::tr("Void for a technical reason."),
                            //: %1 is the assessor's own text.
                            CheckOffOutcomeWords::tr("Void for a technical reason: %1"), note);
        return;
    case Outcome::NoShow:
        reasons += withNote(CheckOffOutcomeWords::tr("The student did not come."),
                            CheckOffOutcomeWords::tr("The student did not come: %1"), note);
        return;
    case Outcome::StoppedSafety:
        reasons += withNote(CheckOffOutcomeWords::tr("Stopped by the assessor for safety."),
                            CheckOffOutcomeWords::tr("Stopped by the assessor for safety: %1"), note);
        return;
    case Outcome::FailCritical: addCritical(reasons, result, setup); return;
    case Outcome::FailTime: addTime(reasons, result); return;
    case Outcome::FailScore:
        reasons += CheckOffOutcomeWords::tr("The score of %1 does not reach the cut of %2.")
                       .arg(scoreText(result.decision.percent), scoreText(setup.sheet.cutPercent));
        return;
    case Outcome::Pass: return;
    }
}

// A day of this or the coming year needs no year.
QString dayText(Day day)
{
    const std::chrono::year_month_day date{day};
    return QLocale().toString(QDate(static_cast<int>(date.year()),
                                    static_cast<int>(static_cast<unsigned>(date.month())),
                                    static_cast<int>(static_cast<unsigned>(date.day()))),
                              //: A day and its month, as "3 December": d is the day, MMMM the month's name.
                              CheckOffOutcomeWords::tr("d MMMM"));
}

}  // namespace check_off_outcome_detail

QStringList reasonsOf(const CheckOffResult& result, const CheckOffSetup& setup, const QString& endNote)
{
    using check_off_outcome_detail::add;
    QStringList reasons;
    add(reasons, result.decision.outcome, result, setup, endNote);
    if (result.decision.outcome == Outcome::StoppedSafety) {
        // What was seen up to there stands; steps, score and time that were not come to do not.
        CheckOffResult seen = result;
        seen.procedure.missedCritical.clear();
        add(reasons, Outcome::FailCritical, seen, setup, endNote);
        return reasons;
    }
    for (const Outcome outcome : result.decision.alsoTrue)
        add(reasons, outcome, result, setup, endNote);
    return reasons;
}

QString standingName(const WhereTheyStand& where)
{
    using check_off_outcome_detail::dayText;
    switch (where.standing) {
    //: Where a student stands, in a list.
    case Standing::NotTried: return CheckOffOutcomeWords::tr("not tried");
    case Standing::Running: return CheckOffOutcomeWords::tr("open now");
    case Standing::Passed: return CheckOffOutcomeWords::tr("passed");
    //: What was agreed to be practised is not signed yet.
    case Standing::RemediationDue: return CheckOffOutcomeWords::tr("practice to be signed");
    case Standing::Waiting:
        return where.earliest
                   ? CheckOffOutcomeWords::tr("may try again from %1").arg(dayText(*where.earliest))
                   : CheckOffOutcomeWords::tr("may try again later");
    case Standing::MayRetest:
        return where.needsSecondAssessor ? CheckOffOutcomeWords::tr("last attempt, second assessor needed")
                                         : CheckOffOutcomeWords::tr("may try again");
    case Standing::OutOfAttempts: return CheckOffOutcomeWords::tr("no attempt left");
    }
    return {};
}

QString ratingName(int rating)
{
    switch (rating) {
    //: An assessor's overall impression, 1 to 5.
    case 1: return CheckOffOutcomeWords::tr("not yet safe");
    case 2: return CheckOffOutcomeWords::tr("safe only with help");
    case 3: return CheckOffOutcomeWords::tr("safe, still unsure");
    case 4: return CheckOffOutcomeWords::tr("safe and sure");
    case 5: return CheckOffOutcomeWords::tr("could show it to others");
    default: return {};
    }
}

}  // namespace fb
