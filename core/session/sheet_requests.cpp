// Whom a sheet asks about.
#include "core/session/population.h"
#include "core/session/sheet.h"

namespace fb {

namespace sheet_requests_detail {

bool fits(const Patient& patient, Population population)
{
    // Weights are whole kilograms, so that an index may lie a little beyond the ends of the spread.
    const double index = patient.bodyMassIndex();
    switch (population) {
    case Population::Any: return true;
    case Population::Lean: return index < kSheetLeanBelow;
    case Population::Average: return index >= kSheetLeanBelow && index < kSheetHeavyFrom;
    case Population::Heavy: return index >= kSheetHeavyFrom;
    }
    return true;
}

// The item's own draw, and while nobody of the population comes up the draws a whole sheet farther on, which
// no other item uses.
Request drawnFor(const SheetItem& item, Population population, std::uint64_t seed, int number)
{
    const RequestMix mix{SiteSet::only(item.site), false};
    for (int draw = number;; draw += kSheetMostItems) {
        Request request = requestFrom(seed, draw, mix);
        if (!fits(request.patient, population))
            continue;
        request.number = number;
        request.view = item.view;
        if (item.side)
            request.patient = request.patient.withSide(*item.side);
        return request;
    }
}

}  // namespace sheet_requests_detail

std::vector<SetRequest> requestsOf(const Sheet& sheet, std::uint64_t seed)
{
    const std::uint64_t from = sheet.seedRule == SeedRule::SameForAll ? sheet.seed : seed;
    std::vector<SetRequest> requests;
    for (const SheetItem& item : sheet.items) {
        const int number = static_cast<int>(requests.size());
        const Request request = sheet_requests_detail::drawnFor(item, sheet.population, from, number);
        requests.push_back({request, item.help, item.byHand});
    }
    return requests;
}

}  // namespace fb
