#include "app/demonstrate/lecture_painter_page.h"

#include <QFontMetricsF>
#include <algorithm>

#include "app/look/type.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace lecture_page_detail {

constexpr double kPressScale = 1.8;  // of the text face: as large as its labels
constexpr double kSpare = 1.04;      // letters a little larger than they have to be
constexpr double kMargin = 16.0;
constexpr double kTop = 7.0;
constexpr double kGap = 6.0;
constexpr double kBetween = 18.0;  // two plates, or heading and manner in one line
constexpr double kCaptionRows = 2.0;
constexpr double kWide = 1.7;  // breadth over height: room for heading and manner in one line
constexpr int kHeadingPixels = 37;

QFont legendFont()
{
    QFont font = fontOf(Type::Request, 1.0);
    font.setPixelSize(kUprightPixels);
    return font;
}

// The display face's old figures read as letters: "I.2".
QFont captionFont(const QString& caption)
{
    const bool hasFigures = std::ranges::any_of(caption, [](QChar letter) { return letter.isDigit(); });
    return hasFigures ? plainFont() : legendFont();
}

QFont headingFont()
{
    QFont font = fontOf(Type::Title, 1.0);
    font.setPixelSize(kHeadingPixels);
    return font;
}

double unitOf(double height)
{
    static const double capital = std::min({capitalOf(labelFont(false)), capitalOf(labelFont(true)),
                                            capitalOf(plainFont()), capitalOf(pressFont())});
    return height * kLeastLetter * kSpare / std::max(1.0, capital);
}

bool fitsInOneLine(const QString& heading, const QString& manner, double width)
{
    return QFontMetricsF(headingFont()).horizontalAdvance(heading) + kBetween +
               QFontMetricsF(labelFont(true)).horizontalAdvance(manner) + 2.0 <=
           width;
}

// The same for all sites, so that nothing moves from one to the next: one line has room for every heading
// with its manner, or none has.
bool fitAllInOneLine(double width)
{
    return std::ranges::all_of(kConventions, [width](Convention convention) {
        const QString manner = conventionName(convention);
        return std::ranges::all_of(kSides, [&](Side side) {
            return fitsInOneLine(lectureHeading(siteOf(convention), side), manner, width);
        });
    });
}

SetLines cautionLines(const QRectF& room, Qt::LayoutDirection direction)
{
    return setLines(cautionSentence(), labelFont(true), room, Qt::AlignHCenter, direction, Balance::Even);
}

// As many lines as the longest usual name needs.
double nameHeightIn(double width, Qt::LayoutDirection direction)
{
    constexpr double kAnyIndex = 38.0;
    return setLines(bodyMassIndexText(kAnyIndex), plainFont(), QRectF(0, 0, width, 0), Qt::AlignHCenter,
                    direction, Balance::Filled)
        .box.height();
}

QRectF scaledBy(double unit, const QRectF& box) { return {box.topLeft() * unit, box.size() * unit}; }

class Composer {
public:
    explicit Composer(const LectureFace& face) : m_face(face)
    {
        m_page.plan = lecturePlan(face.size, static_cast<int>(face.panes.size()), face.direction);
    }

    LecturePage composed()
    {
        caution();
        if (m_face.isReady && !m_face.panes.empty()) {
            heading();
            caption();
            for (std::size_t i = 0; i < m_face.panes.size(); ++i)
                pane(i);
        }
        return std::move(m_page);
    }

private:
    void add(SetLines set, const QRectF& backing = {})
    {
        m_page.words.push_back({std::move(set), m_face.scheme.ink, backing});
    }

    void caution() { add(cautionLines(m_page.plan.caution, m_face.direction)); }

    // In one line where it has room for both; else the manner stands below, over the plates if it must.
    void heading()
    {
        const LectureLook& look = m_face.panes.front().look;
        const QRectF& room = m_page.plan.heading;
        const SetLines title =
            setLines(look.heading, headingFont(), room, Qt::AlignLeading, m_face.direction, Balance::Filled);
        SetLines manner = setLines(look.manner, labelFont(true), room, Qt::AlignTrailing, m_face.direction,
                                   Balance::Filled);
        const bool isOneLine = room.height() < leadingOf(headingFont()) + 1.0 &&
                               fitsInOneLine(look.heading, look.manner, room.width());
        if (isOneLine) {
            manner = movedTo(manner, title.box.bottom() - manner.box.height() - 1.0);
        } else {
            manner = setLines(look.manner, labelFont(true), room, Qt::AlignLeading, m_face.direction,
                              Balance::Filled);
            manner = movedTo(manner, title.box.bottom());
        }
        QRectF backing;
        if (std::max(manner.box.bottom(), title.box.bottom()) > room.bottom() + kGap)
            backing = manner.box.adjusted(-kGap, 0, kGap, 0);
        m_covered += backing;
        add(title);
        add(manner, backing);
    }

    // It grows upward, over the plates if it must.
    void caption()
    {
        const QRectF& room = m_page.plan.caption;
        const QString& words = m_face.panes.front().look.caption;
        const SetLines set =
            setLines(words, captionFont(words), room, Qt::AlignHCenter, m_face.direction, Balance::Even);
        const double spare = room.height() - set.box.height();
        QRectF backing;
        if (spare < -1.0)
            backing = QRectF(0, room.bottom() - set.box.height() - kGap, m_page.plan.size.width(),
                             set.box.height() + kGap);
        m_covered += backing;
        m_captionBacking = backing;
        add(movedTo(set, spare < 0.0 ? room.bottom() - set.box.height() : room.top() + spare / 2.0), backing);
    }

