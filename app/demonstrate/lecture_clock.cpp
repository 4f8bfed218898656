#include "app/demonstrate/lecture_clock.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace lecture_clock_detail {

constexpr int kLookMs = 250;  // oftener than the seconds it shows, so that none is left out
constexpr int kMinute = 60;
constexpr int kTwoDigits = 10;

// "4:07", "1:04:07"
QString timeText(qint64 seconds)
{
    const QLocale locale;
    const auto two = [&](qint64 number) {
        return (number < kTwoDigits ? locale.toString(0) : QString()) + locale.toString(number);
    };
    const qint64 minutes = seconds / kMinute % kMinute;
    const qint64 hours = seconds / kMinute / kMinute;
    if (hours == 0)
        //: Minutes and seconds.
        return LectureClock::tr("%1:%2").arg(locale.toString(minutes), two(seconds % kMinute));
    //: Hours, minutes and seconds.
    return LectureClock::tr("%1:%2:%3").arg(locale.toString(hours), two(minutes), two(seconds % kMinute));
}

}  // namespace lecture_clock_detail

LectureClock::LectureClock(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_time(parts::text(this, "lectureTime", "large")),
      m_word(parts::text(this, "lectureTimeWord", "small")),
      m_restart(parts::button(this, "restartClock"))
{
    m_time->setWordWrap(false);
    m_word->setWordWrap(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_time);
    row->addWidget(m_word, 1, Qt::AlignVCenter);
    row->addWidget(m_restart, 0, Qt::AlignVCenter);
    m_restart->setProperty("look", QLatin1String("quiet"));
    m_tick.setInterval(lecture_clock_detail::kLookMs);
    connect(&m_tick, &QTimer::timeout, this, &LectureClock::showTime);
    connect(m_restart, &QPushButton::clicked, this, [this] {
        m_presenter.restartClock();
        showTime();
    });
    say();
}

void LectureClock::say()
{
    //: After a time such as 12:40: how long the demonstration has been going on.
    m_word->setText(tr("elapsed"));
    //: Sets a clock back to nought.
    parts::say(m_restart, tr("Restart"));
    m_restart->setAccessibleName(tr("Restart the clock"));
    showTime();
}

void LectureClock::showTime()
{
    constexpr qint64 kMsInS = 1000;
    const QString text = lecture_clock_detail::timeText(m_presenter.elapsed().count() / kMsInS);
    if (m_time->text() != text)
        m_time->setText(text);
}

void LectureClock::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    showTime();
    m_tick.start();
}

void LectureClock::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    m_tick.stop();
}

void LectureClock::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
