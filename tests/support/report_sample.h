// Check-offs for the tests of the feedback sheet, from whole to odd.
#pragma once

#include "app/report/feedback_sheet.h"
#include "tests/support/seen_steps.h"
#include "tests/support/signed_sample.h"

namespace fb::test {

// Six items off by more and more, every step of the protocol seen but for a few, one order broken.
[[nodiscard]] inline SignedSample usualSample()
{
    SignedSample sample;
    Sheet& sheet = sample.sheet;
    sheet.title = "Intramuscular injection, second year";
    sheet.invented = true;
    sheet.items = {{Site::Deltoid, Side::Left, View::ShoulderSide, HelpLevel::Nothing},
                   {Site::Ventrogluteal, std::nullopt, View::HipSide, HelpLevel::Nothing},
                   {Site::VastusLateralis, Side::Right, View::ThighFront, HelpLevel::NamedOnly},
                   {Site::VastusLateralis, std::nullopt, View::ThighSide, HelpLevel::Nothing},
                   {Site::Ventrogluteal, Side::Right, View::HipSide, HelpLevel::DrawnAndNamed}};
    for (const ProcedureStep step : ofProtocol(everyStep(), sheet.protocol))
        sheet.steps.push_back({step, step == ProcedureStep::Identify || step == ProcedureStep::Allergies ||
                                         step == ProcedureStep::Landmarks || step == ProcedureStep::Sharps});
    sample.off = {{0.1, -0.1}, {1.2, 1.6}, {-0.4, 1.1}, {-3.5, 0.0}, {0.3, -0.2}};
    for (const Observation& seen : doneInOrder(ofProtocol(everyStep(), sheet.protocol)))
        if (seen.step != ProcedureStep::Allergies)
            sample.seen.push_back(seen);
    for (Observation& seen : sample.seen) {
        if (seen.step == ProcedureStep::Landmarks) {
            seen.seen = Seen::Prompted;
            seen.remark = "felt for the crest only when asked where it was";
        }
        if (seen.step == ProcedureStep::GlovesOn)
            seen.remark = "wrong size at first";
    }
    sample.held = 6.4;
    sample.remark =
        QStringLiteral("Calm hands, good talk with the patient. Slow down before the needle goes in.");
    return sample;
}

[[nodiscard]] inline FeedbackSheet sheetOf(const SignedSample& sample)
{
    return feedbackSheet(signedCheckOff(sample), shippedLibrary()).value();
}

}  // namespace fb::test
