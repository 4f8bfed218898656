// What became of each item, and what to practise: see check_off_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>

#include "app/words/check_off_words.h"
#include "app/words/finding_words.h"
#include "app/words/site_words.h"

namespace fb {

// Translators find these beside the other words of a check-off, in one context.
struct CheckOffPracticeWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CheckOffWords)
};

namespace check_off_practice_detail {

constexpr std::size_t kMostNamed = 4;  // in one sentence

// What rounds to 0.0 cm on the screen.
constexpr double kNothing = 0.05;

bool ruledOut(const Answer& answer)
{
    const Request& request = answer.request;
    return request.finding && rulesOut(*request.finding, request.site, request.patient.side());
}

bool isMissed(const Answer& answer)
{
    return answer.timeUp || answer.verdict == Verdict::OffTarget || answer.verdict == Verdict::Unsafe;
}

QString deltoidAdvice(Direction direction)
{
    switch (direction) {
    //: What to practise, one sentence each.
    case Direction::High:
        return CheckOffPracticeWords::tr("Deltoid, marked too high: feel for the acromion's lower edge and "
                                         "measure down from there before you mark.");
    case Direction::Low:
        return CheckOffPracticeWords::tr("Deltoid, marked too low: keep well above the level of the armpit.");
    case Direction::Forward:
        return CheckOffPracticeWords::tr("Deltoid, marked too far forward: find the mid-lateral line with "
                                         "the arm at the side.");
    case Direction::Back:
        return CheckOffPracticeWords::tr("Deltoid, marked too far back: find the mid-lateral line before "
                                         "you measure down.");
    case Direction::None: return {};
    }
    return {};
}

QString thighAdvice(Direction direction)
{
    switch (direction) {
    case Direction::High:
        return CheckOffPracticeWords::tr("Vastus lateralis, marked too high: divide the thigh from greater "
                                         "trochanter to knee and stay in the middle.");
    case Direction::Low:
        return CheckOffPracticeWords::tr("Vastus lateralis, marked too low: feel for the knee and keep clear "
                                         "of its tendon.");
    case Direction::Forward:
        return CheckOffPracticeWords::tr("Vastus lateralis, marked too far forward: find the middle of the "
                                         "front of the thigh and stay outside it.");
    case Direction::Back:
        return CheckOffPracticeWords::tr("Vastus lateralis, marked too far back: find the line down the "
                                         "outer side and stay in front of it.");
    case Direction::None: return {};
    }
    return {};
}

QString hipAdvice(Direction direction)
{
    switch (direction) {
    case Direction::High:
        return CheckOffPracticeWords::tr("Ventrogluteal, marked too high: feel along the iliac crest and "
                                         "stay below it.");
    case Direction::Low:
        return CheckOffPracticeWords::tr("Ventrogluteal, marked too low: lay the palm on the greater "
                                         "trochanter and mark between the fingers, not under the palm.");
    case Direction::Forward:
        return CheckOffPracticeWords::tr("Ventrogluteal, marked too far forward: rest a fingertip on the "
                                         "anterior superior iliac spine and mark behind it.");
    case Direction::Back:
        return CheckOffPracticeWords::tr("Ventrogluteal, marked too far back: open the fingers from the "
                                         "spine in front and stay between them, away from the buttock.");
    case Direction::None: return {};
    }
    return {};
}

QString advice(Site site, Direction direction)
{
    switch (site) {
    case Site::Deltoid: return deltoidAdvice(direction);
    case Site::VastusLateralis: return thighAdvice(direction);
    case Site::Ventrogluteal: return hipAdvice(direction);
    }
    return {};
}

// One sentence for each way the marks of a site lay off.
void addMarks(QStringList& lines, const std::vector<Answer>& answers)
{
    for (const Site site : kSites) {
        for (int way = 0; way < kDirectionCount; ++way) {
            const auto direction = static_cast<Direction>(way);
            const bool isOff = std::ranges::any_of(answers, [&](const Answer& answer) {
                return answer.request.site == site && answer.direction == direction && answer.mark &&
                       isMissed(answer) && !ruledOut(answer);
            });
            if (isOff && direction != Direction::None)
                lines += advice(site, direction);
        }
    }
}

void addChart(QStringList& lines, const std::vector<Answer>& answers)
{
    if (std::ranges::any_of(answers, [](const Answer& answer) { return answer.mark && ruledOut(answer); }))
        lines += CheckOffPracticeWords::tr("The chart: read it before you mark; it can rule a site out.");
    if (std::ranges::any_of(answers, [](const Answer& answer) { return answer.refusal && isMissed(answer); }))
        lines += CheckOffPracticeWords::tr("The chart: a finding rules out its own side and part of the "
                                           "body, and no other.");
    const auto late = std::ranges::count_if(answers, &Answer::timeUp);
    if (late > 0)
        lines += CheckOffPracticeWords::tr("Time: %n item(s) were not answered; practise with the clock in "
                                           "sight.",
                                           nullptr, static_cast<int>(late));
}

QString breachAdvice(const Breach& breach)
{
    switch (breach.kind) {
    //: %1 and %2 are steps of the assessor's sheet.
    case ConstraintKind::Before:
        return CheckOffPracticeWords::tr("Order: first “%1”, then “%2”.")
            .arg(stepName(breach.first), stepName(breach.then));
    case ConstraintKind::After:
        return CheckOffPracticeWords::tr("Order: after “%1” comes “%2”.")
            .arg(stepName(breach.first), stepName(breach.then));
    case ConstraintKind::Never:
        return CheckOffPracticeWords::tr("Sharps: leave the cap off a used needle; safety device, then "
                                         "container.");
    case ConstraintKind::AtLeast:
        return breach.first == ProcedureStep::Inject
                   ? CheckOffPracticeWords::tr("Waiting: count %n second(s) with the needle in before you "
                                               "withdraw.",
                                               nullptr, static_cast<int>(breach.seconds + 0.5))
                   : CheckOffPracticeWords::tr("Waiting: give what you wiped %n second(s) to dry.", nullptr,
                                               static_cast<int>(breach.seconds + 0.5));
    }
    return {};
}

// "“Dons gloves” and “Documents”"
QString quoted(const std::vector<ProcedureStep>& steps)
{
    QStringList names;
    for (const ProcedureStep step : steps)
        //: A step of the assessor's sheet, quoted among others.
        names += CheckOffPracticeWords::tr("“%1”").arg(stepName(step));
    return QLocale().createSeparatedList(names);
}

// Critical ones one by one, the others together, and a long list of those by its number. What nobody said a
// word of was not reached: a check-off that was stopped ends there.
void addSteps(QStringList& lines, const std::vector<ProcedureStep>& critical,
              const std::vector<Observation>& seen)
{
    std::vector<ProcedureStep> leftOut;
    std::vector<ProcedureStep> hinted;
    for (int index = 0; index < kProcedureStepCount; ++index) {
        const ProcedureStep step = procedureStepAt(index);
        const auto said = std::ranges::find(seen, step, &Observation::step);
        if (said == seen.end() || said->seen == Seen::Done)
            continue;
        const bool isLeftOut = said->seen == Seen::NotDone;
        if (std::ranges::find(critical, step) == critical.end())
            (isLeftOut ? leftOut : hinted).push_back(step);
        else if (isLeftOut)
            //: %1 is a critical step of the assessor's sheet, which was not done.
            lines += CheckOffPracticeWords::tr("Never to be left out: “%1”.").arg(stepName(step));
        else
            //: %1 is a step of the assessor's sheet.
            lines += CheckOffPracticeWords::tr("Without a hint: “%1”.").arg(stepName(step));
    }
    const auto many = [](const std::vector<ProcedureStep>& steps) { return steps.size() > kMostNamed; };
    if (many(leftOut))
        lines += CheckOffPracticeWords::tr("%n step(s) left out; each is marked among the observed steps.",
                                           nullptr, static_cast<int>(leftOut.size()));
    else if (!leftOut.empty())
        //: %1 is a list of steps, each quoted.
        lines += CheckOffPracticeWords::tr("Steps left out: %1.").arg(quoted(leftOut));
    if (many(hinted))
        lines += CheckOffPracticeWords::tr("%n step(s) took a hint; each is marked among the observed steps.",
                                           nullptr, static_cast<int>(hinted.size()));
    else if (!hinted.empty())
        //: %1 is a list of steps, each quoted.
        lines += CheckOffPracticeWords::tr("Steps that took a hint: %1.").arg(quoted(hinted));
}

// Inside the region nothing is too far: only where it lies.
QString wayText(double front, double down, const QString& cm)
{
    const bool along = std::abs(down) >= kNothing;
    const bool across = std::abs(front) >= kNothing;
    if (!across)
        //: A mark inside its region; %1 is the distance from the ideal point: "1.2 cm, down".
        return down > 0.0 ? CheckOffPracticeWords::tr("%1, down").arg(cm)
                          : CheckOffPracticeWords::tr("%1, up").arg(cm);
    if (!along)
        return front > 0.0 ? CheckOffPracticeWords::tr("%1, forward").arg(cm)
                           : CheckOffPracticeWords::tr("%1, back").arg(cm);
    if (front > 0.0)
        return down > 0.0 ? CheckOffPracticeWords::tr("%1, forward and down").arg(cm)
                          : CheckOffPracticeWords::tr("%1, forward and up").arg(cm);
    return down > 0.0 ? CheckOffPracticeWords::tr("%1, back and down").arg(cm)
                      : CheckOffPracticeWords::tr("%1, back and up").arg(cm);
}

QString offText(const Answer& answer)
{
    const QString cm = cmText(answer.distanceToIdeal.value());
    const double down = answer.offDistal.value();
    const double front = answer.offAnterior.value();
    const bool along = std::abs(down) >= kNothing;
    const bool across = std::abs(front) >= kNothing;
    if (!along && !across)
        return CheckOffPracticeWords::tr("on the ideal point");
    if (answer.verdict == Verdict::OnTarget)
        return wayText(front, down, cm);
    if (!across)
        //: %1 is the distance from the ideal point: "1.8 cm too low".
        return down > 0.0 ? CheckOffPracticeWords::tr("%1, too low").arg(cm)
                          : CheckOffPracticeWords::tr("%1, too high").arg(cm);
    if (!along)
        return front > 0.0 ? CheckOffPracticeWords::tr("%1, too far forward").arg(cm)
                           : CheckOffPracticeWords::tr("%1, too far back").arg(cm);
    if (front > 0.0)
        return down > 0.0 ? CheckOffPracticeWords::tr("%1, too far forward and too low").arg(cm)
                          : CheckOffPracticeWords::tr("%1, too far forward and too high").arg(cm);
    return down > 0.0 ? CheckOffPracticeWords::tr("%1, too far back and too low").arg(cm)
                      : CheckOffPracticeWords::tr("%1, too far back and too high").arg(cm);
}

}  // namespace check_off_practice_detail

QString answerFinding(const Answer& answer)
{
    using namespace check_off_practice_detail;
    if (answer.timeUp)
        return CheckOffPracticeWords::tr("no answer in time");
    if (answer.refusal)
        //: The student says that the site is not to be used; %1 is the reason given: "Rash".
        return CheckOffPracticeWords::tr("not here, because of: %1").arg(findingName(*answer.refusal));
    return offText(answer);
}

QStringList practiceOf(const CheckOffResult& result, const std::vector<Answer>& answers,
                       const std::vector<Observation>& seen)
{
    using namespace check_off_practice_detail;
    QStringList lines;
    addMarks(lines, answers);
    addChart(lines, answers);
    addSteps(lines, result.procedure.missedCritical, seen);
    for (const Breach& breach : ordersBroken(result.procedure.breaches, seen))
        lines += breachAdvice(breach);
    lines.removeDuplicates();
    return lines;
}

}  // namespace fb
