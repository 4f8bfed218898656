// locate: the target of one patient.
#include "app/cli/commands.h"
#include "app/cli/documents.h"

#include <QFile>

namespace fb {

Result<Policy> policyFor(const Arguments& arguments, const Library& library)
{
    const std::string& file = arguments.value(Option::Policy);
    if (file.empty())
        return library.defaultPolicy();
    return library.policyWith(QFile::decodeName(QByteArray::fromStdString(file)));
}

Result<Target> targetFor(const Query& query, const Policy& policy, const Library& library)
{
    return library.atlas(query.view).and_then([&](const Atlas& atlas) {
        return locate(atlas, policyOf(query, policy), query.patient, query.convention, query.view);
    });
}

Result<std::string> locateAnswer(const Arguments& arguments, const Library& library)
{
    const auto policy = policyFor(arguments, library);
    if (!policy)
        return tl::unexpected(policy.error());
    const auto query = queryOf(arguments, *policy);
    if (!query)
        return tl::unexpected(query.error());
    const auto target = targetFor(*query, *policy, library);
    if (!target)
        return tl::unexpected(target.error());
    if (!arguments.json)
        return locateText(*query, *target).toStdString();
    std::string out;
    appendLocateJson(out, *query, *policy, *target);
    return out + '\n';
}

}  // namespace fb
