#include "app/roster/csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace fb::test::csv_tests {

namespace csv_test {

std::vector<QStringList> read(const QString& text, QChar separator = u',')
{
    const auto rows = parseCsv(QStringLiteral("a.csv"), text, separator);
    std::vector<QStringList> fields;
    EXPECT_TRUE(rows.has_value()) << text.toStdString();
    for (const CsvRow& row : rows.value_or(std::vector<CsvRow>{}))
        fields.push_back(row.fields);
    return fields;
}

using Rows = std::vector<QStringList>;

}  // namespace csv_test

// The rules of RFC 4180, section 2, in its own examples.
TEST(CsvTest, ReadsWhatRfc4180Shows)
{
    using csv_test::read;
    using csv_test::Rows;
    const Rows two{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), two);          // 1
    EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx"), two);              // 2: the last end may be missing
    EXPECT_EQ(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), two);  // 5
    EXPECT_EQ(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),    // 6
              (Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(read("\"aaa\",\"b\"\"bb\",\"ccc\""), (Rows{{"aaa", "b\"bb", "ccc"}}));  // 7
    EXPECT_EQ(read(" a ,b "), (Rows{{" a ", "b "}}));  // 4: spaces belong to the field
}

TEST(CsvTest, EveryLineEndEndsARecordAndEmptyLinesAreLeftOut)
{
    using csv_test::read;
    using csv_test::Rows;
    const Rows rows{{"a", "b"}, {"c", "d"}};
    for (const char* end : {"\r\n", "\n", "\r"}) {
        const QString e = QLatin1String(end);
        EXPECT_EQ(read(e + "a,b" + e + e + "c,d" + e + e), rows);
    }
    EXPECT_EQ(read(""), Rows{});
    EXPECT_EQ(read("\r\n\r\n"), Rows{});
    EXPECT_EQ(read("\"\""), (Rows{{""}}));
    EXPECT_EQ(read(","), (Rows{{"", ""}}));
    EXPECT_EQ(read("a,\n,b"), (Rows{{"a", ""}, {"", "b"}}));
}

TEST(CsvTest, ALooseQuotationMarkIsALetter)
{
    using csv_test::read;
    using csv_test::Rows;
    EXPECT_EQ(read("5\" needle,b"), (Rows{{"5\" needle", "b"}}));
    EXPECT_EQ(read("\"a\"b,c"), (Rows{{"ab", "c"}}));
    EXPECT_EQ(read("\"a\" ,c"), (Rows{{"a ", "c"}}));
}

TEST(CsvTest, AnotherSeparatorLeavesTheCommaALetter)
{
    using csv_test::read;
    using csv_test::Rows;
    EXPECT_EQ(read("Smith, Ann;7\nb;\"c;d\"", u';'), (Rows{{"Smith, Ann", "7"}, {"b", "c;d"}}));
    EXPECT_EQ(read("a\tb,c\n", u'\t'), (Rows{{"a", "b,c"}}));
}

TEST(CsvTest, EveryRowKnowsItsLine)
{
    const auto rows = parseCsv({}, "a\r\n\r\n\"b\r\nb\nb\rb\"\rc\n\nd", u',');
    ASSERT_TRUE(rows);
    std::vector<int> lines;
    for (const CsvRow& row : *rows)
        lines.push_back(row.line);
    EXPECT_EQ(lines, (std::vector<int>{1, 3, 7, 9}));
}

TEST(CsvTest, AnOpenQuotationMarkIsToldWithItsLine)
{
    const auto rows = parseCsv(QStringLiteral("class.csv"), "a,b\n\"x\ny\",c\nd,\"e\nf\n", u',');
    ASSERT_FALSE(rows);
    EXPECT_EQ(rows.error(), (Fault{Problem::CsvBroken, "class.csv", "4"}));
    EXPECT_FALSE(parseCsv({}, "\"", u','));
    EXPECT_FALSE(parseCsv({}, "\"a\"\"", u','));
}

// OWASP ASVS 5.0, 1.2.10, and RFC 4180, 2.6 and 2.7.
TEST(CsvTest, WritesTextThatNoSpreadsheetCalculates)
{
    const std::vector<std::pair<QString, QByteArray>> table{
        {"Smith, Ann", "\"Smith, Ann\""},
        {"say \"hi\"", "\"say \"\"hi\"\"\""},
        {"=2+5+cmd", "'=2+5+cmd"},
        {"-3.5", "'-3.5"},
        {"@sum", "'@sum"},
        {"a\nb", "\"a\nb\""},
        {"+1", "'+1"},
        {"\t=1", "'\t=1"},
        {"\r=1", "\"'\r=1\""},
        {QString(QChar(0)) + "x", QByteArray("'\0x", 3)},
        {"=\"a\",b", "\"'=\"\"a\"\",b\""},
        {"", ""},
        {"O'Neil", "O'Neil"},
        {"'t Hooft", "'t Hooft"},
        {"a=b", "a=b"},
        {QString::fromUtf8("Núñez"), "Núñez"},
    };
    for (const auto& [text, field] : table)
        EXPECT_EQ(csvText(text), field) << text.toStdString();
}

TEST(CsvTest, TakesExactlyOneGuardOff)
{
    EXPECT_EQ(withoutGuard("'=1"), "=1");
    EXPECT_EQ(withoutGuard("''=1"), "'=1");
    EXPECT_EQ(withoutGuard("'t Hooft"), "'t Hooft");
    EXPECT_EQ(withoutGuard("=1"), "=1");
    EXPECT_EQ(withoutGuard("'"), "'");
    EXPECT_EQ(withoutGuard(""), "");
}

TEST(CsvTest, NumbersAreNeverGuardedAndAlwaysHaveAPoint)
{
    EXPECT_EQ(csvNumber(-3.5, 1), "-3.5");
    EXPECT_EQ(csvNumber(12, 0), "12");
    EXPECT_EQ(csvNumber(1234567.891, 2), "1234567.89");
    EXPECT_EQ(csvNumber(-0.001, 2), "0.00");
    EXPECT_EQ(csvNumber(-0.0, 0), "0");
    EXPECT_EQ(csvNumber(std::nan(""), 2), "");
    EXPECT_EQ(csvNumber(-std::numeric_limits<double>::infinity(), 2), "");
}

TEST(CsvTest, WhatIsWrittenIsReadBack)
{
    const QString letters = QString::fromUtf8("a'=+-@\t\r\n\",; é漢\0x", 19);
    for (unsigned seed = 1; seed <= 3000; ++seed) {
        std::mt19937 chance(seed);
        QStringList row;
        QByteArray line;
        for (unsigned field = 0; field < 2 + chance() % 4; ++field) {
            QString text;
            for (auto length = chance() % 6; length > 0; --length)
                text += letters[static_cast<qsizetype>(chance()) % letters.size()];
            line += (field == 0 ? "" : ",") + csvText(text);
            row.append(text);
        }
        const auto read = csv_test::read(QString::fromUtf8(line + "\r\n"));
        ASSERT_EQ(read.size(), 1U) << "seed " << seed;
        QStringList back;
        for (const QString& field : read.front())
            back.append(withoutGuard(field));
        ASSERT_EQ(back, row) << "seed " << seed;
    }
}

}  // namespace fb::test::csv_tests
