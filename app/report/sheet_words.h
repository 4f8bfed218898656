// What a signed check-off came to, and every word of it that stands on the feedback sheet, so that painting
// asks nobody for words.
#pragma once

#include <QString>
#include <QStringList>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "app/canvas/ink_painter.h"
#include "app/doors/records.h"
#include "app/scene/scene.h"
#include "core/site/target.h"

namespace fb {

// One item, graded again by the recorded policy.
struct SheetItemFound {
    Answer answer;
    Attempt attempt;
    std::shared_ptr<const Target> target;
    std::shared_ptr<const Picture> picture;
};

struct SheetFindings {
    CheckOffOnFile file;
    CheckOff run;  // after its last event
    CheckOffResult result;
    std::vector<SheetItemFound> items;
    QString policyName;
};

struct SheetItemWords {
    QString name;     // "1. Deltoid, left, from the side; nothing drawn"
    QString patient;  // "woman, 34 years, 163 cm, 71 kg"
    QString verdict, finding, reason;
    Scene scene;  // of what was graded, with its labels
};

struct SheetStepWords {
    QString name, seen, at, remark;
    std::optional<Seen> mark;  // none: a heading
    bool critical = false;
};

using SheetFact = std::pair<QString, QString>;  // what it is, and what it was

struct SheetWords {
    Qt::LayoutDirection direction = Qt::LeftToRight;
    QString documentTitle, title, invented, student, about;
    std::vector<SheetFact> facts;
    QString outcome, outcomeSentence, score, cut;
    QStringList reasons;
    QString practiceHeading;
    QStringList practice;
    QString rating, remark;
    QString itemsHeading;
    std::vector<SheetItemWords> items;
    QString stepsHeading;
    QString critical;                   // of a critical step: "%1 (critical)"
    std::vector<SheetStepWords> steps;  // headings among them
    QStringList seenColumns;            // above the table
    QString ordersHeading;
    QStringList orders;
    QString held;
    QString recordHeading;
    std::vector<SheetFact> record;
    QString readByStudent, day;  // two lines to be signed by hand
    QString caution;
    QString page;  // of each page: "%1, page %2 of %3", %1 being the student
};

// In the language of the moment, which runs that way: in the window's thread.
[[nodiscard]] SheetWords sheetWords(const SheetFindings& found, Qt::LayoutDirection direction);

// The sentences of one item: its verdict in a word, its reason in a sentence.
[[nodiscard]] SheetItemWords itemWords(const SheetItemFound& item, const SheetItem& asked, int number);

}  // namespace fb
