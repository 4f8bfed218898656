#include "app/store/store_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QFileInfo>

#include "tests/support/store_folder.h"

namespace fb::test::store_file_tests {

namespace store_file_test {

// As `ls` shows them: 0700, 0600.
unsigned modeOf(const QString& path)
{
    struct stat seen {};
    return ::stat(path.toLocal8Bit().constData(), &seen) == 0 ? seen.st_mode & 07777U : 0U;
}

}  // namespace store_file_test

using store_file_test::modeOf;

TEST(StoreFileTest, FolderAndFileAreTheirOwnersAloneWhateverTheUmask)
{
    const StoreFolder folder;
    const mode_t before = ::umask(0);
    const auto made = makeOwnerOnly(folder.file());
    ::umask(before);
    ASSERT_TRUE(made);
    EXPECT_EQ(modeOf(folder.folder()), 0700U);
    EXPECT_EQ(modeOf(folder.root() + QStringLiteral("/data")), 0700U);
    EXPECT_EQ(modeOf(folder.file()), 0600U);
}

TEST(StoreFileTest, WhatOthersMayDoIsTakenAwayAndNothingIsGiven)
{
    const StoreFolder folder;
    folder.write("words");
    ::chmod(folder.folder().toLocal8Bit().constData(), 0755);
    ::chmod(folder.file().toLocal8Bit().constData(), 0464);
    ASSERT_TRUE(makeOwnerOnly(folder.file()));
    EXPECT_EQ(modeOf(folder.folder()), 0700U);
    EXPECT_EQ(modeOf(folder.file()), 0400U) << "its owner had made it read-only";
    EXPECT_EQ(folder.bytes(), "words");
}

TEST(StoreFileTest, AFileWhereTheFolderShouldBeIsRefusedAndLeft)
{
    const StoreFolder folder;
    QFile inTheWay(folder.root() + QStringLiteral("/data"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.write("mine");
    inTheWay.close();
    const auto made = makeOwnerOnly(folder.file());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().problem, Problem::StoreNotWritable);
    EXPECT_EQ(made.error().where, folder.file().toStdString());
    EXPECT_EQ(QFileInfo(inTheWay).size(), 4);
    EXPECT_FALSE(makeOwnerOnly(folder.root())) << "a folder is no file";
    EXPECT_FALSE(makeOwnerOnly(QStringLiteral("/proc/nowhere/profile.db")));
}

TEST(StoreFileTest, AFilePutAsideKeepsItsBytesAndNeverTakesAnothersName)
{
    const StoreFolder folder;
    const QDateTime when(QDate(2026, 11, 29), QTime(4, 45, 12));
    folder.write("first");
    QFile log(folder.file() + QStringLiteral("-wal"));
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    log.write("log");
    log.close();
    const auto first = putAside(folder.file(), when);
    ASSERT_TRUE(first);
    EXPECT_EQ(*first, folder.file() + QStringLiteral(".broken-2026-11-29-044512"));
    EXPECT_FALSE(QFileInfo::exists(folder.file()));
    EXPECT_TRUE(QFileInfo::exists(*first + QStringLiteral("-wal")));
    folder.write("second");
    const auto second = putAside(folder.file(), when);
    ASSERT_TRUE(second);
    EXPECT_NE(*second, *first);
    QFile kept(*first);
    ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
    EXPECT_EQ(kept.readAll(), "first");
    EXPECT_EQ(putAside(folder.file(), when).error().problem, Problem::StoreBroken) << "nothing there";
}

TEST(StoreFileTest, TheUsualFileLiesInTheUsersDataFolder)
{
    EXPECT_TRUE(usualStoreFile().startsWith(QDir::homePath())) << usualStoreFile().toStdString();
    EXPECT_TRUE(usualStoreFile().endsWith(QLatin1String("/profile.db")));
}

TEST(StoreFileTest, AGoodFileIsKeptUnderANameThatIsFree)
{
    const StoreFolder folder;
    const QDateTime when(QDate(2026, 11, 29), QTime(18, 15), Qt::UTC);
    const QString name = nameBefore(folder.file(), when);
    EXPECT_EQ(name, folder.folder() + QStringLiteral("/profile-before-2026-11-29-181500.db"));
    folder.write("x");
    ASSERT_TRUE(QFile::copy(folder.file(), name));
    EXPECT_EQ(nameBefore(folder.file(), when),
              folder.folder() + QStringLiteral("/profile-before-2026-11-29-181500-2.db"));
}

TEST(StoreFileTest, APartIsItsOwnersAloneAndWhatLiesBesideAFileIsFound)
{
    const StoreFolder folder;
    folder.write("x");
    const QString part = folder.file() + QStringLiteral(".part");
    for (int again = 0; again < 2; ++again)
        EXPECT_TRUE(makePart(part));
    EXPECT_EQ(QFileInfo(part).size(), 0);
    EXPECT_EQ(QFile::permissions(part) & (QFileDevice::ReadGroup | QFileDevice::ReadOther),
              QFileDevice::Permissions());
    EXPECT_TRUE(isFlushed(part));
    EXPECT_TRUE(isFlushed(folder.folder()));
    EXPECT_FALSE(isFlushed(folder.folder() + QStringLiteral("/none")));
    EXPECT_TRUE(besideOf(folder.file()).isEmpty());
    const QString log = folder.file() + QStringLiteral("-wal");
    ASSERT_TRUE(makePart(log));
    EXPECT_EQ(besideOf(folder.file()), QStringList{log});
    EXPECT_FALSE(makePart(QStringLiteral("/proc/none/part")));
}

}  // namespace fb::test::store_file_tests
