#include "app/lecture/room_marks.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSet>
#include <cmath>
#include <random>

#include "app/roster/csv.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::room_marks_test {

constexpr const char* kThree = "name,x_cm,y_cm\n"
                               "Rosa Lindqvist,0.5,-4.25\n"
                               ",-1,2\n"
                               "\"Okafor, Ben\",3e0, -0.5 \n";

Fault faultOf(const QByteArray& bytes)
{
    const auto marks = roomMarksFromCsv(bytes, QStringLiteral("marks.csv"));
    EXPECT_FALSE(marks.has_value()) << bytes.toStdString();
    return marks ? Fault{} : marks.error();
}

void expectThree(const QByteArray& bytes)
{
    const auto marks = roomMarksFromCsv(bytes);
    ASSERT_TRUE(marks.has_value()) << bytes.toStdString();
    ASSERT_EQ(marks->size(), 3U);
    EXPECT_EQ((*marks)[0].name, QStringLiteral("Rosa Lindqvist"));
    EXPECT_EQ((*marks)[0].at, (Point{0.5, -4.25}));
    EXPECT_TRUE((*marks)[1].name.isEmpty());
    EXPECT_EQ((*marks)[1].at, (Point{-1.0, 2.0}));
    EXPECT_EQ((*marks)[2].name, QStringLiteral("Okafor, Ben"));
    EXPECT_EQ((*marks)[2].at, (Point{3.0, -0.5}));
    EXPECT_FALSE((*marks)[0].grade.has_value());
}

TEST(RoomMarksTest, MarksAreReadByTheNamesOfTheirColumns)
{
    expectThree(kThree);
    expectThree("\xEF\xBB\xBF" + QByteArray(kThree));
    expectThree(QByteArray(kThree).replace('\n', "\r\n"));
    expectThree(QByteArray(kThree).replace('\n', '\r'));
    expectThree("\n\n" + QByteArray(kThree) + "\n,,\n\n");
    expectThree("seat,Y_CM , NAME,X_cm\n"
                "1,-4.25,Rosa Lindqvist,0.5\n"
                "2,2,,-1\n"
                "3,-0.5,\"Okafor, Ben\",3\n");
    expectThree("\"y_cm\";\"x_cm\";\"name\"\n-4,25;0,5;Rosa Lindqvist\n2;-1\n-0,5;3,0;Okafor, Ben\n");
    expectThree("name\tx_cm\ty_cm\nRosa Lindqvist\t0,5\t-4.25\n\t-1\t2\nOkafor, Ben\t3\t-0,5\n");
    expectThree("name,x_cm,y_cm\nRosa Lindqvist,\"0,5\",\"-4,25\"\n,\xE2\x88\x92"
                "1,2\n\"Okafor, Ben\",3,-0.5");
}

TEST(RoomMarksTest, NamesMayBeMissing)
{
    const auto marks = roomMarksFromCsv("x_cm,y_cm\n1,2\n3,4\n");
    ASSERT_TRUE(marks.has_value());
    ASSERT_EQ(marks->size(), 2U);
    EXPECT_TRUE(marks->back().name.isEmpty());
    EXPECT_EQ(marks->back().at, (Point{3.0, 4.0}));
}

TEST(RoomMarksTest, ANameIsTextWhateverItLooksLike)
{
    for (const char* name :
         {"=1+2", "@SUM(A1)", "-3", "+49 30", "=cmd|'/c calc'!A0", "x_cm", "Zoë", "<b>B</b>"}) {
        const QString text = QString::fromUtf8(name);
        const auto marks = roomMarksFromCsv("name,x_cm,y_cm\n" + csvText(text) + ",1,2\n");
        ASSERT_TRUE(marks.has_value()) << name;
        EXPECT_EQ(marks->front().name, text);
        EXPECT_EQ(marks->front().at, (Point{1.0, 2.0}));
    }
}

