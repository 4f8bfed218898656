// A request answered in practice by a learner who marks anywhere, finds by hand or refuses: what a check-off
// keeps of it.
#pragma once

#include <optional>

#include "core/session/answer.h"
#include "tests/property/sampling.h"
#include "tests/support/scripted_learner.h"

namespace fb::test {

struct Answered {
    Attempt attempt;
    Answer answer;
    Policy policy;
};

[[nodiscard]] inline Request requestOf(std::uint64_t seed, int number, Convention convention)
{
    const Site site = siteOf(convention);
    Request request = requestFrom(seed, number, {SiteSet::only(site), true});
    return request;
}

// The same work done in practice: the run stands at a request that is open.
inline void workByHand(Practice& run, const Attempted& work)
{
    ByHand& hand = *run.byHand();
    for (const Flag& flag : work.flags)
        hand.plant(flag);
    if (work.build.hand)
        hand.chooseHand(work.build.hand->hand);
    if (work.build.fingers)
        hand.chooseFingers(work.build.fingers->count, work.build.fingers->hand);
    const ScriptedLearner learner(run.request().patient, run.target().convention, run.request().view,
                                  run.policy());
    for (const Handle handle : handlesOf(buildKindOf(work.build.convention)))
        hand.setHandle(handle, *handleAt(work.build, run.target(), learner.builder(), handle));
    if (work.build.cell)
        hand.chooseCell(*work.build.cell);
    hand.setMark(work.mark);
}

// nullopt: the mark lay beside the body.
[[nodiscard]] inline std::optional<Answered> answeredAt(std::uint64_t seed, int number, Convention convention,
                                                        bool byHand, SeedStream& stream)
{
    const Policy policy = defaultPolicy().withConvention(convention);
    const Request request = requestOf(seed, number, convention);
    Practice run(atlas(), policy, {{request, HelpLevel::Nothing, byHand}}, 0);
    const int item = stream.below(20);
    if (stream.below(8) == 0) {
        run.refuse(findingAt(stream.below(kFindingCodeCount)));
    } else if (byHand) {
        const ScriptedLearner learner(request.patient, convention, request.view, policy);
        const auto errors = learner.everyError();
        const auto& error = errors[static_cast<std::size_t>(stream.below(static_cast<int>(errors.size())))];
        const auto planted = stream.below(2) == 0 ? std::nullopt : learner.planted(error, stream);
        workByHand(run, planted ? *planted : learner.flawless(stream));
        if (!run.byHand()->ready() || !run.gradeByHand().value_or(false))
            return std::nullopt;
    } else {
        const double reach = stream.below(2) == 0 ? 4.0 : 30.0;
        const Point mark = run.target().ideal + pointIn(stream, {{-reach, -reach}, {reach, reach}});
        if (!run.placeMark(mark) || !run.grade())
            return std::nullopt;
    }
    const Attempt& attempt = *run.graded();
    return Answered{attempt, answerOf(item, attempt, convention, policy), policy};
}

}  // namespace fb::test
