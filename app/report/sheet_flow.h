// What stands on a sheet, from top to bottom, and on which page each piece comes to stand.
#pragma once

#include <functional>
#include <memory>
#include <vector>

class QPainter;

namespace fb {

// A piece that is never torn apart. Lengths are in the units of the sheet.
struct SheetBlock {
    double height = 0.0;
    double before = 0.0;         // space above it; none at the top of a page
    bool staysWithNext = false;  // a heading never stands alone at the foot of a page
    std::function<void(QPainter&, double top)> paint;
    std::shared_ptr<const SheetBlock> head{};  // stands above it again where it begins a page
};

struct PlacedBlock {
    const SheetBlock* block = nullptr;
    double top = 0.0;  // from the top of the page's text
};
using SheetPages = std::vector<std::vector<PlacedBlock>>;

// The last few lines stay with what is put after them; what is as high as a plate does not.
void lastLinesStay(std::vector<SheetBlock>& blocks);

// At least one page. A block that is higher than a page gets one of its own. The blocks outlive the pages.
[[nodiscard]] SheetPages paginated(const std::vector<SheetBlock>& blocks, double pageHeight);

}  // namespace fb
