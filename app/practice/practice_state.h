// Everything the practice pages show, as one value. Made by the presenter, read by the pages.
#pragma once

#include <QPointF>
#include <QSet>
#include <memory>
#include <optional>
#include <vector>

#include "app/canvas/plate_view.h"
#include "app/doors/settings.h"
#include "app/practice/by_hand_state.h"
#include "app/scene/scene.h"
#include "core/basics/problem.h"
#include "core/policy/policy.h"
#include "core/session/practice.h"
#include "core/session/summary.h"
#include "core/site/target.h"

namespace fb {

// What can be peeled with one button.
enum class Peel { Skin, Muscle, NervesAndVessels, Bone };
inline constexpr std::array kPeels{Peel::Skin, Peel::Muscle, Peel::NervesAndVessels, Peel::Bone};

[[nodiscard]] QSet<Layer> layersOf(Peel peel);
[[nodiscard]] QSet<Layer> allLayers();

// Another convention's ideal point on the same body.
struct OtherPoint {
    Convention convention{};
    QPointF ideal;  // viewer's frame, cm
    // From the chosen ideal point, of the target's surface; negative: higher, further back.
    Cm lower;
    Cm forward;
    bool shown = false;
};

// In a check-off: what becomes of the answer to the item that is shown.
enum class Keeping {
    Open,    // not confirmed yet
    Saving,  // confirmed, or its time is up: on its way to the disk, and nothing can be changed
    Failed   // could not be saved; Confirm tries again
};

struct SiteSummary {
    Site site{};
    Summary summary;
};

struct PracticeState {
    bool ready = false;           // plates and policy are read and a run is open
    std::optional<Fault> notice;  // what went wrong last; everything else stayed as it was

    // A check-off: the items of a sheet without any feedback. graded, others, hand, summary and watching
    // are never set, and whoever gave the items goes on to the next one.
    bool exam = false;
    Keeping keeping = Keeping::Open;

    PracticeSetup setup;
    OwnChoices own;      // only what is not the policy's own
    QString policyFile;  // empty: the shipped policy
    // A policy that was read and waits for the learner's word: using it starts the run anew.
    bool policyOffered = false;
    QString offeredPolicy;  // its file; empty: the shipped policy

    Phase phase = Phase::Marking;
    Convention convention{};  // in force for the request's site
    std::optional<Request> request;
    Side firstFigure{};  // the patient's side that the first of the two figures shows
    bool pickedWrongSide = false;
    std::optional<QPointF> mark;        // cm
    bool canRefuse = false;             // "not here" is an answer now
    bool choosingReason = false;        // the learner is about to answer so
    std::optional<ByHandState> byHand;  // while a request is being found by hand
    std::optional<Attempt> graded;
    std::shared_ptr<const Target> target;  // of the request; null while nothing is open
    std::shared_ptr<const Policy> policy;
    std::vector<OtherPoint> others;  // empty until graded

    QSet<Layer> layers = allLayers();
    bool canPeel = false;
    bool companionShown = false;

    bool handShown = true;  // the drawn hand, where the convention lays one and the mark is graded

    std::shared_ptr<const Picture> picture;  // null until it is made
    std::shared_ptr<const Picture> hand;     // laid over it once graded; null where none is laid
    // Of the learner's own hand in a run by hand: open; two and three fingers laid together.
    std::shared_ptr<const Plate> handArt;
    std::array<std::shared_ptr<const Plate>, 2> fingerArt;
    std::shared_ptr<const Picture> companion;
    Scene scene;
    Scene companionScene;

    std::optional<Summary> summary;   // in the summary only, likewise the rest
    std::vector<SiteSummary> bySite;  // one for each site that was asked
    Site runSite{};                   // whose marks are drawn
    // One body for all marks of a site, a right one, the plate's own reference.
    std::shared_ptr<const Picture> runPicture;
    Scene runScene;
    std::vector<ByHandGrade> foundByHand;  // one for each request that was found by hand and graded
};

// Whether the chart rules out the very site that is asked.
[[nodiscard]] bool isRuledOut(const Request& request);
// Whether an answer is awaited: feeling, building, marking.
[[nodiscard]] bool isAnswering(Phase phase);

}  // namespace fb
