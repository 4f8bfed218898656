#include "app/store/store.h"

#include <gtest/gtest.h>
#include <linux/capability.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <QFileInfo>
#include <QSet>
#include <array>
#include <random>

#include "tests/support/store_folder.h"

namespace fb::test::store_tests {

namespace store_test {

const Statement kMake{QStringLiteral("CREATE TABLE note (words VARCHAR(80))")};

Statement inserting(const QString& words) { return {QStringLiteral("INSERT INTO note VALUES (?)"), {words}}; }

int notesIn(const Store& store)
{
    return store.rows({QStringLiteral("SELECT count(*) FROM note")})->front().front().toInt();
}

// A store with fifty notes in several pages, closed again.
QByteArray filled(const StoreFolder& folder)
{
    auto opened = Store::open(folder.file());
    std::vector<Statement> statements{kMake};
    for (int i = 0; i < 500; ++i)
        statements.push_back(inserting(QStringLiteral("note %1 ").arg(i).repeated(6)));
    EXPECT_TRUE(opened->store->commit(statements));
    opened->store.reset();
    return folder.bytes();
}

// Whoever runs the tests, root too, keeps to what files and folders allow.
class Powerless {
public:
    Powerless()
    {
        EXPECT_EQ(::syscall(SYS_capget, &m_header, m_before.data()), 0);
        auto without = m_before;
        without[0].effective &= ~((1U << CAP_DAC_OVERRIDE) | (1U << CAP_DAC_READ_SEARCH));
        EXPECT_EQ(::syscall(SYS_capset, &m_header, without.data()), 0);
    }
    Powerless(const Powerless&) = delete;
    Powerless& operator=(const Powerless&) = delete;
    ~Powerless() { EXPECT_EQ(::syscall(SYS_capset, &m_header, m_before.data()), 0); }

private:
    __user_cap_header_struct m_header{_LINUX_CAPABILITY_VERSION_3, 0};  // of this thread
    std::array<__user_cap_data_struct, 2> m_before{};
};

void setMode(const QString& path, mode_t mode)
{
    ASSERT_EQ(::chmod(path.toLocal8Bit().constData(), mode), 0) << path.toStdString();
}

}  // namespace store_test

using namespace store_test;

TEST(StoreTest, WritesThroughToTheDiskBeforeACommitReturns)
{
    const StoreFolder folder;
    auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened);
    const auto pragma = [&](const char* name) {
        return opened->store->rows({QStringLiteral("PRAGMA %1").arg(QLatin1String(name))})
            ->front()
            .front()
            .toString();
    };
    EXPECT_EQ(pragma("journal_mode"), QStringLiteral("wal"));
    EXPECT_EQ(pragma("synchronous"), QStringLiteral("2")) << "full";
    EXPECT_EQ(pragma("foreign_keys"), QStringLiteral("1"));
    EXPECT_GT(pragma("busy_timeout").toInt(), 0);
}

TEST(StoreTest, EveryFileIsItsOwnersAloneWhileItIsOpenAndAfter)
{
    const StoreFolder folder;
    const mode_t before = ::umask(0);
    auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened);
    ASSERT_TRUE(opened->store->commit({kMake, inserting(QStringLiteral("a"))}));
    ::umask(before);
    const QFileInfoList files = QDir(folder.folder()).entryInfoList(QDir::Files | QDir::Hidden);
    QSet<QString> names;
    for (const QFileInfo& file : files) {
        struct stat seen {};
        ASSERT_EQ(::stat(file.filePath().toLocal8Bit().constData(), &seen), 0);
        EXPECT_EQ(seen.st_mode & 07777U, 0600U) << file.fileName().toStdString();
        names << file.fileName();
    }
    EXPECT_EQ(names, (QSet<QString>{QStringLiteral("profile.db"), QStringLiteral("profile.db-wal"),
                                    QStringLiteral("profile.db-shm"), QStringLiteral("profile.db.opening")}));
    struct stat seen {};
    ASSERT_EQ(::stat(folder.folder().toLocal8Bit().constData(), &seen), 0);
    EXPECT_EQ(seen.st_mode & 07777U, 0700U);
}

TEST(StoreTest, ACommitIsTakenWholeOrNotAtAll)
{
    const StoreFolder folder;
    auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened->store->commit({kMake, inserting(QStringLiteral("a"))}));
    EXPECT_FALSE(opened->store->commit({inserting(QStringLiteral("b")), {QStringLiteral("nonsense")}}));
    EXPECT_EQ(notesIn(*opened->store), 1);
    EXPECT_TRUE(opened->store->commit({inserting(QStringLiteral("c"))})) << "the next one is not held up";
    EXPECT_EQ(notesIn(*opened->store), 2);
}

