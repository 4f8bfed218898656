#include "app/demonstrate/difference_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

#include "app/words/site_words.h"

namespace fb {

namespace difference_text_detail {

struct DifferenceText {
    Q_DECLARE_TR_FUNCTIONS(fb::DifferenceText)
};

constexpr double kLeast = 0.05;  // cm: what is shown as 0.0

bool isNothing(Cm length) { return std::abs(length.value()) < kLeast; }

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

}  // namespace fb
