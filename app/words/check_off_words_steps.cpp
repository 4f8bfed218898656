// The steps of an injection as an assessor's sheet names them: see check_off_words.h.
#include <QCoreApplication>

#include "app/words/check_off_words.h"

namespace fb {

// Translators find these beside the other words of a check-off, in one context.
struct CheckOffStepWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CheckOffWords)
};

StepGroup groupOf(ProcedureStep step)
{
    if (step <= ProcedureStep::ChangeNeedle)
        return StepGroup::Prepare;
    if (step <= ProcedureStep::Explain)
        return StepGroup::Identify;
    if (step <= ProcedureStep::Landmarks)
        return StepGroup::FindSite;
    if (step <= ProcedureStep::ReleaseSkin)
        return StepGroup::Give;
    return StepGroup::Afterwards;
}

QString groupName(StepGroup group)
{
    switch (group) {
    //: The five parts of the observed steps, as headings.
    case StepGroup::Prepare: return CheckOffStepWords::tr("Prepare");
    case StepGroup::Identify: return CheckOffStepWords::tr("Identify and explain");
    case StepGroup::FindSite: return CheckOffStepWords::tr("Find the site");
    case StepGroup::Give: return CheckOffStepWords::tr("Give the injection");
    case StepGroup::Afterwards: return CheckOffStepWords::tr("Afterwards");
    }
    return {};
}

namespace check_off_steps_detail {

QString prepareName(ProcedureStep step)
{
    switch (step) {
    //: In these the assessor's sheet tells what the student does: "(She) reads the order".
    case ProcedureStep::ReadOrder: return CheckOffStepWords::tr("Reads the order, lays out supplies");
    case ProcedureStep::Assess:
        return CheckOffStepWords::tr("Judges whether the injection is safe and right for this patient");
    case ProcedureStep::HandHygiene: return CheckOffStepWords::tr("Performs hand hygiene before preparing");
    case ProcedureStep::CheckDrug: return CheckOffStepWords::tr("Checks drug, dose, volume and expiry");
    case ProcedureStep::LabelCheck:
        return CheckOffStepWords::tr("Compares the label with the order, first check");
    //: The rubber stopper of a vial.
    case ProcedureStep::SwabStopper: return CheckOffStepWords::tr("Wipes the stopper with an alcohol swab");
    case ProcedureStep::StopperDry: return CheckOffStepWords::tr("Lets the stopper dry");
    case ProcedureStep::DrawUp: return CheckOffStepWords::tr("Draws up the dose");
    case ProcedureStep::PreparedLabel:
        return CheckOffStepWords::tr("Compares the label with the order once drawn up, second check");
    case ProcedureStep::ChangeNeedle: return CheckOffStepWords::tr("Changes the needle");
    default: return {};
    }
}

QString bedsideName(ProcedureStep step)
{
    switch (step) {
    case ProcedureStep::Identify: return CheckOffStepWords::tr("Identifies the patient by two identifiers");
    case ProcedureStep::Allergies: return CheckOffStepWords::tr("Asks about allergies");
    case ProcedureStep::BedsideCheck:
        return CheckOffStepWords::tr("Compares the label with the order at the bedside, third check");
    case ProcedureStep::Explain: return CheckOffStepWords::tr("Explains, gains consent, sees to privacy");
    case ProcedureStep::SelectSite: return CheckOffStepWords::tr("Chooses the site, looks for injured skin");
    case ProcedureStep::Expose:
        return CheckOffStepWords::tr("Positions the patient, bares the site and has the muscle relaxed");
    case ProcedureStep::Landmarks: return CheckOffStepWords::tr("Feels for the landmarks");
    default: return {};
    }
}

QString giveName(ProcedureStep step)
{
    switch (step) {
    case ProcedureStep::GlovesOn: return CheckOffStepWords::tr("Puts on gloves");
    case ProcedureStep::CleanSkin: return CheckOffStepWords::tr("Cleans the skin from the centre outward");
    case ProcedureStep::SkinDry: return CheckOffStepWords::tr("Lets the skin dry");
    case ProcedureStep::CapOff: return CheckOffStepWords::tr("Takes off the cap and tells the patient");
    //: Z-track: the skin is held aside while the needle is in.
    case ProcedureStep::ShiftSkin: return CheckOffStepWords::tr("Draws the skin aside (Z-track)");
    case ProcedureStep::Insert: return CheckOffStepWords::tr("Inserts the needle at 90 degrees");
    case ProcedureStep::Aspirate:
        return CheckOffStepWords::tr("Aspirates: pulls back the plunger and looks for blood");
    case ProcedureStep::Inject: return CheckOffStepWords::tr("Injects slowly and evenly");
    case ProcedureStep::Wait: return CheckOffStepWords::tr("Keeps the needle in before withdrawing");
    case ProcedureStep::Withdraw: return CheckOffStepWords::tr("Withdraws the needle at the same angle");
    case ProcedureStep::ReleaseSkin: return CheckOffStepWords::tr("Lets go of the skin (Z-track)");
    default: return {};
    }
}

QString afterName(ProcedureStep step)
{
    switch (step) {
    //: A guard that covers the used needle.
    case ProcedureStep::SafetyDevice: return CheckOffStepWords::tr("Activates the needle's safety device");
    case ProcedureStep::Pressure: return CheckOffStepWords::tr("Presses gently, without massage");
    //: "As one": the needle stays on the syringe.
    case ProcedureStep::Sharps:
        return CheckOffStepWords::tr("Discards needle and syringe as one into the sharps container");
    case ProcedureStep::GlovesOff: return CheckOffStepWords::tr("Takes off the gloves");
    case ProcedureStep::HandHygieneAfter: return CheckOffStepWords::tr("Performs hand hygiene afterwards");
    case ProcedureStep::Document: return CheckOffStepWords::tr("Documents it, with site and side");
    case ProcedureStep::Evaluate: return CheckOffStepWords::tr("Evaluates how the patient responds");
    //: Puts the cap back on the used needle, which is never to be done.
    case ProcedureStep::Recap: return CheckOffStepWords::tr("Recaps the used needle");
    default: return {};
    }
}

}  // namespace check_off_steps_detail

QString stepName(ProcedureStep step)
{
    using namespace check_off_steps_detail;
    for (const auto part : {&prepareName, &bedsideName, &giveName, &afterName}) {
        QString words = part(step);
        if (!words.isEmpty())
            return words;
    }
    return {};
}

QString seenName(Seen seen)
{
    switch (seen) {
    //: What an assessor saw of a step.
    case Seen::Done: return CheckOffStepWords::tr("done");
    //: Done only after the assessor gave a hint.
    case Seen::Prompted: return CheckOffStepWords::tr("prompted");
    case Seen::NotDone: return CheckOffStepWords::tr("not done");
    }
    return {};
}

}  // namespace fb
