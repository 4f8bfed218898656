#include "app/demonstrate/difference_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>
#include <optional>

#include "app/words/site_words.h"

namespace fb {

namespace difference_text_detail {

struct DifferenceText {
    Q_DECLARE_TR_FUNCTIONS(fb::DifferenceText)
};

constexpr double kLeast = 0.05;  // cm: what is shown as 0.0

bool isNothing(Cm length) { return std::abs(length.value()) < kLeast; }

// Skin and fat over the muscle at the ideal point, in words.
std::optional<QString> fatText(const LectureBody& body)
{
    constexpr double kFinger = 1.6;  // cm: where nothing but fat is asked for, any finger
    if (!body.feel)
        return std::nullopt;
    const auto feel = body.feel->at(body.target->ideal, Cm{kFinger});
    if (!feel)
        return std::nullopt;
    //: A thickness in millimetres.
    return DifferenceText::tr("%1 mm").arg(QLocale().toString(std::round(feel->fat.value()), 'f', 0));
}

}  // namespace difference_text_detail

QString apartText(const TargetDifference& difference)
{
    using namespace difference_text_detail;
    return isNothing(difference.apart)
               ? DifferenceText::tr("Ideal points in the same place")
               : DifferenceText::tr("Ideal points %1 apart").arg(cmText(difference.apart.value()));
}

QString whereText(const TargetDifference& difference, Compare compare)
{
    using namespace difference_text_detail;
    QStringList ways;
    const QString lower = cmText(std::abs(difference.lower.value()));
    const QString forward = cmText(std::abs(difference.forward.value()));
    if (!isNothing(difference.lower))
        //: Parts of a list of one or two: %1 is a length.
        ways << (difference.lower.value() > 0.0 ? DifferenceText::tr("%1 lower").arg(lower)
                                                : DifferenceText::tr("%1 higher").arg(lower));
    if (!isNothing(difference.forward))
        ways << (difference.forward.value() > 0.0 ? DifferenceText::tr("%1 further forward").arg(forward)
                                                  : DifferenceText::tr("%1 further back").arg(forward));
    if (ways.isEmpty() || compare == Compare::Nothing)
        return {};
    const QString list = QLocale().createSeparatedList(ways);
    return compare == Compare::OtherConvention
               //: Of the ideal point; %1 is a list such as "1.2 cm lower and 0.6 cm further forward".
               ? DifferenceText::tr("The other convention's lies %1.").arg(list)
               : DifferenceText::tr("The pinned body's lies %1.").arg(list);
}

bool differInWeightAlone(const LectureBody& a, const LectureBody& b)
{
    const Patient& one = a.ask.patient;
    const Patient& other = b.ask.patient;
    return one.ageYears() == other.ageYears() && one.sex() == other.sex() &&
           one.stature() == other.stature() && a.ask.convention == b.ask.convention;
}

QString whyText(const LectureBody& shown, const LectureBody& pinned, const TargetDifference& difference)
{
    using namespace difference_text_detail;
    const auto fat = fatText(shown);
    const auto otherFat = fatText(pinned);
    if (!fat || !otherFat)
        return {};
    const QString apart = cmText(difference.apart.value());
    if (differInWeightAlone(shown, pinned) && isNothing(difference.apart))
        //: %1 is a length, %2 and %3 thicknesses of skin and fat over the muscle.
        return DifferenceText::tr(
                   "Bone decides, not weight: the ideal points lie %1 apart. Skin and fat over "
                   "the muscle: %2 here, %3 on the pinned body.")
            .arg(apart, *fat, *otherFat);
    if (differInWeightAlone(shown, pinned) && shown.target->site == Site::VastusLateralis)
        //: The middle between the two lines along the thigh; %1 to %3 as above.
        return DifferenceText::tr(
                   "The lines start from bone, but their middle lies on the skin: on the thicker "
                   "thigh %1 farther round. Skin and fat: %2 here, %3 on the pinned body.")
            .arg(cmText(std::abs(difference.forward.value())), *fat, *otherFat);
    return DifferenceText::tr("Skin and fat over the muscle: %1 here, %2 on the pinned body.")
        .arg(*fat, *otherFat);
}

}  // namespace fb
