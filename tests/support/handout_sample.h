// What a hand-out is asked for in tests: any convention on a plain body.
#pragma once

#include "app/handout/handout.h"
#include "core/body/body_values.h"

namespace fb::test {

[[nodiscard]] inline const std::shared_ptr<const Library>& sharedLibrary()
{
    static const std::shared_ptr<const Library> kLibrary = Library::load().value();
    return kLibrary;
}

[[nodiscard]] inline HandoutAsk handoutAsk(Convention convention, std::optional<View> view = {},
                                           double weightKg = 65.0, Side side = Side::Right)
{
    const std::shared_ptr<const Library>& library = sharedLibrary();
    BodyValues values;
    values.weightKg = weightKg;
    const BodyAsk ask{patientOf(values, side), convention,
                      view.value_or(askedViews(siteOf(convention)).front()), 1};
    HandoutAsk handout{makeLectureBody(*library, library->defaultPolicy(), ask).value(),
                       library->defaultPolicy(),
                       library,
                       {},
                       Qt::LeftToRight};
    handout.steps = lectureSteps(*handout.body.target);
    return handout;
}

// Of a press, of the hand that is laid, of what lies around: where a step's key is so.
[[nodiscard]] inline int stepOf(const HandoutAsk& ask, const std::string& key)
{
    for (std::size_t i = 0; i < ask.steps.size(); ++i)
        if (keyOf(ask.steps[i]) == key)
            return static_cast<int>(i);
    return -1;
}

}  // namespace fb::test
