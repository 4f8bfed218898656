// How standings and outcomes look beside their words, and the few texts several views of the records share.
#pragma once

#include <QCollator>
#include <QHash>
#include <QString>

#include "app/doors/records.h"
#include "app/look/icons.h"

namespace fb {

// A shape of its own for each way it can end.
[[nodiscard]] Icon iconOfStanding(Standing standing);
[[nodiscard]] Icon iconOfOutcome(Outcome outcome);
[[nodiscard]] QColor colourOfStanding(Standing standing, const Scheme& scheme);
[[nodiscard]] QColor colourOfOutcome(Outcome outcome, const Scheme& scheme);

// The same as icons for the rows of a list: each drawn once in the scheme, and in its ink of a chosen row.
class RecordIcons {
public:
    void setScheme(const Scheme& scheme);
    [[nodiscard]] QIcon of(Standing standing) const;
    [[nodiscard]] QIcon of(Outcome outcome) const;

private:
    [[nodiscard]] QIcon drawn(Icon icon, const QColor& colour) const;

    Scheme m_scheme;
    mutable QHash<int, QIcon> m_drawn;  // by icon and colour
};

[[nodiscard]] QString percentText(double percent);     // "84 %"
[[nodiscard]] QString shortHead(const QString& head);  // the twelve hex digits that stand on the sheet
// How every list of people is sorted: as the language of the program does, its case and accents after its
// letters, numbers by their value; where there is no language, as English does. Made for a list and kept by
// it: it does not follow a later change of language.
[[nodiscard]] QCollator listOrder();
// "Family, Given", by which lists are sorted.
[[nodiscard]] QString listName(const Student& student);
[[nodiscard]] QString signersOf(const CheckOffLine& line);
[[nodiscard]] QString sheetTitle(const SheetOnFile& sheet);
// A standing without its date, to choose by.
[[nodiscard]] QString standingWord(Standing standing);

}  // namespace fb
