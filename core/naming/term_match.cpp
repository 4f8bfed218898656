#include "core/naming/term_match.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <vector>

namespace fb {

namespace term_detail {

constexpr int kFar = std::numeric_limits<int>::max() / 2;
constexpr int kMostForgiven = 3;      // letters forgiven in any term
constexpr std::size_t kShortest = 5;  // letters: a shorter word must be right
constexpr std::size_t kLongWord = 8;
constexpr std::size_t kLettersPerSlip = 4;

int wholeAllowance(std::size_t letters)
{
    if (letters < kShortest)
        return 0;
    return std::clamp(static_cast<int>(letters / kLettersPerSlip), 1, kMostForgiven);
}

int wordAllowance(const std::u32string& typed, const std::u32string& meant)
{
    if (meant.size() < kShortest)
        return 0;
    return meant.size() >= kLongWord && typed.front() == meant.front() ? 2 : 1;
}

std::vector<std::u32string> wordsOf(std::u32string_view text)
{
    std::vector<std::u32string> words;
    bool within = false;
    for (const char32_t c : text) {
        if (c == U' ') {
            within = false;
            continue;
        }
        if (!within)
            words.emplace_back();
        words.back() += c;
        within = true;
    }
    return words;
}

std::u32string joined(const std::vector<std::u32string>& words)
{
    std::u32string text;
    for (const std::u32string& word : words) {
        if (!text.empty())
            text += U' ';
        text += word;
    }
    return text;
}

// What one word costs as another; far when that is more than its allowance.
int wordCost(const std::u32string& typed, const std::u32string& meant)
{
    const int cost = editDistance(typed, meant);
    return cost <= wordAllowance(typed, meant) ? cost : kFar;
}

// Least cost of the typed words as the meant ones, in order; two of either side may have grown
// together or been parted, at the cost of the space.
int costByWord(const std::vector<std::u32string>& typed, const std::vector<std::u32string>& meant)
{
    const std::size_t rows = typed.size() + 1;
    const std::size_t columns = meant.size() + 1;
    std::vector<int> cost(rows * columns, kFar);
    const auto at = [&](std::size_t i, std::size_t j) -> int& { return cost[i * columns + j]; };
    at(0, 0) = 0;
    for (std::size_t i = 1; i < rows; ++i) {
        for (std::size_t j = 1; j < columns; ++j) {
            int best = at(i - 1, j - 1) + wordCost(typed[i - 1], meant[j - 1]);
            if (i >= 2)
                best = std::min(best,
                                at(i - 2, j - 1) + 1 + wordCost(typed[i - 2] + typed[i - 1], meant[j - 1]));
            if (j >= 2)
                best = std::min(best,
                                at(i - 1, j - 2) + 1 + wordCost(typed[i - 1], meant[j - 2] + meant[j - 1]));
            at(i, j) = std::min(best, kFar);
        }
    }
    return cost.back();
}

}  // namespace term_detail

using namespace term_detail;

int editDistance(std::u32string_view a, std::u32string_view b)
{
    const std::size_t width = b.size() + 1;
    std::vector<int> before(width);
    std::vector<int> last(width);
    std::vector<int> row(width);
    std::iota(last.begin(), last.end(), 0);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j < width; ++j) {
            const int changed = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({changed, last[j] + 1, row[j - 1] + 1});
            if (i >= 2 && j >= 2 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
        before.swap(last);
        last.swap(row);
    }
    return last.back();
}

TermMatch matchedTerm(std::u32string_view typed, std::span<const AcceptedTerm> terms)
{
    const std::vector<std::u32string> words = wordsOf(typed);
    const std::u32string text = joined(words);
    const auto lengthsPart = [&](const AcceptedTerm& term) {
        const std::size_t longer = std::max(term.text.size(), text.size());
        return longer - std::min(term.text.size(), text.size()) > static_cast<std::size_t>(kMostForgiven);
    };
    int bestCost = kFar;
    int bestId = -1;
    for (const AcceptedTerm& term : terms) {
        if (text.empty() || lengthsPart(term))
            continue;
        const int cost = editDistance(text, term.text);
        if (cost < bestCost && cost <= wholeAllowance(term.text.size()) &&
            costByWord(words, wordsOf(term.text)) <= wholeAllowance(term.text.size())) {
            bestCost = cost;
            bestId = term.id;
        }
    }
    if (bestCost == kFar)
        return {TermFit::Unknown, -1};
    for (const AcceptedTerm& term : terms) {
        if (term.id != bestId && !lengthsPart(term) && editDistance(text, term.text) <= bestCost)
            return {TermFit::Unclear, -1};
    }
    return {bestCost == 0 ? TermFit::Exact : TermFit::Slip, bestId};
}

}  // namespace fb
