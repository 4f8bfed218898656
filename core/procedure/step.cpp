#include "core/procedure/step.h"

#include <algorithm>

namespace fb {

namespace step_detail {

// In the order of the steps.
constexpr std::array<std::string_view, kProcedureStepCount> kStepWords{
    "read_order",    "assess",        "hand_hygiene",
    "check_drug",    "label_check",   "swab_stopper",
    "stopper_dry",   "draw_up",       "prepared_label",
    "change_needle", "identify",      "allergies",
    "bedside_check", "explain",       "select_site",
    "expose",        "landmarks",     "gloves_on",
    "clean_skin",    "skin_dry",      "cap_off",
    "shift_skin",    "insert",        "aspirate",
    "inject",        "wait",          "withdraw",
    "release_skin",  "safety_device", "pressure",
    "sharps",        "gloves_off",    "hand_hygiene_after",
    "document",      "evaluate",      "recap"};

}  // namespace step_detail

using namespace step_detail;

bool belongs(ProcedureStep step, const Protocol& protocol)
{
    using enum ProcedureStep;
    switch (step) {
    case CleanSkin:
    case SkinDry: return protocol.cleansSkin;
    case ShiftSkin:
    case Wait:
    case ReleaseSkin: return protocol.zTrack;
    case Aspirate: return protocol.aspirates;
    case Recap: return false;
    default: return true;
    }
}

std::string_view wordOf(ProcedureStep step) { return kStepWords[static_cast<std::size_t>(step)]; }

std::optional<ProcedureStep> procedureStepFrom(std::string_view word)
{
    const auto found = std::ranges::find(kStepWords, word);
    if (found == kStepWords.end())
        return std::nullopt;
    return procedureStepAt(static_cast<int>(found - kStepWords.begin()));
}

}  // namespace fb
