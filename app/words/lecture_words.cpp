#include "app/words/lecture_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace fb {

namespace lecture_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureWords)
};

QString wholeNumber(double value) { return QLocale().toString(std::round(value), 'f', 0); }

}  // namespace lecture_words_detail

QString lectureHeading(Site site, Side side)
{
    using lecture_words_detail::Words;
    const bool left = side == Side::Left;
    switch (site) {
    //: The heading of a demonstration; the side is the patient's.
    case Site::Deltoid:
        return left ? Words::tr("Deltoid site, left arm") : Words::tr("Deltoid site, right arm");
    case Site::VastusLateralis:
        return left ? Words::tr("Vastus lateralis site, left thigh")
                    : Words::tr("Vastus lateralis site, right thigh");
    case Site::Ventrogluteal:
        return left ? Words::tr("Ventrogluteal site, left hip") : Words::tr("Ventrogluteal site, right hip");
    }
    return {};
}

QString skinCaption(const Target& target)
{
    using lecture_words_detail::Words;
    switch (target.view) {
    case View::ShoulderSide:
        return Words::tr("The patient sits, shoulder bare, elbow bent, forearm in the lap. We look from the "
                         "side.");
    case View::ShoulderThreeQuarter:
        return Words::tr("The patient sits, shoulder bare, elbow bent, forearm in the lap. We look from the "
                         "front and the side.");
    case View::HipSide:
        return Words::tr("The patient lies on the other side, hip bare, upper knee forward. We stand at the "
                         "back.");
    case View::HipBehind:
        return Words::tr("The patient lies face down, both hips bare, toes turned in. We look from above.");
    case View::ThighFront:
        return Words::tr("The patient lies on the back, thigh bare, toes up. We look from above.");
    case View::ThighSide:
        return Words::tr("The patient lies on the back, thigh bare, toes up. We look from the outer side.");
    // The hands are no views of a patient.
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return {};
}

QString stoutnessName(Stoutness stoutness)
{
    using lecture_words_detail::Words;
    switch (stoutness) {
    //: How stout a patient is, short words on buttons.
    case Stoutness::Lean: return Words::tr("Lean");
    case Stoutness::Average: return Words::tr("Average");
    case Stoutness::Heavy: return Words::tr("Heavy");
    }
    return {};
}

QString bodyText(const BodyValues& values)
{
    using lecture_words_detail::Words;
    const int years = static_cast<int>(std::floor(values.ageYears));
    //: A patient in one line; %n is the age, %1 the stature, %2 the weight.
    const QString words = values.sex == Sex::Female
                              ? Words::tr("Woman, %n year(s), %1 cm, %2 kg", nullptr, years)
                              : Words::tr("Man, %n year(s), %1 cm, %2 kg", nullptr, years);
    using lecture_words_detail::wholeNumber;
    return words.arg(wholeNumber(values.statureCm), wholeNumber(values.weightKg));
}

QString bodyMassIndexText(double kgPerM2)
{
    using namespace lecture_words_detail;
    return Words::tr("Body-mass index %1").arg(wholeNumber(kgPerM2));
}

}  // namespace fb
