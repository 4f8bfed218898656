// One request found by hand, as a state machine: feel and plant flags, build, mark, in the
// learner's own time, with undo and redo until it is graded.
//
// Pure. A call that does not fit changes nothing and says what is missing; going back to an
// earlier stage is always allowed.
#pragma once

#include <optional>
#include <vector>

#include "core/basics/problem.h"
#include "core/grade/by_hand_grade.h"

namespace fb {

enum class ByHandStage { Feeling, Building, Marking };
inline constexpr int kByHandStageCount = static_cast<int>(ByHandStage::Marking) + 1;

class ByHand {
public:
    // The measures of the learner's hand are the policy's.
    ByHand(Target target, const Policy& policy);

    [[nodiscard]] ByHandStage stage() const { return m_stage; }
    [[nodiscard]] const std::vector<Flag>& flags() const { return m_now.flags; }
    [[nodiscard]] const Build& build() const { return m_now.build; }
    [[nodiscard]] const std::optional<Point>& mark() const { return m_now.mark; }
    [[nodiscard]] const Builder& builder() const { return m_builder; }
    [[nodiscard]] bool watched() const { return m_watched; }

    // Each of these is one step of undo. Points are in the viewer's frame; whether one lies on the body is
    // asked of the plate before (markedLimb). Planting under a name that is taken moves that flag.
    void plant(const Flag& flag);
    bool pullOut(Landmark name);
    bool setHandle(Handle handle, Point to);  // false: not ready, or nothing changed
    void chooseHand(Side hand);
    void chooseFingers(int count, Side laysWith);  // 2 or 3
    bool chooseCell(ThighCell cell);
    void setMark(std::optional<Point> mark);
    bool clear();  // everything of the present stage; false: there was nothing

    // A drag is one step of undo however often its handle moves between these two.
    void beginDrag();
    void endDrag();

    [[nodiscard]] bool canUndo() const { return !m_past.empty(); }
    [[nodiscard]] bool canRedo() const { return !m_future.empty(); }
    // Both go to the stage in which the step was made.
    bool undo();
    bool redo();

    // NoFlagPlanted, NothingBuilt, BuildNotWhole (what: the word of the first handle or choice missing).
    [[nodiscard]] Result<bool> goTo(ByHandStage stage);
    // Once a request: the program shows how; the attempt says so afterwards.
    bool watch();

    // Whether it can be graded: the faults of goTo, and NoMarkYet.
    [[nodiscard]] Result<bool> ready() const;

private:
    struct State {
        ByHandStage stage{};
        std::vector<Flag> flags;
        Build build;
        std::optional<Point> mark;

        friend bool operator==(const State&, const State&) = default;
    };
    void change(const State& next);
    [[nodiscard]] Result<bool> builtEnough() const;

    Target m_target;
    Builder m_builder;
    ByHandStage m_stage = ByHandStage::Feeling;
    State m_now;
    std::vector<State> m_past, m_future;
    bool m_dragging = false;
    bool m_dragKept = false;
    bool m_watched = false;
};

}  // namespace fb
