// The page to practise on and its key: see handout_page.h.
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/handout/handout_page.h"
#include "app/look/style.h"

namespace fb {

namespace practice_pages_detail {

constexpr double kGap = space::kApart;
constexpr double kLeastPlate = 260.0;
constexpr double kLargeLabels = 1.0;

QString pageOf(const HandoutWords& words, int page)
{
    const QLocale locale;
    return words.page.arg(locale.toString(page), locale.toString(2));
}

// What stands on either page, at one size of its type.
class Pages {
public:
    Pages(QSizeF size, const HandoutInk& ink, double setting)
        : m_ink(ink),
          m_setting(setting),
          m_height(size.height() / setting),
          m_room(roomOf(ink.words, size.width(), setting)),
          m_half((m_room.width - kGap) / 2.0)
    {
        const HandoutWords& words = ink.words;
        m_taskHead =
            headPiece(words.task, {words.manner}, words.patient + QLatin1Char('\n') + words.howTo, m_room);
        m_keyHead = headPiece(words.keyHeading, {words.manner},
                              words.patient + QLatin1Char('\n') + words.keyHowTo, m_room);
        m_nameLine = linePiece(words.name, m_room, m_room.width * 0.62);
        m_dayLine = linePiece(words.day, m_room, m_room.width * 0.38 - kGap);
        for (std::size_t i = 0; i < words.steps.size(); ++i) {
            SheetBlocks& into = i < (words.steps.size() + 1) / 2 ? m_first : m_second;
            into.push_back(numberedPiece(words.steps[i].number, words.steps[i].look.caption, m_room, m_half));
            SheetBlocks& lines = i < (words.steps.size() + 1) / 2 ? m_firstLines : m_secondLines;
            lines.push_back(linePiece(words.steps[i].number, m_room, m_half));
        }
        m_below = {titledPiece(words.hazardsHeading, words.hazards.caption, m_room, m_room.width),
                   titledPiece(words.ruleHeading, words.rule, m_room, m_room.width)};
        std::ranges::move(sourcesPieces(words.sourcesHeading, words.sources, m_room, m_room.width),
                          std::back_inserter(m_below));
        m_order = titledPiece(words.order, {}, m_room, m_room.width);
        m_keep = titledPiece(words.keepClear, {}, m_room, m_room.width);
        measure();
    }

    [[nodiscard]] bool isFit() const { return m_plate.height() >= kLeastPlate; }

    void paintPractice(QPainter& painter) const
    {
        begin(painter);
        paintDown(painter, {m_nameLine}, {0.0, 0.0}, m_room, m_room.width * 0.62);
        paintDown(painter, {m_dayLine}, {m_room.width * 0.62 + kGap, 0.0}, m_room,
                  m_room.width * 0.38 - kGap);
        paintDown(painter, {m_taskHead}, m_nameLine.height + kGap);
        plate(painter, m_ink.words.skin);
        double top = m_plate.bottom() + kGap;
        paintDown(painter, {m_order}, top);
        top += m_order.height;
        paintDown(painter, m_firstLines, {0.0, top}, m_room, m_half);
        paintDown(painter, m_secondLines, {m_half + kGap, top}, m_room, m_half);
        top += heightOf(m_firstLines) + kGap;
        SheetBlocks last{m_keep, emptyLine(), emptyLine()};
        const double most = m_height - foot(1).height - kGap - top;
        while (heightOf(last) + emptyLine().height <= most)
            last.push_back(emptyLine());
        paintDown(painter, last, top);
        end(painter, 1);
    }

    void paintKey(QPainter& painter) const
    {
        begin(painter);
        paintDown(painter, {m_keyHead}, m_nameLine.height + kGap);
        plate(painter, m_ink.words.steps.empty() ? m_ink.words.skin : m_ink.words.steps.back().look);
        double top = m_plate.bottom() + kGap;
        paintDown(painter, m_first, {0.0, top}, m_room, m_half);
        paintDown(painter, m_second, {m_half + kGap, top}, m_room, m_half);
        top += std::max(heightOf(m_first), heightOf(m_second)) + kGap / 2.0;
        m_room.rule(painter, top);
        paintDown(painter, m_below, top + kGap / 2.0);
        end(painter, 2);
    }

private:
    [[nodiscard]] SheetBlock emptyLine() const { return linePiece({}, m_room, m_room.width); }
    [[nodiscard]] SheetBlock foot(int page) const
    {
        return footPiece(m_ink.words.caution, pageOf(m_ink.words, page), m_room);
    }

    // One place for both plates, so that one page can be held over the other.
    void measure()
    {
        const double top = m_nameLine.height + kGap + std::max(m_taskHead.height, m_keyHead.height) + kGap;
        const double practice =
            m_order.height + heightOf(m_firstLines) + kGap + heightOf({m_keep, emptyLine(), emptyLine()});
        const double key = std::max(heightOf(m_first), heightOf(m_second)) + kGap + heightOf(m_below);
        const double room = m_height - top - std::max(practice, key) - foot(2).height - 2.0 * kGap;
        const QRectF area = m_ink.words.skin.area;
        constexpr double kTallest = 1.2;
        m_plate = QRectF(0.0, top, m_room.width,
                         std::min(room, kTallest * m_room.width * area.height() / area.width()));
    }

    void begin(QPainter& painter) const
    {
        painter.save();
        painter.scale(m_setting, m_setting);
    }
    void end(QPainter& painter, int page) const
    {
        const SheetBlock piece = foot(page);
        piece.paint(painter, m_height - piece.height);
        painter.restore();
    }
    void plate(QPainter& painter, const LectureLook& look) const
    {
        paintPlate(painter, m_ink, m_plate, look, kLargeLabels);
        paintRuler(painter, m_ink, m_plate, look, m_room);
    }

    const HandoutInk& m_ink;
    double m_setting, m_height;
    SheetRoom m_room;
    double m_half;
    QRectF m_plate;
    SheetBlock m_taskHead, m_keyHead, m_nameLine, m_dayLine, m_order, m_keep;
    SheetBlocks m_first, m_second, m_firstLines, m_secondLines, m_below;
};

Pages fitting(QSizeF size, const HandoutInk& ink)
{
    constexpr double kSmaller = 0.05;
    double setting = 1.0;
    while (!Pages(size, ink, setting).isFit() && setting - kSmaller >= kLeastSetting)
        setting -= kSmaller;
    return {size, ink, setting};
}

}  // namespace practice_pages_detail

void paintPracticePage(QPainter& painter, QSizeF size, const HandoutInk& ink)
{
    practice_pages_detail::fitting(size, ink).paintPractice(painter);
}

void paintKeyPage(QPainter& painter, QSizeF size, const HandoutInk& ink)
{
    practice_pages_detail::fitting(size, ink).paintKey(painter);
}

}  // namespace fb
