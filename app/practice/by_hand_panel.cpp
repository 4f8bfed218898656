#include "app/practice/by_hand_panel.h"

#include <QGridLayout>
#include <QLabel>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/by_hand_words.h"
#include "app/words/grade_words.h"
#include "app/words/slip_words.h"

namespace fb {

namespace by_hand_panel_detail {

constexpr int kPartIcon = 22;
constexpr int kLineIcon = 14;

Verdict lookOf(const BuildStepGrade& step)
{
    if (step.slip != Slip::None)
        return Verdict::OffTarget;
    return step.carried ? Verdict::Acceptable : Verdict::OnTarget;
}

Verdict lookOf(FlagVerdict verdict)
{
    switch (verdict) {
    case FlagVerdict::Found: return Verdict::OnTarget;
    case FlagVerdict::Near: return Verdict::Acceptable;
    case FlagVerdict::Off:
    case FlagVerdict::Misnamed:
    case FlagVerdict::Missing: break;
    }
    return Verdict::OffTarget;
}

Verdict lookOf(const ByHandGrade& grade, const Grade& mark, Cause::Part part)
{
    if (part == Cause::Part::Mark)
        return mark.verdict;
    return isRight(grade, part) ? Verdict::OnTarget : Verdict::OffTarget;
}

// What is wrong with a step, and what that alone would have done: a line each.
QString stepText(const BuildStepGrade& step, const Target& target)
{
    if (step.slip == Slip::None && !step.carried)
        //: A step of the construction that was done right.
        return ByHandPanel::tr("%1: right.").arg(buildStepName(step.step));
    const QString slip = slipSentence(step, target);
    const QString effect = effectSentence(step, target);
    return effect.isEmpty() ? slip : slip + QLatin1Char('\n') + effect;
}

}  // namespace by_hand_panel_detail

using namespace by_hand_panel_detail;

ByHandPanel::ByHandPanel(QWidget* parent)
    : QWidget(parent),
      m_firstTitle(parts::text(this, "firstCauseTitle", "small")),
      m_first(parts::text(this, "firstCause", "request")),
      m_lucky(parts::text(this, "luckyMark")),
      m_watched(parts::text(this, "watchedNote", "small")),
      m_noted(parts::text(this, "notedOnly", "small")),
      m_landmarksTitle(parts::text(this, "landmarksTitle", "small")),
      m_stepsTitle(parts::text(this, "stepsTitle", "small")),
      m_landmarks(new QGridLayout),
      m_steps(new QGridLayout)
{
    static constexpr const char* kNames[kParts]{"landmarksPart", "buildPart", "markPart"};
    static constexpr const char* kWords[kParts]{"landmarksVerdict", "buildVerdict", "markVerdict"};
    for (int i = 0; i < kParts; ++i) {
        Row& row = m_parts[static_cast<std::size_t>(i)];
        row.icon = new QLabel(this);
        row.icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
        row.name = parts::text(this, kNames[i]);
        row.words = parts::text(this, kWords[i]);
    }
    layOut();
}

void ByHandPanel::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_firstTitle);
    column->addWidget(m_first);
    auto* threeParts = new QGridLayout;
    threeParts->setHorizontalSpacing(space::kNear);
    threeParts->setVerticalSpacing(space::kTight);
    constexpr int kNameShare = 3;
    constexpr int kWordShare = 2;
    threeParts->setColumnStretch(1, kNameShare);
    threeParts->setColumnStretch(2, kWordShare);
    for (int i = 0; i < kParts; ++i) {
        const Row& row = m_parts[static_cast<std::size_t>(i)];
        threeParts->addWidget(row.icon, i, 0);
        threeParts->addWidget(row.name, i, 1);
        threeParts->addWidget(row.words, i, 2);
    }
    column->addLayout(threeParts);
    for (QLabel* note : {m_lucky, m_watched, m_noted})
        column->addWidget(note);
    for (QGridLayout* lines : {m_landmarks, m_steps}) {
        lines->setHorizontalSpacing(space::kNear);
        lines->setVerticalSpacing(space::kTight);
        lines->setColumnStretch(1, 1);
    }
    column->addSpacing(space::kTight);
    column->addWidget(m_landmarksTitle);
    column->addLayout(m_landmarks);
    column->addSpacing(space::kTight);
    column->addWidget(m_stepsTitle);
    column->addLayout(m_steps);
}

