// A demonstration without a thread: bodies that are made at once or held back as a test wishes, a clock it
// turns, and everything that is always true of a demonstration's state.
#pragma once

#include <gtest/gtest.h>

#include <QPointer>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/memory_entry.h"

namespace fb::test {

class FakeBodies : public Bodies {
public:
    struct Order {
        int lane = 0;
        std::shared_ptr<const Library> library;
        std::shared_ptr<const Policy> policy;
        BodyAsk ask;
        QPointer<QObject> asker;
        Then then;
    };

    void ask(int lane, const std::shared_ptr<const Library>& library,
             const std::shared_ptr<const Policy>& policy, const BodyAsk& ask, QObject* asker,
             Then then) override
    {
        ++asked;
        Order order{lane, library, policy, ask, asker, std::move(then)};
        if (holdsBack)
            waiting.push_back(std::move(order));
        else
            answer(order);
    }

    // As a worker does that had begun all of them.
    void answerAll()
    {
        while (!waiting.empty())
            answerOne(0);
    }
    // As a worker does that had begun none of them.
    void answerNewest()
    {
        for (const int lane : {0, 1}) {
            std::optional<Order> newest;
            for (const Order& order : waiting)
                if (order.lane == lane)
                    newest = order;
            std::erase_if(waiting, [lane](const Order& order) { return order.lane == lane; });
            if (newest)
                answer(*newest);
        }
    }
    void answerOne(std::size_t index)
    {
        const Order order = waiting.at(index);
        waiting.erase(waiting.begin() + static_cast<std::ptrdiff_t>(index));
        answer(order);
    }

    bool holdsBack = false;
    std::function<bool(const BodyAsk&)> fails = [](const BodyAsk&) { return false; };
    std::vector<Order> waiting;
    int asked = 0;

private:
    void answer(const Order& order) const
    {
        if (!order.asker)
            return;
        if (fails(order.ask))
            return order.then(fault(Problem::PlateDisordered, "edge.mid-arm.skin-front"));
        const auto made = makeLectureBody(*order.library, *order.policy, order.ask);
        if (made)
            order.then(std::make_shared<const LectureBody>(*made));
        else
            order.then(tl::unexpected(made.error()));
    }
};

[[nodiscard]] inline std::shared_ptr<const Library> lectureLibrary()
{
    static const auto library = Library::load().value();
    return library;
}

struct LectureSample {
    // Opened on that site; none: not yet opened, and without a library.
    explicit LectureSample(std::optional<Site> site = Site::Deltoid)
    {
        QObject::connect(&presenter, &LecturePresenter::changed, &presenter, [this] { ++changes; });
        QObject::connect(&presenter, &LecturePresenter::pointerMoved, &presenter, [this] { ++moves; });
        if (!site)
            return;
        presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
        presenter.openSite(*site);
    }

    [[nodiscard]] const LectureState& state() const { return presenter.state(); }
    [[nodiscard]] const LectureBody& shown() const { return *presenter.state().shown; }
    [[nodiscard]] const LectureStep& step() const
    {
        return state().steps.at(static_cast<std::size_t>(state().step));
    }
    [[nodiscard]] int lastStep() const { return static_cast<int>(state().steps.size()) - 1; }
    [[nodiscard]] QPointF ideal() const { return {shown().target->ideal.x, shown().target->ideal.y}; }
    void drawLine(QPointF from, QPointF to)
    {
        presenter.press(from);
        presenter.drag(to);
        presenter.release();
    }

    FakeBodies bodies;
    TestClock clock;
    LecturePresenter presenter{bodies, clock};
    int changes = 0;
    int moves = 0;
};

// What is always true of a state; with nothing awaited more is.
inline void expectLaws(const LectureSample& sample)
{
    const LectureState& state = sample.state();
    ASSERT_EQ(state.ready, state.shown != nullptr);
    EXPECT_EQ(siteOf(state.view), siteOf(state.convention));
    EXPECT_EQ(state.body, held(state.body));
    EXPECT_GE(state.progress, 0.0);
    EXPECT_LE(state.progress, 1.0);
    EXPECT_TRUE(sample.presenter.isStepMoving() || state.progress == 1.0);
    EXPECT_LE(state.room.size(), static_cast<std::size_t>(kMostRoomMarks));
    EXPECT_TRUE(state.pinned || (state.compare != Compare::SideBySide && state.compare != Compare::Overlay));
    EXPECT_NE(sample.presenter.otherConvention(), state.convention);
    const auto other = sample.presenter.otherConvention();
    EXPECT_TRUE(other || state.compare != Compare::OtherConvention);
    EXPECT_EQ(siteOf(other.value_or(state.convention)), siteOf(state.convention));
    EXPECT_TRUE(!state.drawing || state.tool == LectureTool::Pen);
    for (const PenStroke& stroke : state.strokes)
        if (!sample.presenter.isBinding()) {
            EXPECT_EQ(stroke.anchors.size(),
                      state.strokesStay ? static_cast<std::size_t>(stroke.points.size()) : 0U);
        }
    EXPECT_TRUE(state.beside == nullptr || state.compare != Compare::Nothing);
    if (!state.shown) {
        EXPECT_TRUE(state.steps.empty());
        return;
    }
    EXPECT_EQ(state.steps, lectureSteps(*state.shown->target));
    EXPECT_GE(state.step, 0);
    EXPECT_LT(state.step, static_cast<int>(state.steps.size()));
    if (state.difference) {
        EXPECT_EQ(state.difference->apart, differenceOf(*state.shown->target, *state.beside->target).apart);
    }
    for (const RoomMark& mark : state.room) {
        const auto limb =
            markedLimb(*state.shown->plate, *state.shown->map, state.shown->ask.patient.side(), mark.at);
        EXPECT_EQ(mark.grade.has_value(), state.revealed && limb.has_value());
        if (mark.grade && limb) {
            EXPECT_EQ(mark.grade->distanceToIdeal,
                      gradeMark(*state.shown->target, *state.policy, mark.at, *limb).distanceToIdeal);
        }
    }
    if (!sample.bodies.waiting.empty())
        return;
    const BodyAsk& shown = state.shown->ask;
    EXPECT_EQ(shown.convention, state.convention);
    EXPECT_EQ(shown.view, state.view);
    EXPECT_EQ(shown.skinTone, state.skinTone);
    EXPECT_EQ(shown.patient.side(), state.side);
    EXPECT_TRUE(state.moving || shown.patient == patientOf(state.body, state.side));
    EXPECT_TRUE(!sample.presenter.isGliding() || state.moving);
    if (state.compare == Compare::Nothing)
        return;
    ASSERT_NE(state.beside, nullptr);
    const bool isOther = state.compare == Compare::OtherConvention;
    EXPECT_EQ(state.beside->ask.convention,
              isOther ? sample.presenter.otherConvention() : std::optional(state.convention));
    EXPECT_EQ(state.beside->ask.view, state.view);
    EXPECT_EQ(state.beside->ask.patient, patientOf(isOther ? state.body : *state.pinned, state.side));
    EXPECT_TRUE(state.difference.has_value());
}

}  // namespace fb::test
