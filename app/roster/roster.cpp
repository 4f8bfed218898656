#include "app/roster/roster.h"

#include <QFile>
#include <QFileInfo>
#include <QStringConverter>
#include <algorithm>
#include <array>
#include <utility>

#include "app/roster/csv.h"
#include "app/roster/roster_columns.h"

namespace fb {

namespace roster_detail {

constexpr qint64 kLargestFile = 64LL * 1024 * 1024;  // bytes: more than the longest roster needs

Fault tooLong(const QString& name)
{
    return {Problem::RosterTooLong, name.toStdString(), {}, 0.0, kLongestRoster};
}

int lineOf(const QString& text, qsizetype at)
{
    const QStringView before = QStringView(text).left(at);
    const auto fed = before.count(u'\n');
    const auto returned = before.count(u'\r') - before.count(u"\r\n");
    return static_cast<int>(1 + fed + returned);
}

// What a mark at the beginning says, else UTF-8. A NUL is no letter of any roster: the file is none, or
// UTF-16 without its mark.
Result<QString> decoded(const QString& name, const QByteArray& bytes)
{
    const auto encoding = QStringConverter::encodingForData(bytes).value_or(QStringConverter::Utf8);
    QStringDecoder decoder(encoding, QStringConverter::Flag::Stateless);
    QString text = decoder.decode(bytes);
    // Half a letter of UTF-16 at the end is passed over by the decoder.
    const bool isCut = encoding != QStringConverter::Utf8 && bytes.size() % 2 != 0;
    const bool isBroken = decoder.hasError() || isCut;
    const qsizetype wrong = text.indexOf(isBroken ? QChar(QChar::ReplacementCharacter) : QChar(0));
    if (isBroken || wrong >= 0)
        return fault(Problem::FileNotUtf8, name.toStdString(),
                     std::to_string(lineOf(text, wrong < 0 ? text.size() : wrong)));
    return text;
}

// Spreadsheets may say it in a first line of their own, which is then emptied; else what the first line uses
// most outside quotation marks.
QChar takeSeparator(QString& text)
{
    constexpr std::array kSeparators{u',', u';', u'\t'};
    const QLatin1String said("sep=");
    if (text.startsWith(said, Qt::CaseInsensitive) && text.size() > said.size()) {
        const QChar separator = text[said.size()];
        text.remove(0, said.size() + 1);
        return separator;
    }
    std::array<int, kSeparators.size()> counts{};
    bool isQuoted = false, hasLetters = false;
    for (const QChar c : std::as_const(text)) {
        if (c == u'"')
            isQuoted = !isQuoted;
        else if ((c == u'\n' || c == u'\r') && !isQuoted && hasLetters)
            break;
        for (std::size_t i = 0; i < kSeparators.size(); ++i)
            counts[i] += !isQuoted && c == kSeparators[i] ? 1 : 0;
        hasLetters = hasLetters || !c.isSpace();
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return kSeparators[static_cast<std::size_t>(most - counts.begin())];
}

bool isBlank(const QStringList& fields)
{
    return std::all_of(fields.begin(), fields.end(), [](const QString& f) { return f.trimmed().isEmpty(); });
}

QStringList without(QStringList fields, const std::vector<qsizetype>& columns)
{
    for (auto column = columns.rbegin(); column != columns.rend(); ++column) {
        if (*column < fields.size())
            fields.removeAt(*column);
    }
    return fields;
}

std::vector<qsizetype> secretColumns(const QStringList& header)
{
    std::vector<qsizetype> columns;
    for (qsizetype index = 0; index < header.size(); ++index) {
        if (isSecretColumn(header[index]))
            columns.push_back(index);
    }
    return columns;
}

// The first line names the columns, unless it holds a student already: nothing in it is known for a name and
// something in it is a number.
void takeHeader(RosterFile& file, std::vector<CsvRow>& rows)
{
    if (rows.empty())
        return;
    const QStringList& first = rows.front().fields;
    const bool hasDigits = std::any_of(first.begin(), first.end(), [](const QString& field) {
        return std::any_of(field.begin(), field.end(), [](QChar c) { return c.isDigit(); });
    });
    if (!isHeader(first) && hasDigits) {
        file.header.resize(first.size());
        return;
    }
    for (const QString& name : first)
        file.header.append(tidyText(name));
    rows.erase(rows.begin());
}

}  // namespace roster_detail

Result<RosterFile> readRoster(const QString& file)
{
    using namespace roster_detail;
    const QString name = QFileInfo(file).fileName();
    QFile opened(file);
    if (QFileInfo(file).isDir() || !opened.open(QIODevice::ReadOnly))
        return fault(Problem::FileNotReadable, name.toStdString());
    const QByteArray bytes = opened.read(kLargestFile + 1);
    if (opened.error() != QFileDevice::NoError)
        return fault(Problem::FileNotReadable, name.toStdString());
    if (bytes.size() > kLargestFile)
        return tl::unexpected(tooLong(name));
    return parseRoster(name, bytes);
}

Result<RosterFile> parseRoster(const QString& name, const QByteArray& bytes)
{
    using namespace roster_detail;
    auto text = decoded(name, bytes);
    if (!text)
        return tl::unexpected(text.error());
    const QChar separator = takeSeparator(*text);
    auto rows = parseCsv(name, *text, separator);
    if (!rows)
        return tl::unexpected(rows.error());
    std::erase_if(*rows, [](const CsvRow& row) { return isBlank(row.fields); });

    RosterFile file;
    file.name = name;
    takeHeader(file, *rows);
    if (rows->empty())
        return fault(Problem::RosterEmpty, name.toStdString());
    if (rows->size() > static_cast<std::size_t>(kLongestRoster))
        return tl::unexpected(tooLong(name));
    const auto secret = secretColumns(file.header);
    file.header = without(file.header, secret);
    file.rows.reserve(rows->size());
    file.lines.reserve(rows->size());
    for (CsvRow& row : *rows) {
        file.rows.push_back(secret.empty() ? std::move(row.fields) : without(std::move(row.fields), secret));
        file.lines.push_back(row.line);
    }
    file.oneRoster = isOneRoster(file.header);
    file.roleColumn = file.oneRoster ? static_cast<int>(file.header.indexOf(QLatin1String("role"))) : -1;
    file.guessed = isHeader(file.header) ? guessedMapping(file.header) : mappingOfRow(file.rows.front());
    return file;
}

}  // namespace fb
