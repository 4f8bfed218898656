#include "app/records/check_off_body.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <array>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/records_look.h"
#include "app/words/check_off_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace check_off_body_detail {

constexpr int kBodyIcon = 18;

QLabel* picture(QWidget* parent, Icon icon, const QColor& colour, int size = kBodyIcon)
{
    auto* label = new QLabel(parent);
    label->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    label->setPixmap(pixmapFor(icon, colour, parts::scaled(parent, size), parent->devicePixelRatioF()));
    return label;
}

QLabel* words(QWidget* parent, const char* name, const QString& text, const char* look = "")
{
    QLabel* label = parts::text(parent, name, look);
    label->setText(text);
    return label;
}

QVBoxLayout* columnOf(QWidget* whole)
{
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    return column;
}

Icon iconOfSeen(Seen seen)
{
    switch (seen) {
    case Seen::Done: return Icon::Done;
    case Seen::Prompted: return Icon::Prompted;
    case Seen::NotDone: return Icon::NotDone;
    }
    return Icon::NotDone;
}

QColor colourOfSeen(Seen seen, const Scheme& scheme)
{
    switch (seen) {
    case Seen::Done: return scheme.good;
    case Seen::Prompted: return scheme.fair;
    case Seen::NotDone: return scheme.danger;
    }
    return scheme.danger;
}

QString timeText(Ms used, int limitSeconds, int extraPercent)
{
    if (limitSeconds == 0)
        return clockText(used);
    constexpr int kWhole = 100;
    const Ms limit = std::chrono::milliseconds{limitSeconds * 1000 * (kWhole + extraPercent) / kWhole};
    //: A time that was used, of the time that was allowed.
    return CheckOffHead::tr("%1 of %2").arg(clockText(used), clockText(limit));
}

}  // namespace check_off_body_detail

using namespace check_off_body_detail;

CheckOffHead::CheckOffHead(const OpenedCheckOff& opened, const Scheme& scheme, QWidget* parent)
    : QWidget(parent)
{
    QVBoxLayout* column = columnOf(this);
    addOutcome(*column, opened, scheme);
    column->addWidget(parts::rule(this));
    addFacts(*column, opened);
    const QStringList practise = practiceOf(opened.result, opened.run.answers(), opened.run.observations());
    if (!practise.isEmpty()) {
        column->addWidget(parts::rule(this));
        column->addWidget(words(this, "openedPractise", tr("What to practise"), "small"));
        for (const QString& each : practise)
            column->addWidget(words(this, "openedPractiseLine", each));
    }
}

void CheckOffHead::addOutcome(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme)
{
    constexpr int kLarge = 26;
    const CheckOffLine& line = opened.file.line;
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kNear);
    row->addWidget(picture(this, iconOfOutcome(line.outcome), colourOfOutcome(line.outcome, scheme), kLarge));
    row->addWidget(words(this, "openedOutcome", parts::alone(outcomeName(line.outcome)), "title"), 1);
    column.addLayout(row);
    //: %1 the score, %2 the score that is needed.
    column.addWidget(words(this, "openedScore",
                           tr("Score %1, needed %2.")
                               .arg(scoreText(line.percent), scoreText(opened.file.sheet.sheet.cutPercent))));
    for (const QString& reason :
         reasonsOf(opened.result, opened.run.setup(), QString::fromStdString(opened.run.endNote())))
        column.addWidget(words(this, "openedReason", reason));
}

void CheckOffHead::addFacts(QVBoxLayout& column, const OpenedCheckOff& opened)
{
    const CheckOffOnFile& file = opened.file;
    const Sheet& sheet = file.sheet.sheet;
    const CheckOff& run = opened.run;
    std::vector<std::pair<QString, QString>> facts{
        {tr("When"), whenText(file.line.at)},
        {tr("Attempt"),
         tr("%1 of %2")
             .arg(QLocale().toString(file.line.attempt), QLocale().toString(sheet.retest.attempts))},
        {tr("Sheet"), sheetTitle(file.sheet)},
        {tr("Time at the screen"), timeText(run.onScreen(), sheet.secondsOnScreen, file.order.extraPercent)}};
    if (!sheet.steps.empty())
        facts.emplace_back(tr("Time at the manikin"),
                           timeText(run.onManikin(), sheet.secondsOnManikin, file.order.extraPercent));
    if (run.held())
        //: How long the needle stayed after injecting, and how long it should: seconds.
        facts.emplace_back(tr("Needle held"), tr("%1 s, asked: %2 s")
                                                  .arg(QLocale().toString(*run.held(), 'f', 1),
                                                       QLocale().toString(sheet.heldSeconds, 'f', 0)));
    if (run.rating())
        facts.emplace_back(tr("Overall rating"),
                           tr("%1: %2").arg(QLocale().toString(*run.rating()), ratingName(*run.rating())));
    if (!run.remark().empty())
        facts.emplace_back(tr("Remark"), QString::fromStdString(run.remark()));
    facts.emplace_back(tr("Signed by"), signersOf(file.line));
    //: The first digits of the log's last hash when this was signed; they stand on the printed sheet.
    facts.emplace_back(tr("Log"), shortHead(file.chainHead));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kApart);
    grid->setVerticalSpacing(space::kTight);
    constexpr int kValueShare = 2;
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, kValueShare);
    int row = 0;
    for (const auto& [name, value] : facts) {
        grid->addWidget(words(this, "openedFactName", name, "small"), row, 0, Qt::AlignTop);
        grid->addWidget(words(this, "openedFact", value), row++, 1, Qt::AlignTop);
    }
    column.addLayout(grid);
}

