// Events as lines of JSON and back, and the words of stages and events.
#include <utility>

#include "core/session/answer_json.h"
#include "core/session/check_off.h"

namespace fb {

namespace check_off_text_detail {

constexpr double kLongestTime = 1e9;  // ms, and s: far beyond a day

// What an event of its kind says beside the time.
bool saysAnswer(CheckOffEventKind kind) { return kind == CheckOffEventKind::Answered; }

bool saysObservation(CheckOffEventKind kind)
{
    return kind == CheckOffEventKind::Observed || kind == CheckOffEventKind::Withdrawn;
}

bool saysNote(CheckOffEventKind kind)
{
    using enum CheckOffEventKind;
    return kind == Paused || kind == SafetyStop || kind == Voided || kind == Rated;
}

Observation observationIn(JsonFields fields)
{
    Observation observation;
    observation.step = fields.word("step", procedureStepFrom);
    observation.seen = fields.word("seen", seenFrom);
    observation.at = fields.number("at", 0.0, kLongestTime);
    observation.remark = fields.text("remark");
    fields.noMore();
    return observation;
}

CheckOffEvent eventIn(JsonFields& fields)
{
    CheckOffEvent event;
    event.kind = fields.word("kind", [](std::string_view word) {
        return enumFrom<CheckOffEventKind>(word, kCheckOffEventKindCount);
    });
    event.onScreen = Ms{fields.whole("on_screen", 0, static_cast<int>(kLongestTime))};
    event.onManikin = Ms{fields.whole("on_manikin", 0, static_cast<int>(kLongestTime))};
    if (saysAnswer(event.kind))
        event.answer = answerIn(fields.object("answer"));
    if (saysObservation(event.kind))
        event.observation = observationIn(fields.object("observation"));
    if (event.kind == CheckOffEventKind::Held)
        event.held = fields.number("held", 0.0, kLongestTime);
    if (event.kind == CheckOffEventKind::Rated)
        event.rating = fields.whole("rating", 1, 5);
    if (saysNote(event.kind))
        event.note = fields.text("note");
    fields.noMore();
    return event;
}

}  // namespace check_off_text_detail

std::string textOf(const CheckOffEvent& event)
{
    using namespace check_off_text_detail;
    nlohmann::ordered_json object{{"kind", wordOf(event.kind)},
                                  {"on_screen", event.onScreen.count()},
                                  {"on_manikin", event.onManikin.count()}};
    if (event.answer)
        object["answer"] = jsonOf(*event.answer);
    if (const auto& seen = event.observation)
        object["observation"] = {{"step", wordOf(seen->step)},
                                 {"seen", wordOf(seen->seen)},
                                 {"at", seen->at},
                                 {"remark", seen->remark}};
    if (event.kind == CheckOffEventKind::Held)
        object["held"] = event.held;
    if (event.kind == CheckOffEventKind::Rated)
        object["rating"] = event.rating;
    if (saysNote(event.kind))
        object["note"] = event.note;
    return lineOf(object);
}

Result<CheckOffEvent> eventFrom(std::string_view text)
{
    constexpr Problem kProblem = Problem::EventNotReadable;
    JsonText read(text, {kProblem, kProblem, kProblem, kProblem});
    JsonFields fields(read);
    CheckOffEvent event = check_off_text_detail::eventIn(fields);
    if (read.fault())
        return tl::unexpected(*read.fault());
    return event;
}

std::string_view wordOf(CheckOffStage stage)
{
    switch (stage) {
    case CheckOffStage::Identity: return "identity";
    case CheckOffStage::Instructions: return "instructions";
    case CheckOffStage::OnScreen: return "on_screen";
    case CheckOffStage::Handover: return "handover";
    case CheckOffStage::OnManikin: return "on_manikin";
    case CheckOffStage::Closing: return "closing";
    case CheckOffStage::Closed: return "closed";
    }
    return {};
}

std::string_view wordOf(CheckOffEventKind kind)
{
    switch (kind) {
    case CheckOffEventKind::Confirmed: return "confirmed";
    case CheckOffEventKind::Started: return "started";
    case CheckOffEventKind::Answered: return "answered";
    case CheckOffEventKind::TookOver: return "took_over";
    case CheckOffEventKind::Observed: return "observed";
    case CheckOffEventKind::Withdrawn: return "withdrawn";
    case CheckOffEventKind::Held: return "held";
    case CheckOffEventKind::Finished: return "finished";
    case CheckOffEventKind::Paused: return "paused";
    case CheckOffEventKind::Resumed: return "resumed";
    case CheckOffEventKind::SafetyStop: return "safety_stop";
    case CheckOffEventKind::Voided: return "voided";
    case CheckOffEventKind::NoShow: return "no_show";
    case CheckOffEventKind::Rated: return "rated";
    case CheckOffEventKind::Signed: return "signed";
    }
    return {};
}

}  // namespace fb
