// The grades of a build, written step by step; one function for each limb. build_grade.h is what
// others ask.
#pragma once

#include <vector>

#include "core/grade/build_grade.h"
#include "core/grade/flag_grade.h"

namespace fb {

class StepWriter {
public:
    StepWriter(const Build& build, const Target& target, const Builder& builder, const Policy& policy);

    [[nodiscard]] const Build& hers() const { return m_build; }
    [[nodiscard]] const Build& flawless() const { return m_flawless; }
    [[nodiscard]] const Target& target() const { return m_target; }
    [[nodiscard]] const Builder& builder() const { return m_builder; }
    [[nodiscard]] double limit(PolicyKey key) const { return m_policy.value(key); }

    void right(BuildStep step);
    // Right in itself, but taken along by an earlier slip.
    void carried(BuildStep step, Ways ways, Cm amount);
    // A slip with what makes it up; `alone` is the flawless build but for this slip.
    void slip(BuildStep step, BuildStepGrade what, const Build& alone);
    // What makes up a place that is off: how far, and which way hers lies from the wanted one.
    [[nodiscard]] BuildStepGrade offPlace(Slip slip, Point wanted, Point hers) const;
    // A handle against its flawless place: right within the limit, else a slip in cm and direction, with
    // the flawless build but for that handle as its effect.
    void place(BuildStep step, Slip slip, Handle handle, double limit);
    [[nodiscard]] std::vector<BuildStepGrade> taken() { return std::move(m_steps); }

private:
    const Build& m_build;
    const Target& m_target;
    const Builder& m_builder;
    const Policy& m_policy;
    Build m_flawless;
    std::vector<BuildStepGrade> m_steps;
};

void gradeArmBuild(StepWriter& writer);
void gradeThighBuild(StepWriter& writer);
void gradeHipBuild(StepWriter& writer);

}  // namespace fb
