#include "app/checkoff/seen_button.h"

#include <QMouseEvent>
#include <QPainter>
#include <QStyle>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace seen_button_detail {

constexpr int kIcon = 16;
constexpr int kWidth = 33;
constexpr int kLeastHeight = leastControlHeight(Reach::Compact);
constexpr int kAround = 10;  // px left and right of icon and word
constexpr int kAbove = 6;
constexpr int kRound = 2;
constexpr int kRing = 3;

QColor faded(QColor colour, double share)
{
    colour.setAlphaF(static_cast<float>(share));
    return colour;
}

}  // namespace seen_button_detail

Icon iconOf(Seen seen)
{
    switch (seen) {
    case Seen::Done: return Icon::Done;
    case Seen::Prompted: return Icon::Prompted;
    case Seen::NotDone: return Icon::NotDone;
    }
    return Icon::NotDone;
}

QColor colourOf(Seen seen, const Scheme& scheme)
{
    switch (seen) {
    case Seen::Done: return scheme.good;
    case Seen::Prompted: return scheme.fair;
    case Seen::NotDone: return scheme.danger;
    }
    return scheme.danger;
}

SeenButton::SeenButton(Seen seen, QWidget* parent) : QToolButton(parent), m_seen(seen)
{
    setCheckable(true);
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    showWord(false);
}

void SeenButton::say(const QString& word, const QString& spoken)
{
    setText(word);
    setAccessibleName(spoken);
    setToolTip(spoken);
    updateGeometry();
}

void SeenButton::showWord(bool shown)
{
    setToolButtonStyle(shown ? Qt::ToolButtonTextBesideIcon : Qt::ToolButtonIconOnly);
    updateGeometry();
    update();
}

void SeenButton::setOutlined(bool outlined)
{
    m_outlined = outlined;
    update();
}

void SeenButton::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    updateGeometry();
    update();
}

int SeenButton::iconSize() const { return parts::scaled(this, seen_button_detail::kIcon); }

QSize SeenButton::sizeHint() const
{
    using namespace seen_button_detail;
    const int high = std::max(parts::columnWidth(this, kLeastHeight), fontMetrics().height() + 2 * kAbove);
    if (toolButtonStyle() == Qt::ToolButtonIconOnly)
        return {parts::scaled(this, kWidth), std::max(parts::columnWidth(this, kLeastHeight), kLeastHeight)};
    return {iconSize() + space::kTight + fontMetrics().horizontalAdvance(text()) + 2 * kAround, high};
}

QColor SeenButton::fill() const
{
    using namespace seen_button_detail;
    constexpr double kHover = 0.07;
    constexpr double kPressed = 0.16;
    if (isChecked())
        return colourOf(m_seen, m_scheme);
    if (isDown())
        return faded(m_scheme.ink, kPressed);
    return underMouse() && isEnabled() ? faded(m_scheme.ink, kHover) : QColor(Qt::transparent);
}

void SeenButton::paintEvent(QPaintEvent*)
{
    using namespace seen_button_detail;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF inside = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(m_outlined && !isChecked() ? QPen(m_scheme.quietInk) : QPen(Qt::NoPen));
    painter.setBrush(fill());
    painter.drawRoundedRect(inside, kRound, kRound);
    if (hasFocus()) {
        painter.setPen(QPen(m_scheme.focus, kRing));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(inside, kRound, kRound);
    }
    const QColor ink = isChecked()    ? m_scheme.accentInk
                       : !isEnabled() ? m_scheme.line
                       : m_outlined   ? m_scheme.ink
                                      : m_scheme.quietInk;
    const int side = iconSize();
    const bool worded = toolButtonStyle() != Qt::ToolButtonIconOnly;
    const int wide = side + (worded ? space::kTight + fontMetrics().horizontalAdvance(text()) : 0);
    const QRect row((width() - wide) / 2, 0, wide, height());
    const QRect icon =
        QStyle::alignedRect(layoutDirection(), Qt::AlignLeading | Qt::AlignVCenter, {side, side}, row);
    painter.drawPixmap(icon.topLeft(), pixmapFor(iconOf(m_seen), ink, side, devicePixelRatioF()));
    if (!worded)
        return;
    painter.setPen(ink);
    painter.drawText(row,
                     QStyle::visualAlignment(layoutDirection(), Qt::AlignTrailing) | Qt::AlignVCenter |
                         Qt::TextSingleLine,
                     text());
}

void SeenButton::mouseDoubleClickEvent(QMouseEvent* event) { event->accept(); }

}  // namespace fb
