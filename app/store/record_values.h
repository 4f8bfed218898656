// How values stand in the records' tables: words as core writes them, times in UTC as ISO 8601 with
// milliseconds and a Z, days as ISO 8601.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <QVariant>
#include <optional>
#include <string>
#include <string_view>

#include "core/scoring/retest.h"

namespace fb {

// When something is asked for, seen by the lab.
struct Moment {
    QDateTime at;  // UTC
    QDate day;     // of the lab's calendar
};
[[nodiscard]] Moment momentOf(const QDateTime& utc);

[[nodiscard]] QString isoText(const QDateTime& at);
[[nodiscard]] QDateTime timeFrom(const QString& text);  // UTC; invalid for anything else
[[nodiscard]] Day dayOf(QDate date);
[[nodiscard]] Day dayFrom(const QString& isoDate);  // as isoText and QDate::toString write it
[[nodiscard]] QString dayText(Day day);

[[nodiscard]] QString textOfUtf8(std::string_view utf8);
// Qt binds a null text as no value at all.
[[nodiscard]] QString notNull(const QString& text);
// No value where there is none.
[[nodiscard]] QVariant orNull(const std::optional<double>& value);
[[nodiscard]] QVariant orNull(const std::optional<QString>& value);

// The shortest text that reads back as the same number; nought has no sign.
void appendNumber(QByteArray& line, double value);
// To the millionth, as everything that leaves core is rounded; no noughts at its end.
void appendRounded(QByteArray& line, double value);

// Of anything that has one in core.
template <class Enum>
[[nodiscard]] QString word(Enum value)
{
    const std::string_view text = wordOf(value);
    return QString::fromLatin1(text.data(), static_cast<qsizetype>(text.size()));
}
template <class Enum>
[[nodiscard]] std::optional<QString> word(const std::optional<Enum>& value)
{
    return value ? std::optional(word(*value)) : std::nullopt;
}

}  // namespace fb
