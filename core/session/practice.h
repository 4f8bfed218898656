// One run of practice as a state machine: pick the side, mark, grade, next, summary. A run by hand
// feels and builds before it marks (by_hand.h).
//
// Pure: no clock, no files, no randomness of its own. Calls that do not fit the phase change
// nothing and return false.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/feel/feel.h"
#include "core/geometry/point.h"
#include "core/session/attempt.h"
#include "core/session/by_hand.h"
#include "core/session/request.h"
#include "core/site/locate.h"

namespace fb {

struct PracticeSetup {
    std::uint64_t seed = 1;
    int length = 10;  // requests, 1 to 200
    HelpLevel help = HelpLevel::DrawnAndNamed;
    bool asksSide = true;  // the learner first picks the patient's left or right
    RequestMix mix{};
    bool byHand = false;  // landmarks and construction by the learner's own hand; no help is drawn

    friend bool operator==(const PracticeSetup&, const PracticeSetup&) = default;
};

// RunLengthOutOfRange, NoSiteChosen or the setup itself.
[[nodiscard]] Result<PracticeSetup> checkedSetup(PracticeSetup setup);

enum class Phase { PickingSide, Feeling, Building, Marking, Graded, Summary };

class Practice {
public:
    // The atlas outlives the practice and holds what the first request needs; the setup is valid.
    Practice(Atlas atlas, Policy policy, PracticeSetup setup);
    // Exactly these requests, from that one on, each with its own help and hand; at least one, and from is
    // one of them. The seed is without meaning.
    Practice(Atlas atlas, Policy policy, std::vector<SetRequest> set, int from);
    // More plates of the same library, before a request that needs them is opened.
    void useAtlas(const Atlas& atlas) { m_atlas = atlas; }

    [[nodiscard]] Phase phase() const;
    [[nodiscard]] const PracticeSetup& setup() const { return m_setup; }
    [[nodiscard]] const Policy& policy() const { return m_policy; }
    [[nodiscard]] const Request& request() const { return m_request; }
    [[nodiscard]] const Target& target() const { return *m_target; }
    [[nodiscard]] const BodyMap& map() const { return *m_map; }
    [[nodiscard]] std::optional<Point> mark() const;
    [[nodiscard]] const std::vector<Attempt>& attempts() const { return m_attempts; }
    // The grade of the current request, once graded.
    [[nodiscard]] const Attempt* graded() const;
    // Whether the last pick of a side was wrong (the classic slip); it may be tried again.
    [[nodiscard]] bool pickedWrongSide() const { return m_pickedWrong; }

    bool pickSide(Side side);
    // MarkOutsideBody leaves an earlier mark where it was.
    [[nodiscard]] Result<bool> placeMark(Point viewer);
    bool withdrawMark();
    // Of a run by hand: NoMarkYet, NothingBuilt and the like say what is missing before a grade.
    [[nodiscard]] Result<bool> gradeByHand();
    bool grade();
    // What is being found by hand; null in a run of marks only and once it is graded. Flags, handles and
    // stages are set through it; whether a place lies on the body is asked here first.
    [[nodiscard]] ByHand* byHand();
    [[nodiscard]] const ByHand* byHand() const;
    [[nodiscard]] Result<Feel> feelAt(Point viewer) const;
    [[nodiscard]] Result<bool> plant(Landmark name, Point viewer);
    // Instead of a mark: the site is not to be used, for this reason. Ends the request like grade().
    bool refuse(FindingCode reason);
    bool next();
    // The same requests once more, from the first.
    void repeat();

private:
    void open(int number);
    [[nodiscard]] Result<MarkedLimb> limbUnder(Point viewer) const;
    [[nodiscard]] double requestWeight() const;  // by hand: of all three parts; else 1

    Atlas m_atlas;
    Policy m_policy;
    PracticeSetup m_setup;
    std::vector<SetRequest> m_set;  // none: requests are drawn from the seed
    Phase m_phase = Phase::Marking;
    Request m_request;
    std::optional<BodyMap> m_map;
    std::optional<Target> m_target;
    std::optional<Point> m_mark;
    std::optional<ByHand> m_byHand;
    std::optional<FeelMap> m_feel;
    std::optional<bool> m_sideRight;
    bool m_pickedWrong = false;
    std::vector<Attempt> m_attempts;
};

}  // namespace fb
