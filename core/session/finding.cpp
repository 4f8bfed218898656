#include "core/session/finding.h"

namespace fb {

BodyPart partOf(Site site)
{
    switch (site) {
    case Site::Deltoid: return BodyPart::UpperArm;
    case Site::VastusLateralis: return BodyPart::Thigh;
    case Site::Ventrogluteal: return BodyPart::Hip;
    }
    return {};
}

bool rulesOut(const Finding& finding, Site site, Side side)
{
    if (finding.side != side)
        return false;
    switch (finding.code) {
    case FindingCode::Fistula:
    case FindingCode::Mastectomy: return site == Site::Deltoid;
    case FindingCode::Paralysis: return true;
    default: return finding.part == partOf(site);
    }
}

RefusalOutcome refused(const std::optional<Finding>& finding, Site site, Side side, FindingCode reason)
{
    if (!finding || !rulesOut(*finding, site, side))
        return RefusalOutcome::NothingRulesOut;
    return finding->code == reason ? RefusalOutcome::RightReason : RefusalOutcome::WrongReason;
}

std::string_view wordOf(FindingCode code)
{
    switch (code) {
    case FindingCode::Rash: return "rash";
    case FindingCode::Scar: return "scar";
    case FindingCode::Bruise: return "bruise";
    case FindingCode::Cast: return "cast";
    case FindingCode::Fistula: return "fistula";
    case FindingCode::Mastectomy: return "mastectomy";
    case FindingCode::Paralysis: return "paralysis";
    case FindingCode::LastInjection: return "last_injection";
    }
    return {};
}

std::string_view wordOf(BodyPart part)
{
    switch (part) {
    case BodyPart::UpperArm: return "upper_arm";
    case BodyPart::Thigh: return "thigh";
    case BodyPart::Hip: return "hip";
    case BodyPart::WholeSide: return "whole_side";
    }
    return {};
}

std::string_view wordOf(RefusalOutcome outcome)
{
    switch (outcome) {
    case RefusalOutcome::RightReason: return "right_reason";
    case RefusalOutcome::WrongReason: return "wrong_reason";
    case RefusalOutcome::NothingRulesOut: return "nothing_rules_out";
    }
    return {};
}

}  // namespace fb
