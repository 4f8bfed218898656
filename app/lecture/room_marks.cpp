#include "app/lecture/room_marks.h"

#include <QStringConverter>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/roster/csv.h"
#include "app/roster/roster_columns.h"

namespace fb {

namespace room_marks_detail {

constexpr qsizetype kLargestFile = 1024 * 1024;  // bytes: more than kMostRoomMarks lines need

Fault tooMany(const QString& file)
{
    return {Problem::MarksTooMany, file.toStdString(), {}, 0.0, kMostRoomMarks};
}

Result<QString> decoded(const QByteArray& bytes, const QString& file)
{
    QStringDecoder decoder(QStringConverter::Utf8, QStringConverter::Flag::Stateless);
    QString text = decoder.decode(bytes);
    const bool isBroken = decoder.hasError();
    const qsizetype wrong = text.indexOf(isBroken ? QChar(QChar::ReplacementCharacter) : QChar(0));
    if (isBroken || wrong >= 0) {
        const QStringView before = QStringView(text).left(wrong < 0 ? text.size() : wrong);
        return fault(Problem::FileNotUtf8, file.toStdString(), std::to_string(1 + before.count(u'\n')));
    }
    return text;
}

// What the line of the column names uses most outside quotation marks.
QChar separatorOf(const QString& text)
{
    constexpr std::array kSeparators{u',', u';', u'\t'};
    std::array<int, kSeparators.size()> counts{};
    bool isQuoted = false, hasLetters = false;
    for (const QChar c : text) {
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

bool isBlank(const CsvRow& row)
{
    return std::all_of(row.fields.begin(), row.fields.end(),
                       [](const QString& field) { return field.trimmed().isEmpty(); });
}

// -1: there is none. The first of a name is taken.
qsizetype columnOf(const CsvRow& header, QLatin1String name)
{
    const auto found = std::find_if(header.fields.begin(), header.fields.end(), [&](const QString& field) {
        return field.trimmed().compare(name, Qt::CaseInsensitive) == 0;
    });
    return found == header.fields.end() ? -1 : found - header.fields.begin();
}

std::optional<double> centimetresIn(QString field)
{
    field = field.trimmed();
    field.replace(QChar(0x2212), u'-');  // the minus sign of a typeset table
    // Both would be a sign between thousands, and nothing tells which.
    if (field.contains(u'.') && field.contains(u','))
        return std::nullopt;
    field.replace(u',', u'.');
    bool isNumber = false;
    const double value = field.toDouble(&isNumber);
    const bool isNear = isNumber && std::isfinite(value) && std::abs(value) <= kFarthestRoomMark;
    return isNear ? std::optional(value) : std::nullopt;
}

}  // namespace room_marks_detail

QString tidyRoomName(const QString& name)
{
    QString tidy = tidyText(name).left(kLongestRoomName);
    // Half a letter is none.
    if (!tidy.isEmpty() && tidy.back().isHighSurrogate())
        tidy.chop(1);
    return tidy.trimmed();
}

Result<std::vector<RoomMark>> roomMarksFromCsv(const QByteArray& bytes, const QString& file)
{
    using namespace room_marks_detail;
    if (bytes.size() > kLargestFile)
        return tl::unexpected(tooMany(file));
    const auto text = decoded(bytes, file);
    if (!text)
        return tl::unexpected(text.error());
    auto rows = parseCsv(file, *text, separatorOf(*text));
    if (!rows)
        return tl::unexpected(rows.error());
    std::erase_if(*rows, isBlank);
    if (rows->empty())
        return fault(Problem::MarksEmpty, file.toStdString());

    const CsvRow& header = rows->front();
    const qsizetype name = columnOf(header, QLatin1String("name"));
    std::array<qsizetype, 2> places{};
    constexpr std::array kPlaces{"x_cm", "y_cm"};
    for (std::size_t i = 0; i < kPlaces.size(); ++i) {
        places[i] = columnOf(header, QLatin1String(kPlaces[i]));
        if (places[i] < 0)
            return fault(Problem::MarksNoColumn, file.toStdString(), kPlaces[i]);
    }
    if (rows->size() == 1)
        return fault(Problem::MarksEmpty, file.toStdString());
    if (rows->size() > static_cast<std::size_t>(kMostRoomMarks) + 1)
        return tl::unexpected(tooMany(file));

    std::vector<RoomMark> marks;
    for (auto row = rows->begin() + 1; row != rows->end(); ++row) {
        const auto x = centimetresIn(row->fields.value(places[0]));
        const auto y = centimetresIn(row->fields.value(places[1]));
        if (!x || !y)
            return fault(Problem::MarksBadValue, file.toStdString(), std::to_string(row->line));
        marks.push_back({name < 0 ? QString() : tidyRoomName(row->fields.value(name)), {*x, *y}, {}});
    }
    return marks;
}

}  // namespace fb
