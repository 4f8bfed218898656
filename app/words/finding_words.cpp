// Notes of the chart and what a refusal came to: see finding_words.h.
#include "app/words/finding_words.h"

#include <QCoreApplication>

namespace fb {

namespace finding_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::FindingWords)
};

QString rash(BodyPart part, bool left)
{
    switch (part) {
    case BodyPart::UpperArm:
        return left ? Words::tr("Chart: a rash over the left upper arm.")
                    : Words::tr("Chart: a rash over the right upper arm.");
    case BodyPart::Thigh:
        return left ? Words::tr("Chart: a rash over the left thigh.")
                    : Words::tr("Chart: a rash over the right thigh.");
    case BodyPart::Hip:
        return left ? Words::tr("Chart: a rash over the left hip.")
                    : Words::tr("Chart: a rash over the right hip.");
    case BodyPart::WholeSide:
        return left ? Words::tr("Chart: a rash over the whole left side.")
                    : Words::tr("Chart: a rash over the whole right side.");
    }
    return {};
}

QString scar(BodyPart part, bool left)
{
    switch (part) {
    case BodyPart::UpperArm:
        return left ? Words::tr("Chart: a scar on the left upper arm.")
                    : Words::tr("Chart: a scar on the right upper arm.");
    case BodyPart::Thigh:
        return left ? Words::tr("Chart: a scar on the left thigh.")
                    : Words::tr("Chart: a scar on the right thigh.");
    case BodyPart::Hip:
        return left ? Words::tr("Chart: a scar on the left hip.")
                    : Words::tr("Chart: a scar on the right hip.");
    case BodyPart::WholeSide:
        return left ? Words::tr("Chart: scars all over the left side.")
                    : Words::tr("Chart: scars all over the right side.");
    }
    return {};
}

QString bruise(BodyPart part, bool left)
{
    switch (part) {
    case BodyPart::UpperArm:
        return left ? Words::tr("Chart: a bruise on the left upper arm.")
                    : Words::tr("Chart: a bruise on the right upper arm.");
    case BodyPart::Thigh:
        return left ? Words::tr("Chart: a bruise on the left thigh.")
                    : Words::tr("Chart: a bruise on the right thigh.");
    case BodyPart::Hip:
        return left ? Words::tr("Chart: a bruise on the left hip.")
                    : Words::tr("Chart: a bruise on the right hip.");
    case BodyPart::WholeSide:
        return left ? Words::tr("Chart: bruises all over the left side.")
                    : Words::tr("Chart: bruises all over the right side.");
    }
    return {};
}

QString cast(BodyPart part, bool left)
{
    switch (part) {
    case BodyPart::UpperArm:
        return left ? Words::tr("Chart: a plaster cast on the left upper arm.")
                    : Words::tr("Chart: a plaster cast on the right upper arm.");
    case BodyPart::Thigh:
        return left ? Words::tr("Chart: a plaster cast on the left thigh.")
                    : Words::tr("Chart: a plaster cast on the right thigh.");
    case BodyPart::Hip:
        return left ? Words::tr("Chart: a plaster cast over the left hip.")
                    : Words::tr("Chart: a plaster cast over the right hip.");
    case BodyPart::WholeSide:
        return left ? Words::tr("Chart: a plaster cast over the whole left side.")
                    : Words::tr("Chart: a plaster cast over the whole right side.");
    }
    return {};
}

QString lastInjection(BodyPart part, bool left)
{
    switch (part) {
    case BodyPart::UpperArm:
        return left ? Words::tr("Chart: last injection in the left upper arm.")
                    : Words::tr("Chart: last injection in the right upper arm.");
    case BodyPart::Thigh:
        return left ? Words::tr("Chart: last injection in the left thigh.")
                    : Words::tr("Chart: last injection in the right thigh.");
    case BodyPart::Hip:
        return left ? Words::tr("Chart: last injection in the left hip.")
                    : Words::tr("Chart: last injection in the right hip.");
    case BodyPart::WholeSide:
        return left ? Words::tr("Chart: last injection somewhere on the left side.")
                    : Words::tr("Chart: last injection somewhere on the right side.");
    }
    return {};
}

// Once known, a finding rules out by its kind alone.
QString rightSentence(FindingCode code)
{
    switch (code) {
    case FindingCode::Rash:
        return Words::tr("Right: a needle through a rash can carry infection in, and a reaction could not be "
                         "seen.");
    case FindingCode::Scar:
        return Words::tr("Right: scarred tissue may take up a drug poorly, and it can hide what is felt.");
    case FindingCode::Bruise:
        return Words::tr("Right: bruised tissue is sore and may already be injured, so it is left alone.");
    case FindingCode::Cast: return Words::tr("Right: the cast covers the site.");
    case FindingCode::Fistula:
        return Words::tr("Right: an arm with an arteriovenous fistula is kept free of injections.");
    case FindingCode::Mastectomy:
        return Words::tr("Right: the arm on the side of a mastectomy is commonly spared, since its lymph may "
                         "drain poorly.");
    case FindingCode::Paralysis:
        return Words::tr("Right: a paralysed muscle may take up a drug poorly, and the patient cannot feel "
                         "harm there.");
    case FindingCode::LastInjection:
        return Words::tr("Right: the last injection was given here, and sites are changed each time.");
    }
    return {};
}

