// Programs that end at the worst moment, and two that write at once: what store.h promises.
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QProcess>
#include <QTest>
#include <random>

#include "app/store/profile_store.h"
#include "tests/support/store_folder.h"

namespace fb::test::store_kill_tests {

namespace store_kill_test {

// The last whole line a writer has said; 0 for none.
int lastAcknowledged(const QByteArray& said)
{
    const qsizetype end = said.lastIndexOf('\n');
    if (end < 0)
        return 0;
    return said.first(end).split('\n').last().toInt();
}

void start(QProcess& writer, const QString& file, int first, int rest = 0)
{
    writer.start(QStringLiteral(FINGERBREADTH_STORE_WRITER),
                 {file, QString::number(first), QString::number(rest)});
    ASSERT_TRUE(writer.waitForStarted());
}

}  // namespace store_kill_test

using namespace store_kill_test;

TEST(StoreKillTest, AProgramKilledWhileItWritesLosesNothingItHasAcknowledged)
{
    const StoreFolder folder;
    constexpr unsigned kSeed = 20261129;
    std::mt19937 random(kSeed);
    std::uniform_int_distribution<int> moment(0, 60);
    int kept = 0;
    for (int i = 0; i < 30; ++i) {
        QProcess writer;
        start(writer, folder.file(), i * 300);
        QElapsedTimer clock;
        clock.start();
        // Every other one is killed in its very first moments, opening and migrating.
        const bool isWriting = i % 2 == 1 || writer.waitForReadyRead();
        ASSERT_TRUE(isWriting) << i;
        QTest::qSleep(moment(random));
        writer.kill();
        ASSERT_TRUE(writer.waitForFinished());
        ASSERT_EQ(writer.exitStatus(), QProcess::CrashExit) << i << ": it ended of itself";
        const int acknowledged = lastAcknowledged(writer.readAllStandardOutput());
        EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA integrity_check")), QStringLiteral("ok")) << i;
        auto opened = Store::open(folder.file());
        ASSERT_TRUE(opened) << i;
        EXPECT_FALSE(opened->told) << i;
        if (acknowledged == 0)
            continue;
        kept += 1;
        const auto remembered = readProfile(*opened->store);
        ASSERT_TRUE(remembered && remembered->profile) << i;
        const double thousandths = remembered->profile->handLength->value() * 1000.0;
        // One more may have been written whose word did not get out.
        EXPECT_TRUE(std::lround(thousandths) == acknowledged || std::lround(thousandths) == acknowledged + 1)
            << i << ": " << acknowledged << " was acknowledged, " << thousandths << " is there";
    }
    EXPECT_GE(kept, 15) << "writers that got as far as writing";
}

TEST(StoreKillTest, TwoProgramsStartAndWriteAtOnce)
{
    const StoreFolder folder;
    QProcess one;
    QProcess other;
    start(one, folder.file(), 0, 3);
    start(other, folder.file(), 5000, 3);
    ASSERT_TRUE(one.waitForReadyRead());
    ASSERT_TRUE(other.waitForReadyRead());
    QTest::qSleep(600);
    for (QProcess* writer : {&one, &other}) {
        EXPECT_EQ(writer->state(), QProcess::Running) << "a write failed: " << writer->exitCode();
        writer->kill();
        ASSERT_TRUE(writer->waitForFinished());
    }
    EXPECT_TRUE(folder.namesAside().isEmpty());
    const int first = lastAcknowledged(one.readAllStandardOutput());
    const int second = lastAcknowledged(other.readAllStandardOutput());
    EXPECT_GT(first, 13000);
    EXPECT_GT(second, 18000);
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA integrity_check")), QStringLiteral("ok"));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT count(*) FROM profile")), QStringLiteral("1"));
}

}  // namespace fb::test::store_kill_tests
