// Everything the practice pages show, as one value. Made by the presenter, read by the pages.
#pragma once

#include <QPointF>
#include <QSet>
#include <memory>
#include <optional>
#include <vector>

#include "app/canvas/plate_view.h"
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
    Cm lower;       // along the skin from the chosen ideal point; negative: higher on the arm
    bool shown = false;
};

struct PracticeState {
    bool ready = false;           // plates and policy are read and a run is open
    std::optional<Fault> notice;  // what went wrong last; everything else stayed as it was

    PracticeSetup setup;
    Convention convention{};                     // in force
    std::optional<Convention> chosenConvention;  // when it is not the policy's own
    QString policyFile;                          // empty: the shipped policy

    Phase phase = Phase::Marking;
    std::optional<Request> request;
    Side firstFigure{};  // the patient's side that the first of the two figures shows
    bool pickedWrongSide = false;
    std::optional<QPointF> mark;  // cm
    std::optional<Attempt> graded;
    std::shared_ptr<const Target> target;  // of the request; null while nothing is open
    std::shared_ptr<const Policy> policy;
    std::vector<OtherPoint> others;  // empty until graded

    QSet<Layer> layers = allLayers();
    bool canPeel = false;
    bool companionShown = false;

    std::shared_ptr<const Picture> picture;  // null until it is made
    std::shared_ptr<const Picture> companion;
    Scene scene;
    Scene companionScene;

    std::optional<Summary> summary;  // in the summary only
    // In the summary: one arm for all marks, a right one of the plate's own reference body.
    std::shared_ptr<const Picture> runPicture;
    Scene runScene;
};

}  // namespace fb
