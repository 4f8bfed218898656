#include "app/doors/saved_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

namespace fb::test::saved_file_tests {

namespace saved_file_test {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void expectRefused(const QString& path)
{
    const auto refused = saveWhole("new", path);
    ASSERT_FALSE(refused) << path.toStdString();
    EXPECT_EQ(refused.error().problem, Problem::OutputNotWritable);
    EXPECT_EQ(refused.error().where, path.toStdString());
}

}  // namespace saved_file_test

using namespace saved_file_test;

TEST(SavedFileTest, ANewFileAndOneThatIsThereHoldWhatIsGiven)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(saveWhole("first and long", path));
    ASSERT_TRUE(saveWhole("second", path));
    EXPECT_EQ(bytesOf(path), "second");
}

TEST(SavedFileTest, NothingElseIsReplaced)
{
    const QTemporaryDir folder;
    const QString pipe = folder.filePath(QStringLiteral("pipe"));
    ASSERT_EQ(mkfifo(QFile::encodeName(pipe).constData(), S_IRUSR | S_IWUSR), 0);
    expectRefused(pipe);
    expectRefused(folder.path());
    expectRefused(folder.filePath(QStringLiteral("nowhere/sheet.pdf")));
    struct stat there {};
    ASSERT_EQ(stat(QFile::encodeName(pipe).constData(), &there), 0);
    EXPECT_TRUE(S_ISFIFO(there.st_mode));
}

TEST(SavedFileTest, NoBytesLeaveWhatIsThere)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(saveWhole("kept", path));
    EXPECT_FALSE(saveWhole({}, path));
    EXPECT_EQ(bytesOf(path), "kept");
}

}  // namespace fb::test::saved_file_tests
