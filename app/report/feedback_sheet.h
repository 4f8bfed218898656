// The feedback sheet of a signed check-off, on paper: who, when, outcome and why, each mark on its plate with
// its offset in cm, the observed steps, what to practise, rating, remark, who signed, and the head of the
// log.
//
// Every call may be made in any thread but for the one note at feedbackSheet(). Nothing painted is asked of
// a translator: all words are collected when the sheet is made ready.
#pragma once

#include <QPageSize>
#include <QPagedPaintDevice>
#include <QString>

#include "app/doors/library.h"
#include "app/report/sheet_words.h"

namespace fb {

struct FeedbackSheet {
    SheetFindings findings;
    SheetWords words;  // in the student's language, or the program's where they have none
};

// The faults of the kept events, of regraded(), of the policy text and of a plate that cannot be read. For
// its words it waits some milliseconds for the window's thread, which therefore must not wait for it.
[[nodiscard]] Result<FeedbackSheet> feedbackSheet(const CheckOffOnFile& checkOff, const Library& library);

// A4 or Letter or whatever paper the device has. Pages painted; 0 where it takes no painting.
int paintSheet(const FeedbackSheet& sheet, QPagedPaintDevice& device);

// The paper most used where the program's language is spoken: Letter or A4.
[[nodiscard]] QPageSize::PageSizeId usualPaper();

// As PDF; OutputNotWritable. Never half a file.
[[nodiscard]] Result<bool> writeSheet(const FeedbackSheet& sheet, const QString& file,
                                      QPageSize::PageSizeId paper = usualPaper());

}  // namespace fb
