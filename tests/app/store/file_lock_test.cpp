#include "app/store/file_lock.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

namespace fb::test::file_lock_test {

TEST(FileLockTest, IsHeldByOneAtATimeAndFreeAgainWhenThatOneIsGone)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("lock"));
    FileLock second(file);
    {
        FileLock first(file);
        EXPECT_TRUE(first.take(0));
        EXPECT_FALSE(second.take(20));
    }
    EXPECT_TRUE(second.take(0));
    EXPECT_EQ(QFile::permissions(file) & (QFileDevice::ReadGroup | QFileDevice::ReadOther),
              QFileDevice::Permissions());
}

TEST(FileLockTest, AProgramThatIsKilledHoldsNothing)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("lock"));
    QProcess holder;
    holder.start(QStringLiteral("flock"), {file, QStringLiteral("cat")});
    holder.write("held\n");
    ASSERT_TRUE(holder.waitForReadyRead()) << "cat answers once the lock is held";
    FileLock lock(file);
    EXPECT_FALSE(lock.take(20));
    holder.kill();
    holder.closeWriteChannel();
    ASSERT_TRUE(holder.waitForFinished());
    EXPECT_TRUE(lock.take(5000));
}

TEST(FileLockTest, WhereNoFileCanBeMadeThereIsNoLock)
{
    FileLock lock(QStringLiteral("/proc/nowhere/lock"));
    EXPECT_FALSE(lock.take(0));
}

}  // namespace fb::test::file_lock_test
