// A policy as its whole file: see policy.h.
#include <nlohmann/json.hpp>

#include "core/policy/policy.h"

namespace fb {

std::string textOf(const Policy& policy)
{
    using nlohmann::json;
    json document;
    document["name"] = policy.name();
    for (const Site site : kSites)
        document["conventions"][std::string(wordOf(site))] = wordOf(policy.convention(site));
    for (const PolicyField& field : policyFields()) {
        document[std::string(field.group)][std::string(field.name)] = {{"value", policy.value(field.key)},
                                                                       {"source", policy.source(field.key)}};
    }
    // A name or source read from a file may hold bytes that are no UTF-8.
    return document.dump(1, ' ', false, json::error_handler_t::replace);
}

}  // namespace fb
