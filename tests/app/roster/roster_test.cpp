#include "app/roster/roster.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QStringEncoder>
#include <QTemporaryDir>

#include "tests/support/record_folder.h"

namespace fb::test::roster_tests {

namespace roster_test {

using Kind = RosterRow::Kind;

// Header as published for OneRoster 1.1, users.csv (several public implementations and file guides).
constexpr const char* kOneRoster =
    "sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,familyName,"
    "middleName,identifier,email,sms,phone,agentSourcedIds,grades,password\r\n";

Student student(const char* id, const char* family, const char* given, const char* section = "",
                int extra = 0, const char* language = "")
{
    return {id, family, given, section, extra, language};
}

Result<RosterFile> parsed(const QByteArray& bytes) { return parseRoster(QStringLiteral("class.csv"), bytes); }

std::vector<RosterRow> rowsOf(const QByteArray& bytes, const std::vector<Student>& known = {})
{
    const auto file = parsed(bytes);
    EXPECT_TRUE(file.has_value());
    if (!file)
        return {};
    const auto rows = rosterRows(*file, file->guessed, known);
    EXPECT_TRUE(rows.has_value());
    return rows.value_or(std::vector<RosterRow>{});
}

std::vector<Kind> kindsOf(const std::vector<RosterRow>& rows)
{
    std::vector<Kind> kinds;
    for (const RosterRow& row : rows)
        kinds.push_back(row.kind);
    return kinds;
}

Fault faultOf(const QByteArray& bytes)
{
    const auto file = parsed(bytes);
    return file ? Fault{} : file.error();
}

QByteArray encoded(const QString& text, QStringConverter::Encoding encoding)
{
    QStringEncoder encoder(encoding, QStringConverter::Flag::WriteBom);
    return encoder.encode(text);
}

}  // namespace roster_test

TEST(RosterTest, ReadsOneRosterByNameAndStudentsOnly)
{
    using namespace roster_test;
    const QByteArray bytes = QByteArray(kOneRoster) +
                             "s-004217,,,true,org-nur,student,aruiz,,Ana,Ruiz,,004217,,,,,,secret\r\n"
                             "i-07,,,true,org-nur,teacher,bkhan,,Bilal,Khan,,,,,,,,hidden\r\n"
                             "s-9,tobedeleted,,true,org-nur,student,x,,Gone,Away,,,,,,,,\r\n";
    const auto file = parsed(bytes);
    ASSERT_TRUE(file);
    EXPECT_TRUE(file->oneRoster);
    EXPECT_EQ(file->header.size(), 17);  // without the password
    const auto rows = rowsOf(bytes);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].student, student("s-004217", "Ruiz", "Ana"));
    EXPECT_EQ(rows[0].line, 2);
    for (const QStringList& row : file->rows) {
        EXPECT_FALSE(row.contains("secret"));
        EXPECT_FALSE(row.contains("hidden"));
    }
}

TEST(RosterTest, ColumnsMayStandInAnyOrderAmongUnknownOnes)
{
    using namespace roster_test;
    const auto rows = rowsOf("metadata.id,password,familyName,role,hair,givenName,sourcedId\n"
                             "zz,pw,Ruiz,Student,red,Ana,s-1\n"
                             "zz,pw,Khan,aide,red,Bilal,s-2\n");
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].student, student("s-1", "Ruiz", "Ana"));
}

TEST(RosterTest, ReadsAPlainListWithEverySeparator)
{
    using namespace roster_test;
    const Student ana = student("7", "Ruiz", "Ana", "A", 25, "es");
    for (const char* separator : {",", ";", "\t"}) {
        QByteArray text = "id|family|given|section|extra time|language\r\n7|Ruiz|Ana|A|25 %|Spanish\r\n";
        const auto rows = rowsOf(text.replace('|', separator));
        ASSERT_EQ(rows.size(), 1U) << separator;
        EXPECT_EQ(rows[0].student, ana) << separator;
        EXPECT_EQ(rows[0].kind, Kind::New);
    }
    // As spreadsheets of some countries say it; and a comma inside quotation marks is no separator.
    EXPECT_EQ(rowsOf("sep=;\r\nid;name\r\n7;\"Ruiz, Ana\"\r\n")[0].student, student("7", "Ruiz", "Ana"));
    EXPECT_EQ(rowsOf("sep=;\r\nid;name\r\n7;x\r\n")[0].line, 3);
    EXPECT_EQ(rowsOf("\"id,\nnumber,,\";name\n7;x\n").size(), 1U);
}

TEST(RosterTest, AListWithoutHeaderLosesNobody)
{
    using namespace roster_test;
    const auto rows = rowsOf("004217,Ruiz,Ana\n004218,Khan,Bilal\n");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].student, student("004217", "Ruiz", "Ana"));
    EXPECT_EQ(rows[0].line, 1);
    EXPECT_TRUE(parsed("004217,Ruiz,Ana\n")->header[0].isEmpty());
}

