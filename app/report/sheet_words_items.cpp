// The words of one item of a feedback sheet: see sheet_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/report/sheet_words.h"
#include "app/scene/target_scene.h"
#include "app/words/by_hand_words.h"
#include "app/words/check_off_words.h"
#include "app/words/finding_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

// Translators find these beside the other words of the sheet, in one context.
struct SheetItemText {
    Q_DECLARE_TR_FUNCTIONS(fb::FeedbackSheet)
};

namespace sheet_words_items_detail {

QString patientText(const Request& request)
{
    const Patient& patient = request.patient;
    const QLocale locale;
    //: The patient of an item: age, stature, weight.
    const QString words = patient.sex() == Sex::Female ? SheetItemText::tr("Woman, %1 years, %2 cm, %3 kg")
                                                       : SheetItemText::tr("Man, %1 years, %2 cm, %3 kg");
    const QString body = words.arg(locale.toString(patient.ageYears(), 'f', 0),
                                   locale.toString(patient.stature().value(), 'f', 0),
                                   locale.toString(patient.weight().value(), 'f', 0));
    return request.finding ? body + QLatin1Char('\n') + findingText(*request.finding) : body;
}

QString verdictText(const SheetItemFound& item)
{
    if (item.answer.timeUp)
        return SheetItemText::tr("No answer");
    if (!item.attempt.refusal)
        return verdictName(item.attempt.grade.verdict);
    switch (item.attempt.refusal->outcome) {
    //: The student said that the site is not to be used.
    case RefusalOutcome::RightReason: return SheetItemText::tr("Rightly refused");
    case RefusalOutcome::WrongReason: return SheetItemText::tr("Refused for another reason");
    case RefusalOutcome::NothingRulesOut: return SheetItemText::tr("Refused without need");
    }
    return {};
}

QString reasonText(const SheetItemFound& item)
{
    const Attempt& attempt = item.attempt;
    if (item.answer.timeUp)
        return {};
    if (attempt.refusal)
        return refusalSentence(attempt.refusal->outcome, attempt.request.finding, attempt.refusal->reason);
    if (attempt.missedFinding)
        return missedFindingSentence(*attempt.request.finding);
    const QString mark = reasonSentence(attempt.request.site, attempt.grade);
    //: Of a site found by hand: what went wrong first, then what is to be said of the mark.
    return attempt.byHand ? SheetItemText::tr("%1 %2").arg(firstCauseSentence(*attempt.byHand), mark) : mark;
}

// On a small picture the region, the points and what was struck have room; the construction has not.
Scene sceneText(const SheetItemFound& item)
{
    const Target& target = *item.target;
    const Grade& grade = item.attempt.grade;
    Scene all = item.answer.mark ? gradedScene(target, *item.answer.mark, grade) : targetScene(target);
    const QString struck = grade.hazard ? hazardName(*grade.hazard) : QString();
    all.removeIf([&](const SceneShape& shape) {
        switch (shape.role) {
        case Role::Region:
        case Role::Ideal:
        case Role::Arrow:
        case Role::Landmark: return false;
        case Role::Strike: return struck.isEmpty() || shape.label != struck;
        default: return true;
        }
    });
    return all;
}

}  // namespace sheet_words_items_detail

SheetItemWords itemWords(const SheetItemFound& item, const SheetItem& asked, int number)
{
    using namespace sheet_words_items_detail;
    SheetItem shown = asked;
    shown.side = item.answer.request.patient.side();
    //: %1 is the number of an item, %2 what was asked.
    return {SheetItemText::tr("%1. %2").arg(QLocale().toString(number), itemName(shown)),
            patientText(item.answer.request),
            verdictText(item),
            item.answer.timeUp ? QString() : answerFinding(item.answer),
            reasonText(item),
            sceneText(item)};
}

}  // namespace fb
