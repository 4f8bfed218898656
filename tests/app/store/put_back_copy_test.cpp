#include "app/store/put_back_copy.h"

#include <gtest/gtest.h>

#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "tests/support/damaged_records.h"

namespace fb::test::put_back_copy_tests {

namespace put_back_copy_test {

const AuditEntry kEntry{.actor = QStringLiteral("program"),
                        .event = QStringLiteral("PUT_BACK"),
                        .object = QStringLiteral("records"),
                        .detail = QStringLiteral("a test")};

struct Made {
    Result<bool> from(const QString& backup)
    {
        return makePutBackPart(backup, lab.folder.file(), kEntry, momentAt(9).at, work);
    }
    [[nodiscard]] QString part() const { return putBackPart(lab.folder.file()); }
    void expectNothingLeft() const { EXPECT_EQ(lab.names(QStringLiteral("*.putting-back*")), QStringList()); }

    DamagedRecords lab{2};
    LongWork work;
};

}  // namespace put_back_copy_test

using namespace put_back_copy_test;

TEST(PutBackCopyTest, IsWholeClosedItsOwnersAloneAndTellsOfItself)
{
    Made made;
    const QString backup = made.lab.backups().last();
    const QByteArray before = bytesIn(backup);
    const mode_t mask = ::umask(022);
    ASSERT_TRUE(made.from(backup));
    ::umask(mask);
    EXPECT_EQ(bytesIn(backup), before);
    EXPECT_EQ(modeOf(made.part()), 0600U);
    const auto copy = Store::openToRead(made.part(), recordStoreKind());
    ASSERT_TRUE(copy);
    LongWork look;
    const auto verified = verifyRecords(**copy, look);
    ASSERT_TRUE(verified);
    EXPECT_TRUE(verified->whole);
    EXPECT_EQ(verified->checkOffs, 2);
    EXPECT_EQ((*copy)->rows({QStringLiteral("SELECT event FROM audit ORDER BY seq DESC")})->front().front(),
              QStringLiteral("PUT_BACK"));
    removePutBackPart(made.lab.folder.file());
    made.expectNothingLeft();
}

TEST(PutBackCopyTest, ADamagedBackupIsRefusedByItsNameAndNothingIsLeft)
{
    Made made;
    const QString backup = made.lab.backups().last();
    const QByteArray good = bytesIn(backup);
    const auto refusal = [&](const QByteArray& bytes) {
        writeBytes(backup, bytes);
        const auto none = made.from(backup);
        EXPECT_FALSE(none);
        made.expectNothingLeft();
        EXPECT_EQ(none ? std::string() : none.error().where, backup.toStdString());
        return none ? Problem{} : none.error().problem;
    };
    EXPECT_EQ(refusal(scratched(good)), Problem::StoreBroken);
    EXPECT_EQ(refusal(good.first(good.size() / 2)), Problem::StoreBroken);
    EXPECT_EQ(refusal({}), Problem::NotAStore);
    EXPECT_EQ(refusal("no database at all"), Problem::StoreBroken);
    QFile::remove(backup);
    EXPECT_EQ(made.from(backup).error().problem, Problem::FileNotReadable);
}

TEST(PutBackCopyTest, ABackupWhoseLogWasChangedIsRefusedWithTheEntry)
{
    Made made;
    const QString backup = made.lab.backups().last();
    QProcess shell;
    shell.start(
        QStringLiteral("sqlite3"),
        {backup, QStringLiteral("DROP TRIGGER audit_stays; UPDATE audit SET detail = 'x' WHERE seq = 3")});
    ASSERT_TRUE(shell.waitForFinished());
    const auto none = made.from(backup);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error(), (Fault{Problem::ChainBroken, backup.toStdString(), "3"}));
    made.expectNothingLeft();
}

TEST(PutBackCopyTest, ANewerOneOrAnotherProgramsIsRefused)
{
    Made made;
    const QString backup = made.lab.backups().last();
    const auto with = [&](const char* sql) {
        QProcess shell;
        shell.start(QStringLiteral("sqlite3"), {backup, QString::fromLatin1(sql)});
        EXPECT_TRUE(shell.waitForFinished());
        return made.from(backup).error().problem;
    };
    EXPECT_EQ(with("PRAGMA user_version = 99"), Problem::StoreTooNew);
    EXPECT_EQ(with("PRAGMA application_id = 77"), Problem::NotAStore);
    made.expectNothingLeft();
}

TEST(PutBackCopyTest, CancelledOrWithoutAFolderToWriteNothingIsLeft)
{
    Made made;
    made.work.cancelled = true;
    EXPECT_EQ(made.from(made.lab.backups().last()).error().problem, Problem::NotPutBack);
    made.expectNothingLeft();
    LongWork work;
    const auto none = makePutBackPart(made.lab.backups().last(), QStringLiteral("/proc/none/records.db"),
                                      kEntry, momentAt(9).at, work);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().problem, Problem::NotPutBack);
}

}  // namespace fb::test::put_back_copy_tests
