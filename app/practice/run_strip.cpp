#include "app/practice/run_strip.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

RunStrip::RunStrip(QWidget* parent)
    : QWidget(parent),
      m_name(parts::text(this, "seedName", "small")),
      m_seed(new QLineEdit(this)),
      m_replay(parts::button(this, "replay")),
      m_new(parts::button(this, "newRun"))
{
    m_seed->setObjectName(QStringLiteral("seed"));
    // As many digits as the largest seed has.
    constexpr int kDigits = 17;
    m_seed->setMaxLength(kDigits);
    m_seed->setAlignment(Qt::AlignTrailing);
    m_name->setWordWrap(false);
    m_name->setBuddy(m_seed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    for (QWidget* part : std::initializer_list<QWidget*>{m_name, m_seed, m_replay, m_new})
        row->addWidget(part);
    const auto ask = [this] { Q_EMIT replayAsked(m_seed->text()); };
    connect(m_seed, &QLineEdit::returnPressed, this, ask);
    connect(m_replay, &QPushButton::clicked, this, ask);
    connect(m_new, &QPushButton::clicked, this, &RunStrip::newRunAsked);
    say();
}

void RunStrip::showState(const PracticeState& state)
{
    const QString seed = state.ready ? QString::number(state.setup.seed) : QString();
    if (seed == m_shownSeed)
        return;
    m_shownSeed = seed;
    m_seed->setText(seed);
}

void RunStrip::say()
{
    //: The number that fixes which requests a run asks.
    m_name->setText(tr("Seed"));
    m_seed->setAccessibleName(tr("Seed of the run"));
    parts::say(m_replay, tr("Replay"));
    m_replay->setToolTip(tr("Start the run of this seed"));
    parts::say(m_new, tr("New run…"));
    m_seed->setToolTip(tr("Seed of the run; Enter starts it again"));
    fit();
}

void RunStrip::setTight(bool tight)
{
    m_tight = tight;
    m_name->setVisible(!tight);
    fit();
    // At once, for whoever asks next how much room it needs.
    layout()->invalidate();
    updateGeometry();
}

void RunStrip::setReplayShown(bool shown)
{
    m_replay->setVisible(shown);
    layout()->invalidate();
    updateGeometry();
}

void RunStrip::fit()
{
    constexpr int kShownDigits = 9;
    constexpr int kFewDigits = 6;  // one more than a fresh seed has
    const QString digits(m_tight ? kFewDigits : kShownDigits, QLatin1Char('0'));
    m_seed->setFixedWidth(m_seed->fontMetrics().horizontalAdvance(digits) + 2 * space::kApart);
}

void RunStrip::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        say();
}

}  // namespace fb
