// A check-off driven by chance: any call at any time, on a clock that sleeps, jumps and runs backwards, on a
// machine that may lose its power after any kept event. Beside it a plain account of what each student
// really used, to hold it against.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "tests/support/check_off_course.h"
#include "tests/support/random_sheet.h"

namespace fb::test {

class Chaos {
public:
    Chaos(std::uint64_t seed, Sheet sheet, int extraPercent);

    // One thing happens; a fatal failure of the test where a law is broken.
    void happen();
    [[nodiscard]] const CheckOff& off() const { return m_off; }
    [[nodiscard]] const std::vector<CheckOffEvent>& kept() const { return m_kept; }
    [[nodiscard]] int refused() const { return m_refused; }
    // What the phases should have counted, by the account beside.
    [[nodiscard]] Ms screenUsed() const { return m_screen; }
    [[nodiscard]] Ms manikinUsed() const { return m_manikin; }

    // Fresh, with the kept events applied that went through their texts.
    [[nodiscard]] CheckOff replayed(std::size_t count) const;

private:
    void tick(bool counted);
    [[nodiscard]] Result<CheckOffEvent> anyAsk();
    [[nodiscard]] Result<CheckOffEvent> likelyAsk();
    [[nodiscard]] Result<CheckOffEvent> askOnManikin();
    void keep(const CheckOffEvent& event);
    void crash();

