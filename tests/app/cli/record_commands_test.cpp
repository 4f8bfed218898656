#include "app/cli/record_commands.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_commands_tests {

namespace record_commands_test {

QString said(const Result<std::string>& answer)
{
    EXPECT_TRUE(answer);
    return QString::fromStdString(answer.value_or(std::string()));
}

}  // namespace record_commands_test

using record_commands_test::said;

TEST(RecordCommandsTest, VerifySaysHowMuchIsThereAndTheHead)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto off = signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, true, momentAt(1));
    const QString words = said(verifyAnswer(folder.file()));
    EXPECT_TRUE(words.contains(folder.file()));
    EXPECT_TRUE(words.contains(off->chainHead)) << words.toStdString();
    EXPECT_TRUE(words.contains(QRegularExpression(QStringLiteral("Signed check-offs +1\n"))));
    EXPECT_TRUE(words.contains(QRegularExpression(QStringLiteral("Answers +2\n"))));
}

TEST(RecordCommandsTest, VerifyRefusesWhatIsNoStoreOrWasChanged)
{
    RecordFolder folder;
    EXPECT_EQ(verifyAnswer(folder.file()).error().problem, Problem::FileNotReadable);
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, false, momentAt(1)));
    folder.sqlite3(
        QStringLiteral("DROP TRIGGER check_off_signed_stays; UPDATE check_off SET outcome = 'pass'"));
    EXPECT_EQ(verifyAnswer(folder.file()).error().problem, Problem::ChainBroken);
    folder.close();
    folder.sqlite3(QStringLiteral("PRAGMA application_id = 4"));
    EXPECT_EQ(verifyAnswer(folder.file()).error().problem, Problem::NotAStore);
}

TEST(RecordCommandsTest, BackupCopiesAndVerifiesTheCopy)
{
    RecordFolder folder;
    folder.fill();
    const QString file = folder.root() + QStringLiteral("/copy.db");
    const QString words = said(backupAnswer(folder.file(), file));
    EXPECT_TRUE(words.contains(file)) << words.toStdString();
    EXPECT_EQ(said(verifyAnswer(file)).section(u'\n', 1),
              said(verifyAnswer(folder.file())).section(u'\n', 1));
    EXPECT_EQ(modeOf(file), 0600U);
    EXPECT_EQ(backupAnswer(folder.file(), folder.root()).error().problem, Problem::BackupFailed);
    EXPECT_EQ(backupAnswer(folder.root() + QStringLiteral("/none.db"), file).error().problem,
              Problem::FileNotReadable);
}

}  // namespace fb::test::record_commands_tests
