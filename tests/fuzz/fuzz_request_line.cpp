// Any bytes as the lines `locate --json -` and `grade --json -` answer: one line of JSON for each
// that is not blank.
#include <algorithm>
#include <sstream>

#include "app/cli/commands.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

const Library& shippedLibrary()
{
    static const std::shared_ptr<const Library> library = Library::load().value();
    return *library;
}

void answer(Command command, const std::string& lines)
{
    Arguments common;
    common.command = command;
    common.json = true;
    common.lines = true;
    std::istringstream in(lines);
    std::ostringstream out;
    const auto count = answerLines(common, shippedLibrary(), in, out);
    demand(count.has_value());
    const std::string answers = out.str();
    demand(std::ranges::count(answers, '\n') == count->answered + count->failed);
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    const std::string lines(reinterpret_cast<const char*>(data), size);
    fb::fuzz::answer(fb::Command::Locate, lines);
    fb::fuzz::answer(fb::Command::Grade, lines);
    return 0;
}
