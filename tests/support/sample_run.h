// States as the pages get them, made from the shipped plates without a window.
#pragma once

#include <memory>

#include "app/practice/practice_presenter.h"
#include "tests/support/fakes.h"

namespace fb::test {

// What ships, with every plate read that a run of this setup and its companions need, so that
// nothing has to be waited for.
[[nodiscard]] inline std::shared_ptr<const Library> libraryFor(const PracticeSetup& setup)
{
    static const std::shared_ptr<const Library> library = Library::load().value();
    for (int i = 0; i < setup.length; ++i)
        (void)library->atlas(requestFrom(setup.seed, i, setup.mix).view).value();
    return library;
}

// A presenter with a run of seed 7 open; marks are given from the ideal point.
class SampleRun {
public:
    explicit SampleRun(int length = 3, HelpLevel help = HelpLevel::DrawnAndNamed, bool asksSide = false)
        : SampleRun(PracticeSetup{.seed = 7, .length = length, .help = help, .asksSide = asksSide, .mix = {}})
    {
    }
    explicit SampleRun(const PracticeSetup& setup, const OwnChoices& own = {}) : presenter(seeds)
    {
        presenter.setUp(setup, own);
        presenter.useLibrary(libraryFor(setup));
    }

    void gradeAt(QPointF offIdeal)
    {
        const Point ideal = state().target->ideal;
        presenter.placeMark(QPointF(ideal.x, ideal.y) + offIdeal);
        presenter.grade();
    }
    void refuse(FindingCode reason)
    {
        presenter.chooseReason(true);
        presenter.refuse(reason);
    }
    [[nodiscard]] const PracticeState& state() const { return presenter.state(); }

    CountingSeeds seeds;
    PracticePresenter presenter;
};

// A run of one site whose first chart rules the site out (or notes something harmless).
[[nodiscard]] inline PracticeSetup setupWithFinding(Site site, bool ruledOut)
{
    PracticeSetup setup{
        .seed = 1, .length = 2, .help = HelpLevel::DrawnAndNamed, .asksSide = false, .mix = {}};
    setup.mix = {SiteSet::only(site), true};
    for (;; ++setup.seed) {
        const Request first = requestFrom(setup.seed, 0, setup.mix);
        if (first.finding && isRuledOut(first) == ruledOut)
            return setup;
    }
}

[[nodiscard]] inline PracticeSetup setupOf(Site site, int length = 3)
{
    PracticeSetup setup{
        .seed = 7, .length = length, .help = HelpLevel::DrawnAndNamed, .asksSide = false, .mix = {}};
    setup.mix = {SiteSet::only(site), false};
    return setup;
}

}  // namespace fb::test