TEST(StoreTest, ANewerFileIsRefusedAndNotTouched)
{
    const StoreFolder folder;
    filled(folder);
    folder.sqlite3(QStringLiteral("PRAGMA user_version = 99"));
    const QByteArray before = folder.bytes();
    const auto opened = Store::open(folder.file());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().problem, Problem::StoreTooNew);
    EXPECT_EQ(opened.error().where, folder.file().toStdString());
    EXPECT_EQ(folder.bytes(), before);
    EXPECT_TRUE(folder.namesAside().isEmpty());
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT count(*) FROM note")), QStringLiteral("500"));
}

TEST(StoreTest, ADamagedFileIsPutAsideUnderADateAndAFreshOneOpened)
{
    std::mt19937 random(11);
    QByteArray noise(9000, '\0');
    for (char& byte : noise)
        byte = static_cast<char>(random());
    const StoreFolder whole;
    const QByteArray good = filled(whole);
    QByteArray scratched = good;
    for (qsizetype i = 5000; i < scratched.size(); i += 7)
        scratched[i] = static_cast<char>(random());
    const std::pair<const char*, QByteArray> kDamaged[]{{"noise", noise},
                                                        {"one byte", "x"},
                                                        {"cut in a header", good.first(60)},
                                                        {"cut in a page", good.first(good.size() / 2 + 17)},
                                                        {"cut at a page", good.first(good.size() - 8192)},
                                                        {"scratched", scratched}};
    for (const auto& [what, bytes] : kDamaged) {
        const StoreFolder folder;
        folder.write(bytes);
        auto opened = Store::open(folder.file());
        ASSERT_TRUE(opened) << what;
        ASSERT_TRUE(opened->told) << what;
        EXPECT_EQ(opened->told->problem, Problem::StoreBroken) << what;
        EXPECT_EQ(opened->told->where, folder.file().toStdString()) << what;
        ASSERT_EQ(folder.namesAside().size(), 1) << what;
        const QString aside = folder.folder() + QLatin1Char('/') + folder.namesAside().front();
        EXPECT_EQ(opened->told->what, aside.toStdString()) << what;
        QFile kept(aside);
        ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
        EXPECT_EQ(kept.readAll(), bytes) << what;
        EXPECT_TRUE(opened->store->commit({kMake, inserting(QStringLiteral("a"))})) << what;
        opened->store.reset();
        EXPECT_FALSE(Store::open(folder.file())->told) << what << ": told once";
    }
}

TEST(StoreTest, AnEmptyFileIsAFreshStoreAndNothingIsTold)
{
    const StoreFolder folder;
    folder.write({});
    const auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened);
    EXPECT_FALSE(opened->told);
}

TEST(StoreTest, WhereNothingCanBeWrittenThatIsSaidAndNothingHarmed)
{
    const StoreFolder folder;
    const QByteArray before = filled(folder);
    {
        const Powerless user;
        setMode(folder.file(), 0400);
        const auto readOnlyFile = Store::open(folder.file());
        ASSERT_FALSE(readOnlyFile);
        EXPECT_EQ(readOnlyFile.error().problem, Problem::StoreReadOnly);
        setMode(folder.file(), 0600);
        setMode(folder.folder(), 0500);
        const auto readOnlyFolder = Store::open(folder.file());
        ASSERT_FALSE(readOnlyFolder);
        EXPECT_EQ(readOnlyFolder.error().problem, Problem::StoreReadOnly);
        EXPECT_EQ(readOnlyFolder.error().where, folder.file().toStdString());
        setMode(folder.folder(), 0700);
        EXPECT_TRUE(Store::open(folder.file())) << "writable again";
    }
    EXPECT_TRUE(folder.namesAside().isEmpty());
    EXPECT_EQ(folder.bytes(), before);
}

TEST(StoreTest, AWriteWaitsForAnotherProgramAndGivesUpInTheEnd)
{
    const StoreFolder folder;
    auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened->store->commit({kMake}));
    QProcess other;
    other.start(QStringLiteral("sqlite3"), {folder.file()});
    other.write("BEGIN IMMEDIATE;\nSELECT 'held';\n");
    ASSERT_TRUE(other.waitForBytesWritten());
    ASSERT_TRUE(other.waitForReadyRead());
    const auto refused = opened->store->commit({inserting(QStringLiteral("a"))});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().problem, Problem::StoreBusy);
    EXPECT_EQ(notesIn(*opened->store), 0) << "reading goes on";
    other.write("COMMIT;\n");
    ASSERT_TRUE(other.waitForBytesWritten());
    EXPECT_TRUE(opened->store->commit({inserting(QStringLiteral("a"))})) << "it waits for its turn";
    other.closeWriteChannel();
    EXPECT_TRUE(other.waitForFinished());
}

}  // namespace fb::test::store_tests
