// Any bytes as a sequence of calls while a site is found by hand: no call crashes, what is set stays a
// number, undo leads back to nothing and redo to where it was.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/session/by_hand.h"
#include "core/site/locate.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

// Numbers and choices out of bytes; zeros when there are no more.
class Bytes {
public:
    Bytes(const unsigned char* data, std::size_t size) : m_data(data), m_left(size) {}

    [[nodiscard]] bool any() const { return m_left > 0; }
    int below(int count) { return static_cast<int>(taken()) % count; }
    // A place within reach of a hand, or a wild one.
    Point point()
    {
        switch (below(8)) {
        case 0: return {std::nan(""), 0.0};
        case 1: return {1e9, -1e9};
        case 2: return {};
        default: return {coordinate(), coordinate()};
        }
    }

private:
    unsigned taken() { return m_left > 0 ? (--m_left, *m_data++) : 0U; }
    double coordinate() { return (static_cast<double>(taken()) * 256.0 + taken()) / 65535.0 * 100.0 - 50.0; }

    const unsigned char* m_data;
    std::size_t m_left;
};

const Policy& byHandPolicy()
{
    static const Policy policy = Policy::parse(shippedFile("policy/default.json")).value();
    return policy;
}

const Plate& byHandPlate(View view)
{
    static std::array<std::optional<Plate>, kViews.size()> plates;
    auto& plate = plates[static_cast<std::size_t>(view)];
    if (!plate) {
        const std::string file = "plates/" + std::string(wordOf(view)) + ".svg";
        plate = parsePlate(shippedFile(file.c_str()), file).value();
    }
    return *plate;
}

const Target& byHandTarget(Convention convention, Side side)
{
    static const Proportions table = Proportions::parse(shippedFile("proportions/adult.json")).value();
    static std::array<std::optional<Target>, 2 * kConventions.size()> targets;
    auto& target = targets[static_cast<std::size_t>(convention) * 2 + static_cast<std::size_t>(side)];
    if (!target) {
        Atlas atlas;
        atlas.proportions = &table;
        for (const View view : kViews)
            atlas.plates[static_cast<std::size_t>(view)] = &byHandPlate(view);
        const Patient patient = Patient::make(40.0, Sex::Female, Cm{163.0}, Kg{71.0}, side).value();
        target = locate(atlas, byHandPolicy(), patient, convention, askedViews(siteOf(convention)).front())
                     .value();
    }
    return *target;
}

void call(ByHand& by, Bytes& bytes)
{
    switch (bytes.below(13)) {
    case 0: by.plant({landmarkAt(bytes.below(kLandmarkCount)), bytes.point()}); break;
    case 1: by.pullOut(landmarkAt(bytes.below(kLandmarkCount))); break;
    case 2: by.chooseHand(kSides[static_cast<std::size_t>(bytes.below(2))]); break;
    case 3: by.chooseFingers(bytes.below(5), kSides[static_cast<std::size_t>(bytes.below(2))]); break;
    case 4:
        by.chooseCell({static_cast<ThighRow>(bytes.below(3)), static_cast<ThighColumn>(bytes.below(3))});
        break;
    case 5: by.setMark(bytes.below(2) == 0 ? std::nullopt : std::optional(bytes.point())); break;
    case 6: by.beginDrag(); break;
    case 7: by.endDrag(); break;
    case 8: by.undo(); break;
    case 9: by.redo(); break;
    case 10: (void)by.goTo(static_cast<ByHandStage>(bytes.below(kByHandStageCount))); break;
    default: by.setHandle(static_cast<Handle>(bytes.below(kHandleCount)), bytes.point()); break;
    }
}

void useOf(const ByHand& by, const Target& target)
{
    const Build& build = by.build();
    for (const Step& step : figuresOf(build, target, by.builder()))
        demand(std::ranges::all_of(step.points, isFinite));
    const auto site = siteBy(build, target, by.builder());
    demand(site.has_value() == isWhole(build) && (!site || isFinite(*site)));
    if (!by.ready())
        return;
    const Grade mark = gradeMark(target, byHandPolicy(), *by.mark(), MarkedLimb::Arm);
    const ByHandGrade grade = gradeByHand(target, byHandPolicy(), by.flags(), build, mark);
    demand(grade.points >= 0.0 && grade.points <= 3.0);
    demand(grade.flags.size() == askedLandmarks(target.convention).size());
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    fuzz::Bytes bytes(data, std::min<std::size_t>(size, 2000));
    const Convention convention =
        kConventions[static_cast<std::size_t>(bytes.below(static_cast<int>(kConventions.size())))];
    const Target& target = fuzz::byHandTarget(convention, kSides[static_cast<std::size_t>(bytes.below(2))]);
    ByHand by(target, fuzz::byHandPolicy());
    while (bytes.any()) {
        fuzz::call(by, bytes);
        fuzz::useOf(by, target);
    }
    while (by.redo()) {
    }
    const auto flags = by.flags();
    const Build build = by.build();
    int undone = 0;
    while (by.undo())
        ++undone;
    fuzz::demand(isEmpty(by.build()) && by.flags().empty() && !by.mark());
    for (; undone > 0; --undone)
        fuzz::demand(by.redo());
    fuzz::demand(by.flags() == flags && by.build() == build && !by.canRedo());
    return 0;
}
