// A roster: students read from a CSV file by the names of its columns: a OneRoster users.csv (only rows with
// the role student), or a plain list of id, family, given and section under any names that can be told.
//
// A column of passwords is taken out at once and never shown. Text stays text, formulas too: csvText() guards
// what is written.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <array>
#include <vector>

#include "app/doors/records.h"

namespace fb {

inline constexpr int kLongestRoster = 100000;  // rows: lab's choice
// More time for a student, three times in all: as much as the records take.
inline constexpr int kMostExtraPercent = 200;
inline constexpr int kLongestId = 100;  // letters: lab's choice

enum class RosterColumn { Id, Family, Given, FullName, Section, ExtraPercent, Language };
inline constexpr int kRosterColumnCount = static_cast<int>(RosterColumn::Language) + 1;

// Which column of the file stands for what; -1: none.
using RosterMapping = std::array<int, kRosterColumnCount>;

struct RosterFile {
    QString name;
    QStringList header;  // empty words: the first line holds a student already
    std::vector<QStringList> rows;
    std::vector<int> lines;  // of each row in the file, from 1
    bool oneRoster = false;
    int roleColumn = -1;  // OneRoster: rows of another role are left out
    RosterMapping guessed{};
};

// FileNotReadable, FileNotUtf8 (a UTF-8 or UTF-16 byte-order mark is understood), CsvBroken, RosterEmpty,
// RosterTooLong. Comma, semicolon or tab, whichever the first line uses most. Never on the window's thread.
[[nodiscard]] Result<RosterFile> readRoster(const QString& file);
[[nodiscard]] Result<RosterFile> parseRoster(const QString& name, const QByteArray& bytes);

// One row as it will be saved.
struct RosterRow {
    Student student;
    int line = 0;
    enum class Kind { New, Changed, Same, Doubled, NoId, Nameless } kind{};
    int firstLine = 0;     // Doubled: where the id stands first
    QString unclearExtra;  // what stands for the extra time and cannot be told; that of before stays
};

// RosterNoColumn (what: id or name) when the mapping lacks what is needed: an id and a name. `known`: already
// saved; what the file has no column for stays as it is there. The first line of an id that can be saved is
// kept, the others are Doubled; NoId too where it is longer than kLongestId. A OneRoster row of another role,
// or one to be deleted, is no row here.
[[nodiscard]] Result<std::vector<RosterRow>> rosterRows(const RosterFile& file, const RosterMapping& mapping,
                                                        const std::vector<Student>& known);
// New and Changed only.
[[nodiscard]] std::vector<Student> studentsToSave(const std::vector<RosterRow>& rows);

}  // namespace fb