QString wrongSentence(FindingCode code)
{
    switch (code) {
    case FindingCode::Rash:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a rash here.");
    case FindingCode::Scar:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a scar here.");
    case FindingCode::Bruise:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a bruise here.");
    case FindingCode::Cast:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a plaster cast "
                         "here.");
    case FindingCode::Fistula:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of an arteriovenous "
                         "fistula in this arm.");
    case FindingCode::Mastectomy:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a mastectomy on "
                         "this side.");
    case FindingCode::Paralysis:
        return Words::tr("The site is ruled out, but for another reason: the chart tells of a paralysis of "
                         "this side.");
    case FindingCode::LastInjection:
        return Words::tr("The site is ruled out, but for another reason: the chart says that the last "
                         "injection was given here.");
    }
    return {};
}

}  // namespace finding_words_detail

QString findingText(const Finding& finding)
{
    using namespace finding_words_detail;
    const bool left = finding.side == Side::Left;
    switch (finding.code) {
    case FindingCode::Rash: return rash(finding.part, left);
    case FindingCode::Scar: return scar(finding.part, left);
    case FindingCode::Bruise: return bruise(finding.part, left);
    case FindingCode::Cast: return cast(finding.part, left);
    case FindingCode::LastInjection: return lastInjection(finding.part, left);
    case FindingCode::Fistula:
        //: A surgical joining of artery and vein in the arm, for dialysis.
        return left ? Words::tr("Chart: an arteriovenous fistula in the left arm.")
                    : Words::tr("Chart: an arteriovenous fistula in the right arm.");
    case FindingCode::Mastectomy:
        return left ? Words::tr("Chart: a mastectomy on the left side.")
                    : Words::tr("Chart: a mastectomy on the right side.");
    case FindingCode::Paralysis:
        return left ? Words::tr("Chart: paralysis of the left side of the body.")
                    : Words::tr("Chart: paralysis of the right side of the body.");
    }
    return {};
}

QString findingName(FindingCode code)
{
    using namespace finding_words_detail;
    switch (code) {
    //: Reasons not to use a site, as a list to choose from.
    case FindingCode::Rash: return Words::tr("Rash");
    case FindingCode::Scar: return Words::tr("Scar");
    case FindingCode::Bruise: return Words::tr("Bruise");
    case FindingCode::Cast: return Words::tr("Plaster cast");
    case FindingCode::Fistula: return Words::tr("Arteriovenous fistula");
    case FindingCode::Mastectomy: return Words::tr("Mastectomy on this side");
    case FindingCode::Paralysis: return Words::tr("Paralysis of this side");
    case FindingCode::LastInjection: return Words::tr("Last injection given here");
    }
    return {};
}

QString refusalSentence(RefusalOutcome outcome, const std::optional<Finding>& finding, FindingCode reason)
{
    using namespace finding_words_detail;
    if (finding && outcome == RefusalOutcome::RightReason)
        return rightSentence(finding->code);
    if (finding && outcome == RefusalOutcome::WrongReason)
        return wrongSentence(finding->code);
    if (finding && finding->code == reason)
        return Words::tr("The site could have been used: what you name stands in the chart, but on another "
                         "side or another part of the body.");
    return Words::tr("The site could have been used: the chart tells of nothing that rules it out.");
}

QString missedFindingSentence(const Finding& finding)
{
    using namespace finding_words_detail;
    switch (finding.code) {
    case FindingCode::Rash:
        return Words::tr("The chart tells of a rash here: this site was not to be used, wherever the mark "
                         "lies.");
    case FindingCode::Scar:
        return Words::tr("The chart tells of a scar here: this site was not to be used, wherever the mark "
                         "lies.");
    case FindingCode::Bruise:
        return Words::tr("The chart tells of a bruise here: this site was not to be used, wherever the mark "
                         "lies.");
    case FindingCode::Cast:
        return Words::tr("The chart tells of a plaster cast here: this site was not to be used, wherever the "
                         "mark lies.");
    case FindingCode::Fistula:
        return Words::tr("The chart tells of an arteriovenous fistula in this arm: this site was not to be "
                         "used, wherever the mark lies.");
    case FindingCode::Mastectomy:
        return Words::tr("The chart tells of a mastectomy on this side: this site was not to be used, "
                         "wherever the mark lies.");
    case FindingCode::Paralysis:
        return Words::tr("The chart tells of a paralysis of this side: this site was not to be used, "
                         "wherever the mark lies.");
    case FindingCode::LastInjection:
        return Words::tr("The chart says that the last injection was given here: this site was not to be "
                         "used, wherever the mark lies.");
    }
    return {};
}

}  // namespace fb
