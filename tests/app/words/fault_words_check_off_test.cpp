// The sentences for problems of check-offs, their files, records and lock: what, where and how to mend it.
#include <gtest/gtest.h>

#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include "app/words/fault_words.h"

namespace fb::test::fault_words_check_off_test {

namespace fault_check_off_test {

const QString kRecords = QStringLiteral("/home/lab/.local/share/Fingerbreadth/records.db");

struct Row {
    Problem problem;
    const char* where;
    const char* what;
    double low;
    double high;
    std::vector<const char*> tells;  // each must stand in the sentence
};

const std::vector<Row>& rows()
{
    static const std::vector<Row> kRows{
        {Problem::StoreFull, "r.db", "", 0, 0, {"no room", "r.db", "free some space"}},
        {Problem::StoreBusy, "r.db", "", 0, 0, {"in use", "r.db", "close it there"}},
        {Problem::StoreReadOnly, "r.db", "", 0, 0, {"only be read", "r.db", "allow"}},
        {Problem::ChainBroken, "r.db", "17", 0, 0, {"changed after", "r.db", "17", "backup"}},
        {Problem::BackupFailed, "b.db", "", 0, 0, {"backup", "b.db", "choose a folder"}},
        {Problem::NotAStore, "x.db", "", 0, 0, {"x.db", "no records", "choose"}},
        {Problem::NotPutBack, "b.db", "", 0, 0, {"backup", "b.db", "nothing was changed", "try again"}},
        {Problem::FileNotReadable, "c.csv", "", 0, 0, {"c.csv", "cannot be read", "check"}},
        {Problem::FileNotUtf8, "c.csv", "12", 0, 0, {"Line 12", "c.csv", "UTF-8", "save"}},
        {Problem::CsvBroken, "c.csv", "9", 0, 0, {"Line 9", "c.csv", "quotation mark", "mend"}},
        {Problem::RosterNoColumn, "c.csv", "student id", 0, 0, {"c.csv", "“student id”", "first line"}},
        {Problem::RosterEmpty, "c.csv", "", 0, 0, {"c.csv", "no students", "first line"}},
        {Problem::RosterTooLong, "c.csv", "", 0, 50000, {"c.csv", "50,000", "split"}},
        {Problem::RosterIdMissing, "c.csv", "4", 0, 0, {"Line 4", "c.csv", "an id"}},
        {Problem::RosterIdDoubled, "c.csv", "S-7", 0, 0, {"S-7", "c.csv", "more than once"}},
        {Problem::SheetNotReadable, "line 3", "", 0, 0, {"line 3", "cannot be read", "choose"}},
        {Problem::SheetUnknownKey, "tries", "", 0, 0, {"“tries”", "remove it"}},
        {Problem::SheetMissingKey, "items", "", 0, 0, {"“items”", "add it"}},
        {Problem::SheetWrongValue, "cut", "140", 0, 100, {"“cut”", "140", "0 and 100"}},
        {Problem::SheetWrongValue, "side", "up", 0, 0, {"“side”", "“up”", "sample sheet"}},
        {Problem::SheetNoItems, "", "", 0, 0, {"asks for nothing", "add"}},
        {Problem::AnswerNotReadable, "mark", "", 0, 0, {"answer", "“mark”", "backup"}},
        {Problem::EventNotReadable, "kind", "", 0, 0, {"step", "“kind”", "backup"}},
        {Problem::CheckOffOutOfOrder, "", "on_screen", 0, 0, {"does not fit", "finish"}},
        {Problem::ReasonMissing, "", "", 0, 0, {"No reason", "write one"}},
        {Problem::StepsNotRated, "", "5", 0, 0, {"5", "done, prompted or not done"}},
        {Problem::RatingMissing, "", "", 0, 0, {"rating is missing", "1 to 5"}},
        {Problem::NotDueYet, "", "2026-12-03", 0, 0, {"December 3, 2026", "another student"}},
        {Problem::RemediationNotSigned, "", "", 0, 0, {"not signed", "sign it first"}},
        {Problem::NoAttemptLeft, "", "", 0, 0, {"No attempt is left", "rules"}},
        {Problem::SecondAssessorMissing, "", "", 0, 0, {"second assessor", "PIN"}},
        {Problem::SameAssessor, "", "", 0, 0, {"same person", "another assessor"}},
        {Problem::CheckOffRunning, "", "Ana Ortiz", 0, 0, {"Ana Ortiz", "still open", "go on"}},
        {Problem::StudentUnknown, "", "S-99", 0, 0, {"S-99", "choose"}},
        {Problem::AssessorUnknown, "", "", 0, 0, {"assessor", "choose"}},
        {Problem::NameMissing, "", "", 0, 0, {"name is missing", "write it"}},
        {Problem::PinTooShort, "", "", 6, 0, {"too short", "6"}},
        {Problem::PinTooCommon, "", "", 0, 0, {"PIN", "choose another"}},
        {Problem::PinsDiffer, "", "", 0, 0, {"differ", "twice"}},
        {Problem::PinWrong, "", "", 0, 0, {"not right", "again"}},
        {Problem::PinHeld, "", "", 30, 0, {"wait 30 s"}},
        {Problem::PrinterMissing, "", "", 0, 0, {"No printer", "PDF"}},
    };
    return kRows;
}

}  // namespace fault_check_off_test

using namespace fault_check_off_test;

TEST(FaultWordsCheckOffTest, EverySentenceTellsWhatWhereAndHowToMendIt)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    for (const Row& row : rows()) {
        const QString text = sentenceOf({row.problem, row.where, row.what, row.low, row.high});
        for (const char* word : row.tells)
            EXPECT_TRUE(text.contains(QString::fromUtf8(word))) << word << " in " << text.toStdString();
        EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << text.toStdString();
    }
}

