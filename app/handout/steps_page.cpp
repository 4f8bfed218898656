// The page of all steps: see handout_page.h.
#include <QPainter>
#include <algorithm>
#include <optional>

#include "app/handout/handout_page.h"
#include "app/look/style.h"

namespace fb {

namespace steps_page_detail {

constexpr double kBetween = space::kApart;  // plates, either way
constexpr double kLeastPlate = 105.0;       // units: a plate that is lower shows nothing

// One way to lay the page out: how many plates in a row, how large its type.
class Page {
public:
    Page(QSizeF size, const HandoutInk& ink, int columns, double setting)
        : m_ink(ink),
          m_setting(setting),
          m_height(size.height() / setting),
          m_columns(columns),
          m_room(roomOf(ink.words, size.width(), setting)),
          m_plateWidth((m_room.width - (columns - 1) * kBetween) / columns)
    {
        const HandoutWords& words = ink.words;
        m_head = {headPiece(words.heading, {words.manner}, words.patient, m_room)};
        m_foot = {footPiece(words.caution, {}, m_room)};
        for (const HandoutStep& step : words.steps)
            m_captions.push_back(numberedPiece(step.number, step.look.caption, m_room, m_plateWidth));
        m_sideWidth = m_room.width - m_plateWidth - kBetween;
        // Under a broad plate there is room, beside a narrow one.
        const SheetBlock around = titledPiece(words.hazardsHeading, words.hazards.caption, m_room,
                                              isBroad() ? m_plateWidth : m_sideWidth);
        (isBroad() ? m_under : m_side).push_back(around);
        m_side.push_back(titledPiece(words.ruleHeading, words.rule, m_room, m_sideWidth));
        std::ranges::move(sourcesPieces(words.sourcesHeading, words.sources, m_room, m_sideWidth),
                          std::back_inserter(m_side));
        measure();
    }

    [[nodiscard]] bool isFit() const { return m_plateHeight >= kLeastPlate; }
    // Plate units to a centimetre, as painted on the page.
    [[nodiscard]] double scale() const
    {
        const QRectF area = m_ink.words.skin.area;
        return m_setting * std::min(m_plateWidth / area.width(), m_plateHeight / area.height());
    }

    void paint(QPainter& painter) const
    {
        painter.save();
        painter.scale(m_setting, m_setting);
        paintDown(painter, m_head, 0.0);
        double top = heightOf(m_head) + m_gap;
        for (int row = 0; row < rows(); ++row) {
            paintRow(painter, row, top);
            top += m_plateHeight + captionHeight(row) + m_gap;
        }
        m_room.rule(painter, top - m_gap / 2.0);
        paintPlate(painter, m_ink, {m_room.left(0.0, m_plateWidth), top, m_plateWidth, m_plateHeight},
                   m_ink.words.hazards, kPlateLabelScale);
        paintDown(painter, m_under, {0.0, top + m_plateHeight + space::kNear}, m_room, m_plateWidth);
        paintDown(painter, m_side, {m_plateWidth + kBetween, top}, m_room, m_sideWidth);
        paintDown(painter, m_foot, m_height - heightOf(m_foot));
        painter.restore();
    }

private:
    [[nodiscard]] int count() const { return static_cast<int>(m_captions.size()); }
    [[nodiscard]] int rows() const { return (count() + m_columns - 1) / m_columns; }
    [[nodiscard]] bool isBroad() const { return m_columns == 2; }
    [[nodiscard]] double underHeight() const
    {
        return m_under.empty() ? 0.0 : heightOf(m_under) + space::kNear;
    }
    [[nodiscard]] double bottomHeight() const
    {
        return std::max(m_plateHeight + underHeight(), heightOf(m_side));
    }
    [[nodiscard]] double captionHeight(int row) const
    {
        double height = 0.0;
        for (int i = row * m_columns; i < std::min(count(), (row + 1) * m_columns); ++i)
            height = std::max(height, m_captions[static_cast<std::size_t>(i)].height);
        return height + space::kTight;
    }

    // Plates take what the words leave, and no more than their area asks for; the rest becomes air.
    void measure()
    {
        double words = heightOf(m_head) + heightOf(m_foot) + (rows() + 2) * kBetween;
        for (int row = 0; row < rows(); ++row)
            words += captionHeight(row);
        const double side = heightOf(m_side);
        const double room = m_height - words;
        m_plateHeight = (room - underHeight()) / (rows() + 1);
        if (m_plateHeight + underHeight() < side)
            m_plateHeight = (room - side) / rows();
        const QRectF area = m_ink.words.skin.area;
        constexpr double kTallest = 1.12;  // of what shows the whole area
        m_plateHeight = std::min(m_plateHeight, kTallest * m_plateWidth * area.height() / area.width());
        const double used = words + rows() * m_plateHeight + bottomHeight();
        m_gap = kBetween + std::max(0.0, m_height - used) / (rows() + 2);
    }

    void paintRow(QPainter& painter, int row, double top) const
    {
        for (int column = 0; column < m_columns && row * m_columns + column < count(); ++column) {
            const auto which = static_cast<std::size_t>(row * m_columns + column);
            const double leading = column * (m_plateWidth + kBetween);
            paintPlate(painter, m_ink, {m_room.left(leading, m_plateWidth), top, m_plateWidth, m_plateHeight},
                       m_ink.words.steps[which].look, kPlateLabelScale);
            paintDown(painter, {m_captions[which]}, {leading, top + m_plateHeight + space::kTight}, m_room,
                      m_plateWidth);
        }
    }

    const HandoutInk& m_ink;
    double m_setting, m_height;
    int m_columns;
    SheetRoom m_room;
    double m_plateWidth;
    double m_sideWidth = 0.0, m_plateHeight = 0.0, m_gap = 0.0;
    SheetBlocks m_head, m_foot, m_side, m_under, m_captions;
};

}  // namespace steps_page_detail

void paintStepsPage(QPainter& painter, QSizeF size, const HandoutInk& ink)
{
    using steps_page_detail::Page;
    constexpr double kSmaller = 0.05;
    std::optional<Page> best;
    for (double setting = 1.0; setting >= kLeastSetting && !(best && best->isFit()); setting -= kSmaller) {
        for (const int columns : {3, 2}) {
            const Page page(size, ink, columns, setting);
            if (!best || !best->isFit() || page.scale() > best->scale())
                best.emplace(page);
        }
    }
    best->paint(painter);
}

}  // namespace fb
