// The keeper as the program uses it, in its own threads: see app/doors/records.h.
#include "app/store/record_store.h"

#include <gtest/gtest.h>

#include <QTest>

#include "app/store/backup.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_store_tests {

namespace record_store_test {

class TurnedClock : public Clock {
public:
    [[nodiscard]] Ms steady() const override { return m_steady; }
    [[nodiscard]] QDateTime wall() const override { return m_wall; }
    void turn(const Moment& to) { m_wall = to.at; }
    void wait(Ms time)
    {
        m_steady += time;
        m_wall = m_wall.addMSecs(time.count());
    }

private:
    Ms m_steady{0};
    QDateTime m_wall = momentAt(1).at;
};

const QString kPin = QStringLiteral("493817");
constexpr int kSlow = 30000;  // ms: a machine that does other things too

struct Kept {
    // Asks and waits.
    template <class T, class Ask>
    Result<T> got(const Ask& ask)
    {
        std::optional<Result<T>> answer;
        ask([&](const Result<T>& result) { answer = result; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }, kSlow));
        return answer ? *answer : Result<T>(fault(Problem::StoreBroken));
    }
    Desk desk(const QString& sheet = {})
    {
        return got<Desk>([&](const auto& then) { store.openDesk(sheet, &asker, then); }).value();
    }
    SheetOnFile filled(const Sheet& sheet = twoMarks())
    {
        std::vector<Student> students{inventedStudent(1), inventedStudent(2)};
        EXPECT_EQ(got<int>([&](const auto& then) { store.saveStudents(students, &asker, then); }).value(), 2);
        return got<SheetOnFile>([&](const auto& then) { store.saveSheet(sheet, &asker, then); }).value();
    }
    Proof enrolled()
    {
        return got<Proof>([&](const auto& then) {
                   store.enrol(QStringLiteral("Ada"), kPin, std::nullopt, &asker, then);
               })
            .value();
    }
    Result<RunningCheckOff> begun(const SheetOnFile& sheet)
    {
        return got<RunningCheckOff>(
            [&](const auto& then) { store.begin(orderOf(QStringLiteral("s-001"), sheet), &asker, then); });
    }
    Result<bool> kept(qint64 id, const CheckOffEvent& event)
    {
        return got<bool>([&](const auto& then) { store.keep(id, event, &asker, then); });
    }
    SignedOff wholeOne(const SheetOnFile& sheet, const Proof& proof)
    {
        const qint64 id = begun(sheet)->id;
        Course course = wholeCourse(sheet.sheet, Verdict::OnTarget);
        for (const CheckOffEvent& event : course.kept)
            EXPECT_TRUE(kept(id, event));
        return got<SignedOff>([&](const auto& then) {
                   store.sign(id, course.off.sign(course.now).value(), course.off.result(), proof,
                              std::nullopt, &asker, then);
               })
            .value();
    }

    RecordFolder folder;
    TurnedClock clock;
    QObject asker;
    RecordStore store{folder.file(), clock};
    std::shared_ptr<LongWork> work = std::make_shared<LongWork>();
};

}  // namespace record_store_test

using namespace record_store_test;

TEST(RecordStoreTest, AStudentGoesThroughAndIsOnTheBoard)
{
    Kept kept;
    const SheetOnFile sheet = kept.filled();
    const Proof proof = kept.enrolled();
    const SignedOff off = kept.wholeOne(sheet, proof);
    EXPECT_EQ(off.result.decision.outcome, Outcome::Pass);
    EXPECT_EQ(off.at, momentAt(1).at) << "by the clock that was handed in";
    const Desk desk = kept.desk();
    EXPECT_EQ(desk.currentSheet, sheet.key);
    EXPECT_EQ(desk.students[0].where.standing, Standing::Passed);
    EXPECT_FALSE(desk.told);
    const auto board =
        kept.got<Board>([&](const auto& then) { kept.store.board(sheet.key, &kept.asker, then); });
    EXPECT_EQ(board->count.passed, 1);
    const auto found = kept.got<std::vector<CheckOffLine>>(
        [&](const auto& then) { kept.store.find({}, &kept.asker, then); });
    ASSERT_EQ(found->size(), 1U);
    const auto read =
        kept.got<CheckOffOnFile>([&](const auto& then) { kept.store.read(off.id, &kept.asker, then); });
    EXPECT_EQ(read->chainHead, off.chainHead);
}

TEST(RecordStoreTest, AfterASignatureThereIsABackupOfIt)
{
    QString backup;
    SignedOff off;
    RecordFolder again;
    {
        Kept kept;
        off = kept.wholeOne(kept.filled(), kept.enrolled());
        const auto verified =
            kept.got<Verified>([&](const auto& then) { kept.store.verify(kept.work, &kept.asker, then); });
        EXPECT_TRUE(verified->whole);
        EXPECT_EQ(verified->head, off.chainHead);
        backup = kept.desk().lastBackup;
        ASSERT_FALSE(backup.isEmpty()) << "made before the records were verified";
        EXPECT_EQ(modeOf(backup), 0600U);
        QDir().mkpath(again.folder());
        ASSERT_TRUE(QFile::copy(backup, again.file()));
    }
    EXPECT_EQ(again.one(QStringLiteral("SELECT hash FROM audit ORDER BY seq DESC LIMIT 1")), off.chainHead)
        << "and it can be worked with";
}

