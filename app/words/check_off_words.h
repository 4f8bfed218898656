// What a check-off, its sheet and its steps are called, and what became of them, in the language of the
// program. Words that stand alone in a list begin with a small letter; parts::alone() makes them stand alone.
#pragma once

#include <QDateTime>
#include <QString>
#include <QStringList>

#include "core/session/check_off.h"

namespace fb {

// The five parts in which steps are shown.
enum class StepGroup { Prepare, Identify, FindSite, Give, Afterwards };
inline constexpr int kStepGroupCount = static_cast<int>(StepGroup::Afterwards) + 1;
[[nodiscard]] StepGroup groupOf(ProcedureStep step);

[[nodiscard]] QString groupName(StepGroup group);
[[nodiscard]] QString stepName(ProcedureStep step);  // "Identifies the patient by two identifiers"
[[nodiscard]] QString seenName(Seen seen);           // done, prompted, not done
// One sentence that names the unsafe or untidy order: "Documented before giving." With the harm of a hard
// one.
[[nodiscard]] QString breachSentence(const Breach& breach);

// Of those that were broken, the ones between steps that were both seen: what was left out is named among the
// steps, and would read as a second fault.
[[nodiscard]] std::vector<Breach> ordersBroken(const std::vector<Breach>& breaches,
                                               const std::vector<Observation>& seen);

[[nodiscard]] QString outcomeName(Outcome outcome);  // "passed", "not passed: a critical step", ...
[[nodiscard]] QString outcomeSentence(Outcome outcome);
// Every reason that stands against passing, each a sentence, the deciding one first; empty when passed.
[[nodiscard]] QStringList reasonsOf(const CheckOffResult& result, const CheckOffSetup& setup,
                                    const QString& endNote);
// What to practise, one sentence each, from the answers and the steps that were observed; empty when nothing
// was off. A step that was left out is named as such and never as an order.
[[nodiscard]] QStringList practiceOf(const CheckOffResult& result, const std::vector<Answer>& answers,
                                     const std::vector<Observation>& seen);
// "1.8 cm, too far forward and too low" from the ideal point; of a refusal or no answer what it was.
[[nodiscard]] QString answerFinding(const Answer& answer);

[[nodiscard]] QString standingName(const WhereTheyStand& where);  // "may try again from 3 December"
[[nodiscard]] QString ratingName(int rating);                     // 1 to 5, in words
[[nodiscard]] QString populationName(Population population);
[[nodiscard]] QString seedRuleName(SeedRule rule);
[[nodiscard]] QString itemName(const SheetItem& item);  // "Ventrogluteal, left, from the side; nothing drawn"
[[nodiscard]] QStringList
sheetInWords(const Sheet& sheet);  // items, time, pass rule, attempts: one line each
[[nodiscard]] QString stageName(CheckOffStage stage);

// "79.9 %", one decimal at most; never rounded up to a cut that was not reached.
[[nodiscard]] QString scoreText(double percent);
// "4:07", or "1:02:09"; never negative.
[[nodiscard]] QString clockText(Ms time);
// A UTC time in the locale's short form and the machine's zone.
[[nodiscard]] QString whenText(const QDateTime& utc);
[[nodiscard]] QString fullName(const QString& given, const QString& family);

}  // namespace fb
