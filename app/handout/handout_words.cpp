#include "app/handout/handout_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace handout_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::Handout)
};

QString patientText(const LectureBody& body)
{
    const Patient& patient = body.ask.patient;
    const BodyValues values{patient.ageYears(), patient.sex(), patient.stature().value(),
                            patient.weight().value()};
    //: Of a patient: who, how stout, how they sit or lie. %1 is "Woman, 40 years, 165 cm, 65 kg".
    return Words::tr("%1. %2. %3.")
        .arg(bodyText(values), bodyMassIndexText(patient.bodyMassIndex()), postureText(body.ask.view));
}

int firstOf(const std::vector<LectureStep>& steps, LectureStepKind kind)
{
    return static_cast<int>(std::ranges::find(steps, kind, &LectureStep::kind) - steps.begin());
}

// Paper cannot be moved about under the eye: the whole figure has to be in sight on every plate, which on a
// stout body the demonstration's own area may cut.
void showWholeFigure(HandoutWords& words)
{
    constexpr double kRoom = 0.8;  // cm
    QRectF area = words.skin.area;
    for (const HandoutStep& step : words.steps)
        for (const SceneShape& shape : step.look.scene)
            for (const QPointF& point : shape.points)
                area |= QRectF(point - QPointF(kRoom, kRoom), QSizeF(2.0 * kRoom, 2.0 * kRoom));
    words.skin.area = words.hazards.area = area;
    for (HandoutStep& step : words.steps)
        step.look.area = area;
}

void addSteps(HandoutWords& words, const HandoutAsk& ask)
{
    const auto look = [&ask](int step) { return lookOf(ask.body, ask.policy, ask.steps, step); };
    const QLocale locale;
    for (const int step : keySteps(ask.steps))
        words.steps.push_back({look(step), locale.toString(words.steps.size() + 1)});
    words.skin = look(firstOf(ask.steps, LectureStepKind::Skin));
    words.hazards = look(firstOf(ask.steps, LectureStepKind::Hazards));
    showWholeFigure(words);
}

void addPractice(HandoutWords& words, const Target& target)
{
    words.task = findingRequestText(target.site, target.side);
    //: Beside an empty line on paper.
    words.name = Words::tr("Name");
    //: Beside an empty line on paper: the day on which it was practised.
    words.day = Words::tr("Date");
    words.howTo = Words::tr("Draw what you would feel and lay, then mark the site with a small cross.");
    words.order = Words::tr("Write down your steps in order:");
    words.keepClear = Words::tr("Write down what the needle must keep clear of:");
    //: Title of the page with the answers; %1 is the site.
    words.keyHeading = Words::tr("Key: %1").arg(words.heading);
    words.keyHowTo =
        Words::tr("Lay this page over your own and hold both to the light: the drawings lie at one place.");
    //: %1 is the number of this page, %2 of how many.
    words.page = Words::tr("Page %1 of %2");
}

}  // namespace handout_words_detail

std::vector<int> keySteps(const std::vector<LectureStep>& steps)
{
    std::vector<int> chosen;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (steps[i].kind != LectureStepKind::Build)
            continue;
        const bool isRepeated =
            !chosen.empty() && steps[static_cast<std::size_t>(chosen.back())].code == steps[i].code;
        if (isRepeated)
            chosen.pop_back();
        chosen.push_back(static_cast<int>(i));
    }
    return chosen;
}

HandoutWords handoutWords(const HandoutAsk& ask)
{
    using namespace handout_words_detail;
    const Target& target = *ask.body.target;
    HandoutWords words;
    words.direction = ask.direction;
    words.heading = lectureHeading(target.site, target.side);
    words.manner = conventionName(target.convention);
    words.patient = patientText(ask.body);
    addSteps(words, ask);
    words.hazardsHeading = Words::tr("What lies around");
    words.ruleHeading = Words::tr("The rule");
    //: The rule with its numbers, a sentence; then how distances are measured.
    words.rule =
        Words::tr("%1 %2.").arg(conventionRule(target.convention, ask.policy, target), measureNote(target));
    words.sourcesHeading = Words::tr("Where it comes from");
    words.sources = conventionSource(target.convention, ask.policy);
    words.caution = cautionSentence();
    addPractice(words, target);
    return words;
}

}  // namespace fb
