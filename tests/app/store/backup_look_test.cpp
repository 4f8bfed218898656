#include "app/store/backup_look.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>

#include "tests/support/damaged_records.h"

namespace fb::test::backup_look_tests {

namespace backup_look_test {

std::optional<BackupOnFile> offered(DamagedRecords& lab, const QStringList& refused = {})
{
    const auto found = offeredBackup(lab.folder.store(), refused);
    EXPECT_TRUE(found);
    return found ? *found : std::nullopt;
}

}  // namespace backup_look_test

using namespace backup_look_test;

TEST(BackupLookTest, TellsWhatABackupHoldsAndWhenItEnds)
{
    const DamagedRecords lab(2);
    const QByteArray before = bytesIn(lab.backups().last());
    const auto found = lookInto(lab.backups().last());
    ASSERT_TRUE(found);
    EXPECT_EQ(found->file, lab.backups().last());
    EXPECT_EQ(found->lastAt, momentAt(2).at) << "the signature is the last entry";
    EXPECT_EQ(found->students, 40);
    EXPECT_EQ(found->checkOffs, 2);
    EXPECT_GT(found->entries, 10);
    EXPECT_EQ(bytesIn(lab.backups().last()), before);
    EXPECT_EQ(QDir(backupFolder(lab.folder.file())).entryList(QDir::Files).size(), 2)
        << "nothing is laid beside";
}

TEST(BackupLookTest, NothingIsLeftBesideAFileThatWasInUseBefore)
{
    const DamagedRecords lab;
    const QString file = lab.folder.root() + QStringLiteral("/records-before.db");
    ASSERT_TRUE(QFile::copy(lab.folder.file(), file)) << "as records that were put aside are";
    EXPECT_TRUE(lookInto(file));
    EXPECT_EQ(QDir(lab.folder.root()).entryList(QDir::Files),
              QStringList{QStringLiteral("records-before.db")});
}

TEST(BackupLookTest, WhatIsNoBackupIsSaid)
{
    DamagedRecords lab;
    const auto refusal = [&](const QByteArray& bytes) {
        const QString file = lab.folder.root() + QStringLiteral("/x.db");
        writeBytes(file, bytes);
        const auto found = lookInto(file);
        EXPECT_FALSE(found);
        return found ? Problem{} : found.error().problem;
    };
    EXPECT_EQ(lookInto(QStringLiteral("/nowhere/x.db")).error().problem, Problem::FileNotReadable);
    EXPECT_EQ(refusal({}), Problem::NotAStore);
    EXPECT_EQ(refusal("no database at all"), Problem::StoreBroken);
    const QByteArray good = bytesIn(lab.backups().last());
    EXPECT_EQ(refusal(scratched(good)), Problem::StoreBroken);
    EXPECT_EQ(refusal(good.first(4096)), Problem::StoreBroken);
}

TEST(BackupLookTest, IsOfferedAfterAnyDamageAndAlsoAfterARestart)
{
    DamagedRecords lab(2);
    EXPECT_FALSE(offered(lab)) << "good records";
    lab.folder.close();
    const QByteArray good = bytesIn(lab.folder.file());
    for (const QByteArray& bytes :
         {scratched(good), good.first(good.size() / 2 + 11), QByteArray("no database at all")}) {
        ASSERT_TRUE(lab.damage(bytes));
        ASSERT_TRUE(offered(lab)) << bytes.size();
        EXPECT_EQ(offered(lab)->file, lab.backups().last());
        lab.folder.close();
        EXPECT_FALSE(lab.folder.open()) << "told once";
        EXPECT_TRUE(offered(lab)) << "offered again";
    }
    lab.damage({});
    EXPECT_TRUE(offered(lab)) << "a file without anything in it, where there were records";
}

TEST(BackupLookTest, AnythingInTheRecordsEndsTheOffer)
{
    using Fill = void (*)(RecordFolder&);
    const Fill fills[] = {
        [](RecordFolder& folder) {
            EXPECT_TRUE(saveStudents(folder.store(), {inventedStudent(9)}, momentAt(9)));
        },
        [](RecordFolder& folder) { folder.addAssessor(QStringLiteral("Somebody New")); },
        [](RecordFolder& folder) { EXPECT_TRUE(saveSheet(folder.store(), twoMarks(), momentAt(9))); }};
    for (const Fill& fill : fills) {
        DamagedRecords lab;
        ASSERT_TRUE(lab.damage());
        ASSERT_TRUE(offered(lab));
        fill(lab.folder);
        EXPECT_FALSE(offered(lab));
    }
}

TEST(BackupLookTest, WithoutABackupOrWithoutADamageNothingIsOffered)
{
    DamagedRecords none(0);
    ASSERT_TRUE(none.damage());
    EXPECT_FALSE(offered(none));
    DamagedRecords moved;
    ASSERT_TRUE(QFile::remove(moved.folder.file()));
    EXPECT_FALSE(offered(moved)) << "somebody took the file away";
}

TEST(BackupLookTest, TheNewestByItsLogIsOfferedAndDamagedOnesArePassedOver)
{
    DamagedRecords lab(3);
    ASSERT_TRUE(lab.damage());
    const QStringList backups = lab.backups();
    // Touched last, but its log ends earlier.
    QFile oldest(backups[0]);
    ASSERT_TRUE(oldest.open(QIODevice::ReadWrite));
    ASSERT_TRUE(
        oldest.setFileTime(QDateTime::currentDateTime().addDays(3), QFileDevice::FileModificationTime));
    oldest.close();
    EXPECT_EQ(offered(lab)->file, backups[2]);
    EXPECT_EQ(offered(lab, {backups[2]})->file, backups[1]) << "one that turned out to be damaged";
    writeBytes(backups[2], scratched(bytesIn(backups[2])));
    EXPECT_EQ(offered(lab)->file, backups[1]);
    writeBytes(backups[1], {});
    EXPECT_EQ(offered(lab)->file, backups[0]);
    writeBytes(backups[0], "no database at all");
    EXPECT_FALSE(offered(lab));
}

TEST(BackupLookTest, NoMoreThanAFewAreLookedInto)
{
    DamagedRecords lab;
    ASSERT_TRUE(lab.damage());
    const QString good = lab.backups().last();
    for (int i = 0; i < 200; ++i)
        ASSERT_TRUE(QFile::copy(good, good.left(good.size() - 3) + QStringLiteral("%1.db").arg(i)));
    QElapsedTimer watch;
    watch.start();
    EXPECT_TRUE(offered(lab));
    RecordProperty("ms", static_cast<int>(watch.elapsed()));
    EXPECT_LT(watch.elapsed(), 2000) << "thirty files, a few milliseconds each on any machine";
}

}  // namespace fb::test::backup_look_tests
