#include "app/report/sheet_flow.h"

#include <algorithm>

namespace fb {

namespace sheet_flow_detail {

// How much room a block needs together with those it must not be parted from.
double heightTogether(const std::vector<SheetBlock>& blocks, std::size_t first)
{
    double height = blocks[first].height;
    for (std::size_t i = first; blocks[i].staysWithNext && i + 1 < blocks.size(); ++i)
        height += blocks[i + 1].before + blocks[i + 1].height;
    return height;
}

}  // namespace sheet_flow_detail

void lastLinesStay(std::vector<SheetBlock>& blocks)
{
    constexpr std::size_t kLines = 3;
    constexpr double kHighest = 120.0;
    const std::size_t first = blocks.size() - std::min(kLines, blocks.size());
    for (std::size_t i = blocks.size(); i > first && blocks[i - 1].height < kHighest; --i)
        blocks[i - 1].staysWithNext = true;
}

SheetPages paginated(const std::vector<SheetBlock>& blocks, double pageHeight)
{
    using sheet_flow_detail::heightTogether;
    SheetPages pages(1);
    double top = 0.0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool isTop = pages.back().empty();
        const double before = isTop ? 0.0 : blocks[i].before;
        const bool isJoined = i > 0 && blocks[i - 1].staysWithNext;
        if (!isTop && !isJoined && top + before + heightTogether(blocks, i) > pageHeight) {
            pages.emplace_back();
            top = 0.0;
            if (const SheetBlock* head = blocks[i].head.get()) {
                pages.back().push_back({head, 0.0});
                top = head->height;
            }
        } else {
            top += before;
        }
        pages.back().push_back({&blocks[i], top});
        top += blocks[i].height;
    }
    return pages;
}

}  // namespace fb