void ByHandPanel::showAttempt(const Attempt& attempt, const Target& target, const Policy& policy)
{
    m_firstTitle->setText(tr("What went wrong first"));
    m_firstTitle->setVisible(attempt.byHand->first.has_value());
    m_first->setText(firstCauseSentence(*attempt.byHand));
    m_lucky->setText(luckySentence(*attempt.byHand));
    m_lucky->setVisible(!m_lucky->text().isEmpty());
    m_watched->setText(tr("You had watched how it is done before you were graded."));
    m_watched->setVisible(attempt.watched);
    m_noted->setText(notedOnlySentence(policy));
    m_noted->setVisible(!m_noted->text().isEmpty() && !attempt.byHand->builtRight);
    //: Above a list of what was found, bone by bone.
    m_landmarksTitle->setText(tr("Landmarks"));
    //: Above a list of what was built, step by step.
    m_stepsTitle->setText(tr("Construction"));
    sayParts(attempt);
    sayDetails(attempt, target);
    paintIcons();
}

void ByHandPanel::sayParts(const Attempt& attempt)
{
    for (int i = 0; i < kParts; ++i) {
        const auto part = static_cast<Cause::Part>(i);
        Row& row = m_parts[static_cast<std::size_t>(i)];
        row.name->setText(partHeading(part));
        row.words->setText(partVerdict(*attempt.byHand, attempt.grade, part));
        row.look = lookOf(*attempt.byHand, attempt.grade, part);
    }
}

void ByHandPanel::sayDetails(const Attempt& attempt, const Target& target)
{
    const auto say = [this](std::vector<Line>& lines, QGridLayout& grid, std::size_t at, Verdict look,
                            const QString& words) {
        if (at == lines.size()) {
            Line line{new QLabel(this), parts::text(this, "detail"), look};
            line.icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
            grid.addWidget(line.icon, static_cast<int>(at), 0, Qt::AlignTop);
            grid.addWidget(line.words, static_cast<int>(at), 1);
            lines.push_back(line);
        }
        lines[at].look = look;
        lines[at].words->setText(words);
    };
    const ByHandGrade& grade = *attempt.byHand;
    for (std::size_t i = 0; i < grade.flags.size(); ++i)
        say(m_landmarkLines, *m_landmarks, i, lookOf(grade.flags[i].verdict),
            flagSentence(grade.flags[i], target.site));
    for (std::size_t i = 0; i < grade.steps.size(); ++i) {
        const Verdict look = lookOf(grade.steps[i]);
        say(m_stepLines, *m_steps, i, look, stepText(grade.steps[i], target));
    }
    const auto showOnly = [](const std::vector<Line>& lines, std::size_t count) {
        for (std::size_t i = 0; i < lines.size(); ++i) {
            lines[i].icon->setVisible(i < count);
            lines[i].words->setVisible(i < count);
        }
    };
    showOnly(m_landmarkLines, grade.flags.size());
    showOnly(m_stepLines, grade.steps.size());
}

void ByHandPanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paintIcons();
}

void ByHandPanel::paintIcons()
{
    const auto paint = [this](QLabel* icon, Verdict look, int size) {
        icon->setPixmap(pixmapFor(iconOf(look), colourOf(look, m_scheme), parts::scaled(this, size),
                                  devicePixelRatioF()));
    };
    for (const Row& row : m_parts)
        paint(row.icon, row.look, kPartIcon);
    for (const std::vector<Line>* lines : {&m_landmarkLines, &m_stepLines})
        for (const Line& line : *lines)
            paint(line.icon, line.look, kLineIcon);
}

}  // namespace fb
