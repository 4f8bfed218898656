#include "app/store/record_values.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>

namespace fb {

namespace record_values_detail {

// QDate::fromString takes a microsecond, and a board reads tens of thousands.
int digitsAt(const QString& text, qsizetype from, qsizetype count)
{
    int value = 0;
    for (qsizetype i = from; i < from + count && i < text.size(); ++i)
        value = value * 10 + text[i].digitValue();
    return value;
}

void putDigits(QString& text, int from, int count, int value)
{
    for (int i = from + count - 1; i >= from; --i, value /= 10)
        text[i] = QChar(u'0' + value % 10);
}

}  // namespace record_values_detail

Moment momentOf(const QDateTime& utc) { return {utc.toUTC(), utc.toLocalTime().date()}; }

// As Qt::ISODateWithMs, which takes twenty times as long.
QString isoText(const QDateTime& at)
{
    using record_values_detail::putDigits;
    const QDateTime utc = at.toUTC();
    const QDate date = utc.date();
    const QTime time = utc.time();
    QString text = QStringLiteral("0000-00-00T00:00:00.000Z");
    const std::pair<int, std::pair<int, int>> parts[]{
        {date.year(), {0, 4}},    {date.month(), {5, 2}},   {date.day(), {8, 2}},  {time.hour(), {11, 2}},
        {time.minute(), {14, 2}}, {time.second(), {17, 2}}, {time.msec(), {20, 3}}};
    for (const auto& [value, place] : parts)
        putDigits(text, place.first, place.second, value);
    return text;
}

QDateTime timeFrom(const QString& text) { return QDateTime::fromString(text, Qt::ISODateWithMs).toUTC(); }

Day dayOf(QDate date)
{
    constexpr qint64 kEpoch = 2440588;  // Julian day of 1970-01-01
    return Day{std::chrono::days{date.toJulianDay() - kEpoch}};
}

Day dayFrom(const QString& isoDate)
{
    using record_values_detail::digitsAt;
    return Day{std::chrono::year{digitsAt(isoDate, 0, 4)} /
               std::chrono::month{static_cast<unsigned>(digitsAt(isoDate, 5, 2))} /
               std::chrono::day{static_cast<unsigned>(digitsAt(isoDate, 8, 2))}};
}

QString dayText(Day day)
{
    const std::chrono::year_month_day date{day};
    return QDate(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                 static_cast<int>(static_cast<unsigned>(date.day())))
        .toString(Qt::ISODate);
}

QString textOfUtf8(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString notNull(const QString& text) { return text.isNull() ? QString(QLatin1String("")) : text; }

void appendNumber(QByteArray& line, double value)
{
    std::array<char, 32> text{};
    const char* end = std::to_chars(text.data(), text.data() + text.size(), value + 0.0).ptr;
    line.append(text.data(), end - text.data());
}

void appendRounded(QByteArray& line, double value)
{
    constexpr double kMillion = 1e6;
    constexpr double kMost = 1e9;  // beyond it a millionth is not told apart
    constexpr int kDecimals = 6;
    if (!(std::abs(value) < kMost))
        return appendNumber(line, value);
    const long long millionths = std::llround(value * kMillion);
    unsigned long long rest = static_cast<unsigned long long>(std::llabs(millionths));
    std::array<char, 24> text{};
    auto at = text.end();
    bool isTold = false;
    for (int i = 0; i < kDecimals; ++i, rest /= 10) {
        isTold = isTold || rest % 10 != 0;
        if (isTold)
            *--at = static_cast<char>('0' + rest % 10);
    }
    if (isTold)
        *--at = '.';
    do {
        *--at = static_cast<char>('0' + rest % 10);
        rest /= 10;
    } while (rest != 0);
    if (millionths < 0)
        *--at = '-';
    line.append(at, text.end() - at);
}

QVariant orNull(const std::optional<double>& value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<double>());
}

QVariant orNull(const std::optional<QString>& value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<QString>());
}

}  // namespace fb
