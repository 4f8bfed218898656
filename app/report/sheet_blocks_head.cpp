// The upper part of a feedback sheet: see sheet_blocks.h.
#include <QPainter>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/report/sheet_blocks.h"

namespace fb {

namespace sheet_head_detail {

Icon signOf(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Pass: return Icon::OnTarget;
    case Outcome::FailScore:
    case Outcome::FailTime: return Icon::OffTarget;
    case Outcome::FailCritical:
    case Outcome::StoppedSafety: return Icon::Unsafe;
    case Outcome::VoidTechnical:
    case Outcome::NoShow: return Icon::StartOver;
    }
    return Icon::Unsafe;
}

// The sheet's own title, and beside it that everything on it is invented.
SheetBlock titleBlock(const SheetWords& words, const SheetRoom& room)
{
    const double half = room.width / 2.0;
    const SetText title = room.set(words.title, half, Type::Small);
    const SetText invented = room.strong(words.invented, half - 2.0 * space::kNear);
    const double height = std::max(title.height(), words.invented.isEmpty() ? 0.0 : invented.height() + 8.0);
    return {height, 0.0, true, [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.quietInk);
                title.paint(painter, {room.left(0.0, half), top + 4.0});
                if (words.invented.isEmpty())
                    return;
                const double wide = invented.width() + 2.0 * space::kNear;
                const QRectF frame(room.left(room.width - wide, wide), top, wide, invented.height() + 8.0);
                painter.setPen(QPen(room.scheme.ink, 1.0));
                painter.setBrush(Qt::NoBrush);
                painter.drawRect(frame);
                const double set = half - 2.0 * space::kNear;
                invented.paint(painter,
                               {room.direction == Qt::RightToLeft ? frame.right() - space::kNear - set
                                                                  : frame.left() + space::kNear,
                                top + 4.0});
            }};
}

SheetBlock whoBlock(const SheetWords& words, const SheetRoom& room)
{
    const SetText name = room.set(words.student, room.width, Type::Title);
    const SetText about = room.set(words.about, room.width, Type::Body);
    return {name.height() + about.height() + space::kNear, space::kNear, false,
            [=](QPainter& painter, double top) {
                painter.setPen(room.scheme.ink);
                name.paint(painter, {0.0, top});
                painter.setPen(room.scheme.quietInk);
                about.paint(painter, {0.0, top + name.height()});
                room.rule(painter, top + name.height() + about.height() + space::kNear);
            }};
}

SheetBlock outcomeBlock(const FeedbackSheet& sheet, const SheetRoom& room)
{
    constexpr double kSign = 40.0;
    constexpr double kScore = 200.0;
    const SheetWords& words = sheet.words;
    const double indent = kSign + space::kApart;
    const double wide = room.width - indent - (words.score.isEmpty() ? 0.0 : kScore + space::kApart);
    const SetText name = room.set(words.outcome, wide, Type::Title);
    const SetText sentence = room.set(words.outcomeSentence, wide, Type::Body);
    const SetText score = room.set(words.score, kScore, Type::Title, true);
    const SetText cut = room.set(words.cut, kScore, Type::Small, true);
    const Icon sign = signOf(sheet.findings.result.decision.outcome);
    const double height = std::max(name.height() + sentence.height(), score.height() + cut.height());
    return {height + 2.0 * space::kApart, space::kApart, false, [=](QPainter& painter, double top) {
                room.rule(painter, top);
                room.rule(painter, top + height + 2.0 * space::kApart);
                top += space::kApart;
                paintIcon(painter, sign, room.scheme.ink, {room.left(0.0, kSign), top, kSign, kSign});
                painter.setPen(room.scheme.ink);
                name.paint(painter, {room.left(indent, wide), top});
                sentence.paint(painter, {room.left(indent, wide), top + name.height()});
                const double end = room.left(room.width - kScore, kScore);
                score.paint(painter, {end, top});
                painter.setPen(room.scheme.quietInk);
                cut.paint(painter, {end, top + score.height()});
            }};
}

// The rating in words, and as so many of five squares.
SheetBlock ratingBlock(const FeedbackSheet& sheet, const SheetRoom& room)
{
    constexpr int kMost = 5;
    constexpr double kSquare = 13.0;
    const int rating = sheet.findings.run.rating().value_or(0);
    const double indent = kMost * (kSquare + space::kTight) + space::kNear;
    const SetText words = room.set(sheet.words.rating, room.width - indent, Type::Body);
    return {words.height(), space::kApart, false, [=](QPainter& painter, double top) {
                painter.setPen(QPen(room.scheme.ink, 1.4));
                for (int i = 0; i < kMost; ++i) {
                    painter.setBrush(i < rating ? QBrush(room.scheme.ink) : QBrush(Qt::NoBrush));
                    const double left = room.left(i * (kSquare + space::kTight), kSquare);
                    painter.drawRect(QRectF(left, top + words.baseline() - kSquare + 1.0, kSquare, kSquare));
                }
                words.paint(painter, {room.left(indent, room.width - indent), top});
            }};
}

void append(SheetBlocks& blocks, SheetBlocks more) { std::ranges::move(more, std::back_inserter(blocks)); }

}  // namespace sheet_head_detail

SheetBlocks headBlocks(const FeedbackSheet& sheet, const SheetRoom& room)
{
    using namespace sheet_head_detail;
    const SheetWords& words = sheet.words;
    SheetBlocks blocks{titleBlock(words, room), whoBlock(words, room)};
    append(blocks, factBlocks(words.facts, room));
    blocks.push_back(outcomeBlock(sheet, room));
    SheetBlocks reasons = listBlocks(words.reasons, room);
    if (!reasons.empty())
        reasons.front().before = space::kNear;
    append(blocks, std::move(reasons));
    if (!words.rating.isEmpty())
        blocks.push_back(ratingBlock(sheet, room));
    if (!words.remark.isEmpty())
        blocks.push_back(textBlock(words.remark, room));
    if (!words.practice.isEmpty()) {
        blocks.push_back(headingBlock(words.practiceHeading, room));
        append(blocks, listBlocks(words.practice, room));
    }
    return blocks;
}

}  // namespace fb
