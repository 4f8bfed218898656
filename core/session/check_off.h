// One student's check-off as a state machine made of events. Whoever drives it asks for an event, keeps it
// (on disk), and only then applies it: so what was kept is what happened, and a check-off that was cut
// off by a crash is the same events applied again.
//
// Pure: no clock of its own. `now` is a monotonic clock's reading (counted_time.h). A call that does not
// fit the stage is CheckOffOutOfOrder and changes nothing.
//
//   Identity -> Instructions -> OnScreen -> Handover -> OnManikin -> Closing -> Closed
//
// Without observed steps Handover leads to Closing. Voided, no-show and safety stop lead to Closing at once.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/scoring/pass_rule.h"
#include "core/session/answer.h"
#include "core/session/counted_time.h"
#include "core/session/sheet.h"

namespace fb {

enum class CheckOffStage { Identity, Instructions, OnScreen, Handover, OnManikin, Closing, Closed };
inline constexpr int kCheckOffStageCount = static_cast<int>(CheckOffStage::Closed) + 1;

enum class CheckOffEventKind {
    Confirmed,  // identity
    Started,    // the first item is shown
    Answered,   // an item, or its time was up
    TookOver,   // the manikin phase begins
    Observed,   // a step; said again, the later word counts
    Withdrawn,  // an observation taken back
    Held,       // seconds the needle stayed after injecting
    Finished,   // the manikin phase
    Paused,     // note: the reason
    Resumed,
    SafetyStop,  // note: why
    Voided,      // note: why
    NoShow,
    Rated,  // 1 to 5, and a remark in note
    Signed  // closes it
};
inline constexpr int kCheckOffEventKindCount = static_cast<int>(CheckOffEventKind::Signed) + 1;

struct CheckOffEvent {
    CheckOffEventKind kind{};
    Ms onScreen{0};  // counted so far
    Ms onManikin{0};
    std::optional<Answer> answer{};
    std::optional<Observation> observation{};  // of Withdrawn: its step
    double held = 0.0;
    int rating = 0;
    std::string note{};
};

struct CheckOffSetup {
    Sheet sheet;
    std::uint64_t seed = 1;
    int extraPercent = 0;  // accommodation: so much more time, 0 to 200
};

// What stands on the result and the feedback sheet.
struct CheckOffResult {
    Decision decision;
    ProcedureGrade procedure;
    std::vector<int> unsafeItems;  // by number, from 0
    bool onScreenKept = true;
    bool onManikinKept = true;
    int itemsRight = 0;  // on target or acceptable, or rightly refused
};

class CheckOff {
public:
    // The setup's sheet is valid.
    explicit CheckOff(CheckOffSetup setup);

    [[nodiscard]] CheckOffStage stage() const { return m_stage; }
    [[nodiscard]] const CheckOffSetup& setup() const { return m_setup; }
    [[nodiscard]] const std::vector<SetRequest>& requests() const { return m_requests; }
    [[nodiscard]] int item() const { return static_cast<int>(m_answers.size()); }  // the next to answer
    [[nodiscard]] const std::vector<Answer>& answers() const { return m_answers; }
    [[nodiscard]] const std::vector<Observation>& observations() const { return m_observations; }
    [[nodiscard]] const Observation* seen(ProcedureStep step) const;
    [[nodiscard]] std::optional<double> held() const { return m_held; }
    [[nodiscard]] bool isPaused() const { return m_paused; }
    [[nodiscard]] const std::optional<int>& rating() const { return m_rating; }
    [[nodiscard]] const std::string& remark() const { return m_remark; }    // with the rating
    [[nodiscard]] const std::string& endNote() const { return m_endNote; }  // of a stop, a void or a no-show

    // Time. look() is to be called at least twice a second while a stage is timed; nothing else reads
    // the clock. Left: nullopt without a limit; never negative.
    void look(Ms now);
    [[nodiscard]] Ms onScreen() const { return m_onScreen.used(); }
    [[nodiscard]] Ms onManikin() const { return m_onManikin.used(); }
    [[nodiscard]] std::optional<Ms> itemLeft() const;
    [[nodiscard]] std::optional<Ms> screenLeft() const;
    [[nodiscard]] std::optional<Ms> manikinLeft() const;
    // The item's or the whole screen's time is up: answer with unanswered() now.
    [[nodiscard]] bool isTimeUp() const;

