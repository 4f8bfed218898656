// Comma-separated values as RFC 4180 has them, in and out.
//
// A reader of our own: the one CSV library that Debian 12 and Ubuntu 24.04 both package is libcsv, in C,
// which calls back for every field of bytes, knows neither lines nor UTF-16 and does not say where an open
// quotation mark began. What is needed is one small machine, held to Python's csv module and a fuzzer.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/basics/problem.h"

namespace fb {

struct CsvRow {
    QStringList fields;
    int line = 0;  // where it begins, from 1
};

// CsvBroken (where: name; what: the line whose quotation mark is never closed). CRLF, LF and CR end a record;
// empty lines are left out. A quotation mark inside a field that does not begin with one is a letter like
// any.
[[nodiscard]] Result<std::vector<CsvRow>> parseCsv(const QString& name, const QString& text, QChar separator);

// A text field: quoted where RFC 4180 asks for it, and with a single quotation mark put before what a
// spreadsheet would take for a formula (=, +, -, @, tab, carriage return, NUL first: OWASP ASVS 5.0, 1.2.10),
// or for such a guard: taking one off gives every text back.
[[nodiscard]] QByteArray csvText(const QString& text);
// The guard taken off again: of files this program wrote.
[[nodiscard]] QString withoutGuard(const QString& field);
// A number, never guarded, always with a point; empty where it is not finite.
[[nodiscard]] QByteArray csvNumber(double value, int decimals);

}  // namespace fb
