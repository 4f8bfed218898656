#include "app/practice/feel_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/feel_words.h"
#include "app/words/landmark_words.h"

namespace fb {

namespace feel_panel_detail {

// How plainly, what lies beside, how far an edge was followed: a line each.
QString howText(const ByHandState& byHand, const Target& target)
{
    const Point at{byHand.finger->x(), byHand.finger->y()};
    QStringList lines;
    for (const QString& line :
         {clearnessText(*byHand.feel), besideText(*byHand.feel, target, at), followedText(byHand.followed)}) {
        if (!line.isEmpty())
            lines << line;
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace feel_panel_detail

FeelPanel::FeelPanel(QWidget* parent)
    : QWidget(parent),
      m_felt(parts::text(this, "felt", "request")),
      m_how(parts::text(this, "feltHow", "small")),
      m_name(new QComboBox(this)),
      m_plant(parts::mainButton(this, "plantFlag")),
      m_planted(parts::text(this, "planted", "small")),
      m_flagsTitle(parts::text(this, "flagsTitle", "small")),
      m_grid(new QGridLayout)
{
    m_name->setObjectName(QStringLiteral("flagName"));
    m_name->setEditable(true);
    m_name->setInsertPolicy(QComboBox::NoInsert);
    // What is typed stays as it was typed: the learner spells the name.
    m_name->setCompleter(nullptr);
    m_name->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int kLeastLetters = 8;
    m_name->setMinimumContentsLength(kLeastLetters);
    constexpr int kLongestList = 12;
    m_name->setMaxVisibleItems(kLongestList);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_felt);
    column->addWidget(m_how);
    column->addSpacing(space::kNear);
    auto* naming = new QHBoxLayout;
    naming->setSpacing(space::kNear);
    naming->addWidget(m_name, 1);
    naming->addWidget(m_plant);
    column->addLayout(naming);
    column->addWidget(m_planted);
    column->addSpacing(space::kTight);
    column->addWidget(m_flagsTitle);
    m_grid->setHorizontalSpacing(space::kNear);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(0, 1);
    column->addLayout(m_grid);
    connect(m_plant, &QPushButton::clicked, this, &FeelPanel::plantOrAskName);
    connect(m_name->lineEdit(), &QLineEdit::returnPressed, this, &FeelPanel::plantOrAskName);
    say();
}

void FeelPanel::say()
{
    m_name->lineEdit()->setPlaceholderText(tr("Its name"));
    m_name->lineEdit()->setAccessibleName(tr("Name of the landmark under your finger"));
    m_name->setAccessibleName(tr("Name of the landmark under your finger"));
    m_name->setToolTip(tr("Choose a name from the list or type it"));
    parts::say(m_plant, tr("Plant flag"));
    //: Above a list of landmarks the learner has found and named.
    m_flagsTitle->setText(tr("Your flags"));
    m_offered.clear();
    m_shownFlags.clear();
}

void FeelPanel::offer(const std::vector<Landmark>& names)
{
    if (names == m_offered)
        return;
    m_offered = names;
    m_name->clear();
    for (const Landmark name : names)
        m_name->addItem(landmarkName(name));
    m_name->setCurrentIndex(-1);
    m_name->clearEditText();
}

void FeelPanel::showFelt(const PracticeState& state)
{
    if (!state.byHand || !state.target)
        return;
    const ByHandState& byHand = *state.byHand;
    // Before the first press words about nothing would push the name off a small window.
    m_felt->setVisible(byHand.finger.has_value());
    m_how->setVisible(byHand.finger.has_value());
    if (byHand.feel) {
        m_felt->setText(feelName(*byHand.feel));
        m_how->setText(feel_panel_detail::howText(byHand, *state.target));
    } else if (byHand.finger) {
        m_felt->setText(tr("Nothing: beside the body"));
        m_how->setText(tr("Put your finger back on the skin."));
    } else {
        m_felt->clear();
        m_how->clear();
    }
    showPlanted(byHand);
}

void FeelPanel::showState(const PracticeState& state)
{
    if (!state.byHand)
        return;
    offer(state.byHand->offered);
    showFelt(state);
}

void FeelPanel::showPlanted(const ByHandState& byHand)
{
    // Under the name: what became of it; before the first press how to feel.
    m_planted->setVisible(byHand.planted || !byHand.finger);
    if (!byHand.finger)
        m_planted->setText(tr("Press on the skin, or move the cross with the arrow keys."));
    if (byHand.planted) {
        const QString name = landmarkName(*byHand.planted);
        m_planted->setText(byHand.misspelt ? tr("Planted. It is spelled “%1”.").arg(name)
                                           : tr("Planted: %1.").arg(name));
    }
    m_flagsTitle->setVisible(!byHand.flags.empty());
    if (byHand.flags == m_shownFlags)
        return;
    // What was just planted is no name to plant again.
    if (byHand.flags.size() >= m_shownFlags.size()) {
        m_name->setCurrentIndex(-1);
        m_name->clearEditText();
    }
    makeRows(byHand.flags);
    m_shownFlags = byHand.flags;
}

void FeelPanel::makeRows(const std::vector<PlantedFlag>& flags)
{
    const bool same = std::ranges::equal(m_rows, flags, {}, &FlagRow::name, &PlantedFlag::name);
    if (!same) {
        for (const FlagRow& row : m_rows) {
            // The button may be the one that is being pressed.
            row.words->hide();
            row.words->deleteLater();
            row.remove->hide();
            row.remove->deleteLater();
        }
        m_rows.clear();
        for (const PlantedFlag& flag : flags) {
            const std::string_view word = wordOf(flag.name);
            const QString id = QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
            FlagRow row{flag.name, parts::text(this, ""), parts::button(this, "")};
            row.words->setObjectName(QStringLiteral("flag.%1").arg(id));
            row.remove->setObjectName(QStringLiteral("removeFlag.%1").arg(id));
            row.remove->setProperty("look", QLatin1String("quiet"));
            const int line = static_cast<int>(m_rows.size());
            m_grid->addWidget(row.words, line, 0);
            m_grid->addWidget(row.remove, line, 1);
            connect(row.remove, &QPushButton::clicked, this, [this, name = flag.name] {
                m_name->setFocus();
                Q_EMIT pullOutAsked(name);
            });
            m_rows.push_back(row);
        }
    }
    for (const FlagRow& row : m_rows) {
        row.words->setText(landmarkName(row.name));
        row.remove->setText(tr("Remove"));
        row.remove->setAccessibleName(tr("Remove the flag “%1”").arg(landmarkName(row.name)));
    }
}

void FeelPanel::plant() { Q_EMIT plantAsked(m_name->currentText()); }

void FeelPanel::plantOrAskName()
{
    if (!m_name->currentText().trimmed().isEmpty())
        return plant();
    m_name->setFocus();
}

void FeelPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