    // Asks: what would happen. Nothing changes until apply().
    [[nodiscard]] Result<CheckOffEvent> confirm(Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> start(Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> answer(Answer answer, Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> takeOver(Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> observe(ProcedureStep step, Seen seen, std::string remark,
                                                Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> withdraw(ProcedureStep step, Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> hold(double seconds, Ms now) const;
    // StepsNotRated (what: how many) while a step of the sheet has no observation.
    [[nodiscard]] Result<CheckOffEvent> finish(Ms now) const;
    // ReasonMissing without one, likewise safety stop and void.
    [[nodiscard]] Result<CheckOffEvent> pause(std::string reason, Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> resume(Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> stopForSafety(std::string why, Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> voidTechnical(std::string why, Ms now) const;
    [[nodiscard]] Result<CheckOffEvent> noShow(Ms now) const;  // before the first item only
    [[nodiscard]] Result<CheckOffEvent> rate(int rating, std::string remark, Ms now) const;
    // RatingMissing unless rated (a void or a no-show needs none).
    [[nodiscard]] Result<CheckOffEvent> sign(Ms now) const;

    // Applies a kept event. With `now` none the clock stands until the next resumeAt: so are events applied
    // again after a crash. CheckOffOutOfOrder for one that cannot have happened.
    //
    // A student's clock goes on from what the event says, so keeping it costs no time. Keep one event at a
    // time: ask for the next when the last is applied. Observations and seconds held alone may overlap, but
    // are applied in the order they were asked in.
    [[nodiscard]] Result<bool> apply(const CheckOffEvent& event, std::optional<Ms> now);
    // After a crash: the clock goes on with what was counted, or more where a later count was kept.
    void resumeAt(Ms now, Ms onScreen, Ms onManikin);

    // From what has been kept so far; final once the stage is Closing.
    [[nodiscard]] CheckOffResult result() const;

private:
    [[nodiscard]] CheckOffEvent event(CheckOffEventKind kind, Ms now) const;
    [[nodiscard]] CheckOffEvent noted(CheckOffEventKind kind, std::string note, Ms now) const;
    // The event, if it can happen now: what asks and apply() both go by.
    [[nodiscard]] Result<CheckOffEvent> asked(CheckOffEvent event) const;
    [[nodiscard]] Result<bool> fits(const CheckOffEvent& event) const;
    [[nodiscard]] bool fitsStage(CheckOffEventKind kind) const;
    [[nodiscard]] bool fitsWhatIsSaid(const CheckOffEvent& event) const;
    [[nodiscard]] Result<bool> isWhole(const CheckOffEvent& event) const;
    [[nodiscard]] tl::unexpected<Fault> outOfOrder() const;
    [[nodiscard]] Observation timed(Observation observation) const;
    [[nodiscard]] int unratedSteps() const;

    [[nodiscard]] Ms limit(int seconds) const;  // with the student's extra time
    [[nodiscard]] bool isItemUp(Ms onScreen) const;
    [[nodiscard]] bool isScreenUp(Ms onScreen) const;

    void change(const CheckOffEvent& event);
    void changeStage(CheckOffEventKind kind);
    void addAnswer(const CheckOffEvent& event);
    void addObservation(const Observation& observation);
    void setClocks(const CheckOffEvent& event, std::optional<Ms> now);
    void runClocks(Ms now);
    [[nodiscard]] ProcedureGrade judged() const;

    CheckOffSetup m_setup;
    std::vector<SetRequest> m_requests;
    CheckOffStage m_stage = CheckOffStage::Identity;
    CountedTime m_onScreen, m_onManikin;
    Ms m_keptOnScreen{0}, m_keptOnManikin{0};  // by the last event
    Ms m_itemBegan{0};                         // onScreen() when the item was shown
    std::vector<Answer> m_answers;
    std::vector<Observation> m_observations;
    std::optional<double> m_held;
    std::optional<int> m_rating;
    std::string m_remark, m_endNote;
    std::optional<CheckOffEventKind> m_end;  // SafetyStop, Voided, NoShow
    bool m_paused = false;
    bool m_screenRanOut = false;  // with items unanswered
    bool m_tookOver = false;
};

// One line of JSON. EventNotReadable (where: key).
[[nodiscard]] std::string textOf(const CheckOffEvent& event);
[[nodiscard]] Result<CheckOffEvent> eventFrom(std::string_view text);

[[nodiscard]] std::string_view wordOf(CheckOffStage stage);
[[nodiscard]] std::string_view wordOf(CheckOffEventKind kind);

}  // namespace fb
