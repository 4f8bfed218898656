// Any bytes as a plate: refused with a fault, or a plate every later step can live with.
#include <cmath>

#include "core/body/moved_ink.h"
#include "core/grade/grade.h"
#include "core/site/locate.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

const Proportions& plateProportions()
{
    static const Proportions table = Proportions::parse(shippedFile("proportions/adult.json")).value();
    return table;
}

const Policy& platePolicy()
{
    static const Policy policy = Policy::parse(shippedFile("policy/default.json")).value();
    return policy;
}

void useOf(const Plate& plate)
{
    const Atlas atlas{&plate, &plate, &plateProportions()};
    const Patient patient = Patient::make(40.0, Sex::Female, Cm{163.0}, Kg{71.0}, Side::Left).value();
    const auto map = bodyMap(atlas, plate.view, patient);
    if (!map)
        return;
    const Bounds paper = movedInk(plate, *map, patient).paper;
    demand(!std::isnan(paper.low.x + paper.low.y + paper.high.x + paper.high.y));
    const auto limb = markedLimb(plate, *map, Side::Left, {1.0, -4.0});
    const auto target = locate(atlas, platePolicy(), patient, Convention::DeltoidStrip, plate.view);
    if (target)
        demand(!std::isnan(gradeMark(*target, platePolicy(), {1.0, -4.0}, limb.value_or(MarkedLimb::Arm))
                               .distanceToIdeal.value()));
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    const auto plate = fb::parsePlate({reinterpret_cast<const char*>(data), size}, "fuzz.svg");
    if (plate)
        fb::fuzz::useOf(*plate);
    else
        fb::fuzz::demand(plate.error().where == "fuzz.svg" || !plate.error().where.empty());
    return 0;
}
