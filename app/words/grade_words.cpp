#include "app/words/grade_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/site_words.h"

namespace fb {

// lupdate follows no alias: the struct itself bears the name of its context.
struct GradeWords {
    Q_DECLARE_TR_FUNCTIONS(fb::GradeWords)
};

namespace grade_words_detail {

// What rounds to 0.0 cm on the screen.
constexpr double kNothing = 0.05;

}  // namespace grade_words_detail

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
    //: Toward the head, along the arm, the thigh or the hip.
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
    case Tissue::RectusFemoris: return GradeWords::tr("rectus femoris");
    case Tissue::FemoralVessels: return GradeWords::tr("femoral vessels and nerve");
    case Tissue::SciaticNerve: return GradeWords::tr("sciatic nerve");
    case Tissue::HipRegion: return GradeWords::tr("tendon and joint near the hip");
    case Tissue::KneeRegion: return GradeWords::tr("tendon and joint near the knee");
    case Tissue::PatellaBone: return GradeWords::tr("bone of the patella");
    case Tissue::TrochanterBone: return GradeWords::tr("bone of the greater trochanter");
    case Tissue::Hamstrings: return GradeWords::tr("hamstrings");
    case Tissue::TrochanterTendons: return GradeWords::tr("tendons round the trochanter");
    case Tissue::CrestBone: return GradeWords::tr("bone of the iliac crest");
    case Tissue::AbdominalWall: return GradeWords::tr("abdominal wall");
    case Tissue::FrontOfHip: return GradeWords::tr("front of the hip");
    case Tissue::SuperiorGluteal: return GradeWords::tr("superior gluteal nerve and artery");
    case Tissue::HipMuscle: return GradeWords::tr("muscle of the hip beside the region");
    case Tissue::ThighBelowHip: return GradeWords::tr("thigh below the hip");
    case Tissue::Pelvis: return GradeWords::tr("hip above the thigh");
    case Tissue::Leg: return GradeWords::tr("lower leg");
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

QString alongName(Site site)
{
    switch (site) {
    //: Offset along the arm, toward shoulder or elbow.
    case Site::Deltoid: return GradeWords::tr("Along the arm");
    //: Offset along the thigh, toward hip or knee.
    case Site::VastusLateralis: return GradeWords::tr("Along the thigh");
    //: Offset on the hip, along the body.
    case Site::Ventrogluteal: return GradeWords::tr("Head to foot");
    }
    return {};
}

QString acrossName(Site site)
{
    switch (site) {
    //: Offset around the arm, toward front or back.
    case Site::Deltoid: return GradeWords::tr("Around the arm");
    case Site::VastusLateralis: return GradeWords::tr("Around the thigh");
    //: Offset on the hip, toward the front of the body or its back.
    case Site::Ventrogluteal: return GradeWords::tr("Front to back");
    }
    return {};
}

QString acrossText(Site site, Cm offAnterior)
{
    const double cm = offAnterior.value();
    if (std::abs(cm) < kNothing)
        return site == Site::Deltoid ? GradeWords::tr("on the mid-lateral line")
                                     //: Neither too far forward nor too far back.
                                     : GradeWords::tr("right from front to back");
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

QString offsetsText(Site site, const Grade& grade)
{
    const bool across = std::abs(grade.offAnterior.value()) >= kNothing;
    const bool along = std::abs(grade.offDistal.value()) >= kNothing;
    if (!across && !along)
        return GradeWords::tr("on the ideal point");
    if (!across)
        return alongText(grade.offDistal);
    if (!along)
        return acrossText(site, grade.offAnterior);
    //: %1 is the offset to front or back, %2 to head or foot: "0.6 cm too far back, 1.1 cm too high".
    return GradeWords::tr("%1, %2").arg(acrossText(site, grade.offAnterior), alongText(grade.offDistal));
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
