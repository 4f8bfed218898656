#include "app/store/record_values.h"

#include <gtest/gtest.h>

#include <QTimeZone>

#include "core/basics/enums.h"

namespace fb::test::record_values_test {

TEST(RecordValuesTest, TimesStandInUtcAndReadBack)
{
    const QDateTime at(QDate(2026, 11, 29), QTime(23, 30, 5, 7), QTimeZone("America/New_York"));
    EXPECT_EQ(isoText(at), QStringLiteral("2026-11-30T04:30:05.007Z"));
    EXPECT_EQ(timeFrom(isoText(at)), at);
    EXPECT_EQ(timeFrom(isoText(at)).timeSpec(), Qt::UTC);
    EXPECT_FALSE(timeFrom(QStringLiteral("yesterday")).isValid());
    for (qint64 second = 0; second < 4000000000; second += 98765432) {
        const QDateTime any = QDateTime::fromMSecsSinceEpoch(second * 1000 + second % 1000, Qt::UTC);
        EXPECT_EQ(isoText(any), any.toString(Qt::ISODateWithMs));
    }
}

TEST(RecordValuesTest, TheDayIsTheLabsOwn)
{
    const QDateTime at(QDate(2026, 11, 29), QTime(23, 30), Qt::LocalTime);
    EXPECT_EQ(momentOf(at.toUTC()).day, QDate(2026, 11, 29));
    EXPECT_EQ(momentOf(at).at.timeSpec(), Qt::UTC);
}

TEST(RecordValuesTest, DaysOfTheCalendarAreDaysOfCore)
{
    for (const QDate date : {QDate(1970, 1, 1), QDate(2024, 2, 29), QDate(2026, 12, 31)}) {
        const QString text = date.toString(Qt::ISODate);
        EXPECT_EQ(dayFrom(text), dayOf(date)) << text.toStdString();
        EXPECT_EQ(dayText(dayOf(date)), text);
    }
    EXPECT_EQ(dayOf(QDate(1970, 1, 2)).time_since_epoch().count(), 1);
    EXPECT_EQ(dayOf(QDate(2026, 3, 1)) - dayOf(QDate(2026, 2, 28)), std::chrono::days{1});
}

TEST(RecordValuesTest, WhatIsMissingIsNoValueAndEmptyIsOne)
{
    EXPECT_TRUE(orNull(std::optional<double>()).isNull());
    EXPECT_EQ(orNull(std::optional(2.5)).toDouble(), 2.5);
    EXPECT_TRUE(orNull(std::optional<QString>()).isNull());
    EXPECT_FALSE(notNull(QString()).isNull());
    EXPECT_EQ(notNull(QStringLiteral("a")), QStringLiteral("a"));
}

TEST(RecordValuesTest, ANumberReadsBackAsItself)
{
    for (const double number : {0.0, 1.0, -4.25, 1.0 / 3.0, 1e-7, 123456789.125, 1e300}) {
        QByteArray line("x");
        appendNumber(line, number);
        EXPECT_EQ(line.mid(1).toDouble(), number) << line.toStdString();
        EXPECT_FALSE(line.contains(','));
    }
    QByteArray nought;
    appendNumber(nought, -0.0);
    EXPECT_EQ(nought, "0");
}

TEST(RecordValuesTest, ANumberIsRoundedToTheMillionth)
{
    const std::pair<double, const char*> kRows[]{{0.0, "0"},
                                                 {-0.0, "0"},
                                                 {-1e-9, "0"},
                                                 {1.0, "1"},
                                                 {-4.25, "-4.25"},
                                                 {100.0 / 6.0, "16.666667"},
                                                 {-0.000001, "-0.000001"},
                                                 {0.1 + 0.2, "0.3"},
                                                 {999999999.5, "999999999.5"},
                                                 {1e12, "1e+12"}};
    for (const auto& [number, text] : kRows) {
        QByteArray line;
        appendRounded(line, number);
        EXPECT_EQ(line, QByteArray(text));
    }
}

TEST(RecordValuesTest, WordsAreThoseOfCore)
{
    EXPECT_EQ(word(Side::Left), QStringLiteral("left"));
    EXPECT_EQ(word(std::optional(Outcome::FailCritical)), std::optional(QStringLiteral("fail_critical")));
    EXPECT_FALSE(word(std::optional<Outcome>()));
    EXPECT_EQ(textOfUtf8("Ü"), QStringLiteral("Ü"));
}

}  // namespace fb::test::record_values_test
