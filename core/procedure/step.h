// The steps of an intramuscular injection that an assessor can see, in the order they are taught.
//
// The list is that of OpenStax Pharmacology for Nurses, "Steps to administering an intramuscular
// medication", its vial steps taken apart where a constraint speaks of one of them and set before the patient
// is met, as where drugs are drawn up in a medication room. Its order is kept but for three steps, set where
// a skills lab teaches them (lab's choice; a constraint forbids none of it): hands are cleaned before the
// drug is handled, gloves go on over found landmarks before the skin is cleaned, and a bare needle is made
// safe before the site is pressed.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace fb {

enum class ProcedureStep {
    ReadOrder,    // and assemble equipment
    Assess,       // safe and appropriate for this patient?
    HandHygiene,  // before anything is handled
    CheckDrug,    // drug, dose, volume, expiry
    LabelCheck,   // rights, first label check
    SwabStopper,
    StopperDry,
    DrawUp,         // pierces the stopper
    PreparedLabel,  // second label check
    ChangeNeedle,
    Identify,  // two identifiers
    Allergies,
    BedsideCheck,  // third label check
    Explain,       // consent, privacy
    SelectSite,    // rules out injured skin
    Expose,        // position, expose, relax
    Landmarks,
    GlovesOn,
    CleanSkin,
    SkinDry,
    CapOff,  // tells the client
    ShiftSkin,
    Insert,  // at 90 degrees
    Aspirate,
    Inject,  // slowly, evenly
    Wait,    // after injecting, before withdrawing
    Withdraw,
    ReleaseSkin,
    SafetyDevice,  // the next thing after the needle is out
    Pressure,      // no massage
    Sharps,
    GlovesOff,
    HandHygieneAfter,
    Document,  // with site and side
    Evaluate,
    Recap  // of the used needle: never a step, only ever seen
};
inline constexpr int kProcedureStepCount = static_cast<int>(ProcedureStep::Recap) + 1;
[[nodiscard]] constexpr ProcedureStep procedureStepAt(int index) { return static_cast<ProcedureStep>(index); }

// What the lab's protocol asks for beside the steps that are always taught.
struct Protocol {
    bool cleansSkin = true;
    bool zTrack = true;
    bool aspirates = false;
    bool filterNeedle = false;  // of an ampoule: it must be changed, and a sheet leaves the stopper out

    friend bool operator==(const Protocol&, const Protocol&) = default;
};

// Whether the step belongs to that protocol. Recap never does.
[[nodiscard]] bool belongs(ProcedureStep step, const Protocol& protocol);

[[nodiscard]] std::string_view wordOf(ProcedureStep step);  // lower_snake_case, for files
[[nodiscard]] std::optional<ProcedureStep> procedureStepFrom(std::string_view word);

}  // namespace fb
