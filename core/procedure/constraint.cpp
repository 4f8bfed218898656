#include "core/procedure/constraint.h"

#include <array>

namespace fb {

namespace constraint_detail {

using enum ProcedureStep;
using enum Severity;
using enum Condition;

constexpr Constraint comesBefore(ConstraintId id, Severity severity, ProcedureStep first, ProcedureStep then,
                                 Condition when = Always)
{
    return {id, ConstraintKind::Before, severity, first, then, 0.0, when};
}

constexpr Constraint takesAtLeast(ConstraintId id, double seconds, ProcedureStep first, ProcedureStep then,
                                  Condition when = Always)
{
    return {id, ConstraintKind::AtLeast, Soft, first, then, seconds, when};
}

// OpenStax below is Pharmacology for Nurses (CC BY 4.0), "Drug Administration Routes, Preparation, and
// Administration"; a numbered step is one of its "Steps to administering an intramuscular medication".

// OpenStax, vials: the stopper dries "for approximately 10 seconds"; step 13, the skin "for 10 seconds".
constexpr double kDryingSeconds = 10.0;

// Each by its source; which are hard and which are soft is the lab's choice throughout.
constexpr std::array kConstraints{
    // P1. OpenStax steps 2, 3, 7 and 8: safe and appropriate, right drug, right patient, allergies, and the
    // third check at the bedside.
    comesBefore(1, Hard, Assess, Insert),
    comesBefore(1, Hard, CheckDrug, Insert),
    comesBefore(1, Hard, Identify, Insert),
    comesBefore(1, Hard, Allergies, Insert),
    comesBefore(1, Hard, BedsideCheck, Insert),
    // P2. OpenStax step 5; WHO, My Five Moments for Hand Hygiene: before a clean or aseptic procedure.
    comesBefore(2, Hard, HandHygiene, Insert),
    comesBefore(2, Soft, HandHygiene, DrawUp),
    // P3. OpenStax, vials: wipe the stopper and let it dry, its cap kept nothing sterile. Immunize.org, Ask
    // the Experts, alcohol drying time: swab that of a single dose too.
    comesBefore(3, Hard, SwabStopper, DrawUp),
    comesBefore(3, Soft, SwabStopper, StopperDry),
    comesBefore(3, Soft, StopperDry, DrawUp),
    takesAtLeast(3, kDryingSeconds, SwabStopper, DrawUp),
    // P4. OpenStax step 10. Before or after the patient is identified: lab's choice, both pass.
    comesBefore(4, Hard, DrawUp, Insert),
    // P5. OpenStax, vials: exchange the needle before giving; ampoules: never inject through a filter needle.
    // Step 4: the second label check is made when drawing up.
    comesBefore(5, Soft, DrawUp, ChangeNeedle, NoFilterNeedle),
    comesBefore(5, Soft, ChangeNeedle, Insert, NoFilterNeedle),
    comesBefore(5, Hard, DrawUp, ChangeNeedle, FilterNeedle),
    comesBefore(5, Hard, ChangeNeedle, Insert, FilterNeedle),
    comesBefore(5, Soft, PreparedLabel, Insert),
    // P6. OpenStax steps 11 and 12: injured skin is ruled out before the site is found by its landmarks.
    comesBefore(6, Hard, SelectSite, Landmarks),
    comesBefore(6, Hard, Landmarks, Insert),
    // P7. Lab's choice: bony points are felt on bare skin, and cleaned skin is not felt again.
    comesBefore(7, Soft, Expose, Landmarks),
    comesBefore(7, Soft, Landmarks, CleanSkin, CleansSkin),
    // P8. OpenStax step 13; some services do not swab clean skin, so the protocol says.
    comesBefore(8, Hard, CleanSkin, Insert, CleansSkin),
    // P9. OpenStax steps 13 to 17.
    comesBefore(9, Soft, CleanSkin, SkinDry, CleansSkin),
    comesBefore(9, Soft, SkinDry, CapOff, CleansSkin),
    comesBefore(9, Soft, CapOff, Insert),
    takesAtLeast(9, kDryingSeconds, CleanSkin, Insert, CleansSkin),
    // P10. OpenStax step 6. Any earlier place passes: lab's choice.
    comesBefore(10, Soft, GlovesOn, Insert),
    // P11. OpenStax, Z-track: displace the skin, insert; remove the needle "and then release the skin".
    comesBefore(11, Hard, ShiftSkin, Insert, ZTrack),
    comesBefore(11, Hard, Withdraw, ReleaseSkin, ZTrack),
    // P12. OpenStax steps 17 to 20.
    comesBefore(12, Hard, Insert, Inject),
    comesBefore(12, Hard, Inject, Withdraw),
    comesBefore(12, Soft, Withdraw, Pressure),
    // P13. OpenStax, Z-track.
    comesBefore(13, Soft, Inject, Wait, ZTrack),
    comesBefore(13, Soft, Wait, Withdraw, ZTrack),
    takesAtLeast(13, kHoldSeconds, Inject, Withdraw, ZTrack),
    // P14. OpenStax: whether to aspirate is the institution's policy. Where it is not asked for, it is no
    // breach.
    comesBefore(14, Soft, Insert, Aspirate, Aspirates),
    comesBefore(14, Soft, Aspirate, Inject, Aspirates),
    // P15. OSHA, 29 CFR 1910.1030(d)(2)(vii): contaminated needles are not recapped; OpenStax step 22.
    Constraint{15, ConstraintKind::Never, Hard, Insert, Recap},
    // P16. OpenStax step 21: safety device, then the sharps container, never the trash.
    comesBefore(16, Soft, Withdraw, SafetyDevice),
    comesBefore(16, Soft, SafetyDevice, Sharps),
    Constraint{16, ConstraintKind::After, Hard, Withdraw, Sharps},
    // P17. OpenStax step 23.
    comesBefore(17, Soft, Sharps, GlovesOff),
    comesBefore(17, Soft, GlovesOff, HandHygieneAfter),
    // P18. OpenStax steps 24 and 25; its right documentation: never before the drug is given.
    comesBefore(18, Hard, Inject, Document),
    comesBefore(18, Soft, Inject, Evaluate),
};

}  // namespace constraint_detail

std::span<const Constraint> constraints() { return constraint_detail::kConstraints; }

bool holds(Condition condition, const Protocol& protocol)
{
    switch (condition) {
    case Condition::Always: return true;
    case Condition::CleansSkin: return protocol.cleansSkin;
    case Condition::ZTrack: return protocol.zTrack;
    case Condition::Aspirates: return protocol.aspirates;
    case Condition::FilterNeedle: return protocol.filterNeedle;
    case Condition::NoFilterNeedle: return !protocol.filterNeedle;
    }
    return {};
}

}  // namespace fb
