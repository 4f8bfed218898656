// Problems of what is found by hand and of what is kept: see fault_words.h.
#include <QCoreApplication>

#include "app/words/build_words.h"
#include "app/words/fault_words.h"

namespace fb {

// Translators find these beside the other problems, in one context.
struct FaultWordsByHand {
    Q_DECLARE_TR_FUNCTIONS(FaultWords)
};

namespace fault_by_hand_detail {

QString finger(const ShownFault& fault)
{
    return fault.what.isEmpty()
               //: Width of the learner's own finger.
               ? FaultWordsByHand::tr("A finger measures %1 to %2 cm across its middle joint; give a width "
                                      "in that range.")
                     .arg(fault.low, fault.high)
               : FaultWordsByHand::tr("The finger width %1 cm is outside %2 to %3 cm; measure straight "
                                      "across the middle joint of the index finger.")
                     .arg(fault.what, fault.low, fault.high);
}

QString notWhole(const ShownFault& fault)
{
    const QString part = partName(fault.what);
    return part.isEmpty()
               ? FaultWordsByHand::tr("The construction is not whole; set what is missing, then go on.")
               //: %1 is a part of the construction, as in a list: "Palm", "Upper line across".
               : FaultWordsByHand::tr("The construction is not whole; set “%1”, then go on.").arg(part);
}

// The same code is raised by the files that are kept: the profile, the records, and backups of these.
bool isProfile(const ShownFault& fault) { return fault.where.endsWith(QLatin1String("profile.db")); }
bool isRecords(const ShownFault& fault) { return fault.where.endsWith(QLatin1String("records.db")); }

QString profile(Problem problem, const ShownFault& fault)
{
    if (problem == Problem::StoreNotWritable)
        return FaultWordsByHand::tr("Your profile cannot be saved in %1; check that you may write there and "
                                    "that there is room.")
            .arg(fault.where);
    if (problem == Problem::StoreTooNew)
        return FaultWordsByHand::tr("The saved profile %1 was written by a newer version of this program; "
                                    "use that version, or move the file away.")
            .arg(fault.where);
    return fault.what.isEmpty()
               ? FaultWordsByHand::tr("The saved profile %1 is damaged and cannot be read; enter your "
                                      "measures again.")
                     .arg(fault.where)
               : FaultWordsByHand::tr("The saved profile %1 is damaged and was put aside as %2; enter your "
                                      "measures again.")
                     .arg(fault.where, fault.what);
}

QString records(Problem problem, const ShownFault& fault)
{
    if (problem == Problem::StoreNotWritable)
        return FaultWordsByHand::tr("The records of check-offs cannot be saved in %1; check that you may "
                                    "write there and that there is room.")
            .arg(fault.where);
    if (problem == Problem::StoreTooNew)
        return FaultWordsByHand::tr("The records %1 were written by a newer version of this program and were "
                                    "left untouched; use that version to read them.")
            .arg(fault.where);
    if (!isRecords(fault))
        return FaultWordsByHand::tr("The backup %1 is damaged and cannot be used; choose another one.")
            .arg(fault.where);
    // Where there is a backup, the desk of the check-off offers it.
    return fault.what.isEmpty()
               ? FaultWordsByHand::tr(
                     "The records %1 are damaged and cannot be read; close the program and start "
                     "it again: it puts them aside and offers the last backup.")
                     .arg(fault.where)
               : FaultWordsByHand::tr("The records %1 are damaged and were put aside as %2; empty ones were "
                                      "begun, and nothing was deleted.")
                     .arg(fault.where, fault.what);
}

}  // namespace fault_by_hand_detail

QString byHandFault(Problem problem, const ShownFault& fault)
{
    using namespace fault_by_hand_detail;
    switch (problem) {
    case Problem::FingerWidthOutOfRange: return finger(fault);
    case Problem::NoFlagPlanted:
        return FaultWordsByHand::tr("No landmark is set yet; feel for one, plant a flag on it and name it.");
    case Problem::NothingBuilt:
        return FaultWordsByHand::tr("Nothing is built yet; build the site from your landmarks, then mark "
                                    "it.");
    case Problem::BuildNotWhole: return notWhole(fault);
    case Problem::NoMarkYet: return FaultWordsByHand::tr("The site is not marked yet; mark it on the skin.");
    case Problem::NameUnknown:
        return FaultWordsByHand::tr("“%1” is no landmark known here; choose a name from the list or check "
                                    "the spelling.")
            .arg(fault.what);
    case Problem::NameUnclear:
        return FaultWordsByHand::tr("“%1” could mean one landmark or another; write out its full name or "
                                    "choose it from the list.")
            .arg(fault.what);
    case Problem::NothingFelt:
        return FaultWordsByHand::tr("Nothing is felt yet; press on the skin first, then plant a flag "
                                    "there.");
    case Problem::StoreNotWritable:
    case Problem::StoreBroken:
    case Problem::StoreTooNew: return isProfile(fault) ? profile(problem, fault) : records(problem, fault);
    default: return {};
    }
}

}  // namespace fb
