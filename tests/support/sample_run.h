// States as the pages get them, made from the shipped plates without a window.
#pragma once

#include <memory>

#include "app/practice/practice_presenter.h"
#include "tests/support/fakes.h"

namespace fb::test {

// A presenter with a run of seed 7 open; marks are given from the ideal point.
class SampleRun {
public:
    explicit SampleRun(int length = 3, HelpLevel help = HelpLevel::DrawnAndNamed, bool asksSide = false)
        : presenter(seeds)
    {
        presenter.setUp({.seed = 7, .length = length, .help = help, .asksSide = asksSide}, std::nullopt);
        presenter.useLibrary(*Library::load());
    }

    void gradeAt(QPointF offIdeal)
    {
        const Point ideal = state().target->ideal;
        presenter.placeMark(QPointF(ideal.x, ideal.y) + offIdeal);
        presenter.grade();
    }
    [[nodiscard]] const PracticeState& state() const { return presenter.state(); }

    CountingSeeds seeds;
    PracticePresenter presenter;
};

}  // namespace fb::test
