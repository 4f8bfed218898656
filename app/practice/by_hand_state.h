// What the pages show of one request that is found by hand: its stage, what the finger feels,
// flags, handles and choices of the construction, and how far the showing is. A part of the
// practice's state.
#pragma once

#include <QPointF>
#include <QString>
#include <optional>
#include <vector>

#include "core/build/build.h"
#include "core/feel/feel.h"
#include "core/session/by_hand.h"

namespace fb {

struct PlantedFlag {
    Landmark name{};  // as the learner called it
    QPointF cm;       // viewer's frame

    friend bool operator==(const PlantedFlag&, const PlantedFlag&) = default;
};

// One of the handles a build is made with, set or not.
struct BuildHandle {
    Handle handle{};
    std::optional<QPointF> cm;  // none while it is not set
    bool isDone = false;        // set by the learner, not only laid ready
};

struct ByHandState {
    ByHandStage stage{};
    bool hasMark = false;

    // Feel
    std::optional<QPointF> finger;  // where it pressed last, cm
    std::optional<Feel> feel;       // none: no press yet, or beside the body
    Cm followed;                    // of an edge, in this press
    double fingerCm = 0.0;          // breadth of the learner's finger
    std::vector<Landmark> offered;  // names to choose from, in an order of this request's own
    std::vector<PlantedFlag> flags;
    // The flag that was planted last, and whether its typed name was misspelt.
    std::optional<Landmark> planted;
    bool misspelt = false;

    // Build
    BuildKind kind{};
    Build build;
    Builder builder;
    std::vector<BuildHandle> handles;  // in the order of teaching
    std::optional<Handle> current;     // the one keys move
    std::optional<Handle> next;        // the one to be set now; none: a choice, or all are set
    std::optional<BuildChoice> choice;
    bool asksChoice = false;  // it is to be made now
    bool isWhole = false;

    bool canUndo = false;
    bool canRedo = false;
    bool canClear = false;  // something of this stage is set

    // The showing: once a request.
    bool watched = false;
    std::optional<int> watching;  // its step, from 0
    int watchSteps = 0;
    std::optional<QPointF> shownPress;  // where the shown finger presses, and what it feels there
    std::optional<Feel> shownFeel;

    [[nodiscard]] bool isDone(ByHandStage which) const
    {
        switch (which) {
        case ByHandStage::Feeling: return !flags.empty();
        case ByHandStage::Building: return isWhole && !next;
        case ByHandStage::Marking: return hasMark;
        }
        return false;
    }
};

}  // namespace fb
