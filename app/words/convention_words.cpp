// Names, rules and sources of the conventions: see site_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <initializer_list>

#include "app/words/site_words.h"
#include "core/site/vastus.h"
#include "core/site/ventrogluteal.h"

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

// Between two heights below the trochanter, on this thigh.
QString thirdsRule(const Policy& policy, const Target& target)
{
    const double thigh = target.thighLength.value();
    const VastusBand band = vastusBand(Convention::VastusThirds, policy, thigh);
    return Words::
        tr("The middle third of the outer side of the thigh: from %1 to %2 below the greater trochanter on "
           "this thigh of %3, behind the rectus femoris and no farther back than the outer line.")
            .arg(cmText(band.top * thigh), cmText(band.bottom * thigh), cmText(thigh));
}

QString handbreadthsRule(const Policy& policy, const Target& target)
{
    const double thigh = target.thighLength.value();
    const VastusBand band = vastusBand(Convention::VastusHandbreadths, policy, thigh);
    //: A handbreadth is the width of a hand across its palm.
    return Words::
        tr("From one handbreadth below the greater trochanter to one above the knee: %1 to %2 below the "
           "trochanter on this thigh of %3, with a hand %4 broad; behind the rectus femoris and no farther "
           "back than the outer line.")
            .arg(cmText(band.top * thigh), cmText(band.bottom * thigh), cmText(thigh),
                 cmText(handSize(policy).breadth().value()));
}

QString handRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    const QString hand = cmText(policy.value(HandLength));
    const QString opening = number(target.hand ? target.hand->opening.value() : policy.value(VgOpening), 0);
    const QString bone = cmText(policy.value(VgBoneMargin) * target.scale);
    const QString trochanter = cmText(policy.value(VgTrochanterMargin) * target.scale);
    const QString apart = cmText(target.asisToTrochanter.value());
    if (target.hand && target.hand->pin == Pin::Palm)
        return Words::
            tr("Heel of a hand of %1 on the greater trochanter, index finger toward the anterior superior "
               "iliac spine (%2 away on this hip, more than this hand reaches), middle finger opened by %3 "
               "degrees along the crest: between the two fingers, at least %4 from crest and spine and %5 "
               "from the trochanter.")
                .arg(hand, apart, opening, bone, trochanter);
    return Words::
        tr("Palm of a hand of %1 on the greater trochanter, index fingertip on the anterior superior iliac "
           "spine (%2 apart on this hip), middle finger opened by %3 degrees along the crest: between the "
           "two fingers, at least %4 from crest and spine and %5 from the trochanter.")
            .arg(hand, apart, opening, bone, trochanter);
}

QString mediansRule(const Policy& policy, const Target& target)
{
    using enum PolicyKey;
    return Words::
        tr("Where the medians of the triangle of greater trochanter, iliac tubercle and anterior superior "
           "iliac spine cross (spine and trochanter lie %1 apart on this hip): within %2 of that point, at "
           "least %3 from crest and spine and %4 from the trochanter.")
            .arg(cmText(target.asisToTrochanter.value()),
                 cmText(policy.value(VgMediansRadius) * target.scale),
                 cmText(policy.value(VgBoneMargin) * target.scale),
                 cmText(policy.value(VgTrochanterMargin) * target.scale));
}

}  // namespace convention_words_detail

QString conventionName(Convention convention)
{
    using namespace convention_words_detail;
    switch (convention) {
    case Convention::DeltoidStrip: return Words::tr("Strip below the acromion");
    case Convention::DeltoidCentroid: return Words::tr("Middle of the triangle");
    case Convention::DeltoidTwoInches: return Words::tr("Two inches below the acromion");
    case Convention::DeltoidFingers: return Words::tr("Two to three fingerbreadths");
    //: Halfway between two landmarks.
    case Convention::DeltoidHalfway: return Words::tr("Halfway to the deltoid tuberosity");
    //: Of the outer side of the thigh.
    case Convention::VastusThirds: return Words::tr("Middle third of the thigh");
    case Convention::VastusHandbreadths: return Words::tr("Between two handbreadths");
    //: The hand is that of whoever gives the injection.
    case Convention::VentroglutealHand: return Words::tr("Hand on the hip, between two fingers");
    case Convention::VentroglutealMedians: return Words::tr("Where three medians cross");
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
    case Convention::VastusThirds: return thirdsRule(policy, target);
    case Convention::VastusHandbreadths: return handbreadthsRule(policy, target);
    case Convention::VentroglutealHand: return handRule(policy, target);
    case Convention::VentroglutealMedians: return mediansRule(policy, target);
    }
    return {};
}

QString policySource(const Policy& policy, PolicyKey key)
{
    return QCoreApplication::translate("fb::PolicySources", policy.source(key).c_str());
}

QString conventionSource(Convention convention, const Policy& policy)
{
    using enum PolicyKey;
    const auto lines = [&policy](std::initializer_list<PolicyKey> keys) {
        QStringList sources;
        for (const PolicyKey key : keys)
            sources << policySource(policy, key);
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
    case Convention::VastusThirds: return lines({VastusTop, VastusBottom, VastusFront, VastusBack});
    case Convention::VastusHandbreadths: return lines({HandLength, HandBreadth, VastusFront, VastusBack});
    case Convention::VentroglutealHand:
        return lines({VgOpening, HandLength, VgBoneMargin, VgTrochanterMargin});
    case Convention::VentroglutealMedians: return lines({VgMediansRadius, VgBoneMargin, VgTrochanterMargin});
    }
    return {};
}

}  // namespace fb
