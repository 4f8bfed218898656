#include "app/practice/stage_rail.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QShortcut>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/build_words.h"

namespace fb {

namespace stage_rail_detail {

constexpr std::array kNames{"stageFeel", "stageBuild", "stageMark"};

QString spokenStage(const QString& stage, bool current, bool done)
{
    if (current)
        //: Told to a screen reader of a stage; %1 is its number and name.
        return done ? StageRail::tr("%1, open, something is done").arg(stage)
                    : StageRail::tr("%1, open").arg(stage);
    return done ? StageRail::tr("%1, done").arg(stage) : StageRail::tr("%1, still to do").arg(stage);
}

}  // namespace stage_rail_detail

StageRail::StageRail(QWidget* parent) : QWidget(parent)
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kTight);
    for (std::size_t i = 0; i < m_stages.size(); ++i) {
        m_stages[i] = parts::toggle(this, stage_rail_detail::kNames[i]);
        parts::say(m_stages[i], stageName(static_cast<ByHandStage>(i)));
        m_stages[i]->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        row->addWidget(m_stages[i], 1);
        const auto ask = [this, stage = static_cast<ByHandStage>(i)] { Q_EMIT stageAsked(stage); };
        connect(m_stages[i], &QToolButton::clicked, this, ask);
        const auto key = static_cast<Qt::Key>(static_cast<int>(Qt::Key_1) + static_cast<int>(i));
        connect(new QShortcut(QKeySequence(Qt::ALT | key), this), &QShortcut::activated, this, ask);
    }
}

void StageRail::showState(const PracticeState& state)
{
    if (!state.byHand)
        return;
    const QLocale locale;
    for (std::size_t i = 0; i < m_stages.size(); ++i) {
        const auto stage = static_cast<ByHandStage>(i);
        QToolButton* button = m_stages[i];
        const bool current = state.byHand->stage == stage;
        const bool done = state.byHand->isDone(stage);
        const int number = static_cast<int>(i) + 1;
        //: A stage: its number, then its name.
        const QString words = tr("%1 %2").arg(locale.toString(number), stageName(stage));
        parts::say(button, words);
        button->setChecked(current);
        button->setIcon(done ? iconFor(Icon::Done, m_scheme) : QIcon());
        button->setAccessibleName(stage_rail_detail::spokenStage(words, current, done));
        button->setToolTip(
            //: %1 is what a button leads to, %2 the keys that do the same.
            tr("%1 (%2)").arg(
                words,
                QKeySequence(QStringLiteral("Alt+%1").arg(number)).toString(QKeySequence::NativeText)));
    }
}

void StageRail::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    constexpr int kIcon = 16;
    const int icon = parts::scaled(this, kIcon);
    for (QToolButton* stage : m_stages) {
        stage->setIconSize({icon, icon});
        if (!stage->icon().isNull())
            stage->setIcon(iconFor(Icon::Done, scheme));
    }
}

}  // namespace fb
