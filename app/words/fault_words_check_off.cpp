// Problems of check-offs, their files, records and lock: see fault_words.h.
#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include "app/words/fault_words.h"

namespace fb {

// Translators find these beside the other problems, in one context.
struct FaultWordsCheckOff {
    Q_DECLARE_TR_FUNCTIONS(FaultWords)
};

namespace fault_check_off_detail {

QString store(Problem problem, const ShownFault& fault)
{
    switch (problem) {
    case Problem::StoreFull:
        return FaultWordsCheckOff::tr("There is no room left to save in %1; free some space, then try again.")
            .arg(fault.where);
    case Problem::StoreBusy:
        return FaultWordsCheckOff::tr("%1 is in use by another program; close it there, then try again.")
            .arg(fault.where);
    case Problem::StoreReadOnly:
        return FaultWordsCheckOff::tr("%1 may only be read; allow yourself to write it, then try again.")
            .arg(fault.where);
    case Problem::ChainBroken:
        return FaultWordsCheckOff::tr(
                   "The log in %1 was changed after it was written, at entry %2; restore the last backup "
                   "and keep this file for whoever looks into it.")
            .arg(fault.where, fault.what);
    case Problem::BackupFailed:
        return FaultWordsCheckOff::tr(
                   "The backup %1 could not be made; choose a folder you may write, with enough room.")
            .arg(fault.where);
    case Problem::NotAStore:
        return FaultWordsCheckOff::tr(
                   "%1 holds no records of this program; choose the records file or a backup of it.")
            .arg(fault.where);
    case Problem::NotPutBack:
        return FaultWordsCheckOff::tr("The backup %1 could not be put back, and nothing was changed; make "
                                      "room where the records lie, "
                                      "close other programs that read them, then try again.")
            .arg(fault.where);
    default: return {};
    }
}

QString roster(Problem problem, const ShownFault& fault)
{
    switch (problem) {
    case Problem::FileNotReadable:
        return FaultWordsCheckOff::tr("%1 cannot be read; check its name and that you may read it.")
            .arg(fault.where);
    case Problem::FileNotUtf8:
        return FaultWordsCheckOff::tr(
                   "Line %2 of %1 is not UTF-8 text; save the file as “CSV UTF-8” and choose it again.")
            .arg(fault.where, fault.what);
    case Problem::CsvBroken:
        return FaultWordsCheckOff::tr(
                   "Line %2 of %1 opens a quotation mark and does not close it; mend that line and choose "
                   "the file again.")
            .arg(fault.where, fault.what);
    case Problem::RosterNoColumn:
        return FaultWordsCheckOff::tr(
                   "%1 has no column for “%2”; name it in the first line or point out the column by hand.")
            .arg(fault.where, fault.what);
    case Problem::RosterEmpty:
        return FaultWordsCheckOff::tr(
                   "%1 names no students; the first line names the columns, each further line a student.")
            .arg(fault.where);
    case Problem::RosterTooLong:
        return FaultWordsCheckOff::tr("%1 has more than %2 lines; split it by course or section.")
            .arg(fault.where, fault.high);
    case Problem::RosterIdMissing:
        return FaultWordsCheckOff::tr(
                   "Line %2 of %1 has no student id; give every student an id of their own.")
            .arg(fault.where, fault.what);
    case Problem::RosterIdDoubled:
        return FaultWordsCheckOff::tr(
                   "The id %2 stands more than once in %1; give every student an id of their own.")
            .arg(fault.where, fault.what);
    default: return {};
    }
}

QString sheet(Problem problem, const ShownFault& fault)
{
    switch (problem) {
    case Problem::SheetNotReadable:
        return FaultWordsCheckOff::tr(
                   "The sheet cannot be read at %1; choose a sheet this program wrote, or mend it there.")
            .arg(fault.where);
    case Problem::SheetUnknownKey:
        return FaultWordsCheckOff::tr(
                   "The sheet names “%1”, which means nothing here; remove it or correct its spelling.")
            .arg(fault.where);
    case Problem::SheetMissingKey:
        return FaultWordsCheckOff::tr("The sheet does not say “%1”; add it.").arg(fault.where);
    case Problem::SheetWrongValue:
        return fault.high.isEmpty() || fault.low == fault.high
                   ? FaultWordsCheckOff::tr(
                         "“%2” is no value for “%1” in the sheet; see the sample sheet for what it may be.")
                         .arg(fault.where, fault.what)
                   : FaultWordsCheckOff::tr("“%1” in the sheet is %2; it must lie between %3 and %4.")
                         .arg(fault.where, fault.what, fault.low, fault.high);
    case Problem::SheetNoItems:
        return FaultWordsCheckOff::tr("The sheet asks for nothing; add at least one item.");
    case Problem::AnswerNotReadable:
        return FaultWordsCheckOff::tr("A kept answer cannot be read at “%1”; restore the last backup.")
            .arg(fault.where);
    case Problem::EventNotReadable:
        return FaultWordsCheckOff::tr("A kept step of a check-off cannot be read at “%1”; restore the last "
                                      "backup.")
            .arg(fault.where);
    default: return {};
    }
}

QString course(Problem problem, const ShownFault& fault)
{
    switch (problem) {
    case Problem::CheckOffOutOfOrder:
        return FaultWordsCheckOff::tr(
            "That does not fit the present step of the check-off; finish this step first.");
    case Problem::ReasonMissing:
        return FaultWordsCheckOff::tr("No reason is given; write one in a few words.");
    case Problem::StepsNotRated:
        return FaultWordsCheckOff::tr(
                   "Steps still without a word: %1; say of each whether it was done, prompted or not done.")
            .arg(fault.what);
    case Problem::RatingMissing:
        return FaultWordsCheckOff::tr("The overall rating is missing; choose 1 to 5.");
    case Problem::NotDueYet:
        return FaultWordsCheckOff::tr(
                   "The next attempt may be made from %1 on; choose another student today.")
            .arg(QLocale().toString(QDate::fromString(fault.what, Qt::ISODate), QLocale::LongFormat));
    case Problem::RemediationNotSigned:
        return FaultWordsCheckOff::tr(
            "The practice agreed on after the last attempt is not signed yet; sign it first.");
    case Problem::NoAttemptLeft:
        return FaultWordsCheckOff::tr(
            "No attempt is left on this sheet; the course's own rules say what comes now.");
    case Problem::SecondAssessorMissing:
        return FaultWordsCheckOff::tr(
            "The last attempt needs a second assessor; let a second one enter their PIN.");
    case Problem::SameAssessor:
        return FaultWordsCheckOff::tr(
            "Both assessors are the same person; let another assessor enter their PIN.");
    case Problem::CheckOffRunning:
        return FaultWordsCheckOff::tr("The check-off of %1 is still open; go on with it or void it first.")
            .arg(fault.what);
    case Problem::StudentUnknown:
        return FaultWordsCheckOff::tr("No student has the id %1; choose one from the list.").arg(fault.what);
    default: return {};
    }
}

QString lock(Problem problem, const ShownFault& fault)
{
    switch (problem) {
    case Problem::AssessorUnknown:
        return FaultWordsCheckOff::tr("Nobody is chosen; choose the assessor from the list.");
    case Problem::NameMissing: return FaultWordsCheckOff::tr("The name is missing; write it.");
    case Problem::PinTooShort:
        return FaultWordsCheckOff::tr("The PIN is too short; use at least %1 digits or letters.")
            .arg(fault.low);
    case Problem::PinTooCommon:
        return FaultWordsCheckOff::tr("That PIN is among the first anybody would try; choose another.");
    case Problem::PinsDiffer: return FaultWordsCheckOff::tr("The two PINs differ; type the same one twice.");
    case Problem::PinWrong:
        return fault.what.isEmpty()
                   ? FaultWordsCheckOff::tr("That PIN is not right; try again.")
                   //: Of two who sign; %1 is the name of the one whose PIN is wrong.
                   : FaultWordsCheckOff::tr("The PIN of %1 is not right; try again.").arg(fault.what);
    case Problem::PinHeld:
        if (!fault.what.isEmpty())
            return FaultWordsCheckOff::tr("Too many wrong PINs of %1; wait %2 s, then try again.")
                .arg(fault.what, fault.low);
        return FaultWordsCheckOff::tr("Too many wrong PINs; wait %1 s, then try again.").arg(fault.low);
    case Problem::PrinterMissing:
        return FaultWordsCheckOff::tr("No printer is set up on this machine; save the sheet as PDF instead.");
    default: return {};
    }
}

}  // namespace fault_check_off_detail

QString checkOffFault(Problem problem, const ShownFault& fault)
{
    using namespace fault_check_off_detail;
    for (const auto family : {&store, &roster, &sheet, &course, &lock}) {
        QString words = family(problem, fault);
        if (!words.isEmpty())
            return words;
    }
    return {};
}

}  // namespace fb
