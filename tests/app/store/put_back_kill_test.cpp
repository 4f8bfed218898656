// Programs that are killed at any moment of putting a backup back: what stands in the place of the records is
// always whole, either the one or the other, and the next start tidies up.
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QProcess>
#include <QTest>
#include <algorithm>
#include <random>

#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "app/store/store_file.h"
#include "tests/support/damaged_records.h"

namespace fb::test::put_back_kill_tests {

namespace put_back_kill_test {

struct Killed {
    int began = 0, done = 0;

    // Started, left alone for so long once it began, and killed.
    void run(const QStringList& arguments, int milliseconds)
    {
        QProcess runner;
        runner.start(QStringLiteral(FINGERBREADTH_PUT_BACK_RUNNER), arguments);
        ASSERT_TRUE(runner.waitForReadyRead()) << "it ended with " << runner.exitCode();
        QTest::qSleep(milliseconds);
        runner.kill();
        ASSERT_TRUE(runner.waitForFinished());
        ASSERT_EQ(runner.exitStatus(), QProcess::CrashExit)
            << "it ended of itself with " << runner.exitCode();
        const QByteArray said = runner.readAllStandardOutput();
        began += static_cast<int>(said.count("began"));
        done += static_cast<int>(said.count("done"));
    }
};

// How long one takes on this machine, ms.
int timeOfOne(const QStringList& arguments)
{
    QProcess runner;
    runner.start(QStringLiteral(FINGERBREADTH_PUT_BACK_RUNNER), arguments);
    EXPECT_TRUE(runner.waitForReadyRead());
    QElapsedTimer watch;
    watch.start();
    QByteArray said;
    constexpr int kLongest = 60000;
    while (!said.contains("done") && watch.elapsed() < kLongest && runner.waitForReadyRead(kLongest))
        said += runner.readAllStandardOutput();
    const auto took = static_cast<int>(watch.elapsed());
    runner.kill();
    EXPECT_TRUE(runner.waitForFinished());
    EXPECT_TRUE(said.contains("done"));
    return std::max(20, took);
}

}  // namespace put_back_kill_test

using namespace put_back_kill_test;

TEST(PutBackKillTest, OneOfTheTwoStandsThereWholeWheneverItEnds)
{
    bool isGiven = false;
    const int given = qEnvironmentVariableIntValue("FINGERBREADTH_KILLS", &isGiven);
    const int kills = isGiven ? std::max(1, given) : 30;
    constexpr unsigned kSeed = 20261129;
    std::mt19937 random(kSeed);
    DamagedRecords lab(2);
    const QStringList arguments{lab.folder.file(), lab.backups()[0], lab.backups()[1]};
    std::uniform_int_distribution<int> moment(0, 2 * timeOfOne(arguments));
    Killed killed;
    for (int i = 0; i < kills; ++i) {
        killed.run(arguments, moment(random));
        EXPECT_FALSE(lab.folder.open()) << i << ": nothing was put aside";
        LongWork work;
        const auto verified = verifyRecords(lab.folder.store(), work);
        ASSERT_TRUE(verified) << i;
        EXPECT_TRUE(verified->whole) << i;
        EXPECT_TRUE(verified->checkOffs == 1 || verified->checkOffs == 2) << i << ": " << verified->checkOffs;
        EXPECT_EQ(readStudents(lab.folder.store())->size(), 40U) << i;
        lab.folder.close();
        EXPECT_EQ(lab.names(QStringLiteral("*putting-back*")), QStringList()) << i;
        for (const QString& name : lab.names(QStringLiteral("records-before-*.db"))) {
            const QString aside = lab.folder.folder() + u'/' + name;
            struct stat seen {};
            ASSERT_EQ(::stat(QFile::encodeName(aside).constData(), &seen), 0);
            EXPECT_EQ(seen.st_nlink, 1U) << i << ": it would change with the records";
            auto before = Store::openToRead(aside, recordStoreKind());
            ASSERT_TRUE(before) << i << name.toStdString();
            LongWork look;
            EXPECT_TRUE(verifyRecords(**before, look)->whole) << i << name.toStdString();
            before->reset();
            removeBeside(aside, {});
            QFile::remove(aside);
        }
        ASSERT_FALSE(HasFailure()) << "after kill " << i << " of seed " << kSeed;
    }
    EXPECT_GT(killed.began, killed.done) << "some ended in the middle";
    std::printf("%d kills, %d begun, %d done\n", kills, killed.began, killed.done);
}

}  // namespace fb::test::put_back_kill_tests
