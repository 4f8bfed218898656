#include "core/grade/build_grade.h"

#include "core/grade/build_steps.h"
#include "core/grade/flag_grade.h"

namespace fb {

namespace build_grade_detail {

// A site by hand lies where the hand was: on the limb that is asked.
MarkedLimb limbOfSite(Site site)
{
    switch (site) {
    case Site::Deltoid: return MarkedLimb::Arm;
    case Site::VastusLateralis: return MarkedLimb::Thigh;
    case Site::Ventrogluteal: return MarkedLimb::Pelvis;
    }
    return MarkedLimb::Trunk;
}

}  // namespace build_grade_detail

StepWriter::StepWriter(const Build& build, const Target& target, const Builder& builder, const Policy& policy)
    : m_build(build),
      m_target(target),
      m_builder(builder),
      m_policy(policy),
      m_flawless(flawlessBuild(target, builder))
{
}

void StepWriter::right(BuildStep step)
{
    BuildStepGrade grade;
    grade.step = step;
    m_steps.push_back(grade);
}

void StepWriter::carried(BuildStep step, Ways ways, Cm amount)
{
    BuildStepGrade grade;
    grade.step = step;
    grade.direction = ways.first;
    grade.second = ways.second;
    grade.amount = amount;
    grade.carried = true;
    m_steps.push_back(grade);
}

void StepWriter::slip(BuildStep step, BuildStepGrade what, const Build& alone)
{
    what.step = step;
    if (const auto site = siteBy(alone, m_target, m_builder)) {
        Effect effect{
            *site, {}, gradeMark(m_target, m_policy, *site, build_grade_detail::limbOfSite(m_target.site))};
        effect.moved = effect.grade.distanceToIdeal;
        what.effect = effect;
    }
    m_steps.push_back(what);
}

BuildStepGrade StepWriter::offPlace(Slip slipped, Point wanted, Point hers) const
{
    const Ways ways = waysOn(m_target, wanted, hers);
    BuildStepGrade grade;
    grade.slip = slipped;
    grade.direction = ways.first;
    grade.second = ways.second;
    grade.amount = Cm{rounded6(distance(wanted, hers))};
    return grade;
}

void StepWriter::place(BuildStep step, Slip slipped, Handle handle, double most)
{
    const Point hers = *m_build.point(handle);
    const Point wanted = *m_flawless.point(handle);
    const double off = distance(hers, wanted);
    if (off <= most + kBorderTolerance)
        return right(step);
    Build alone = m_flawless;
    alone.point(handle) = hers;
    slip(step, offPlace(slipped, wanted, hers), alone);
}

std::vector<BuildStepGrade> gradeBuild(const Build& build, const Target& target, const Builder& builder,
                                       const Policy& policy)
{
    StepWriter writer(build, target, builder, policy);
    switch (target.site) {
    case Site::Deltoid: gradeArmBuild(writer); break;
    case Site::VastusLateralis: gradeThighBuild(writer); break;
    case Site::Ventrogluteal: gradeHipBuild(writer); break;
    }
    return writer.taken();
}

std::string_view wordOf(BuildStep step)
{
    switch (step) {
    case BuildStep::FingersLaid: return "fingers_laid";
    case BuildStep::FingersLevel: return "fingers_level";
    case BuildStep::FingerCount: return "finger_count";
    case BuildStep::Base: return "base";
    case BuildStep::Apex: return "apex";
    case BuildStep::LineEnds: return "line_ends";
    case BuildStep::LineHalved: return "line_halved";
    case BuildStep::ThighEnds: return "thigh_ends";
    case BuildStep::Thirds: return "thirds";
    case BuildStep::FrontLine: return "front_line";
    case BuildStep::OuterLine: return "outer_line";
    case BuildStep::Cell: return "cell";
    case BuildStep::WhichHand: return "which_hand";
    case BuildStep::Palm: return "palm";
    case BuildStep::IndexFinger: return "index_finger";
    case BuildStep::MiddleFinger: return "middle_finger";
    case BuildStep::Corners: return "corners";
    case BuildStep::Medians: return "medians";
    }
    return {};
}

std::string_view wordOf(Slip slip)
{
    switch (slip) {
    case Slip::None: return "none";
    case Slip::FingersOff: return "fingers_off";
    case Slip::FingersTurned: return "fingers_turned";
    case Slip::FingerCount: return "finger_count";
    case Slip::BaseOff: return "base_off";
    case Slip::ApexOff: return "apex_off";
    case Slip::TopOff: return "top_off";
    case Slip::BottomOff: return "bottom_off";
    case Slip::HalfUneven: return "half_uneven";
    case Slip::ThirdsUneven: return "thirds_uneven";
    case Slip::FrontLineOff: return "front_line_off";
    case Slip::OuterLineOff: return "outer_line_off";
    case Slip::WrongCell: return "wrong_cell";
    case Slip::WrongHand: return "wrong_hand";
    case Slip::PalmOff: return "palm_off";
    case Slip::IndexOff: return "index_off";
    case Slip::IndexOnCrest: return "index_on_crest";
    case Slip::FingersClosed: return "fingers_closed";
    case Slip::CornerTrochanterOff: return "corner_trochanter_off";
    case Slip::CornerTubercleOff: return "corner_tubercle_off";
    case Slip::CornerSpineOff: return "corner_spine_off";
    case Slip::MedianUneven: return "median_uneven";
    }
    return {};
}

}  // namespace fb
