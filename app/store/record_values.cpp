#include "app/store/record_values.h"

#include <array>
#include <charconv>

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

}  // namespace record_values_detail

Moment momentOf(const QDateTime& utc) { return {utc.toUTC(), utc.toLocalTime().date()}; }

QString isoText(const QDateTime& at) { return at.toUTC().toString(Qt::ISODateWithMs); }

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

QVariant orNull(const std::optional<double>& value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<double>());
}

QVariant orNull(const std::optional<QString>& value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<QString>());
}

}  // namespace fb