TEST(RosterTest, UnderstandsEveryByteOrderMark)
{
    using namespace roster_test;
    const QString text = QString::fromUtf8("id,name\n7,Núñez 漢 🦀\n");
    for (const auto encoding :
         {QStringConverter::Utf8, QStringConverter::Utf16LE, QStringConverter::Utf16BE}) {
        const auto rows = rowsOf(encoded(text, encoding));
        ASSERT_EQ(rows.size(), 1U);
        EXPECT_EQ(rows[0].student.given, QString::fromUtf8("Núñez 漢"));
        EXPECT_EQ(rows[0].student.family, QString::fromUtf8("🦀"));
        EXPECT_EQ(rows[0].student.id, "7");
    }
    EXPECT_EQ(rowsOf(text.toUtf8()).size(), 1U);
}

TEST(RosterTest, AnotherEncodingIsToldWithItsLine)
{
    using namespace roster_test;
    const auto broken = [](const char* line) { return Fault{Problem::FileNotUtf8, "class.csv", line}; };
    EXPECT_EQ(faultOf("id,name\r\n1,Ann\r\n2,N\xfa\xf1"
                      "ez\r\n"),
              broken("3"));
    EXPECT_EQ(faultOf("id,name\r1,Ann\r2,N\xfa\r"), broken("3"));
    EXPECT_EQ(faultOf("id,name\n1,\xc3"), broken("2"));
    EXPECT_EQ(faultOf("id,name\n1,\xc0\xaf\n"), broken("2"));      // overlong
    EXPECT_EQ(faultOf("id,name\n1,\xed\xa0\x80\n"), broken("2"));  // half a pair
    EXPECT_EQ(faultOf(QByteArray("id,name\n1,A\0nn\n", 15)), broken("2"));
    // UTF-16 without its mark, and a spreadsheet's own file.
    EXPECT_EQ(faultOf(encoded("id,name\n1,a\n", QStringConverter::Utf16LE).mid(2)), broken("1"));
    EXPECT_EQ(faultOf(QByteArray("PK\x03\x04\x14\0\x06\0", 8)), broken("1"));
    EXPECT_EQ(faultOf(encoded("id,name\n1,a\n", QStringConverter::Utf16LE).chopped(1)), broken("2"));
}

TEST(RosterTest, AnEmptyFileAnOpenQuoteAndAMissingFileAreTold)
{
    using namespace roster_test;
    for (const char* empty : {"", "\r\n\r\n", "id,name\r\n", "id,name\n , \n", "\xef\xbb\xbf"})
        EXPECT_EQ(faultOf(empty), (Fault{Problem::RosterEmpty, "class.csv", {}})) << empty;
    EXPECT_EQ(faultOf("id,name\n1,\"Ann\n2,Bo\n"), (Fault{Problem::CsvBroken, "class.csv", "2"}));
    const QTemporaryDir folder;
    for (const QString& file : {folder.filePath("none.csv"), folder.path()})
        EXPECT_EQ(readRoster(file).error().problem, Problem::FileNotReadable);
}

TEST(RosterTest, ReadsAFileUnderItsOwnName)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("a.csv"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("id,name\n7,Ana Ruiz\n");
    file.close();
    const auto roster = readRoster(file.fileName());
    ASSERT_TRUE(roster);
    EXPECT_EQ(roster->name, "a.csv");
    EXPECT_EQ(roster->rows.size(), 1U);
}

TEST(RosterTest, AHundredThousandAreReadAndOneMoreIsTooMany)
{
    using namespace roster_test;
    QByteArray text = "id,family,given,section\r\n";
    for (int i = 0; i < kLongestRoster; ++i)
        text += QByteArray::number(i) + ",Family" + QByteArray::number(i) + ",Given,A\r\n";
    EXPECT_EQ(rowsOf(text).size(), static_cast<std::size_t>(kLongestRoster));
    text += "x,y,z,A\r\n";
    EXPECT_EQ(faultOf(text), (Fault{Problem::RosterTooLong, "class.csv", {}, 0.0, 100000.0}));
}

TEST(RosterTest, AFileTooLargeForAnyRosterIsNotReadWhole)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("a.csv"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.resize(65LL * 1024 * 1024));
    file.close();
    EXPECT_EQ(readRoster(file.fileName()).error().problem, Problem::RosterTooLong);
}