    // Where labels may go: the plate without what the words around it cover.
    [[nodiscard]] QRectF paperOf(QRectF place) const
    {
        for (const QRectF& covered : m_covered) {
            if (!covered.intersects(place))
                continue;
            if (covered.center().y() > place.center().y())
                place.setBottom(covered.top());
            else
                place.setTop(covered.bottom());
        }
        return place.adjusted(4, 2, -4, -2);
    }

    // Under its pane; over its lower edge where the caption has grown that far.
    void name(int pane, const QString& words)
    {
        if (pane >= m_page.plan.names.size() || words.isEmpty())
            return;
        QRectF room = m_page.plan.names[pane];
        const QRectF caption = m_captionBacking;
        const bool isCovered = caption.intersects(room);
        if (isCovered)
            room.moveBottom(caption.top());
        const SetLines set =
            setLines(words, plainFont(), room, Qt::AlignHCenter, m_face.direction, Balance::Filled);
        if (isCovered)
            m_covered += room;
        add(set, isCovered ? room : QRectF());
    }

    void pane(std::size_t index)
    {
        const LecturePane& shown = m_face.panes[index];
        const int i = static_cast<int>(index);
        LecturePage::Pane pane;
        pane.place = m_page.plan.panes[i];
        pane.frame = frameOf(m_face, i);
        pane.cmToUnits =
            pane.frame.cmToWidget() * QTransform::fromScale(1.0 / m_page.plan.unit, 1.0 / m_page.plan.unit);
        name(i, shown.name);
        const QRectF paper = paperOf(pane.place);
        QVector<QRectF> taken;
        if (shown.look.press) {
            pane.press = {pane.cmToUnits.map(shown.look.press->cm),
                          pane.frame.pixelsPerCm() / m_page.plan.unit, paper, kPressScale};
            pane.pressText = shown.look.press->words;
            pane.pressWords = pressWordsBox(*shown.look.press, pane.press, {}, m_face.direction);
            taken += pressBox(*shown.look.press, pane.press, {}, m_face.direction);
        }
        pane.labels = lectureLabels(shown.look.scene + shown.extra, m_face.scheme, pane.cmToUnits, paper,
                                    taken, laidBars(shown.look));
        m_page.panes.push_back(pane);
    }

    const LectureFace& m_face;
    LecturePage m_page;
    QVector<QRectF> m_covered;
    QRectF m_captionBacking;
};

}  // namespace lecture_page_detail

LectureLayout LecturePlan::scaled() const
{
    using lecture_page_detail::scaledBy;
    LectureLayout layout;
    layout.heading = scaledBy(unit, heading);
    layout.caption = scaledBy(unit, caption);
    layout.caution = scaledBy(unit, caution);
    // Whole pixels, so that a drawing lies on them as it was painted.
    for (const QRectF& pane : panes)
        layout.panes.push_back(scaledBy(unit, pane).toRect());
    layout.textScale = 2.0 * unit;
    return layout;
}

LecturePlan lecturePlan(QSizeF picture, int panes, Qt::LayoutDirection direction)
{
    using namespace lecture_page_detail;
    LecturePlan plan;
    plan.unit = unitOf(std::max(1.0, picture.height()));
    plan.size = picture / plan.unit;
    const double width = plan.size.width() - 2 * kMargin;
    const double row = leadingOf(legendFont());
    const double manner = fitAllInOneLine(width) ? 0.0 : leadingOf(labelFont(true));
    plan.heading = QRectF(kMargin, kTop, width, leadingOf(headingFont()) + manner);
    const double cautionHeight = cautionLines(QRectF(kMargin, 0, width, 0), direction).box.height();
    plan.caution = QRectF(kMargin, plan.size.height() - kGap - cautionHeight, width, cautionHeight);
    const double captionHeight = kCaptionRows * row;
    plan.caption = QRectF(kMargin, plan.caution.top() - 2 * kGap - captionHeight, width, captionHeight);
    const double top = plan.heading.bottom() + kGap;
    double bottom = plan.caption.top() - kGap;
    const int count = std::max(1, panes);
    const double each = (plan.size.width() - (count - 1) * kBetween) / count;
    const double nameHeight = panes > 1 ? nameHeightIn(each, direction) : 0.0;
    bottom -= nameHeight;
    for (int i = 0; i < count; ++i) {
        const int place = direction == Qt::RightToLeft ? count - 1 - i : i;
        const double left = place * (each + kBetween);
        plan.panes.push_back(QRectF(left, top, each, bottom - top));
        if (panes > 1)
            plan.names.push_back(QRectF(left, bottom, each, nameHeight));
    }
    return plan;
}

QFont pressFont() { return fontOf(Type::Body, lecture_page_detail::kPressScale); }

LecturePage pageOf(const LectureFace& face)
{
    if (face.blank)
        return {lecturePlan(face.size, static_cast<int>(face.panes.size()), face.direction), {}, {}};
    return lecture_page_detail::Composer(face).composed();
}

}  // namespace fb
