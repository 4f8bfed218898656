#include "app/store/export_file.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::export_file_tests {

namespace export_file_test {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("none");
}

}  // namespace export_file_test

using export_file_test::bytesOf;

TEST(ExportFileTest, IsItsOwnersAloneWhileItIsWrittenAndAfter)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("out.csv"));
    const mode_t before = ::umask(022);
    ExportFile file(path);
    ASSERT_TRUE(file.open());
    file.write("words");
    ASSERT_TRUE(file.flushed());
    for (const QFileInfo& there : QDir(folder.path()).entryInfoList(QDir::Files | QDir::Hidden))
        EXPECT_EQ(modeOf(there.filePath()), 0600U) << there.fileName().toStdString();
    EXPECT_FALSE(QFileInfo::exists(path)) << "not before it is whole";
    ASSERT_TRUE(file.commit());
    ::umask(before);
    EXPECT_EQ(modeOf(path), 0600U);
    EXPECT_EQ(bytesOf(path), "words");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(ExportFileTest, WhatStoodThereStaysUntilTheNewOneIsWhole)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("out.csv"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    {
        ExportFile file(path);
        ASSERT_TRUE(file.open());
        file.write(QByteArray(3 << 20, 'x'));
        file.drop();
        EXPECT_FALSE(file.commit());
    }
    EXPECT_EQ(bytesOf(path), "old");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(ExportFileTest, WhereItCannotStandThatIsSaid)
{
    const QTemporaryDir folder;
    for (const QString& path :
         {folder.path(), folder.filePath(QStringLiteral("none/out.csv")), QStringLiteral("/dev/null")}) {
        ExportFile file(path);
        const auto opened = file.open();
        ASSERT_FALSE(opened) << path.toStdString();
        EXPECT_EQ(opened.error().problem, Problem::OutputNotWritable);
        EXPECT_EQ(opened.error().where, path.toStdString());
    }
}

TEST(ExportFileTest, MuchIsWrittenInItsOrder)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("out.csv"));
    ExportFile file(path);
    ASSERT_TRUE(file.open());
    QByteArray all;
    for (int i = 0; i < 300000; ++i) {
        const QByteArray line = QByteArray::number(i) + '\n';
        file.write(line);
        all += line;
    }
    ASSERT_TRUE(file.commit());
    EXPECT_EQ(bytesOf(path), all);
}

}  // namespace fb::test::export_file_tests