CheckOffBody::CheckOffBody(const OpenedCheckOff& opened, const Scheme& scheme, QWidget* parent)
    : QWidget(parent)
{
    QVBoxLayout* column = columnOf(this);
    addAnswers(*column, opened, scheme);
    addSteps(*column, opened, scheme);
    column->addStretch(1);
}

void CheckOffBody::addAnswers(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme)
{
    //: The places that were asked for and marked.
    column.addWidget(words(this, "openedAnswers", tr("Sites"), "request"));
    const std::vector<Answer>& answers = opened.run.answers();
    if (answers.empty())
        column.addWidget(words(this, "openedNoAnswers", tr("No item was answered.")));
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const Answer& answer = answers[i];
        const QString number = QLocale().toString(static_cast<int>(i) + 1);
        auto* row = new QHBoxLayout;
        row->setSpacing(space::kNear);
        row->addWidget(picture(this, answer.timeUp ? Icon::NotDone : iconOf(answer.verdict),
                               answer.timeUp ? scheme.ink : colourOf(answer.verdict, scheme)),
                       0, Qt::AlignTop);
        auto* lines = new QVBoxLayout;
        lines->setSpacing(0);
        //: An item of a check-off: %1 its number, %2 site, %3 side of the body.
        lines->addWidget(words(this, "openedItem",
                               tr("%1. %2, %3")
                                   .arg(number, parts::alone(siteName(answer.request.site)),
                                        sideName(answer.request.patient.side()))));
        const QString finding = answerFinding(answer);
        //: What became of an item: %1 the verdict, %2 how far off it lay or what was done instead.
        lines->addWidget(words(this, "openedFinding",
                               answer.timeUp || answer.refusal
                                   ? parts::alone(finding)
                                   : tr("%1: %2").arg(verdictName(answer.verdict), finding),
                               "small"));
        row->addLayout(lines, 1);
        QPushButton* show = parts::button(this, "openedReplay");
        parts::say(show, tr("Show"));
        show->setAccessibleName(tr("Show answer %1 on the plate").arg(number));
        connect(show, &QPushButton::clicked, this,
                [this, item = static_cast<int>(i)] { Q_EMIT replayAsked(item); });
        row->addWidget(show, 0, Qt::AlignTop);
        column.addLayout(row);
    }
}

void CheckOffBody::addSteps(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme)
{
    const auto broken = ordersBroken(opened.result.procedure.breaches, opened.run.observations());
    if (!broken.empty()) {
        column.addWidget(parts::rule(this));
        column.addWidget(words(this, "openedBreaches", tr("Order that was broken"), "request"));
    }
    for (const Breach& breach : broken) {
        auto* row = new QHBoxLayout;
        row->setSpacing(space::kNear);
        const bool hard = breach.severity == Severity::Hard;
        row->addWidget(picture(this, hard ? Icon::Unsafe : Icon::Caution, hard ? scheme.danger : scheme.ink),
                       0, Qt::AlignTop);
        row->addWidget(words(this, "openedBreach", breachSentence(breach)), 1);
        column.addLayout(row);
    }
    // Ended before its time: what nobody rated was not reached.
    const bool endedEarly = opened.result.decision.outcome <= Outcome::StoppedSafety;
    if (opened.file.sheet.sheet.steps.empty() || (endedEarly && opened.run.observations().empty()))
        return;
    column.addWidget(parts::rule(this));
    column.addWidget(words(this, "openedSteps", tr("On the manikin"), "request"));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kNear);
    grid->setVerticalSpacing(space::kTight);
    grid->setColumnStretch(1, 1);
    column.addLayout(grid);
    std::optional<StepGroup> group;
    for (const SheetStep& step : opened.file.sheet.sheet.steps) {
        if (endedEarly && !opened.run.seen(step.step))
            continue;
        if (group != groupOf(step.step)) {
            group = groupOf(step.step);
            constexpr int kAcross = 3;
            grid->addWidget(words(this, "openedGroup", groupName(*group), "small"), grid->rowCount(), 0, 1,
                            kAcross);
        }
        addStep(*grid, step, opened.run.seen(step.step), scheme);
    }
}

void CheckOffBody::addStep(QGridLayout& grid, const SheetStep& step, const Observation* seen,
                           const Scheme& scheme)
{
    const int row = grid.rowCount();
    const Seen how = seen ? seen->seen : Seen::NotDone;
    grid.addWidget(picture(this, iconOfSeen(how), colourOfSeen(how, scheme)), row, 0, Qt::AlignTop);
    //: %1 a step; it must be done to pass.
    const QString name = step.critical ? tr("%1 (critical)").arg(stepName(step.step)) : stepName(step.step);
    grid.addWidget(words(this, "openedStep", name), row, 1, Qt::AlignTop);
    const bool timed = seen && how != Seen::NotDone;
    const QString when = timed ? clockText(Ms{std::llround(seen->at * 1000.0)}) : QString();
    //: How a step was seen, and when: "done, 1:07".
    QLabel* word = words(this, "openedSeen", timed ? tr("%1, %2").arg(seenName(how), when) : seenName(how));
    word->setWordWrap(false);
    grid.addWidget(word, row, 2, Qt::AlignTop);
    if (seen && !seen->remark.empty())
        grid.addWidget(words(this, "openedStepRemark", QString::fromStdString(seen->remark), "small"),
                       row + 1, 1);
}

}  // namespace fb
