#include "app/words/grade_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/site_words.h"

namespace fb {

namespace grade_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::GradeWords)
};

// What rounds to 0.0 cm on the screen.
constexpr double kNothing = 0.05;

}  // namespace grade_words_detail

using GradeWords = grade_words_detail::Words;
using grade_words_detail::kNothing;

QString verdictName(Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return GradeWords::tr("On target");
    case Verdict::Acceptable: return GradeWords::tr("Acceptable");
    case Verdict::OffTarget: return GradeWords::tr("Off target");
    case Verdict::Unsafe: return GradeWords::tr("Unsafe");
    }
    return {};
}

QString verdictSentence(Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return GradeWords::tr("The mark lies inside the target region.");
    case Verdict::Acceptable:
        return GradeWords::tr("The mark lies just outside the target region, within the margin "
                              "your lab accepts.");
    case Verdict::OffTarget: return GradeWords::tr("The mark lies outside the target region.");
    case Verdict::Unsafe: return GradeWords::tr("A needle at this mark can do harm.");
    }
    return {};
}

QString directionName(Direction direction)
{
    switch (direction) {
    case Direction::None: return GradeWords::tr("no particular way");
    //: Toward the head, along the arm.
    case Direction::High: return GradeWords::tr("too high");
    case Direction::Low: return GradeWords::tr("too low");
    //: Toward the front of the body.
    case Direction::Forward: return GradeWords::tr("too far forward");
    case Direction::Back: return GradeWords::tr("too far back");
    }
    return {};
}

QString tissueName(Tissue tissue)
{
    switch (tissue) {
    case Tissue::ThickMuscle: return GradeWords::tr("thick part of the muscle");
    case Tissue::AcromionBone: return GradeWords::tr("bone of the acromion");
    case Tissue::SubacromialBursa: return GradeWords::tr("subacromial bursa");
    case Tissue::AxillaryNerve: return GradeWords::tr("axillary nerve");
    case Tissue::RadialNerve: return GradeWords::tr("radial nerve");
    case Tissue::ThinMuscle: return GradeWords::tr("thin part of the muscle");
    case Tissue::Trunk: return GradeWords::tr("trunk");
    case Tissue::Forearm: return GradeWords::tr("forearm");
    }
    return {};
}

QString alongText(Cm offDistal)
{
    const double cm = offDistal.value();
    if (std::abs(cm) < kNothing)
        return GradeWords::tr("right height");
    return cm > 0.0 ? GradeWords::tr("%1 too low").arg(cmText(cm))
                    : GradeWords::tr("%1 too high").arg(cmText(-cm));
}

QString acrossText(Cm offAnterior)
{
    const double cm = offAnterior.value();
    if (std::abs(cm) < kNothing)
        return GradeWords::tr("on the mid-lateral line");
    return cm > 0.0 ? GradeWords::tr("%1 too far forward").arg(cmText(cm))
                    : GradeWords::tr("%1 too far back").arg(cmText(-cm));
}

QString borderText(Cm distanceToBorder)
{
    const double cm = distanceToBorder.value();
    if (std::abs(cm) < kNothing)
        return GradeWords::tr("on the border");
    return cm < 0.0 ? GradeWords::tr("%1 inside").arg(cmText(-cm))
                    : GradeWords::tr("%1 outside").arg(cmText(cm));
}

QString offsetsText(const Grade& grade)
{
    const bool across = std::abs(grade.offAnterior.value()) >= kNothing;
    const bool along = std::abs(grade.offDistal.value()) >= kNothing;
    if (!across && !along)
        return GradeWords::tr("on the ideal point");
    if (!across)
        return alongText(grade.offDistal);
    if (!along)
        return acrossText(grade.offAnterior);
    //: %1 is the offset across the arm, %2 along it: "0.6 cm too far back, 1.1 cm too high".
    return GradeWords::tr("%1, %2").arg(acrossText(grade.offAnterior), alongText(grade.offDistal));
}

QString leanSentence(Direction way, Point lean)
{
    switch (way) {
    case Direction::None: return GradeWords::tr("Your marks lean no particular way.");
    case Direction::High:
        return GradeWords::tr("On average your marks lie %1 too high.").arg(cmText(-lean.y));
    case Direction::Low: return GradeWords::tr("On average your marks lie %1 too low.").arg(cmText(lean.y));
    case Direction::Forward:
        return GradeWords::tr("On average your marks lie %1 too far forward.").arg(cmText(lean.x));
    case Direction::Back:
        return GradeWords::tr("On average your marks lie %1 too far back.").arg(cmText(-lean.x));
    }
    return {};
}

}  // namespace fb