    SeedStream m_stream;
    CheckOff m_off;
    Ms m_now{0};
    Ms m_screen{0}, m_manikin{0};
    Ms m_noted[2]{};  // the last count that was kept without an event
    std::vector<CheckOffEvent> m_kept;
    int m_refused = 0;
};

inline Chaos::Chaos(std::uint64_t seed, Sheet sheet, int extraPercent)
    : m_stream(seed),
      m_off({std::move(sheet), seed, extraPercent})
{
}

// A look at the clock after any turn of its hands.
inline void Chaos::tick(bool counted)
{
    Ms turn{m_stream.below(900)};
    switch (m_stream.below(12)) {
    case 0: turn = Ms{1990 + m_stream.below(20)}; break;
    case 1: turn = Ms{2000 + m_stream.below(9'000'000)}; break;
    case 2: turn = Ms{-m_stream.below(100'000)}; break;
    default: break;
    }
    m_now += turn;
    m_off.look(m_now);
    if (!counted || m_off.isPaused() || turn < Ms{0} || turn > Ms{2000})
        return;
    if (m_off.stage() == CheckOffStage::OnScreen)
        m_screen += turn;
    if (m_off.stage() == CheckOffStage::OnManikin)
        m_manikin += turn;
}

inline Result<CheckOffEvent> Chaos::askOnManikin()
{
    const auto step = procedureStepAt(m_stream.below(kProcedureStepCount));
    switch (m_stream.below(6)) {
    case 0: return m_off.withdraw(step, m_now);
    case 1: return m_off.hold(m_stream.between(-1.0, 20.0), m_now);
    case 2: return m_off.finish(m_now);
    default: break;
    }
    const auto& steps = m_off.setup().sheet.steps;
    const auto own =
        steps.empty() || m_stream.below(4) == 0
            ? step
            : steps[static_cast<std::size_t>(m_stream.below(static_cast<int>(steps.size())))].step;
    return m_off.observe(own, static_cast<Seen>(m_stream.below(kSeenCount)),
                         m_stream.below(3) == 0 ? "r" : "", m_now);
}

// What usually comes next at this stage.
inline Result<CheckOffEvent> Chaos::likelyAsk()
{
    if (m_off.isPaused())
        return m_off.resume(m_now);
    switch (m_off.stage()) {
    case CheckOffStage::Identity: return m_off.confirm(m_now);
    case CheckOffStage::Instructions: return m_off.start(m_now);
    case CheckOffStage::OnScreen:
        if (m_off.isTimeUp())
            return m_off.answer(silenceTo(m_off), m_now);
        return m_off.answer(
            answerTo(m_off, static_cast<Verdict>(m_stream.below(kVerdictCount)), m_stream.unit()), m_now);
    case CheckOffStage::Handover: return m_off.takeOver(m_now);
    case CheckOffStage::OnManikin: return askOnManikin();
    case CheckOffStage::Closing:
        if (tossed(m_stream))
            return m_off.sign(m_now);
        return m_off.rate(m_stream.below(7), "remark", m_now);
    case CheckOffStage::Closed: break;
    }
    return m_off.sign(m_now);
}

inline Result<CheckOffEvent> Chaos::anyAsk()
{
    switch (m_stream.below(40)) {
    case 0: return m_off.confirm(m_now);
    case 1: return m_off.start(m_now);
    case 2: return m_off.takeOver(m_now);
    case 3: return askOnManikin();
    case 4:
    case 5: return m_off.pause(tossed(m_stream) ? "fire drill" : "", m_now);
    case 6: return m_off.resume(m_now);
    case 7: return m_off.rate(3, {}, m_now);
    case 8: return m_off.sign(m_now);
    case 9: return m_off.noShow(m_now);
    case 10:
        if (m_stream.below(4) == 0)
            return tossed(m_stream) ? m_off.stopForSafety("faint", m_now)
                                    : m_off.voidTechnical("power cut", m_now);
        break;
    case 11:
        if (m_off.item() < static_cast<int>(m_off.requests().size()))
            return m_off.answer(silenceTo(m_off), m_now);
        break;
    default: break;
    }
    return likelyAsk();
}

inline void Chaos::happen()
{
    tick(true);
    if (m_stream.below(3) == 0) {
        m_noted[0] = m_off.onScreen();
        m_noted[1] = m_off.onManikin();
    }
    if (m_stream.below(25) == 0)
        crash();
    // Writing it all down is slow: a part of the asks stands for all of them.
    const bool compares = m_stream.below(6) == 0;
    const auto all = [&] { return compares ? stateOf(m_off) + textOf(m_off.result()) : std::string(); };
    const std::string before = all();
    const auto event = anyAsk();
    ASSERT_EQ(all(), before) << "an ask changed something";
    if (event)
        keep(*event);
    else
        ++m_refused;
}

// Keeping takes a while, of which a student pays nothing and the assessor's clock all.
inline void Chaos::keep(const CheckOffEvent& event)
{
    using enum CheckOffEventKind;
    const bool goesOn = event.kind == Observed || event.kind == Withdrawn || event.kind == Held;
    ASSERT_EQ(event.onScreen, m_screen);
    ASSERT_EQ(event.onManikin, m_manikin);
    for (int i = m_stream.below(3); i > 0; --i)
        tick(goesOn);
    m_kept.push_back(event);
    ASSERT_TRUE(m_off.apply(event, m_now)) << wordOf(event.kind);
    m_noted[0] = m_noted[1] = Ms{0};
}

inline CheckOff Chaos::replayed(std::size_t count) const
{
    CheckOff fresh(m_off.setup());
    for (std::size_t i = 0; i < count; ++i) {
        const std::string text = textOf(m_kept[i]);
        const auto read = eventFrom(text);
        EXPECT_TRUE(read) << text;
        if (!read || textOf(*read) != text || !fresh.apply(*read, std::nullopt)) {
            ADD_FAILURE() << "event " << i << ": " << text;
            break;
        }
    }
    return fresh;
}

// The power fails. What comes back has the last count that was kept, never more than was used.
inline void Chaos::crash()
{
    CheckOff back = replayed(m_kept.size());
    ASSERT_EQ(stateOf(back), stateOf(m_off));
    m_now = Ms{m_stream.below(100'000)};
    back.resumeAt(m_now, m_noted[0], m_noted[1]);
    ASSERT_EQ(stateOf(back), stateOf(m_off));
    ASSERT_LE(back.onScreen(), m_screen);
    ASSERT_LE(back.onManikin(), m_manikin);
    m_off = back;
    m_screen = m_off.onScreen();
    m_manikin = m_off.onManikin();
}

}  // namespace fb::test