TEST(FaultWordsCheckOffTest, EveryProblemOfAStoreACheckOffAndTheLockIsInTheTable)
{
    QSet<int> told;
    for (const Row& row : rows())
        told += static_cast<int>(row.problem);
    for (int i = static_cast<int>(Problem::StoreFull); i <= static_cast<int>(Problem::PrinterMissing); ++i)
        EXPECT_TRUE(told.contains(i)) << "problem " << i;
}

TEST(FaultWordsCheckOffTest, TheSameFaultOfRecordsAndOfAProfileIsToldApart)
{
    const std::string profile = "/home/lab/.local/share/Fingerbreadth/profile.db";
    for (const Problem problem : {Problem::StoreNotWritable, Problem::StoreBroken, Problem::StoreTooNew}) {
        const QString records = sentenceOf({problem, kRecords.toStdString(), {}, 0.0, 0.0});
        const QString own = sentenceOf({problem, profile, {}, 0.0, 0.0});
        EXPECT_TRUE(records.contains(QStringLiteral("records "))) << records.toStdString();
        EXPECT_FALSE(records.contains(QStringLiteral("profile"))) << records.toStdString();
        EXPECT_TRUE(own.contains(QStringLiteral("profile "))) << own.toStdString();
    }
}

// Whether there is a backup to speak of the desk knows, and offers it.
TEST(FaultWordsCheckOffTest, BrokenRecordsSayWhereTheyWerePutAsideAndPromiseNoBackup)
{
    const QString text =
        sentenceOf({Problem::StoreBroken, kRecords.toStdString(), "records.broken-1.db", 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("records.broken-1.db"))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("backup"))) << text.toStdString();
}

TEST(FaultWordsCheckOffTest, BrokenRecordsThatAreInUseSayThatAStartMendsIt)
{
    const QString text = sentenceOf({Problem::StoreBroken, kRecords.toStdString(), {}, 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("start it again"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("last backup"))) << text.toStdString();
}

TEST(FaultWordsCheckOffTest, ABrokenBackupIsNeitherTheRecordsNorAProfile)
{
    const std::string file = "/home/lab/backups/records-2026-11-28-140300-1f2e3d4c-97.db";
    const QString broken = sentenceOf({Problem::StoreBroken, file, {}, 0.0, 0.0});
    EXPECT_TRUE(broken.startsWith(QStringLiteral("The backup /home/lab"))) << broken.toStdString();
    EXPECT_TRUE(broken.contains(QStringLiteral("choose another"))) << broken.toStdString();
    const QString newer = sentenceOf({Problem::StoreTooNew, file, {}, 0.0, 0.0});
    EXPECT_FALSE(newer.contains(QStringLiteral("profile"))) << newer.toStdString();
}

TEST(FaultWordsCheckOffTest, ALongPathKeepsItsEndWhichTellsTheFile)
{
    const std::string deep = "/" + std::string(300, 'd') + "/records.db";
    const QString text = sentenceOf({Problem::StoreTooNew, deep, {}, 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("/records.db"))) << text.toStdString();
    EXPECT_TRUE(text.startsWith(QStringLiteral("The records /ddd"))) << text.toStdString();
}

}  // namespace fb::test::fault_words_check_off_test
