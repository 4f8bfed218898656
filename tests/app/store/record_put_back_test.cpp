// A backup put back through the keeper, in its own threads: see RecordKeeper::putBack and Desk::offered.
#include <gtest/gtest.h>

#include <QTest>

#include "app/store/audit_chain.h"
#include "app/store/record_migrations.h"
#include "app/store/record_store.h"
#include "app/store/record_verify.h"
#include "tests/support/damaged_records.h"

namespace fb::test::record_put_back_tests {

namespace record_put_back_test {

constexpr int kSlow = 30000;  // ms: a machine that does other things too

class StillClock : public Clock {
public:
    [[nodiscard]] Ms steady() const override { return Ms{0}; }
    [[nodiscard]] QDateTime wall() const override { return momentAt(12).at; }
};

struct Keeper {
    explicit Keeper(DamagedRecords& which) : lab(which) { lab.folder.close(); }

    template <class T, class Ask>
    Result<T> got(const Ask& ask)
    {
        std::optional<Result<T>> answer;
        ask([&](const Result<T>& result) { answer = result; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }, kSlow));
        return answer ? *answer : Result<T>(fault(Problem::StoreBusy));
    }
    Desk desk()
    {
        return got<Desk>([&](const auto& then) { store.openDesk({}, &asker, then); }).value();
    }
    Result<PutBack> putBack(const QString& file, const std::optional<Proof>& by = std::nullopt)
    {
        return got<PutBack>([&](const auto& then) { store.putBack(file, by, work, &asker, then); });
    }
    Result<Verified> verified()
    {
        auto look = std::make_shared<LongWork>();
        return got<Verified>([&](const auto& then) { store.verify(look, &asker, then); });
    }

    DamagedRecords& lab;
    StillClock clock;
    QObject asker;
    RecordStore store{lab.folder.file(), clock};
    std::shared_ptr<LongWork> work = std::make_shared<LongWork>();
};

template <class T>
std::string sentence(const Result<T>& answer)
{
    return answer ? std::string() : std::to_string(static_cast<int>(answer.error().problem));
}

QString lastDetail(DamagedRecords& lab)
{
    return lab.folder.one(
        QStringLiteral("SELECT event || ' ' || detail FROM audit ORDER BY seq DESC LIMIT 1"));
}

}  // namespace record_put_back_test

using namespace record_put_back_test;

TEST(RecordPutBackTest, AfterADamageTheLastBackupIsOfferedAndPutBack)
{
    DamagedRecords lab(2);
    const QByteArray good = bytesIn(lab.folder.file());
    for (const QByteArray& bytes :
         {scratched(good), good.first(good.size() / 2 + 11), QByteArray("no database at all")}) {
        lab.folder.close();
        for (const char* ending : {"-wal", "-shm"})
            QFile::remove(lab.folder.file() + QLatin1String(ending));
        writeBytes(lab.folder.file(), bytes);
        Keeper keeper(lab);
        const Desk empty = keeper.desk();
        ASSERT_TRUE(empty.told) << bytes.size();
        ASSERT_TRUE(empty.offered);
        EXPECT_TRUE(empty.students.empty());
        const auto done = keeper.putBack(empty.offered->file);
        ASSERT_TRUE(done) << sentence(done);
        EXPECT_EQ(done->backup.checkOffs, 2);
        EXPECT_EQ(modeOf(done->aside), 0600U);
        EXPECT_EQ(keeper.work->percent, 100);
        const Desk desk = keeper.desk();
        EXPECT_EQ(desk.students.size(), 40U);
        EXPECT_EQ(desk.assessors.size(), 2U);
        EXPECT_FALSE(desk.offered);
        EXPECT_FALSE(desk.told);
        const auto verified = keeper.verified();
        ASSERT_TRUE(verified);
        EXPECT_TRUE(verified->whole);
        EXPECT_EQ(verified->checkOffs, 2);
        EXPECT_EQ(lab.names(QStringLiteral("*putting-back*")), QStringList());
    }
    const QString detail = lastDetail(lab);
    EXPECT_TRUE(detail.startsWith(QStringLiteral("PUT_BACK aside=records-before-2026-11-1")));
    EXPECT_TRUE(detail.endsWith(QStringLiteral("-3.db backup=") + QFileInfo(lab.backups().last()).fileName()))
        << detail.toStdString();
    EXPECT_EQ(lab.names(QStringLiteral("records.db.broken-*[0-9]")).size(), 3) << "what was damaged is kept";
}

TEST(RecordPutBackTest, WhatWasThereBeforeCanBePutBackInItsTurn)
{
    DamagedRecords lab;
    ASSERT_TRUE(lab.damage());
    ASSERT_TRUE(saveStudents(lab.folder.store(), {inventedStudent(7)}, momentAt(8)));
    Keeper keeper(lab);
    EXPECT_FALSE(keeper.desk().offered) << "somebody is in them";
    const auto there = keeper.putBack(lab.backups().last());
    ASSERT_TRUE(there) << sentence(there);
    const auto none = keeper.putBack(there->aside);
    EXPECT_EQ(none.error().problem, Problem::AssessorUnknown) << "now there are assessors";
    const auto again = keeper.putBack(there->aside, kFirst);
    ASSERT_TRUE(again) << sentence(again);
    EXPECT_EQ(keeper.desk().students.size(), 1U);
    EXPECT_EQ(lab.names(QStringLiteral("records-before-*-*")).filter(QStringLiteral(".db-")), QStringList())
        << "nothing is left beside what was read";
    const QString detail =
        QString::fromStdString(keeper.verified()->whole ? "whole" : "not") + u' ' +
        lab.folder.sqlite3(QStringLiteral("SELECT detail FROM audit ORDER BY seq DESC LIMIT 1"));
    EXPECT_TRUE(detail.startsWith(QStringLiteral("whole aside=records-before-"))) << detail.toStdString();
    EXPECT_TRUE(detail.endsWith(QStringLiteral(" by=First Assessor"))) << detail.toStdString();
}

