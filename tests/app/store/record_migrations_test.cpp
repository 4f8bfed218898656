#include "app/store/record_migrations.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include "tests/support/record_folder.h"

namespace fb::test::record_migrations_test {

TEST(RecordMigrationsTest, AnEmptyFileGetsEveryTableAndSaysWhoseItIs)
{
    RecordFolder folder;
    folder.open();
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA application_id")), QString::number(kRecordsApplication));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA user_version")),
              QString::number(recordMigrations().size()));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT group_concat(name, ' ') FROM (SELECT name FROM "
                                            "sqlite_master WHERE type = 'table' ORDER BY 1)")),
              QStringLiteral("answer assessor audit check_off check_off_event observation policy_text "
                             "remediation sheet student"));
}

TEST(RecordMigrationsTest, TheSchemaSpeaksNothingThatOnlySqliteUnderstands)
{
    const QRegularExpression own(
        QStringLiteral("AUTOINCREMENT|WITHOUT ROWID|STRICT|TRIGGER|\\bBLOB\\b|\\bDATETIME\\b|\\bREAL\\b|"
                       "\\bBOOLEAN\\b|`|\\[|\\]"),
        QRegularExpression::CaseInsensitiveOption);
    for (const Migration& step : recordMigrations()) {
        for (const QString& sql : step.statements) {
            EXPECT_FALSE(sql.contains(own)) << sql.toStdString();
            EXPECT_EQ(sql.contains(QLatin1String("CREATE TABLE")), sql.contains(QLatin1String("PRIMARY KEY")))
                << sql.toStdString();
            // Every constraint has a name, so that a later step can speak of it.
            EXPECT_EQ(sql.count(QRegularExpression(QStringLiteral("PRIMARY KEY|FOREIGN KEY|CHECK \\("))),
                      sql.count(QLatin1String("CONSTRAINT ")))
                << sql.toStdString();
        }
    }
}

TEST(RecordMigrationsTest, WhatWasKeptCanNeitherBeChangedNorTakenAway)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, false, momentAt(1)));
    ASSERT_TRUE(
        signRemediation(folder.store(), 1, QStringLiteral("an hour of marks"), kFirst, momentAt(1, 99)));
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-002"), sheet), momentAt(2)));
    for (const char* sql :
         {"UPDATE audit SET detail = 'other' WHERE seq = 2", "DELETE FROM audit WHERE seq = 2",
          "UPDATE check_off_event SET event_text = '{}' WHERE seq = 1", "DELETE FROM check_off_event",
          "UPDATE answer SET points = 1", "DELETE FROM answer", "UPDATE policy_text SET policy_text = ''",
          "UPDATE remediation SET what = ''", "DELETE FROM remediation",
          "UPDATE check_off SET outcome = 'pass' WHERE check_off_id = 1",
          "DELETE FROM check_off WHERE check_off_id = 2"}) {
        EXPECT_TRUE(folder.sqlite3(QString::fromLatin1(sql)).contains(QLatin1String("only ever added")))
            << sql << ": " << folder.sqlite3(QString::fromLatin1(sql)).toStdString();
    }
    EXPECT_TRUE(folder.sqlite3(QStringLiteral("UPDATE check_off SET on_screen_ms = 5 WHERE check_off_id = 2"))
                    .isEmpty())
        << "one that is not signed goes on";
}

TEST(RecordMigrationsTest, OnlyOneIsOpenAtATimeWhoeverWrites)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), sheet), momentAt(1)));
    EXPECT_TRUE(folder
                    .sqlite3(QStringLiteral(
                        "INSERT INTO check_off SELECT 9, 's-002', sheet_key, attempt, seed, extra_percent, "
                        "policy_hash, plate_hashes, program_version, pixels_per_mm, needs_second, begun_at, "
                        "0, 0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL FROM check_off"))
                    .contains(QLatin1String("UNIQUE")));
}

TEST(RecordMigrationsTest, AnotherProgramsFileIsLeftAlone)
{
    const RecordFolder folder;
    QDir().mkpath(folder.folder());
    folder.sqlite3(QStringLiteral("PRAGMA application_id = 77; CREATE TABLE theirs (words TEXT)"));
    const auto opened = openRecords(folder.file(), momentAt(0).at);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().problem, Problem::NotAStore);
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT group_concat(name) FROM sqlite_master")),
              QStringLiteral("theirs"));
    folder.sqlite3(QStringLiteral("PRAGMA application_id = 0"));
    EXPECT_EQ(openRecords(folder.file(), momentAt(0).at).error().problem, Problem::NotAStore)
        << "tables that are nobody's are not ours";
}

}  // namespace fb::test::record_migrations_test
