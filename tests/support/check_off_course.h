// A check-off without plates: sheets and answers made by hand, and whoever drives it, keeping every event.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

#include "core/session/check_off.h"

namespace fb::test {

// So many items on the deltoid and these steps, every step critical; no limits of time.
[[nodiscard]] inline Sheet plainSheet(int items, const std::vector<ProcedureStep>& steps = {})
{
    Sheet sheet;
    sheet.title = "Three marks";
    sheet.items.assign(static_cast<std::size_t>(items), {Site::Deltoid, Side::Left, View::ShoulderSide});
    for (const ProcedureStep step : steps)
        sheet.steps.push_back({step, true});
    sheet.secondsPerItem = 0;
    sheet.secondsOnScreen = 0;
    sheet.secondsOnManikin = 0;
    return sheet;
}

// The request that is open.
[[nodiscard]] inline const Request& openRequest(const CheckOff& off)
{
    return off.requests().at(static_cast<std::size_t>(off.item())).request;
}

// An answer to it.
[[nodiscard]] inline Answer answerTo(const CheckOff& off, Verdict verdict, double points)
{
    const Request& request = openRequest(off);
    Answer answer{off.item(), request, conventionsOf(request.site).front()};
    answer.mark = Point{1.5, -4.25};
    answer.verdict = verdict;
    answer.points = points;
    return answer;
}

[[nodiscard]] inline Answer silenceTo(const CheckOff& off)
{
    const Request& request = openRequest(off);
    return unanswered(off.item(), request, conventionsOf(request.site).front());
}

// Drives one on a clock of its own.
struct Course {
    explicit Course(Sheet sheet, int extraPercent = 0, std::uint64_t seed = 5)
        : off({std::move(sheet), seed, extraPercent})
    {
    }

    // Kept and applied at once; false: it was refused.
    bool keep(const Result<CheckOffEvent>& event)
    {
        if (!event)
            return false;
        kept.push_back(*event);
        const bool applied = off.apply(*event, now).has_value();
        EXPECT_TRUE(applied) << wordOf(event->kind);
        return applied;
    }
    // So long, looked at every half second as a page does.
    void wait(Ms time)
    {
        constexpr Ms kLook{500};
        for (Ms left = time; left > Ms{0}; left -= kLook) {
            now += std::min(left, kLook);
            off.look(now);
        }
    }
    void begin()
    {
        ASSERT_TRUE(keep(off.confirm(now)));
        ASSERT_TRUE(keep(off.start(now)));
    }
    bool answer(Verdict verdict = Verdict::OnTarget, double points = 1.0)
    {
        return keep(off.answer(answerTo(off, verdict, points), now));
    }
    bool answerSilent() { return keep(off.answer(silenceTo(off), now)); }
    void answerAll()
    {
        while (off.stage() == CheckOffStage::OnScreen)
            ASSERT_TRUE(answer());
    }
    // To the manikin phase, or to the result where nothing is observed.
    void goToManikin()
    {
        begin();
        answerAll();
        ASSERT_TRUE(keep(off.takeOver(now)));
    }
    bool observe(ProcedureStep step, Seen seen = Seen::Done, std::string remark = {})
    {
        return keep(off.observe(step, seen, std::move(remark), now));
    }

    CheckOff off;
    Ms now{1000};
    std::vector<CheckOffEvent> kept;
};

// Everything a check-off tells but its running time.
[[nodiscard]] inline std::string stateOf(const CheckOff& off)
{
    std::string state = std::string(wordOf(off.stage())) + (off.isPaused() ? " paused " : " ") +
                        std::to_string(off.item()) + " " + std::to_string(off.rating().value_or(0)) + " " +
                        std::to_string(off.held().value_or(-1.0)) + " " + off.remark() + "|" + off.endNote();
    for (const Answer& answer : off.answers())
        state += "\n" + textOf(answer);
    for (const Observation& seen : off.observations())
        state += "\n" + std::string(wordOf(seen.step)) + " " + std::string(wordOf(seen.seen)) + " " +
                 std::to_string(seen.at) + " " + seen.remark;
    return state;
}

[[nodiscard]] inline std::string textOf(const CheckOffResult& result)
{
    std::string text = std::string(wordOf(result.decision.outcome)) + " " +
                       std::to_string(result.decision.percent) + " " + std::to_string(result.itemsRight) +
                       (result.onScreenKept ? " screen" : "") + (result.onManikinKept ? " manikin" : "") +
                       " " + std::to_string(result.procedure.earned) + "/" +
                       std::to_string(result.procedure.possible);
    for (const Outcome outcome : result.decision.alsoTrue)
        text += " " + std::string(wordOf(outcome));
    for (const int item : result.unsafeItems)
        text += " #" + std::to_string(item);
    for (const Breach& breach : result.procedure.breaches)
        text += " P" + std::to_string(breach.id);
    for (const ProcedureStep step : result.procedure.missedCritical)
        text += " " + std::string(wordOf(step));
    return text;
}

}  // namespace fb::test
