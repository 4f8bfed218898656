// A learner at the presenter who finds a site by hand without a slip, as far as a test or a picture
// wants it.
#pragma once

#include "app/practice/practice_presenter.h"
#include "app/words/landmark_words.h"
#include "tests/support/sample_run.h"

namespace fb::test {

[[nodiscard]] inline QPointF pointOf(Point at) { return {at.x, at.y}; }

// A learner without a slip, but for what each picture is about.
class HandLearner {
public:
    explicit HandLearner(PracticePresenter& practice) : m_practice(practice) {}

    [[nodiscard]] const PracticeState& state() { return m_practice.state(); }
    [[nodiscard]] ByHandPresenter& hand() { return m_practice.byHand(); }

    void press(Landmark landmark)
    {
        const auto place = placeOf(*state().target, landmark).value();
        hand().feel(pointOf(place.points[place.points.size() / 2]));
    }
    void plant(std::size_t most = 9)
    {
        for (const Landmark landmark : askedLandmarks(state().convention)) {
            if (most-- == 0)
                return;
            press(landmark);
            hand().plant(landmarkName(landmark));
        }
    }
    [[nodiscard]] QPointF flawlessAt(Handle handle)
    {
        const ByHandState& now = *state().byHand;
        const Build build = flawlessBuild(*state().target, now.builder);
        return pointOf(handleAt(build, *state().target, now.builder, handle).value());
    }
    void choose()
    {
        const Build build = flawlessBuild(*state().target, state().byHand->builder);
        if (build.hand)
            hand().chooseHand(build.hand->hand);
        if (build.fingers)
            hand().chooseFingers(build.fingers->count);
    }
    void set(Handle handle, QPointF off = {})
    {
        hand().grab(handle);
        hand().move(handle, flawlessAt(handle) + off);
        hand().letGo();
    }
    // Chosen and laid, handles up to so many, then whatever field the site lies in.
    void build(std::size_t most = 9)
    {
        hand().goTo(ByHandStage::Building);
        choose();
        for (const Handle handle : handlesOf(state().byHand->kind)) {
            if (most-- == 0)
                return;
            set(handle);
        }
        if (const auto cell = flawlessBuild(*state().target, state().byHand->builder).cell)
            hand().chooseCell(*cell);
    }
    void grade()
    {
        hand().goTo(ByHandStage::Marking);
        m_practice.placeMark(pointOf(state().target->ideal));
        m_practice.grade();
    }

private:
    PracticePresenter& m_practice;
};

// A run by hand of one convention, without a window.
struct HandRun {
    explicit HandRun(Convention convention, int length = 2, std::uint64_t seed = 7)
        : run(setupFor(convention, length, seed), ownFor(convention)),
          learner(run.presenter)
    {
    }
    static PracticeSetup setupFor(Convention convention, int length, std::uint64_t seed)
    {
        PracticeSetup setup = setupOf(siteOf(convention), length);
        setup.seed = seed;
        setup.byHand = true;
        return setup;
    }
    static OwnChoices ownFor(Convention convention)
    {
        OwnChoices own;
        own.choose(convention);
        return own;
    }
    [[nodiscard]] const PracticeState& state() const { return run.state(); }
    [[nodiscard]] const ByHandState& now() const { return *run.state().byHand; }

    SampleRun run;
    HandLearner learner;
};

}  // namespace fb::test
