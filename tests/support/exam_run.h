// A practice in exam manner, its plates read, with items as a sheet would set them.
#pragma once

#include "tests/support/sample_run.h"

namespace fb::test {

[[nodiscard]] inline std::vector<SetRequest>
examSet(const std::vector<Site>& sites, HelpLevel help = HelpLevel::DrawnAndNamed, bool byHand = false)
{
    std::vector<SetRequest> set;
    constexpr std::uint64_t kSeed = 7;
    for (const Site site : sites) {
        const RequestMix mix{SiteSet::only(site), false};
        set.push_back({requestFrom(kSeed, static_cast<int>(set.size()), mix), help, byHand});
    }
    return set;
}

class ExamRun {
public:
    explicit ExamRun(const std::vector<Site>& sites, HelpLevel help = HelpLevel::DrawnAndNamed,
                     bool byHand = false)
        : set(examSet(sites, help, byHand)),
          presenter(seeds)
    {
        const auto library = Library::load().value();
        for (const SetRequest& each : set)
            (void)library->atlas(each.request.view).value();
        m_policy = library->defaultPolicy();
        presenter.lendLibrary(library);
        examine(0);
    }

    void examine(int from) { presenter.examine(set, from, *m_policy); }
    [[nodiscard]] const PracticeState& state() const { return presenter.state(); }

    std::vector<SetRequest> set;
    CountingSeeds seeds;
    PracticePresenter presenter;

private:
    std::optional<Policy> m_policy;
};

}  // namespace fb::test
