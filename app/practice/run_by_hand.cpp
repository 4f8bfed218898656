#include "app/practice/run_by_hand.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/by_hand_words.h"

namespace fb {

std::vector<CauseCount> commonCauses(std::span<const ByHandGrade> grades, std::size_t most)
{
    std::vector<CauseCount> causes;
    for (const ByHandGrade& grade : grades) {
        if (!grade.first)
            continue;
        const auto known = std::ranges::find(causes, *grade.first, &CauseCount::cause);
        if (known != causes.end())
            ++known->times;
        else
            causes.push_back({*grade.first, 1});
    }
    std::ranges::stable_sort(causes, std::ranges::greater{}, &CauseCount::times);
    causes.resize(std::min(causes.size(), most));
    return causes;
}

RunByHand::RunByHand(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "byHandTitle", "small")),
      m_causesTitle(parts::text(this, "causesTitle", "small")),
      m_causes(parts::text(this, "causes"))
{
    static constexpr const char* kNames[kParts]{"runLandmarks", "runBuilds", "runMarks"};
    static constexpr const char* kCounts[kParts]{"runLandmarksCount", "runBuildsCount", "runMarksCount"};
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_title);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kNear);
    grid->setColumnStretch(0, 1);
    for (int i = 0; i < kParts; ++i) {
        const auto at = static_cast<std::size_t>(i);
        m_names[at] = parts::text(this, kNames[i]);
        m_counts[at] = parts::text(this, kCounts[i]);
        m_counts[at]->setWordWrap(false);
        m_counts[at]->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
        grid->addWidget(m_names[at], i, 0);
        grid->addWidget(m_counts[at], i, 1);
    }
    column->addLayout(grid);
    column->addSpacing(space::kTight);
    column->addWidget(m_causesTitle);
    column->addWidget(m_causes);
    column->addSpacing(space::kTight);
    column->addWidget(parts::rule(this));
    column->addSpacing(space::kTight);
}

void RunByHand::showState(const PracticeState& state)
{
    setVisible(!state.foundByHand.empty());
    const QLocale locale;
    const auto total = static_cast<int>(state.foundByHand.size());
    m_title->setText(tr("Found by hand"));
    for (int i = 0; i < kParts; ++i) {
        const auto part = static_cast<Cause::Part>(i);
        const auto right = std::ranges::count_if(
            state.foundByHand, [part](const ByHandGrade& grade) { return isRight(grade, part); });
        m_names[static_cast<std::size_t>(i)]->setText(partHeading(part));
        //: How many of how many requests.
        m_counts[static_cast<std::size_t>(i)]->setText(
            tr("%1 of %2").arg(locale.toString(static_cast<int>(right)), locale.toString(total)));
    }
    constexpr std::size_t kMost = 3;
    QStringList sentences;
    for (const CauseCount& each : commonCauses(state.foundByHand, kMost))
        //: What went wrong first in a request, and how many times.
        sentences << tr("%1 (%2×)").arg(causeSentence(each.cause), locale.toString(each.times));
    m_causesTitle->setText(tr("What went wrong first, most often"));
    m_causes->setText(sentences.join(QLatin1Char('\n')));
    m_causesTitle->setVisible(!sentences.isEmpty());
    m_causes->setVisible(!sentences.isEmpty());
}

}  // namespace fb
