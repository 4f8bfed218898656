// Any bytes as a typed name among some terms, the first line being what is typed: a match that
// keeps its promises, in whatever order the terms come.
#include <algorithm>
#include <vector>

#include "core/naming/term_match.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

// The first line, and the terms of the lines that follow; two in a row share an id.
struct Input {
    std::u32string typed;
    std::vector<AcceptedTerm> terms;
};

Input inputFrom(const unsigned char* data, std::size_t size)
{
    constexpr std::size_t kMost = 2000;  // letters: the distance takes their product
    std::vector<std::u32string> lines(1);
    for (std::size_t i = 0; i < std::min(size, kMost); ++i) {
        if (data[i] == '\n')
            lines.emplace_back();
        else
            lines.back() += static_cast<char32_t>(data[i]);
    }
    Input input{lines.front(), {}};
    for (std::size_t i = 1; i < lines.size(); ++i)
        input.terms.push_back({static_cast<int>(i / 2), lines[i]});
    return input;
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    fuzz::Input input = fuzz::inputFrom(data, size);
    const TermMatch match = matchedTerm(input.typed, input.terms);
    const bool named = match.fit == TermFit::Exact || match.fit == TermFit::Slip;
    fuzz::demand(named == (match.id >= 0));
    if (named) {
        const auto near = [&](const AcceptedTerm& term) {
            return term.id == match.id && !term.text.empty() &&
                   std::max(term.text.size(), input.typed.size()) > 0;
        };
        fuzz::demand(std::ranges::any_of(input.terms, near));
    }
    std::ranges::reverse(input.terms);
    fuzz::demand(matchedTerm(input.typed, input.terms) == match);
    return 0;
}
