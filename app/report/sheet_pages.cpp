// Puts the pieces of a feedback sheet on paper, page by page: see feedback_sheet.h.
#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "app/look/style.h"
#include "app/report/item_picture.h"
#include "app/report/sheet_blocks.h"

namespace fb {

namespace sheet_pages_detail {

constexpr double kMarginMm = 17.0;
constexpr double kFoot = 62.0;  // two lines, in a wordy language

// The sheet's units on this device: the text's upper left corner, and how big a unit is.
struct Paper {
    QPointF origin;  // device
    double unit = 1.0;
    QSizeF size;  // of the text with its foot, units

    explicit Paper(QPagedPaintDevice& device)
    {
        constexpr double kMmPerInch = 25.4;
        const QPageLayout layout = device.pageLayout();
        const QRectF whole = layout.fullRect(QPageLayout::Millimeter);
        const QRectF inked = layout.paintRect(QPageLayout::Millimeter);
        const double dotsPerMm = device.logicalDpiX() / kMmPerInch;
        unit = kSheetUnitMm * dotsPerMm;
        origin = (QPointF(kMarginMm, kMarginMm) - inked.topLeft()) * dotsPerMm;
        size = (whole.size() - QSizeF(2.0 * kMarginMm, 2.0 * kMarginMm)) / kSheetUnitMm;
    }
};

void paintFoot(QPainter& painter, const SheetWords& words, const SheetRoom& room, double bottom, int page,
               int pages)
{
    const double top = bottom - kFoot + space::kNear;
    const double half = room.width / 2.0 - space::kNear;
    const QLocale locale;
    const QString which = words.page.arg(words.student, locale.toString(page), locale.toString(pages));
    room.rule(painter, top);
    painter.setPen(room.scheme.quietInk);
    const SetText caution = room.set(words.caution, half, Type::Small);
    const SetText who = room.set(which, half, Type::Small, true);
    caution.paint(painter, {room.left(0.0, half), top + space::kTight});
    who.paint(painter, {room.left(room.width - half, half), top + space::kTight});
}

SheetBlocks allBlocks(const FeedbackSheet& sheet, const SheetRoom& room)
{
    SheetBlocks blocks;
    for (const auto part : {&headBlocks, &itemBlocks, &stepBlocks})
        std::ranges::move(part(sheet, room), std::back_inserter(blocks));
    // The signatures never stand alone on the last page.
    lastLinesStay(blocks);
    std::ranges::move(recordBlocks(sheet, room), std::back_inserter(blocks));
    return blocks;
}

}  // namespace sheet_pages_detail

int paintSheet(const FeedbackSheet& sheet, QPagedPaintDevice& device)
{
    using namespace sheet_pages_detail;
    const Paper paper(device);
    QPainter painter;
    if (!painter.begin(&device))
        return 0;
    const SheetRoom room{paper.size.width(), sheet.words.direction, paperScheme()};
    const SheetBlocks blocks = allBlocks(sheet, room);
    const SheetPages pages = paginated(blocks, paper.size.height() - kFoot);
    const int count = static_cast<int>(pages.size());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(paper.origin);
    painter.scale(paper.unit, paper.unit);
    for (int page = 0; page < count; ++page) {
        if (page > 0 && !device.newPage())
            return 0;
        for (const PlacedBlock& placed : pages[static_cast<std::size_t>(page)])
            placed.block->paint(painter, placed.top);
        paintFoot(painter, sheet.words, room, paper.size.height(), page + 1, count);
    }
    return painter.end() ? count : 0;
}

}  // namespace fb
