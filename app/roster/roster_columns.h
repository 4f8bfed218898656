// What the columns of a roster are called and what stands in them: names in English and Spanish, told
// whatever their case, accents, blanks and signs.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "app/roster/roster.h"

namespace fb {

// The header names a OneRoster users.csv, 1.1 or 1.2, by its exact words.
[[nodiscard]] bool isOneRoster(const QStringList& header);
// A password: never read.
[[nodiscard]] bool isSecretColumn(const QString& name);
// By name, never by position; the first column of a name wins.
[[nodiscard]] RosterMapping guessedMapping(const QStringList& header);
// Whether any name means something here.
[[nodiscard]] bool isHeader(const QStringList& row);
// Of a file without header, from its first line: what holds a digit and no blank is the id.
[[nodiscard]] RosterMapping mappingOfRow(const QStringList& row);
// Marks invented students in files this program ships; -1 where there is none.
[[nodiscard]] int inventedColumn(const QStringList& header);

struct SplitName {
    QString family, given;
};
// "Family, Given"; without a comma the last word is the family name, with the small words before it
// (Ludwig van Beethoven).
[[nodiscard]] SplitName splitName(const QString& full);

// One line without control characters and without the marks that turn the writing direction of what follows;
// a guard of csvText() taken off; composed letters.
[[nodiscard]] QString tidyText(const QString& field);
// "25", "25 %": 0 to kMostExtraPercent; empty: 0. None: cannot be told ("1.5", "yes").
[[nodiscard]] std::optional<int> extraPercentIn(const QString& field);
// "es", "es-MX", "Spanish", "español" as a locale name; empty where it is no language.
[[nodiscard]] QString languageIn(const QString& field);

}  // namespace fb
