// grade: the verdict on one mark.
#include "app/cli/commands.h"
#include "app/cli/documents.h"

namespace fb {

Result<Grade> gradeFor(const Query& query, const Policy& policy, const Target& target, const Library& library,
                       Point mark)
{
    const auto atlas = library.atlas(query.view);
    if (!atlas)
        return tl::unexpected(atlas.error());
    const auto map = bodyMap(*atlas, query.view, query.patient);
    if (!map)
        return tl::unexpected(map.error());
    return markedLimb(atlas->plate(query.view), *map, query.patient.side(), mark).map([&](MarkedLimb limb) {
        return gradeMark(target, policy, mark, limb);
    });
}

Result<std::string> gradeAnswer(const Arguments& arguments, const Library& library)
{
    const auto policy = policyFor(arguments, library);
    if (!policy)
        return tl::unexpected(policy.error());
    const auto query = queryOf(arguments, *policy);
    if (!query)
        return tl::unexpected(query.error());
    const auto mark = markOf(arguments);
    if (!mark)
        return tl::unexpected(mark.error());
    const auto target = targetFor(*query, *policy, library);
    if (!target)
        return tl::unexpected(target.error());
    const auto grade = gradeFor(*query, *policy, *target, library, *mark);
    if (!grade)
        return tl::unexpected(grade.error());
    if (!arguments.json)
        return gradeText(*query, *target, *mark, *grade).toStdString();
    std::string out;
    appendGradeJson(out, *query, *policy, *target, *mark, *grade);
    return out + '\n';
}

}  // namespace fb