TEST(RoomMarksTest, ANameIsOneLineOfLettersAndNotTooLong)
{
    EXPECT_EQ(tidyRoomName(QStringLiteral("  Ana \n\t Ruiz\u202e ")), QStringLiteral("Ana Ruiz"));
    EXPECT_EQ(tidyRoomName(QString(1000, u'n')).size(), kLongestRoomName);
    const QString faces = QString::fromUtf8("\xF0\x9F\x99\x82").repeated(40);
    const QString cut = tidyRoomName(u'a' + faces);
    EXPECT_LE(cut.size(), kLongestRoomName);
    EXPECT_FALSE(cut.back().isHighSurrogate());
    EXPECT_TRUE(tidyRoomName({}).isEmpty());
    EXPECT_EQ(tidyRoomName(cut), cut);
}

TEST(RoomMarksTest, AColumnThatIsMissingIsNamed)
{
    EXPECT_EQ(faultOf("name,x_cm\nA,1\n"), (Fault{Problem::MarksNoColumn, "marks.csv", "y_cm"}));
    EXPECT_EQ(faultOf("name;y_cm\nA;1\n"), (Fault{Problem::MarksNoColumn, "marks.csv", "x_cm"}));
    EXPECT_EQ(faultOf("A,1,2\n"), (Fault{Problem::MarksNoColumn, "marks.csv", "x_cm"}));
    EXPECT_EQ(faultOf("name,x cm,y cm\nA,1,2\n").problem, Problem::MarksNoColumn);
    EXPECT_EQ(faultOf("<html><body>x_cm</body></html>").problem, Problem::MarksNoColumn);
}

TEST(RoomMarksTest, ALineWithoutTwoNumbersIsNamed)
{
    for (const char* row : {"A,1", "A,1,", "A,,2", "A,one,2", "A,1,nan", "A,inf,2", "A,0x10,2", "A,1.2.3,2",
                            "A,\"1,234.5\",2", "A,\"1,2,3\",2", "A,1e9,2", "A,1,300.5", "A,1 cm,2", "A"})
        EXPECT_EQ(faultOf("name,x_cm,y_cm\n\nB,1,2\n" + QByteArray(row) + "\nC,1,2\n"),
                  (Fault{Problem::MarksBadValue, "marks.csv", "4"}))
            << row;
    EXPECT_TRUE(roomMarksFromCsv("x_cm,y_cm\n-300,300\n").has_value()) << "the farthest there may be";
}

TEST(RoomMarksTest, AFileWithoutMarksIsEmpty)
{
    for (const char* text :
         {"", "\n\r\n", " , ,\n", "name,x_cm,y_cm", "name,x_cm,y_cm\n,,\n", "\xEF\xBB\xBF"})
        EXPECT_EQ(faultOf(text), (Fault{Problem::MarksEmpty, "marks.csv", ""})) << text;
}

TEST(RoomMarksTest, NoMoreMarksAreReadThanThereMayBe)
{
    QByteArray bytes = "x_cm,y_cm\n";
    for (int i = 0; i < kMostRoomMarks; ++i)
        bytes += "1,2\n";
    ASSERT_TRUE(roomMarksFromCsv(bytes).has_value());
    EXPECT_EQ(roomMarksFromCsv(bytes)->size(), static_cast<std::size_t>(kMostRoomMarks));
    const Fault tooMany{Problem::MarksTooMany, "marks.csv", "", 0.0, kMostRoomMarks};
    EXPECT_EQ(faultOf(bytes + "1,2\n"), tooMany);
    EXPECT_EQ(faultOf(bytes + QByteArray(2'000'000, 'x')), tooMany);
}

TEST(RoomMarksTest, AnotherEncodingIsSaidWithItsLine)
{
    EXPECT_EQ(faultOf("name,x_cm,y_cm\nA,1,2\nJos\xE9,1,2\n"),
              (Fault{Problem::FileNotUtf8, "marks.csv", "3"}));
    EXPECT_EQ(faultOf(QByteArray("\xFF\xFEn\0a\0", 6)).problem, Problem::FileNotUtf8);
    EXPECT_EQ(faultOf(QByteArray("x_cm,y_cm\n1,2\0\n", 15)), (Fault{Problem::FileNotUtf8, "marks.csv", "2"}));
}