TEST(RecordStoreTest, WhatIsCutOffGoesOnWithTheNextStart)
{
    RecordFolder folder;
    const TurnedClock clock;
    QObject asker;
    Course course(twoMarks());
    {
        Kept first;
        const SheetOnFile sheet = first.filled();
        const qint64 id = first.begun(sheet)->id;
        course.begin();
        course.answer();
        for (const CheckOffEvent& event : course.kept)
            ASSERT_TRUE(first.kept(id, event));
        first.store.keepTime(id, Ms{7500}, Ms{0});
        first.desk();
        QDir().mkpath(folder.folder());
        for (const char* ending : {"", "-wal"})
            ASSERT_TRUE(QFile::copy(first.folder.file() + QLatin1String(ending),
                                    folder.file() + QLatin1String(ending)));
    }
    RecordStore store(folder.file(), clock);
    std::optional<Desk> desk;
    store.openDesk({}, &asker, [&](const Result<Desk>& opened) { desk = *opened; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.has_value(); }, kSlow));
    ASSERT_TRUE(desk->running);
    EXPECT_EQ(desk->running->events.size(), course.kept.size());
    EXPECT_EQ(desk->running->onScreen, Ms{7500});
}

TEST(RecordStoreTest, TheLockCountsOnTheMonotonicClock)
{
    Kept kept;
    const Proof proof = kept.enrolled();
    const auto prove = [&](const char* pin) {
        return kept.got<Proof>([&](const auto& then) {
            kept.store.prove(proof.assessor.id, QString::fromLatin1(pin), &kept.asker, then);
        });
    };
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(prove("000111").error().problem, Problem::PinWrong);
    EXPECT_EQ(prove("493817").error().problem, Problem::PinHeld);
    kept.clock.wait(Ms{1001});
    EXPECT_TRUE(prove("493817"));
}

TEST(RecordStoreTest, ExportsAreNotedInTheLogBeforeTheyAreWritten)
{
    Kept kept;
    kept.wholeOne(kept.filled(), kept.enrolled());
    const QString file = kept.folder.root() + QStringLiteral("/grades.csv");
    const auto written = kept.got<bool>([&](const auto& then) {
        kept.store.write(ExportKind::GradebookCsv, {}, file, kept.work, &kept.asker, then);
    });
    EXPECT_TRUE(written && *written);
    EXPECT_EQ(modeOf(file), 0600U);
    EXPECT_EQ(kept.folder.sqlite3(QStringLiteral("SELECT object, detail FROM audit WHERE event = 'EXPORT'")),
              QStringLiteral("gradebook|") + file);
    kept.work->cancelled = true;
    const QString other = kept.folder.root() + QStringLiteral("/all.json");
    const auto cancelled = kept.got<bool>([&](const auto& then) {
        kept.store.write(ExportKind::FullJson, {}, other, kept.work, &kept.asker, then);
    });
    EXPECT_TRUE(cancelled && !*cancelled);
    EXPECT_FALSE(QFileInfo::exists(other));
}

TEST(RecordStoreTest, ABackupIsMadeWhereItIsAsked)
{
    Kept kept;
    kept.filled();
    const QString file = kept.folder.root() + QStringLiteral("/copy.db");
    const auto made =
        kept.got<bool>([&](const auto& then) { kept.store.backup(file, kept.work, &kept.asker, then); });
    EXPECT_TRUE(made && *made);
    const auto failed = kept.got<bool>(
        [&](const auto& then) { kept.store.backup(kept.folder.root(), kept.work, &kept.asker, then); });
    EXPECT_EQ(failed.error().problem, Problem::BackupFailed);
}

TEST(RecordStoreTest, NobodyIsAnsweredWhoIsGoneAndTheWorkIsDoneAllTheSame)
{
    Kept kept;
    const SheetOnFile sheet = kept.filled();
    auto goes = std::make_unique<QObject>();
    bool isAnswered = false;
    kept.store.begin(orderOf(QStringLiteral("s-002"), sheet), goes.get(),
                     [&](const Result<RunningCheckOff>&) { isAnswered = true; });
    goes.reset();
    EXPECT_TRUE(kept.desk().running);
    EXPECT_FALSE(isAnswered);
}

TEST(RecordStoreTest, EveryFileIsItsOwnersAlone)
{
    const mode_t before = ::umask(022);
    Kept kept;
    kept.wholeOne(kept.filled(), kept.enrolled());
    const auto verified =
        kept.got<Verified>([&](const auto& then) { kept.store.verify(kept.work, &kept.asker, then); });
    ::umask(before);
    ASSERT_TRUE(verified);
    QStringList names;
    for (const QFileInfo& file : QDir(kept.folder.folder()).entryInfoList(QDir::Files | QDir::Hidden)) {
        EXPECT_EQ(modeOf(file.filePath()), 0600U) << file.fileName().toStdString();
        names << file.fileName();
    }
    for (const char* name : {"records.db", "records.db-wal", "records.db-shm", "records.db.held"})
        EXPECT_TRUE(names.contains(QLatin1String(name))) << name;
    EXPECT_EQ(modeOf(kept.folder.folder()), 0700U);
    EXPECT_EQ(modeOf(backupFolder(kept.folder.file())), 0700U);
    EXPECT_EQ(kept.folder.sqlite3(QStringLiteral("PRAGMA integrity_check")), u"ok");
    EXPECT_EQ(kept.folder.sqlite3(QStringLiteral("SELECT outcome FROM check_off")), u"pass")
        << "SQLite's own command line reads it while it is open";
}

TEST(RecordStoreTest, ItLiesBesideTheProfile)
{
    EXPECT_TRUE(usualRecordsFile().endsWith(QLatin1String("/records.db")));
    EXPECT_TRUE(usualRecordsFile().startsWith(QDir::homePath()));
}

}  // namespace fb::test::record_store_tests
