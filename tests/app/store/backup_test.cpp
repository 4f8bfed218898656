#include "app/store/backup.h"

#include <gtest/gtest.h>

#include "app/store/audit_chain.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "tests/support/record_folder.h"

namespace fb::test::backup_tests {

namespace backup_test {

QString stringFrom(const QString& file, const char* sql)
{
    const auto store = Store::openToRead(file, recordStoreKind());
    EXPECT_TRUE(store);
    return store ? (*store)->rows({QString::fromLatin1(sql)})->front().front().toString() : QString();
}

QStringList namesIn(const QString& folder) { return QDir(folder).entryList(QDir::Files, QDir::Name); }

}  // namespace backup_test

using namespace backup_test;

TEST(BackupTest, HoldsWhatTheRecordsHoldAndIsItsOwnersAlone)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, true, momentAt(1)));
    const QString file = folder.root() + QStringLiteral("/copy.db");
    LongWork work;
    const mode_t before = ::umask(022);
    const auto made = writeBackup(folder.store(), file, work);
    ::umask(before);
    ASSERT_TRUE(made);
    EXPECT_TRUE(*made);
    EXPECT_EQ(work.percent, 100);
    EXPECT_EQ(modeOf(file), 0600U);
    EXPECT_EQ(namesIn(folder.root()), QStringList{QStringLiteral("copy.db")}) << "nothing is left beside it";
    EXPECT_EQ(stringFrom(file, "SELECT hash FROM audit ORDER BY seq DESC").toLatin1(),
              chainEnd(folder.store())->head);
    const auto copy = Store::openToRead(file, recordStoreKind());
    LongWork look;
    EXPECT_TRUE(verifyRecords(**copy, look)->whole);
}

TEST(BackupTest, TakesThePlaceOfAnOldOneOnlyWhenItIsWhole)
{
    RecordFolder folder;
    folder.fill();
    const QString file = folder.root() + QStringLiteral("/copy.db");
    QFile old(file);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    LongWork cancelled;
    cancelled.cancelled = true;
    const auto none = writeBackup(folder.store(), file, cancelled);
    ASSERT_TRUE(none);
    EXPECT_FALSE(*none);
    EXPECT_EQ(QFileInfo(file).size(), 3);
    EXPECT_EQ(namesIn(folder.root()).size(), 1);
    LongWork work;
    EXPECT_TRUE(writeBackup(folder.store(), file, work));
    EXPECT_GT(QFileInfo(file).size(), 3);
}

TEST(BackupTest, WhereItCannotBeMadeThatIsSaidAndNothingLeft)
{
    RecordFolder folder;
    folder.fill();
    LongWork work;
    const QString inNoFolder = folder.root() + QStringLiteral("/none/copy.db");
    for (const QString& file : {inNoFolder, folder.root(), folder.file(), QStringLiteral("/dev/null")}) {
        const auto made = writeBackup(folder.store(), file, work);
        ASSERT_FALSE(made) << file.toStdString();
        EXPECT_EQ(made.error().problem, Problem::BackupFailed);
        EXPECT_EQ(made.error().where, file.toStdString());
    }
    EXPECT_TRUE(folder.store().rows({QStringLiteral("SELECT 1 FROM audit")}));
    EXPECT_TRUE(namesIn(folder.root()).isEmpty());
}

TEST(BackupTest, TheProgramsOwnLieInTheirFolderAndTheOldestGo)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    EXPECT_TRUE(lastBackup(folder.file()).isEmpty());
    for (int i = 0; i < kBackupsKept + 3; ++i) {
        ASSERT_TRUE(saveStudents(folder.store(), {inventedStudent(10 + i)}, momentAt(i)));
        ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(i).at));
    }
    const QString backups = backupFolder(folder.file());
    EXPECT_EQ(backups, folder.folder() + QStringLiteral("/backups"));
    EXPECT_EQ(modeOf(backups), 0700U);
    const QStringList names = namesIn(backups);
    ASSERT_EQ(names.size(), kBackupsKept);
    EXPECT_TRUE(names.front().startsWith(
        QStringLiteral("records-%1")
            .arg(momentAt(3).at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd-HHmmss")))))
        << names.front().toStdString();
    for (const QString& name : names)
        EXPECT_EQ(modeOf(backups + u'/' + name), 0600U);
    EXPECT_EQ(stringFrom(lastBackup(folder.file()), "SELECT max(seq) FROM audit").toLongLong(),
              chainEnd(folder.store())->length);
}

TEST(BackupTest, AStoreBegunAnewPushesNoneOfTheOldOnesOut)
{
    RecordFolder folder;
    folder.fill();
    ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(0).at));
    const QString old = lastBackup(folder.file());
    folder.close();
    ASSERT_TRUE(QFile::remove(folder.file()));
    for (int i = 1; i < kBackupsKept + 3; ++i) {
        ASSERT_TRUE(saveStudents(folder.store(), {inventedStudent(10 + i)}, momentAt(i)));
        ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(i).at));
    }
    EXPECT_TRUE(QFileInfo::exists(old));
    EXPECT_EQ(namesIn(backupFolder(folder.file())).size(), kBackupsKept + 1);
}

TEST(BackupTest, WhatAnEndInTheMiddleLeftIsTakenAway)
{
    RecordFolder folder;
    folder.fill();
    ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(0).at));
    const QString backups = backupFolder(folder.file());
    QFile part(backups + QStringLiteral("/records-2026-01-01-000000-abcdef01-7.db.part"));
    ASSERT_TRUE(part.open(QIODevice::WriteOnly));
    part.close();
    ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(1).at));
    EXPECT_EQ(namesIn(backups).filter(QStringLiteral(".part")), QStringList());
}

TEST(BackupTest, TheRecordsMayGoOnWhileTheyAreCopied)
{
    RecordFolder folder;
    folder.fill();
    const auto beside = Store::openToRead(folder.file(), recordStoreKind());
    ASSERT_TRUE(beside);
    ASSERT_TRUE(saveStudents(folder.store(), {inventedStudent(50)}, momentAt(1)));
    const QString file = folder.root() + QStringLiteral("/copy.db");
    LongWork work;
    ASSERT_TRUE(writeBackup(**beside, file, work)) << "from a connection that only reads";
    EXPECT_EQ(stringFrom(file, "SELECT count(*) FROM student"), u"4") << "with what lay in the log file only";
}

}  // namespace fb::test::backup_tests
