// Expected failure as a value. Core names a problem by code and hands over its numbers and
// names; app/words makes one clear sentence of it: what, where, how to mend it.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace fb {

enum class Problem {
    // patient
    AgeNotANumber,  // what: the text
    AgeOutOfRange,  // low..high: years
    StatureNotANumber,
    StatureOutOfRange,  // low..high: cm
    WeightNotANumber,
    WeightOutOfRange,  // low..high: kg
    BodyImplausible,   // low..high: body-mass index
    // choices
    SiteUnknown,
    SideUnknown,
    SexUnknown,
    ViewUnknown,
    ViewOfAnotherSite,  // what: the view; where: the site asked
    ConventionUnknown,
    ConventionOfAnotherSite,  // what: the convention; where: the site asked
    ViewShowOnly,
    // marks
    MarkNotAPoint,
    MarkOutsideBody,
    HandLengthOutOfRange,   // low..high: cm
    FingerWidthOutOfRange,  // low..high: cm
    // files
    PolicyNotReadable,
    PolicyCutShort,     // where: line of the broken text
    PolicyWrongType,    // where: key
    PolicyOutOfRange,   // where: key, low..high
    PolicyUnknownKey,   // where: key
    PolicyMissingKey,   // where: key
    PolicyNoSource,     // where: key
    ProportionsBroken,  // where: key
    PlateNotReadable,   // where: file or parser offset
    PlateMissingName,   // where: id
    PlateDoubledName,   // where: id
    PlateForbidden,     // where: element or attribute; what: why it is refused
    PlateBadPath,       // where: id or layer
    PlateDisordered,    // where: level or edge
    // session
    SeedNotANumber,
    RunLengthOutOfRange,  // low..high: requests
    NoSiteChosen,
    // found by hand: steps out of order
    NoFlagPlanted,  // building or marking before any landmark is set
    NothingBuilt,   // marking before anything is built
    BuildNotWhole,  // what: word of the handle or choice that is missing
    NoMarkYet,
    NameUnknown,  // what: the typed name
    NameUnclear,  // what: the typed name, as near to one bone as to another
    NothingFelt,  // a flag before any press
    // the store
    StoreNotWritable,  // where: file
    StoreBroken,       // where: file; what: where it was put aside, if it was
    StoreTooNew,       // where: file
    StoreFull,         // where: file
    StoreBusy,         // where: file; another program writes or has it open
    StoreReadOnly,     // where: file
    ChainBroken,       // where: file; what: the entry whose hash does not follow
    BackupFailed,      // where: file
    NotAStore,         // where: file; nothing of this program's is in it
    NotPutBack,        // where: the backup; nothing was changed
    // files of a check-off
    FileNotReadable,   // where: file
    FileNotUtf8,       // where: file; what: the line
    CsvBroken,         // where: file; what: the line
    RosterNoColumn,    // where: file; what: the column's name
    RosterEmpty,       // where: file
    RosterTooLong,     // where: file; high: rows
    RosterIdMissing,   // where: file; what: the line
    RosterIdDoubled,   // where: file; what: the id
    SheetNotReadable,  // where: file or place in the text
    SheetUnknownKey,   // where: key
    SheetMissingKey,   // where: key
    SheetWrongValue,   // where: key; what: the value; low..high
    SheetNoItems,
    AnswerNotReadable,  // where: key
    EventNotReadable,   // where: key
    // a check-off
    CheckOffOutOfOrder,  // what: the word of the stage it is in
    ReasonMissing,
    StepsNotRated,  // what: how many
    RatingMissing,
    NotDueYet,  // what: the day, as ISO 8601
    RemediationNotSigned,
    NoAttemptLeft,
    SecondAssessorMissing,
    SameAssessor,
    CheckOffRunning,  // what: the student's name
    StudentUnknown,   // what: the id
    // the lock
    AssessorUnknown,
    NameMissing,
    PinTooShort,  // low: least digits
    PinTooCommon,
    PinsDiffer,
    PinWrong,
    PinHeld,  // low: seconds until the next try
    PrinterMissing,
    // a demonstration
    MarksNoColumn,     // where: file; what: the column's name
    MarksBadValue,     // where: file; what: the line
    MarksEmpty,        // where: file
    MarksTooMany,      // where: file; high: how many there may be
    RoomFull,          // high: how many volunteers there may be
    NotesNotReadable,  // where: file
    ScreenLost,        // the audience's
    NoSecondScreen,
    // command line and files (raised by app, said with the same words)
    CommandUnknown,      // what: the word
    ArgumentUnknown,     // where: --name; what: the command
    ArgumentMissing,     // where: --name
    ArgumentNeedsValue,  // where: --name
    ArgumentDoubled,     // where: --name
    ArgumentBadValue,    // where: --name; what: the text; low..high: numbers allowed
    LayerUnknown,        // what: the word
    OutputNotWritable,
    OutputKindUnknown,
    RequestNotReadable,  // one line of standard input
};

inline constexpr int kProblemCount = static_cast<int>(Problem::RequestNotReadable) + 1;

struct Fault {
    Problem problem{};
    std::string where;  // which file, key, id or argument; may be empty
    std::string what;   // the offending text; may be empty
    double low = 0.0;   // allowed range where the code speaks of one
    double high = 0.0;

    friend bool operator==(const Fault&, const Fault&) = default;
};

template <class T>
using Result = tl::expected<T, Fault>;

[[nodiscard]] inline tl::unexpected<Fault> fault(Problem problem, std::string where = {},
                                                 std::string what = {}, double low = 0.0, double high = 0.0)
{
    return tl::unexpected<Fault>(Fault{problem, std::move(where), std::move(what), low, high});
}

}  // namespace fb
