#include "app/sheets/sheet_file.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_file_test {

TEST(SheetFileTest, AWrittenSheetIsReadAgain)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath("a.json");
    for (const Sheet& sheet : {oddSheet(), plainSheet()}) {
        ASSERT_TRUE(writeSheet(sheet, file));
        EXPECT_EQ(readSheet(file), Result<Sheet>(sheet));
    }
}

TEST(SheetFileTest, ADamagedOrMissingFileIsTold)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath("a.json");
    EXPECT_EQ(readSheet(file).error().problem, Problem::FileNotReadable);
    EXPECT_EQ(readSheet(folder.path()).error().problem, Problem::FileNotReadable);
    const std::string whole = textOf(oddSheet());
    for (const std::string& text : {std::string(), whole.substr(0, whole.size() / 2), std::string("[1]"),
                                    std::string("\0\0\xff", 3), std::string(2 * 1024 * 1024, ' ')}) {
        QFile written(file);
        ASSERT_TRUE(written.open(QIODevice::WriteOnly));
        written.write(text.data(), static_cast<qint64>(text.size()));
        written.close();
        ASSERT_FALSE(readSheet(file)) << text.substr(0, 40);
        EXPECT_EQ(readSheet(file).error().problem, Problem::SheetNotReadable) << text.substr(0, 40);
    }
}

TEST(SheetFileTest, WhatCannotBeWrittenIsTold)
{
    const QTemporaryDir folder;
    const auto written = writeSheet(plainSheet(), folder.filePath("no/such/folder.json"));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error(), (Fault{Problem::OutputNotWritable, "folder.json", {}}));
}

TEST(SheetFileTest, TheNameComesFromTheTitle)
{
    const auto nameOf = [](const char* title) {
        Sheet sheet;
        sheet.title = title;
        return sheetFileName(sheet);
    };
    EXPECT_EQ(nameOf("IM injection: Spring 2027 (A)"), "im-injection-spring-2027-a");
    EXPECT_EQ(nameOf("../../etc/passwd"), "etc-passwd");
    EXPECT_EQ(nameOf("Inyección"), QString::fromUtf8("inyección"));
    EXPECT_EQ(nameOf("***"), "sheet");
    EXPECT_LE(nameOf(std::string(300, 'a').c_str()).size(), 60);
}

}  // namespace fb::test::sheet_file_test