TEST(RoomMarksTest, AQuotationMarkThatIsNeverClosedIsSaidWithItsLine)
{
    EXPECT_EQ(faultOf("name,x_cm,y_cm\nA,1,2\n\"B,1,2\nC,1,2\n"),
              (Fault{Problem::CsvBroken, "marks.csv", "3"}));
}

TEST(RoomMarksTest, WhateverIsWrittenIsReadBack)
{
    std::mt19937_64 random(20261129);
    const QString letters = QString::fromUtf8("ab ,;\"'=+-@\tñÄ漢");
    std::uniform_int_distribution<qsizetype> letter(0, letters.size() - 1);
    std::uniform_int_distribution<int> count(1, kMostRoomMarks), length(0, 12);
    std::uniform_real_distribution<double> place(-300.0, 300.0);
    for (int round = 0; round < 300; ++round) {
        QByteArray bytes = "x_cm,name,y_cm\r\n";
        std::vector<RoomMark> written;
        for (int i = count(random); i > 0; --i) {
            QString name;
            for (int k = length(random); k > 0; --k)
                name += letters[letter(random)];
            const QByteArray x = csvNumber(place(random), 3), y = csvNumber(place(random), 3);
            written.push_back({name.simplified(), {x.toDouble(), y.toDouble()}, {}});
            bytes += x + ',' + csvText(name) + ',' + y + "\r\n";
        }
        const auto read = roomMarksFromCsv(bytes);
        ASSERT_TRUE(read.has_value()) << "round " << round;
        ASSERT_EQ(read->size(), written.size());
        for (std::size_t i = 0; i < written.size(); ++i) {
            EXPECT_EQ((*read)[i].name, written[i].name);
            EXPECT_EQ((*read)[i].at, written[i].at);
        }
    }
}

// resources/samples: invented people, who are called so, round the deltoid site of the first body.
TEST(RoomMarksTest, TheSampleIsReadAndHoldsEveryVerdict)
{
    QFile file(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/resources/samples/sample-marks.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto marks = roomMarksFromCsv(file.readAll());
    ASSERT_TRUE(marks.has_value());
    const auto body = bodyFor(Convention::DeltoidStrip, View::ShoulderSide);
    QSet<int> verdicts;
    for (const RoomMark& mark : *marks) {
        EXPECT_TRUE(mark.name.endsWith(QStringLiteral(" (invented)"))) << mark.name.toStdString();
        const auto limb = markedLimb(*body->plate, *body->map, Side::Right, mark.at);
        ASSERT_TRUE(limb.has_value()) << mark.name.toStdString();
        const Grade grade = gradeMark(*body->target, facesLibrary()->defaultPolicy(), mark.at, *limb);
        verdicts.insert(static_cast<int>(grade.verdict));
    }
    EXPECT_EQ(verdicts.size(), kVerdictCount);
}

// Bytes of any kind are marks or a fault that names the file, and never more.
TEST(RoomMarksTest, DamagedFilesAreMarksOrAFault)
{
    std::mt19937_64 random(6);
    for (int round = 0; round < 3000; ++round) {
        QByteArray bytes(kThree);
        for (int hits = 1 + static_cast<int>(random() % 4); hits > 0; --hits) {
            const auto at = static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size()));
            if (random() % 3 == 0)
                bytes = bytes.left(at + 1);
            else
                bytes[at] = static_cast<char>(random() & 0xFF);
        }
        const auto marks = roomMarksFromCsv(bytes, QStringLiteral("marks.csv"));
        if (!marks) {
            EXPECT_EQ(marks.error().where, "marks.csv");
            continue;
        }
        EXPECT_FALSE(marks->empty());
        for (const RoomMark& mark : *marks) {
            EXPECT_LE(std::abs(mark.at.x), kFarthestRoomMark);
            EXPECT_LE(mark.name.size(), kLongestRoomName);
        }
    }
}

}  // namespace fb::test::room_marks_test
