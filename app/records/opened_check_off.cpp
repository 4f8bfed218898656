#include "app/records/opened_check_off.h"

namespace fb {

Result<OpenedCheckOff> openedCheckOff(const CheckOffOnFile& file)
{
    CheckOff run({file.sheet.sheet, file.order.seed, file.order.extraPercent});
    for (const CheckOffEvent& event : file.events) {
        if (const auto applied = run.apply(event, std::nullopt); !applied)
            return tl::unexpected(applied.error());
    }
    const CheckOffResult result = run.result();
    return OpenedCheckOff{file, std::move(run), result};
}

bool asksForPractice(Outcome outcome, const RetestRule& rule)
{
    switch (outcome) {
    case Outcome::Pass:
    case Outcome::VoidTechnical: return false;
    case Outcome::NoShow: return rule.remediationFirst && rule.noShowCounts;
    case Outcome::StoppedSafety:
    case Outcome::FailCritical:
    case Outcome::FailTime:
    case Outcome::FailScore: return rule.remediationFirst;
    }
    return false;
}

bool asksForPractice(const CheckOffOnFile& file)
{
    return asksForPractice(file.line.outcome, file.sheet.sheet.retest) && file.line.remediation.isEmpty();
}

}  // namespace fb
