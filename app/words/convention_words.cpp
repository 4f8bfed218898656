// Names, rules and sources of the conventions: see site_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <array>

#include "app/words/site_words.h"

namespace fb {

namespace convention_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ConventionWords)
};

QString number(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

QString shareText(double share)
{
    constexpr int kShareDecimals = 3;
    return number(share, kShareDecimals);
}

QString stripRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    const double arm = target.armLength.value();
    return Words::tr(
               "Between %1 and %2 below the acromion on this arm (%3 to %4 of the arm's length), up to %5 "
               "either side of the mid-lateral line, above armpit level.")
        .arg(cmText(policy.value(DeltoidStripTop) * arm), cmText(policy.value(DeltoidStripBottom) * arm),
             shareText(policy.value(DeltoidStripTop)), shareText(policy.value(DeltoidStripBottom)),
             cmText(policy.value(DeltoidStripHalfWidth) * target.scale));
}

QString centroidRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    const double distance = policy.value(DeltoidCentroidDistance);
    return Words::
        tr("In the middle of the triangle from the acromion to armpit level: %1 below the acromion on this "
           "arm (%2 on an arm of %3), mid-lateral.")
            .arg(cmText(distance * target.scale), cmText(distance),
                 cmText(policy.value(DeltoidReferenceArm)));
}

QString twoInchesRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    const double distance = policy.value(DeltoidTwoInches);
    return Words::
        tr("Two inches below the acromion, mid-lateral, above armpit level: %1 on this arm (%2 on an arm of "
           "%3).")
            .arg(cmText(distance * target.scale), cmText(distance),
                 cmText(policy.value(DeltoidReferenceArm)));
}

QString fingersRule(const Policy& policy)
{
    using enum PolicyKey;
    const double width = policy.value(DeltoidFingerWidth);
    const double low = policy.value(DeltoidFingersLow);
    const double high = policy.value(DeltoidFingersHigh);
    //: A fingerbreadth is the width of one finger laid on the arm.
    return Words::
        tr("From %1 to %2 fingerbreadths below the acromion, mid-lateral: %3 to %4 with fingers of %5 each.")
            .arg(QLocale().toString(low), QLocale().toString(high), cmText(low * width), cmText(high * width),
                 cmText(width));
}

QString halfwayRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    const double muscle = policy.value(DeltoidMuscleLength) * target.scale;
    constexpr double kPercent = 100.0;
    return Words::tr(
               "%1 percent of the way from the acromion to the deltoid tuberosity: %2 of %3 on this arm, "
               "mid-lateral.")
        .arg(number(policy.value(DeltoidHalfwayShare) * kPercent, 0),
             cmText(policy.value(DeltoidHalfwayShare) * muscle), cmText(muscle));
}

}  // namespace convention_words_detail

QString conventionName(Convention convention)
{
    using Words = convention_words_detail::Words;
    switch (convention) {
    case Convention::DeltoidStrip: return Words::tr("Strip below the acromion");
    case Convention::DeltoidCentroid: return Words::tr("Middle of the triangle");
    case Convention::DeltoidTwoInches: return Words::tr("Two inches below the acromion");
    case Convention::DeltoidFingers: return Words::tr("Two to three fingerbreadths");
    //: Halfway between two landmarks.
    case Convention::DeltoidHalfway: return Words::tr("Halfway to the deltoid tuberosity");
    }
    return {};
}

QString conventionRule(Convention convention, const Policy& policy, const Target& target)
{
    using namespace convention_words_detail;
    switch (convention) {
    case Convention::DeltoidStrip: return stripRule(policy, target);
    case Convention::DeltoidCentroid: return centroidRule(policy, target);
    case Convention::DeltoidTwoInches: return twoInchesRule(policy, target);
    case Convention::DeltoidFingers: return fingersRule(policy);
    case Convention::DeltoidHalfway: return halfwayRule(policy, target);
    }
    return {};
}

QString conventionSource(Convention convention, const Policy& policy)
{
    using enum PolicyKey;
    const auto lines = [&policy](std::initializer_list<PolicyKey> keys) {
        QStringList sources;
        for (const PolicyKey key : keys)
            sources << QString::fromStdString(policy.source(key));
        sources.removeDuplicates();
        return sources.join(QLatin1Char('\n'));
    };
    switch (convention) {
    case Convention::DeltoidStrip: return lines({DeltoidStripTop, DeltoidStripBottom, DeltoidStripHalfWidth});
    case Convention::DeltoidCentroid: return lines({DeltoidCentroidDistance});
    case Convention::DeltoidTwoInches: return lines({DeltoidTwoInches});
    case Convention::DeltoidFingers:
        return lines({DeltoidFingersLow, DeltoidFingersHigh, DeltoidFingerWidth});
    case Convention::DeltoidHalfway: return lines({DeltoidHalfwayShare, DeltoidMuscleLength});
    }
    return {};
}

}  // namespace fb
