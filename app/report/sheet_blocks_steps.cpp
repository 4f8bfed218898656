// The observed steps as a table: see sheet_blocks.h.
#include <QPainter>
#include <algorithm>
#include <array>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/report/sheet_blocks.h"

namespace fb {

namespace sheet_steps_detail {

constexpr double kSign = 13.0;
constexpr std::size_t kColumns = 4;

// Step, what was seen, when, remark: where each begins and how wide it is.
struct Columns {
    std::array<double, kColumns> leading{};
    std::array<double, kColumns> wide{};

    explicit Columns(double width)
    {
        constexpr std::array kShare{0.53, 0.14, 0.08, 0.25};
        double from = 0.0;
        for (std::size_t i = 0; i < kColumns; ++i) {
            leading[i] = from;
            wide[i] = kShare[i] * width - space::kNear;
            from += kShare[i] * width;
        }
    }
};

Icon signOf(Seen seen)
{
    switch (seen) {
    case Seen::Done: return Icon::Done;
    case Seen::Prompted: return Icon::Prompted;
    case Seen::NotDone: return Icon::NotDone;
    }
    return Icon::NotDone;
}

SheetBlock headRow(const QStringList& names, const SheetRoom& room)
{
    const Columns columns(room.width);
    std::vector<SetText> cells;
    for (std::size_t i = 0; i < kColumns; ++i)
        cells.push_back(room.set(names[static_cast<qsizetype>(i)], columns.wide[i], Type::Small));
    return {cells.front().height(), 0.0, true, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.quietInk);
                for (std::size_t i = 0; i < kColumns; ++i)
                    cells[i].paint(painter, {room.left(columns.leading[i], columns.wide[i]), top});
            }};
}

SheetBlock groupRow(const SheetStepWords& group, const SheetRoom& room)
{
    const SetText words = room.strong(group.name, room.width);
    return {words.height(), space::kNear, true, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                words.paint(painter, {0.0, top});
            }};
}

SheetBlock stepRow(const SheetStepWords& step, const QString& critical, const SheetRoom& room)
{
    const Columns columns(room.width);
    const double indent = kSign + space::kTight + 2.0;
    const QString name = step.critical ? critical.arg(step.name) : step.name;
    const std::vector<SetText> cells{room.set(name, columns.wide[0], Type::Body),
                                     room.set(step.seen, columns.wide[1] - indent, Type::Body),
                                     room.set(step.at, columns.wide[2], Type::Body),
                                     room.set(step.remark, columns.wide[3], Type::Small)};
    const double height = std::ranges::max(cells, {}, &SetText::height).height() + 2.0;
    const Icon sign = signOf(*step.mark);
    return {height, 0.0, false, [=](QPainter& painter, double top) {
                room.rule(painter, top);
                painter.setPen(room.scheme.ink);
                for (std::size_t i = 0; i < kColumns; ++i) {
                    const double by = i == 1 ? indent : 0.0;
                    cells[i].paint(painter,
                                   {room.left(columns.leading[i] + by, columns.wide[i] - by), top + 1.0});
                }
                const double middle = top + 1.0 + cells[1].baseline() * 0.66;
                paintIcon(painter, sign, room.scheme.ink,
                          {room.left(columns.leading[1], kSign), middle - kSign / 2.0, kSign, kSign});
            }};
}

}  // namespace sheet_steps_detail

SheetBlocks stepBlocks(const FeedbackSheet& sheet, const SheetRoom& room)
{
    using namespace sheet_steps_detail;
    const SheetWords& words = sheet.words;
    if (words.steps.empty())
        return {};
    const auto head = std::make_shared<const SheetBlock>(headRow(words.seenColumns, room));
    SheetBlocks blocks{headingBlock(words.stepsHeading, room), *head};
    for (const SheetStepWords& step : words.steps) {
        blocks.push_back(step.mark ? stepRow(step, words.critical, room) : groupRow(step, room));
        blocks.back().head = head;
    }
    if (!words.held.isEmpty()) {
        blocks.push_back(textBlock(words.held, room));
        blocks.back().before = space::kApart;
    }
    blocks.push_back(headingBlock(words.ordersHeading, room));
    std::ranges::move(listBlocks(words.orders, room), std::back_inserter(blocks));
    return blocks;
}

}  // namespace fb
