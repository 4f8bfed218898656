// Any bytes as a policy, complete or over the shipped one: a fault, or numbers in their ranges
// that give every convention a region with its ideal point inside.
#include "core/site/deltoid.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

void useOf(const Policy& policy)
{
    for (const PolicyField& field : policyFields()) {
        demand(policy.value(field.key) >= field.low && policy.value(field.key) <= field.high);
        demand(!policy.source(field.key).empty());
    }
    for (const Convention convention : kConventions) {
        const DeltoidBand band = heldBand(deltoidBand(convention, policy, 31.0), policy, 31.0, 10.0);
        demand(band.top < band.bottom && band.ideal >= band.top && band.ideal <= band.bottom &&
               band.halfWidth > 0.0);
    }
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    static const Policy shipped = Policy::parse(fuzz::shippedFile("policy/default.json")).value();
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (const auto whole = Policy::parse(text))
        fuzz::useOf(*whole);
    if (const auto over = Policy::parseOver(text, shipped))
        fuzz::useOf(*over);
    return 0;
}