TEST(RecordPutBackTest, ACheckOffThatRanWhenTheBackupWasMadeGoesOnWhereItWas)
{
    DamagedRecords lab;
    lab.folder.open();
    const qint64 id =
        beginCheckOff(lab.folder.store(), orderOf(QStringLiteral("s-002"), lab.sheet), momentAt(3))->id;
    Course course(twoMarks());
    course.begin();
    course.answer();
    ASSERT_TRUE(keepAll(lab.folder.store(), id, course.kept, momentAt(3)));
    ASSERT_TRUE(keepCountedTime(lab.folder.store(), id, Ms{7500}, Ms{0}));
    const QString backup = lab.folder.root() + QStringLiteral("/by hand.db");
    LongWork making;
    ASSERT_TRUE(writeBackup(lab.folder.store(), backup, making));
    ASSERT_TRUE(lab.damage());
    Keeper keeper(lab);
    ASSERT_TRUE(keeper.putBack(backup));
    const Desk desk = keeper.desk();
    ASSERT_TRUE(desk.running);
    ASSERT_EQ(desk.running->events.size(), course.kept.size());
    for (std::size_t i = 0; i < course.kept.size(); ++i)
        EXPECT_EQ(textOf(desk.running->events[i]), textOf(course.kept[i])) << i;
    EXPECT_EQ(desk.running->onScreen, Ms{7500});
    const auto none = keeper.putBack(backup, kFirst);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().problem, Problem::CheckOffRunning) << "the one that is open is not lost";
}

TEST(RecordPutBackTest, ADamagedBackupChangesNothingAndIsNotOfferedAgain)
{
    DamagedRecords lab(2);
    const QStringList backups = lab.backups();
    QProcess shell;
    shell.start(QStringLiteral("sqlite3"),
                {backups[1],
                 QStringLiteral("DROP TRIGGER audit_stays; UPDATE audit SET detail = 'x' WHERE seq = 4")});
    ASSERT_TRUE(shell.waitForFinished());
    ASSERT_TRUE(lab.damage());
    const QString before = lab.folder.one(QStringLiteral("SELECT hash FROM audit WHERE seq = 1"));
    Keeper keeper(lab);
    ASSERT_EQ(keeper.desk().offered->file, backups[1]) << "looked at quickly it seems good";
    const auto none = keeper.putBack(backups[1]);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error(), (Fault{Problem::ChainBroken, backups[1].toStdString(), "4"}));
    const Desk desk = keeper.desk();
    ASSERT_TRUE(desk.offered);
    EXPECT_EQ(desk.offered->file, backups[0]) << "the one before it";
    EXPECT_EQ(keeper.verified()->head, before) << "nothing was changed";
    ASSERT_TRUE(keeper.putBack(backups[0]));
    EXPECT_EQ(keeper.desk().students.size(), 40U);
}

TEST(RecordPutBackTest, TheRecordsThemselvesAndWhatIsNoBackupAreRefused)
{
    DamagedRecords lab;
    lab.folder.open();
    Keeper keeper(lab);
    EXPECT_EQ(keeper.putBack(lab.folder.file(), kFirst).error().problem, Problem::NotPutBack);
    EXPECT_EQ(keeper.putBack(lab.folder.root(), kFirst).error().problem, Problem::FileNotReadable);
    keeper.work->cancelled = true;
    EXPECT_EQ(keeper.putBack(lab.backups().last(), kFirst).error().problem, Problem::NotPutBack);
    EXPECT_EQ(keeper.desk().students.size(), 40U);
    EXPECT_EQ(lab.names(QStringLiteral("records-before-*")), QStringList());
    const auto looked = keeper.got<BackupOnFile>(
        [&](const auto& then) { keeper.store.lookInto(lab.backups().last(), &keeper.asker, then); });
    ASSERT_TRUE(looked);
    EXPECT_EQ(looked->students, 40);
    const auto nothing = keeper.got<BackupOnFile>(
        [&](const auto& then) { keeper.store.lookInto(lab.folder.root(), &keeper.asker, then); });
    EXPECT_EQ(nothing.error().problem, Problem::FileNotReadable);
}

TEST(RecordPutBackTest, LaterBackupsOfItPushNoneOfTheOldOnesOutAndAreKept)
{
    DamagedRecords lab(kBackupsKept);
    const QStringList old = lab.backups();
    ASSERT_EQ(old.size(), kBackupsKept);
    ASSERT_TRUE(lab.damage());
    {
        Keeper keeper(lab);
        ASSERT_TRUE(keeper.putBack(old[2]));
        keeper.desk();
    }
    // Fewer entries than any of the last seven.
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(saveStudents(lab.folder.store(), {inventedStudent(60 + i)}, momentAt(20 + i)));
        ASSERT_TRUE(writeUsualBackup(lab.folder.store(), momentAt(20 + i).at));
    }
    EXPECT_EQ(lab.backups().size(), kBackupsKept + 3);
}

}  // namespace fb::test::record_put_back_tests
