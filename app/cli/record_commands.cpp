#include "app/cli/record_commands.h"

#include "app/store/record_store.h"

namespace fb {

std::optional<Result<std::string>> recordsAnswer(const std::vector<std::string_view>& words)
{
    if (words.empty() || (words[0] != "verify" && words[0] != "backup"))
        return std::nullopt;
    const std::string command(words[0]);
    for (std::size_t i = 1; i < words.size(); ++i)
        if (i > 1 || words[i].starts_with("--"))
            return fault(Problem::ArgumentUnknown, std::string(words[i]), command);
    const QString file =
        words.size() > 1 ? QString::fromLocal8Bit(words[1].data(), static_cast<qsizetype>(words[1].size()))
                         : QString();
    if (command == "verify")
        return verifyAnswer(file.isEmpty() ? usualRecordsFile() : file);
    if (file.isEmpty())
        return fault(Problem::ArgumentMissing, "FILE");
    return backupAnswer(usualRecordsFile(), file);
}

}  // namespace fb
