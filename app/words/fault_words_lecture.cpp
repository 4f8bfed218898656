// What can go wrong in a demonstration: see fault_words.h.
#include <QCoreApplication>

#include "app/words/fault_words.h"

namespace fb {

namespace fault_words_lecture_detail {

struct FaultWordsLecture {
    Q_DECLARE_TR_FUNCTIONS(fb::FaultWordsLecture)
};

}  // namespace fault_words_lecture_detail

QString lectureFault(Problem problem, const ShownFault& fault)
{
    using fault_words_lecture_detail::FaultWordsLecture;
    switch (problem) {
    case Problem::MarksNoColumn:
        return FaultWordsLecture::tr(
                   "%1 has no column “%2”; its first line must name the columns name, x_cm and y_cm.")
            .arg(fault.where, fault.what);
    case Problem::MarksBadValue:
        return FaultWordsLecture::tr(
                   "Line %2 of %1 does not give two numbers of centimetres; mend that line and choose the "
                   "file again.")
            .arg(fault.where, fault.what);
    case Problem::MarksEmpty:
        return FaultWordsLecture::tr(
                   "%1 holds no marks; the first line names the columns, each further line one mark.")
            .arg(fault.where);
    case Problem::MarksTooMany:
        return FaultWordsLecture::tr("%1 holds more than %2 marks; split it into smaller files.")
            .arg(fault.where, fault.high);
    case Problem::RoomFull:
        return FaultWordsLecture::tr("No more than %1 marks are kept; remove one or clear them, then go on.")
            .arg(fault.high);
    case Problem::NotesNotReadable:
        return FaultWordsLecture::tr(
                   "The demonstration goes on without speaker notes, for %1 cannot be read; install the program "
                   "again to have them back.")
            .arg(fault.where);
    case Problem::ScreenLost:
        return FaultWordsLecture::tr(
            "The audience's screen is gone; connect it again, or press F6 to show the picture on this one.");
    case Problem::NoSecondScreen:
        return FaultWordsLecture::tr(
            "There is one screen only; press F6 to show the picture on it and F6 to come back.");
    default: return {};
    }
}

}  // namespace fb
