#include "app/checkoff/stopwatch.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/look/type.h"
#include "app/practice/parts.h"

namespace fb {

namespace stopwatch_detail {

constexpr double kDigits = 1.2;  // of a title's letters
constexpr double kMsInS = 1000.0;
constexpr int kIcon = 18;
constexpr int kButton = 96;

// Whole seconds while it runs, so that nothing flickers; tenths once it stands.
QString secondsText(double seconds, bool running)
{
    const double shown = running ? std::floor(seconds) : seconds;
    //: Seconds.
    return Stopwatch::tr("%1 s").arg(QLocale().toString(shown, 'f', running ? 0 : 1));
}

}  // namespace stopwatch_detail

Stopwatch::Stopwatch(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "heldTitle", "small")),
      m_seconds(parts::text(this, "heldSeconds", "figure")),
      m_icon(new QLabel(this)),
      m_bar(new QProgressBar(this)),
      m_button(parts::button(this, "holding"))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kNear);
    grid->setVerticalSpacing(space::kTight);
    grid->addWidget(m_title, 0, 0, 1, 3);
    grid->addWidget(m_seconds, 1, 0);
    grid->addWidget(m_icon, 1, 1);
    grid->addWidget(m_button, 1, 2);
    grid->addWidget(m_bar, 2, 0, 1, 3);
    grid->setColumnStretch(0, 1);
    m_seconds->setWordWrap(false);
    m_bar->setTextVisible(false);
    m_bar->setObjectName(QStringLiteral("heldBar"));
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    parts::say(m_button, tr("Start"));
    m_button->setFocusPolicy(Qt::TabFocus);
    connect(m_button, &QPushButton::clicked, this, &Stopwatch::pressed);
}

void Stopwatch::showState(const CheckOffState& state)
{
    using namespace stopwatch_detail;
    if (!state.open)
        return;
    const Sheet& sheet = state.open->sheet.sheet;
    const bool running = state.holding.has_value();
    const double seconds =
        running ? static_cast<double>(state.holding->count()) / kMsInS : state.held.value_or(0.0);
    const bool asks = sheet.protocol.zTrack;
    m_held = state.held.has_value() && !running;
    m_short = m_held && asks && seconds < sheet.heldSeconds;
    m_seconds->setText(secondsText(seconds, running || !m_held));
    constexpr int kSteps = 100;
    m_bar->setRange(0, static_cast<int>(sheet.heldSeconds * kSteps));
    m_bar->setValue(std::min(m_bar->maximum(), static_cast<int>(seconds * kSteps)));
    m_bar->setVisible(asks && sheet.heldSeconds > 0.0);
    const QString asked = parts::numberText(sheet.heldSeconds);
    //: How long the needle is held in place after injecting, and how long is asked, s.
    m_title->setText(!asks     ? tr("Held after injecting")
                     : m_short ? tr("Held for less than the %1 s asked").arg(asked)
                               : tr("Held after injecting, at least %1 s").arg(asked));
    //: The stopwatch.
    parts::say(m_button, running ? tr("Stop") : m_held ? tr("Again") : tr("Start"));
    m_button->setAccessibleName(running ? tr("Stop the stopwatch (space bar)")
                                        : tr("Start the stopwatch (space bar)"));
    m_button->setToolTip(m_button->accessibleName());
    m_button->setAccessibleDescription(m_seconds->text());
    paint();
}

void Stopwatch::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    QFont digits = fontOf(Type::Title, textScaleOf(font()));
    m_seconds->setStyleSheet(
        QStringLiteral("font-size: %1px").arg(qRound(digits.pixelSize() * stopwatch_detail::kDigits)));
    m_button->setMinimumWidth(parts::columnWidth(this, stopwatch_detail::kButton));
    paint();
}

void Stopwatch::paint()
{
    const int size = parts::scaled(this, stopwatch_detail::kIcon);
    m_icon->setFixedWidth(size);
    m_icon->setPixmap(m_held ? pixmapFor(m_short ? Icon::Caution : Icon::Done,
                                         m_short ? m_scheme.danger : m_scheme.good, size, devicePixelRatioF())
                             : QPixmap());
}

void Stopwatch::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        setScheme(m_scheme);
}

}  // namespace fb