TEST(RosterTest, AMissingColumnIsNamed)
{
    using namespace roster_test;
    const auto file = parsed("id,name\n1,Ann\n").value();
    RosterMapping mapping = file.guessed;
    mapping[static_cast<std::size_t>(RosterColumn::FullName)] = -1;
    EXPECT_EQ(rosterRows(file, mapping, {}).error(), (Fault{Problem::RosterNoColumn, "class.csv", "name"}));
    mapping = file.guessed;
    mapping[static_cast<std::size_t>(RosterColumn::Id)] = -1;
    EXPECT_EQ(rosterRows(file, mapping, {}).error(), (Fault{Problem::RosterNoColumn, "class.csv", "id"}));
}

TEST(RosterTest, DoublesAreShownAndTheFirstLineIsKept)
{
    using namespace roster_test;
    const auto rows = rowsOf("id,name\n,Nobody\n7,Ana Ruiz\n 7 ,Bo Li\n8,\n8,Cy Wu\n7,Ana Ruiz\n" +
                             QByteArray(101, '9') + ",Too Long\n");
    EXPECT_EQ(kindsOf(rows), (std::vector<Kind>{Kind::NoId, Kind::New, Kind::Doubled, Kind::Nameless,
                                                Kind::New, Kind::Doubled, Kind::NoId}));
    EXPECT_EQ(rows[2].firstLine, 3);
    EXPECT_EQ(rows[2].line, 4);
    EXPECT_EQ(rows[5].firstLine, 3);
    const auto students = studentsToSave(rows);
    ASSERT_EQ(students.size(), 2U);
    EXPECT_EQ(students[0].given, "Ana");
    EXPECT_EQ(students[1].given, "Cy");
}

TEST(RosterTest, KnownStudentsAreTheSameOrChanged)
{
    using namespace roster_test;
    const std::vector<Student> known{student("1", "Ruiz", "Ana", "A", 25, "es"), student("2", "Li", "Bo")};
    const auto rows = rowsOf("id,family,given\n1,Ruiz,Ana\n2,Lee,Bo\n3,Wu,Cy\n", known);
    EXPECT_EQ(kindsOf(rows), (std::vector<Kind>{Kind::Same, Kind::Changed, Kind::New}));
    // What the file has no column for stays.
    EXPECT_EQ(rows[0].student, known[0]);
    EXPECT_EQ(studentsToSave(rows).size(), 2U);
    // What it has a column for is as it says there, empty or not.
    const auto emptied = rowsOf("id,family,given,extra time\n1,Ruiz,Ana,\n", known);
    EXPECT_EQ(emptied[0].kind, Kind::Changed);
    EXPECT_EQ(emptied[0].student.extraPercent, 0);
    EXPECT_EQ(emptied[0].student.language, "es");
}

TEST(RosterTest, ExtraTimeThatCannotBeToldIsSaidAndChangesNothing)
{
    using namespace roster_test;
    const std::vector<Student> known{student("1", "Ruiz", "Ana", "", 25)};
    const auto rows = rowsOf("id,family,given,extra time\n1,Ruiz,Ana,time and a half\n2,Li,Bo,50\n", known);
    EXPECT_EQ(rows[0].unclearExtra, "time and a half");
    EXPECT_EQ(rows[0].student.extraPercent, 25);
    EXPECT_EQ(rows[1].unclearExtra, "");
    EXPECT_EQ(rows[1].student.extraPercent, 50);
}

TEST(RosterTest, FormulasStayText)
{
    using namespace roster_test;
    const auto rows = rowsOf("id,family,given\n1,\"=HYPERLINK(\"\"http://x\"\")\",@SUM(A1)\n'-2,+1,'=a\n");
    EXPECT_EQ(rows[0].student.family, "=HYPERLINK(\"http://x\")");
    EXPECT_EQ(rows[0].student.given, "@SUM(A1)");
    EXPECT_EQ(rows[1].student, student("-2", "+1", "=a"));
}

TEST(RosterTest, ShortLongAndBlankRowsDoNoHarm)
{
    using namespace roster_test;
    const auto rows = rowsOf("section,id,name\nA\nB,7\n,,,\nC,8,Bo Li,x,y,z\n");
    EXPECT_EQ(kindsOf(rows), (std::vector<Kind>{Kind::NoId, Kind::Nameless, Kind::New}));
    EXPECT_EQ(rows[2].line, 5);
}

TEST(RosterTest, TheMostTimeThatARosterMayAgreeIsTakenByTheRecords)
{
    const auto rows = roster_test::rowsOf("id,name,extra\n1,Ada Brook," +
                                          QByteArray::number(kMostExtraPercent) + "\n2,Bo Quist,201\n");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].student.extraPercent, kMostExtraPercent);
    EXPECT_EQ(rows[1].unclearExtra, QStringLiteral("201"));
    RecordFolder records;
    EXPECT_TRUE(saveStudents(records.store(), studentsToSave(rows), momentAt(0)).has_value());
}

}  // namespace fb::test::roster_tests
