#include "app/report/sheet_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/words/check_off_words.h"
#include "app/words/site_words.h"

namespace fb {

struct SheetWordsText {
    Q_DECLARE_TR_FUNCTIONS(fb::FeedbackSheet)
};

namespace sheet_words_detail {

QString shown(const std::string& text) { return QString::fromStdString(text).simplified(); }

// Told so that it is read alike everywhere: the month by its name.
QString momentText(const QDateTime& utc)
{
    const QDateTime local = utc.toLocalTime();
    const QLocale locale;
    //: A day and a time of day.
    return SheetWordsText::tr("%1, %2").arg(locale.toString(local.date(), QLocale::LongFormat),
                                            locale.toString(local.time(), QLocale::ShortFormat));
}

bool isScored(Outcome outcome) { return outcome != Outcome::VoidTechnical && outcome != Outcome::NoShow; }

bool tookOver(const SheetFindings& found)
{
    return std::ranges::any_of(found.file.events, [](const CheckOffEvent& event) {
        return event.kind == CheckOffEventKind::TookOver;
    });
}

// A used time, and the limit where there is one.
QString timeText(Ms used, int seconds, int extraPercent)
{
    if (seconds == 0)
        return clockText(used);
    constexpr int kWhole = 100;
    const Ms limit = Ms{std::chrono::seconds{seconds}} * (kWhole + extraPercent) / kWhole;
    //: A time that was used, of the time there was: "8:12 of 10:00".
    return SheetWordsText::tr("%1 of %2").arg(clockText(used), clockText(limit));
}

void addWho(SheetWords& words, const SheetFindings& found)
{
    const CheckOffLine& line = found.file.line;
    const Student& student = line.student;
    words.student = fullName(student.given.simplified(), student.family.simplified());
    words.about = student.section.isEmpty()
                      //: %1 is the student's id.
                      ? SheetWordsText::tr("Student id %1").arg(student.id.simplified())
                      : SheetWordsText::tr("Student id %1, section %2")
                            .arg(student.id.simplified(), student.section.simplified());
    words.title = SheetWordsText::tr("Feedback sheet of a check-off");
    //: Title of the file; %1 is the student's name, %2 the day.
    words.documentTitle = SheetWordsText::tr("Check-off of %1, %2").arg(words.student, momentText(line.at));
    if (student.invented || found.file.sheet.sheet.invented)
        words.invented = SheetWordsText::tr("Sample: invented people, no real result");
    //: The two lines to be filled in by hand.
    words.readByStudent = SheetWordsText::tr("Read by the student");
    words.day = SheetWordsText::tr("Date");
    words.caution = cautionSentence();
    //: At the foot of each page; %1 is the student's name.
    words.page = SheetWordsText::tr("%1, page %2 of %3");
}

void addFacts(SheetWords& words, const SheetFindings& found)
{
    const CheckOffLine& line = found.file.line;
    const Sheet& sheet = found.file.sheet.sheet;
    const int extra = found.file.order.extraPercent;
    const QLocale locale;
    words.facts = {
        {SheetWordsText::tr("Sheet"), shown(sheet.title)},
        {SheetWordsText::tr("Attempt"),
         //: The first of three attempts: "1 of 3".
         SheetWordsText::tr("%1 of %2")
             .arg(locale.toString(line.attempt), locale.toString(sheet.retest.attempts))},
        //: When the check-off was begun.
        {SheetWordsText::tr("Begun"), momentText(found.file.begunAt)},
        {SheetWordsText::tr("Signed"), momentText(line.at)},
        {SheetWordsText::tr("Time on screen"), timeText(found.run.onScreen(), sheet.secondsOnScreen, extra)}};
    if (!sheet.steps.empty())
        words.facts.emplace_back(SheetWordsText::tr("Time on the manikin"),
                                 timeText(found.run.onManikin(), sheet.secondsOnManikin, extra));
    if (extra > 0)
        words.facts.emplace_back(SheetWordsText::tr("Extra time agreed"), scoreText(extra));
}

void addOutcome(SheetWords& words, const SheetFindings& found)
{
    const Decision& decision = found.result.decision;
    const QString name = outcomeName(decision.outcome);
    words.outcome = name.left(1).toUpper() + name.mid(1);
    words.outcomeSentence = outcomeSentence(decision.outcome);
    words.reasons = reasonsOf(found.result, found.run.setup(), shown(found.run.endNote()));
    if (!isScored(decision.outcome))
        return;
    words.score = scoreText(decision.percent);
    //: Under the score: what was asked for.
    words.cut = SheetWordsText::tr("score; the cut is %1").arg(scoreText(found.file.sheet.sheet.cutPercent));
    words.practiceHeading = SheetWordsText::tr("What to practise");
    words.practice = practiceOf(found.result, found.run.answers(), found.run.observations());
    if (words.practice.isEmpty())
        words.practice = {SheetWordsText::tr("Nothing was off; keep it up.")};
    if (const auto rating = found.run.rating())
        //: %1 is a number from 1 to 5, %2 its word.
        words.rating = SheetWordsText::tr("Overall rating: %1 of 5, %2")
                           .arg(QLocale().toString(*rating), ratingName(*rating));
    if (!found.run.remark().empty())
        words.remark = SheetWordsText::tr("Assessor's remark: %1").arg(shown(found.run.remark()));
}

SheetStepWords stepWords(const SheetStep& step, const Observation* seen)
{
    SheetStepWords row;
    row.name = stepName(step.step);
    row.critical = step.critical;
    row.mark = seen ? seen->seen : Seen::NotDone;
    row.seen = seenName(*row.mark);
    if (seen) {
        row.remark = shown(seen->remark);
        if (seen->seen != Seen::NotDone)
            row.at = clockText(Ms{static_cast<std::int64_t>(seen->at * 1000.0)});
    }
    return row;
}

void addSteps(SheetWords& words, const SheetFindings& found)
{
    const Sheet& sheet = found.file.sheet.sheet;
    words.stepsHeading = SheetWordsText::tr("Observed steps");
    //: %1 is a step that must not be missed.
    words.critical = SheetWordsText::tr("%1 (critical)");
    words.seenColumns = {SheetWordsText::tr("Step"), SheetWordsText::tr("Seen"),
                         //: When the step was seen, minutes and seconds from the start.
                         SheetWordsText::tr("At"), SheetWordsText::tr("Remark")};
    std::vector<SheetStep> steps = sheet.steps;
    std::erase_if(steps, [&](const SheetStep& step) { return !belongs(step.step, sheet.protocol); });
    if (found.run.seen(ProcedureStep::Recap))
        steps.push_back({ProcedureStep::Recap, false});
    // Ended before its time: what nobody rated was not reached.
    if (found.result.decision.outcome <= Outcome::StoppedSafety)
        std::erase_if(steps, [&](const SheetStep& step) { return !found.run.seen(step.step); });
    std::optional<StepGroup> group;
    for (const SheetStep& step : steps) {
        if (group != groupOf(step.step)) {
            group = groupOf(step.step);
            words.steps.push_back({groupName(*group), {}, {}, {}, std::nullopt, false});
        }
        words.steps.push_back(stepWords(step, found.run.seen(step.step)));
    }
    words.ordersHeading = SheetWordsText::tr("Order of the steps");
    for (const Breach& breach : ordersBroken(found.result.procedure.breaches, found.run.observations()))
        words.orders += breachSentence(breach);
    if (words.orders.isEmpty())
        words.orders = {SheetWordsText::tr("No order was broken.")};
    if (const auto held = found.run.held())
        words.held =
            SheetWordsText::tr("Needle held in after injecting: %1 s, asked for: %2 s.")
                .arg(QLocale().toString(*held, 'f', 1), QLocale().toString(sheet.heldSeconds, 'g', 3));
}

void addRecord(SheetWords& words, const SheetFindings& found)
{
    constexpr qsizetype kShownHash = 12;
    const CheckOffLine& line = found.file.line;
    const QString first = line.assessor.simplified();
    const QString second = line.secondAssessor.simplified();
    words.recordHeading = SheetWordsText::tr("Signed");
    words.record = {
        {SheetWordsText::tr("Signed by"),
         second.isEmpty() ? first : SheetWordsText::tr("%1 and %2").arg(first, second)},
        {SheetWordsText::tr("Signed on"), momentText(line.at)},
        {SheetWordsText::tr("Log"),
         //: %1 are the first digits of the log's hash, %2 is how many entries it has.
         SheetWordsText::tr("%1, entry %2")
             .arg(found.file.chainHead.left(kShownHash), QLocale().toString(found.file.chainLength))},
        {SheetWordsText::tr("Program"),
         SheetWordsText::tr("Fingerbreadth %1").arg(found.file.order.programVersion)},
        {SheetWordsText::tr("Lab's numbers"), found.policyName}};
}

}  // namespace sheet_words_detail

SheetWords sheetWords(const SheetFindings& found, Qt::LayoutDirection direction)
{
    using namespace sheet_words_detail;
    SheetWords words;
    words.direction = direction;
    addWho(words, found);
    addFacts(words, found);
    addOutcome(words, found);
    const auto& asked = found.file.sheet.sheet.items;
    if (!found.items.empty())
        words.itemsHeading = SheetWordsText::tr("Marks on the plates");
    for (const SheetItemFound& item : found.items) {
        const int number = item.answer.item;
        words.items.push_back(itemWords(item, asked[static_cast<std::size_t>(number)], number + 1));
    }
    if (tookOver(found))
        addSteps(words, found);
    addRecord(words, found);
    return words;
}

}  // namespace fb
