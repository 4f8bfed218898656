#include "app/checkoff/time_strip.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QStringList>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace time_strip_detail {

// A second that has begun is still left.
QString digits(Ms left)
{
    constexpr Ms kAlmost{999};
    return clockText(left + kAlmost);
}

QString timesText(const CheckOffState& state)
{
    QStringList times;
    //: Time that is left, as 1:30.
    if (state.itemLeft)
        times << TimeStrip::tr("%1 left for this item").arg(digits(*state.itemLeft));
    if (state.screenLeft)
        times << TimeStrip::tr("%1 left in all").arg(digits(*state.screenLeft));
    return times.join(QStringLiteral("   ·   "));
}

bool isTimed(const CheckOffState& state) { return state.itemLeft || state.screenLeft; }

bool isLast(const CheckOffState& state)
{
    return (state.itemLeft && *state.itemLeft <= TimeStrip::kLast) ||
           (state.screenLeft && *state.screenLeft <= TimeStrip::kLast);
}

bool crosses(const std::optional<Ms>& before, const std::optional<Ms>& now, Ms border)
{
    return before && now && *before > border && *now <= border;
}

}  // namespace time_strip_detail

using namespace time_strip_detail;

TimeStrip::TimeStrip(QWidget* parent)
    : QWidget(parent),
      m_item(parts::text(this, "itemCounter", "large")),
      m_upIcon(new QLabel(this)),
      m_up(parts::text(this, "timeWasUp")),
      m_lastIcon(new QLabel(this)),
      m_time(parts::text(this, "timeLeft")),
      m_show(parts::toggle(this, "showTime")),
      m_pause(parts::button(this, "pauseItems"))
{
    layOut();
    connect(m_show, &QToolButton::clicked, this, &TimeStrip::timeShownAsked);
    connect(m_pause, &QPushButton::clicked, this, &TimeStrip::pauseAsked);
    say();
}

void TimeStrip::layOut()
{
    for (QLabel* label : {m_item, m_time})
        label->setWordWrap(false);
    for (QWidget* part : std::initializer_list<QWidget*>{m_upIcon, m_up, m_lastIcon, m_time})
        part->hide();
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    for (QLabel* icon : {m_upIcon, m_lastIcon})
        icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_show->setToolButtonStyle(Qt::ToolButtonTextOnly);
    m_show->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_item);
    row->addSpacing(space::kApart);
    row->addWidget(m_upIcon);
    row->addWidget(m_up, 1);
    row->addStretch(1);
    row->addWidget(m_lastIcon);
    row->addWidget(m_time);
    row->addSpacing(space::kNear);
    row->addWidget(m_show);
    row->addWidget(m_pause);
}

void TimeStrip::say()
{
    parts::say(m_show, tr("Show the time"));
    //: Asks for the reason first.
    parts::say(m_pause, tr("Pause…"));
    m_up->setText(tr("The time for the last item was up."));
    // Its digits change every second: a name of its own keeps a screen reader quiet.
    m_time->setAccessibleName(tr("Time left"));
}

void TimeStrip::showState(const CheckOffState& state)
{
    const QLocale locale;
    m_item->setText(
        tr("Item %1 of %2").arg(locale.toString(state.item + 1), locale.toString(state.itemCount)));
    m_upIcon->setVisible(state.itemTimeUp);
    m_up->setVisible(state.itemTimeUp);
    m_show->setVisible(isTimed(state));
    m_show->setChecked(state.timeShown);
    // A row asks for less than a dressed button that stays down needs.
    const QMargins margins = contentsMargins();
    setMinimumHeight(m_show->sizeHint().height() + margins.top() + margins.bottom());
    m_pause->setEnabled(!state.saving);
    showTimes(state);
}

void TimeStrip::showTimes(const CheckOffState& state)
{
    const bool shown = state.timeShown && isTimed(state);
    m_time->setVisible(shown);
    m_lastIcon->setVisible(shown && isLast(state));
    m_time->setText(timesText(state));
    m_time->setAccessibleDescription(m_time->text());
    if (shown)
        tell(state);
    m_toldItem = state.item;
    m_itemLeft = state.itemLeft;
    m_screenLeft = state.screenLeft;
}

void TimeStrip::tell(const CheckOffState& state)
{
    for (const Ms border : {kMinute, kLast}) {
        const int seconds = static_cast<int>(border.count() / 1000);
        if (m_toldItem == state.item && crosses(m_itemLeft, state.itemLeft, border))
            speak(tr("%n second(s) left for this item", nullptr, seconds));
        if (crosses(m_screenLeft, state.screenLeft, border))
            speak(tr("%n second(s) left in all", nullptr, seconds));
    }
}

void TimeStrip::speak(const QString& words)
{
    m_time->setAccessibleName(words);
    QAccessibleEvent event(m_time, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
    Q_EMIT spoke(words);
}

void TimeStrip::setScheme(const Scheme& scheme)
{
    constexpr int kIcon = 18;
    const int icon = parts::scaled(this, kIcon);
    for (QLabel* label : {m_upIcon, m_lastIcon})
        label->setPixmap(pixmapFor(Icon::Caution, scheme.danger, icon, devicePixelRatioF()));
}

}  // namespace fb
