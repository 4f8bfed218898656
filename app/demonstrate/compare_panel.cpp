#include "app/demonstrate/compare_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>

#include "app/demonstrate/difference_text.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace compare_panel_detail {

constexpr std::array kWayNames{"compareNothing", "compareBeside", "compareOverlay", "compareConvention"};

}  // namespace compare_panel_detail

ComparePanel::ComparePanel(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_shownName(parts::text(this, "shownName", "small")),
      m_shown(parts::text(this, "shownBody")),
      m_pinnedName(parts::text(this, "pinnedName", "small")),
      m_pinned(parts::text(this, "pinnedBody")),
      m_pin(parts::button(this, "pinBody")),
      m_swap(parts::button(this, "swapPinned")),
      m_unpin(parts::button(this, "unpinBody")),
      m_other(new QComboBox(this)),
      m_apart(parts::text(this, "idealsApart", "large")),
      m_where(parts::text(this, "idealsWhere")),
      m_why(parts::text(this, "idealsWhy")),
      m_measure(parts::text(this, "idealsMeasure", "small"))
{
    m_other->setObjectName(QStringLiteral("otherConvention"));
    for (std::size_t i = 0; i < m_ways.size(); ++i) {
        m_ways[i] = new QRadioButton(this);
        m_ways[i]->setObjectName(QLatin1String(compare_panel_detail::kWayNames[i]));
    }
    layOut();
    connectAll();
    say();
}

void ComparePanel::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_shownName);
    rows->addWidget(m_shown);
    rows->addWidget(m_pinnedName);
    rows->addWidget(m_pinned);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kTight);
    for (QPushButton* button : {m_pin, m_swap, m_unpin})
        buttons->addWidget(button, 1);
    rows->addLayout(buttons);
    rows->addSpacing(space::kTight);
    rows->addWidget(parts::rule(this));
    for (QRadioButton* way : m_ways)
        rows->addWidget(way);
    auto* under = new QHBoxLayout;
    under->addSpacing(space::kMargin);
    under->addWidget(m_other, 1);
    rows->addLayout(under);
    rows->addSpacing(space::kTight);
    rows->addWidget(parts::rule(this));
    rows->addSpacing(space::kTight);
    rows->addWidget(m_apart);
    rows->addWidget(m_where);
    rows->addWidget(m_why);
    rows->addWidget(m_measure);
    rows->addStretch(1);
}

void ComparePanel::connectAll()
{
    connect(m_pin, &QPushButton::clicked, &m_presenter, &LecturePresenter::pin);
    connect(m_swap, &QPushButton::clicked, &m_presenter, &LecturePresenter::swapPinned);
    connect(m_unpin, &QPushButton::clicked, &m_presenter, &LecturePresenter::unpin);
    for (std::size_t i = 0; i < m_ways.size(); ++i)
        connect(m_ways[i], &QRadioButton::clicked, this, [this, i] {
            const auto compare = static_cast<Compare>(i);
            if (compare == Compare::OtherConvention)
                m_presenter.compareConvention(static_cast<Convention>(m_other->currentData().toInt()));
            else
                m_presenter.setCompare(compare);
            showState();
        });
    connect(m_other, &QComboBox::activated, this, [this] {
        m_presenter.compareConvention(static_cast<Convention>(m_other->currentData().toInt()));
    });
}

void ComparePanel::say()
{
    m_shownName->setText(tr("Shown"));
    m_pinnedName->setText(tr("Pinned"));
    //: Keeps the shown body, to compare others with it.
    parts::say(m_pin, tr("Pin"));
    //: Shows the pinned body and pins the one that was shown.
    parts::say(m_swap, tr("Swap"));
    parts::say(m_unpin, tr("Unpin"));
    m_pin->setAccessibleName(tr("Pin the shown body"));
    m_swap->setAccessibleName(tr("Swap the shown and the pinned body"));
    m_unpin->setAccessibleName(tr("Unpin the body"));
    for (QPushButton* button : {m_pin, m_swap, m_unpin})
        button->setToolTip(button->accessibleName());
    m_ways[0]->setText(tr("Compare nothing"));
    m_ways[1]->setText(tr("Pinned body beside it"));
    m_ways[2]->setText(tr("Pinned body's target over it"));
    m_ways[3]->setText(tr("Another convention over it"));
    for (QRadioButton* way : m_ways)
        way->setAccessibleName(way->text());
    m_other->setAccessibleName(tr("Convention to compare with"));
    m_filled.reset();
}

void ComparePanel::fillOthers()
{
    const LectureState& state = m_presenter.state();
    if (m_filled != state.convention) {
        m_filled = state.convention;
        m_other->clear();
        for (const Convention convention : conventionsOf(siteOf(state.convention)))
            if (convention != state.convention)
                m_other->addItem(conventionName(convention), static_cast<int>(convention));
    }
    if (state.compare == Compare::OtherConvention && state.beside)
        if (const int at = m_other->findData(static_cast<int>(state.beside->ask.convention)); at >= 0)
            m_other->setCurrentIndex(at);
    m_other->setEnabled(m_other->count() > 0);
}

void ComparePanel::showState()
{
    const LectureState& state = m_presenter.state();
    m_shown->setText(bodyText(state.body));
    fillOthers();
    for (std::size_t i = 0; i < m_ways.size(); ++i) {
        const QSignalBlocker quiet(m_ways[i]);
        if (static_cast<std::size_t>(state.compare) == i)
            m_ways[i]->setChecked(true);
    }
    for (const auto way : {Compare::SideBySide, Compare::Overlay})
        m_ways[static_cast<std::size_t>(way)]->setEnabled(state.pinned.has_value());
    m_ways[static_cast<std::size_t>(Compare::OtherConvention)]->setEnabled(m_other->count() > 0);
    showPinned(state);
    showDifference(state);
}

void ComparePanel::showPinned(const LectureState& state)
{
    m_pinned->setText(state.pinned ? bodyText(*state.pinned)
                                   : tr("No body yet: pin this one, then change it."));
    m_swap->setEnabled(state.pinned.has_value());
    m_unpin->setEnabled(state.pinned.has_value());
}

void ComparePanel::showDifference(const LectureState& state)
{
    const bool isCompared = state.compare != Compare::Nothing && state.difference && state.shown;
    for (QLabel* label : {m_apart, m_where, m_why, m_measure})
        label->setVisible(isCompared);
    if (!isCompared)
        return;
    m_apart->setText(apartText(*state.difference));
    m_where->setText(whereText(*state.difference, state.compare));
    m_where->setVisible(!m_where->text().isEmpty());
    // Two conventions lie on one body: there is nothing to explain by its fat.
    m_why->setText(state.compare == Compare::OtherConvention || !state.beside
                       ? QString()
                       : whyText(*state.shown, *state.beside, *state.difference));
    m_why->setVisible(!m_why->text().isEmpty());
    m_measure->setText(tr("Seen from the first landmark of each."));
}

void ComparePanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
    }
}

}  // namespace fb
