// locate and grade for a stream of request lines: see answerLines in commands.h.
#include <istream>
#include <ostream>

#include "app/cli/commands.h"
#include "app/cli/documents.h"

namespace fb {

namespace request_lines_detail {

class LineAnswerer {
public:
    LineAnswerer(const Arguments& common, const Library& library, const Policy& policy)
        : m_common(common),
          m_library(library),
          m_policy(policy)
    {
    }

    // False when the line was answered with an error.
    [[nodiscard]] bool append(std::string& out, std::string_view line) const
    {
        const auto answered = answer(out, line);
        if (answered)
            return true;
        Fault told = answered.error();
        if (told.where.starts_with("--"))  // in a line the names stand without dashes
            told.where.erase(0, 2);
        appendErrorJson(out, told);
        return false;
    }

private:
    // Appends only when all of it went well.
    [[nodiscard]] Result<bool> answer(std::string& out, std::string_view line) const
    {
        const auto arguments = overlaidBy(m_common, line);
        if (!arguments)
            return tl::unexpected(arguments.error());
        const auto query = queryOf(*arguments, m_policy);
        if (!query)
            return tl::unexpected(query.error());
        return m_common.command == Command::Grade ? graded(out, *arguments, *query) : located(out, *query);
    }

    [[nodiscard]] Result<bool> located(std::string& out, const Query& query) const
    {
        return targetFor(query, m_policy, m_library).map([&](const Target& target) {
            appendLocateJson(out, query, m_policy, target);
            return true;
        });
    }

    [[nodiscard]] Result<bool> graded(std::string& out, const Arguments& arguments, const Query& query) const
    {
        const auto mark = markOf(arguments);
        if (!mark)
            return tl::unexpected(mark.error());
        const auto target = targetFor(query, m_policy, m_library);
        if (!target)
            return tl::unexpected(target.error());
        return gradeFor(query, m_policy, *target, m_library, *mark).map([&](const Grade& grade) {
            appendGradeJson(out, query, m_policy, *target, *mark, grade);
            return true;
        });
    }

    const Arguments& m_common;
    const Library& m_library;
    const Policy& m_policy;
};

bool isBlank(std::string_view line) { return line.find_first_not_of(" \t\r") == std::string_view::npos; }

bool flush(std::string& answers, std::ostream& out)
{
    out.write(answers.data(), static_cast<std::streamsize>(answers.size()));
    out.flush();
    answers.clear();
    return out.good();
}

}  // namespace request_lines_detail

using namespace request_lines_detail;

Result<LineCount> answerLines(const Arguments& common, const Library& library, std::istream& in,
                              std::ostream& out)
{
    constexpr std::size_t kFull = 1 << 16;
    const auto policy = policyFor(common, library);
    if (!policy)
        return tl::unexpected(policy.error());
    if (const auto plates = library.atlas(); !plates)
        return tl::unexpected(plates.error());

    const LineAnswerer answerer(common, library, *policy);
    LineCount count;
    std::string answers;
    std::string line;
    while (std::getline(in, line)) {
        if (isBlank(line))
            continue;
        ++(answerer.append(answers, line) ? count.answered : count.failed);
        answers += '\n';
        const bool waits = in.rdbuf()->in_avail() <= 0;  // nothing more has come: somebody may be waiting
        if ((waits || answers.size() >= kFull) && !flush(answers, out))
            break;
    }
    if (!flush(answers, out))
        return fault(Problem::OutputNotWritable, "standard output");
    return count;
}

}  // namespace fb
