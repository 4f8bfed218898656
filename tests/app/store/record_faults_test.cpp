// Records in trouble: a disk without room, another program, a file that is damaged, foreign or newer.
#include <gtest/gtest.h>

#include <QTest>
#include <random>

#include "app/store/backup.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_faults_tests {

namespace record_faults_test {

// A student in the middle of a check-off.
struct InTheMiddle {
    InTheMiddle()
    {
        id = beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), sheet), momentAt(1))->id;
        course.begin();
        EXPECT_TRUE(keepAll(folder.store(), id, course.kept, momentAt(1)));
        answer = course.off.answer(answerTo(course.off, Verdict::OnTarget, 1.0), course.now).value();
    }
    Result<bool> keepAnswer() { return keepEvent(folder.store(), id, answer, momentAt(1)); }
    void expectWholeWith(int events)
    {
        LongWork work;
        const auto verified = verifyRecords(folder.store(), work);
        ASSERT_TRUE(verified);
        EXPECT_TRUE(verified->whole);
        EXPECT_EQ(readEvents(folder.store(), id)->size(), static_cast<std::size_t>(events));
    }

    RecordFolder folder;
    SheetOnFile sheet = folder.fill();
    Course course{sheet.sheet};
    CheckOffEvent answer;
    qint64 id = 0;
};

void writeTo(const QString& path, const QByteArray& bytes)
{
    QDir().mkpath(QFileInfo(path).absolutePath());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(bytes);
}

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace record_faults_test

using namespace record_faults_test;

TEST(RecordFaultsTest, WithoutRoomNothingIsKeptByHalvesAndTheAnswerCanBeKeptAgain)
{
    InTheMiddle middle;
    Store& store = middle.folder.store();
    const qint64 pages = store.rows({QStringLiteral("PRAGMA page_count")})->front().front().toLongLong();
    const auto leaveRoom = [&](qint64 most) {
        ASSERT_TRUE(store.rows({QStringLiteral("PRAGMA max_page_count = %1").arg(most)}));
    };
    leaveRoom(pages);
    // Something that needs a page of its own.
    Student large = inventedStudent(1);
    large.family = QString(200000, u'x');
    const auto refused = saveStudents(store, {large}, momentAt(1));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().problem, Problem::StoreFull);
    EXPECT_EQ(refused.error().where, middle.folder.file().toStdString());
    EXPECT_EQ(readStudent(store, QStringLiteral("s-001")).value(), inventedStudent(1));
    int kept = 0;
    Result<bool> last = true;
    for (; last && kept < 2000; ++kept) {
        middle.answer.onScreen = Ms{kept};
        middle.answer.kind = CheckOffEventKind::Held;
        middle.answer.answer.reset();
        last = middle.keepAnswer();
    }
    ASSERT_FALSE(last) << "the room ends some time";
    EXPECT_EQ(last.error().problem, Problem::StoreFull);
    middle.expectWholeWith(2 + kept - 1);
    leaveRoom(pages * 100);
    EXPECT_TRUE(middle.keepAnswer()) << "with room again it goes on";
    middle.expectWholeWith(2 + kept);
}

TEST(RecordFaultsTest, WhileAnotherProgramWritesItSaysSoAndTheAnswerIsKeptAfter)
{
    InTheMiddle middle;
    QProcess other;
    other.start(QStringLiteral("sqlite3"), {middle.folder.file()});
    other.write("BEGIN IMMEDIATE;\nSELECT 'held';\n");
    ASSERT_TRUE(other.waitForReadyRead());
    const auto refused = middle.keepAnswer();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().problem, Problem::StoreBusy);
    other.write("COMMIT;\n");
    other.closeWriteChannel();
    EXPECT_TRUE(other.waitForFinished());
    EXPECT_TRUE(middle.keepAnswer());
    middle.expectWholeWith(3);
}

TEST(RecordFaultsTest, OneProgramAtATimeHasTheRecordsOpen)
{
    RecordFolder folder;
    folder.fill();
    const auto second = openRecords(folder.file(), momentAt(1).at);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().problem, Problem::StoreBusy);
    EXPECT_EQ(second.error().where, folder.file().toStdString());
    folder.close();
    EXPECT_TRUE(openRecords(folder.file(), momentAt(1).at)) << "once the first is gone";
}

TEST(RecordFaultsTest, ADamagedFileIsPutAsideAndToldWithTheLastBackup)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill(40);
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, true, momentAt(1)));
    ASSERT_TRUE(writeUsualBackup(folder.store(), momentAt(1).at));
    folder.close();
    const QByteArray good = bytesOf(folder.file());
    QByteArray scratched = good;
    std::mt19937 random(7);
    for (qsizetype i = 4096; i < scratched.size(); i += 5)
        scratched[i] = static_cast<char>(random());
    for (const QByteArray& bytes :
         {scratched, good.first(good.size() / 2 + 11), QByteArray("no database at all")}) {
        folder.close();
        for (const char* ending : {"-wal", "-shm"})
            QFile::remove(folder.file() + QLatin1String(ending));
        writeTo(folder.file(), bytes);
        const auto told = folder.open();
        ASSERT_TRUE(told);
        EXPECT_EQ(told->problem, Problem::StoreBroken);
        EXPECT_EQ(bytesOf(QString::fromStdString(told->what)), bytes) << "kept as it was";
        EXPECT_TRUE(readStudents(folder.store())->empty());
        EXPECT_TRUE(folder.one(QStringLiteral("SELECT detail FROM audit WHERE seq = 1"))
                        .endsWith(QFileInfo(QString::fromStdString(told->what)).fileName()));
    }
    const QString backup = lastBackup(folder.file());
    ASSERT_FALSE(backup.isEmpty());
    folder.close();
    writeTo(folder.file(), bytesOf(backup));
    EXPECT_FALSE(folder.open());
    EXPECT_EQ(readStudents(folder.store())->size(), 40U) << "the backup takes its place";
}

TEST(RecordFaultsTest, WhatTheDeskIsToldIsToldOnce)
{
    RecordFolder folder;
    writeTo(folder.file(), "no database at all");
    const SystemClock clock;
    RecordStore store(folder.file(), clock);
    QObject asker;
    std::vector<std::optional<Fault>> told;
    for (int i = 0; i < 2; ++i)
        store.openDesk({}, &asker, [&](const Result<Desk>& desk) { told.push_back(desk->told); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.size() == 2; }, 30000));
    ASSERT_TRUE(told[0]);
    EXPECT_EQ(told[0]->problem, Problem::StoreBroken);
    EXPECT_FALSE(told[1]);
}

TEST(RecordFaultsTest, ANewerFileIsRefusedAndNotTouched)
{
    RecordFolder folder;
    folder.fill();
    folder.close();
    folder.sqlite3(QStringLiteral("PRAGMA user_version = 99; PRAGMA wal_checkpoint(TRUNCATE)"));
    const QByteArray before = bytesOf(folder.file());
    EXPECT_EQ(openRecords(folder.file(), momentAt(1).at).error().problem, Problem::StoreTooNew);
    EXPECT_EQ(bytesOf(folder.file()), before);
    EXPECT_TRUE(QDir(folder.folder()).entryList({QStringLiteral("*broken*")}).isEmpty());
}

TEST(RecordFaultsTest, OnlyReadingLooksAndNeverMends)
{
    RecordFolder folder;
    const auto refusal = [&](const QString& path) {
        const auto store = Store::openToRead(path, recordStoreKind());
        EXPECT_FALSE(store) << path.toStdString();
        return store ? Problem{} : store.error().problem;
    };
    EXPECT_EQ(refusal(folder.file()), Problem::FileNotReadable);
    EXPECT_FALSE(QFileInfo::exists(folder.file()));
    EXPECT_EQ(refusal(folder.root()), Problem::FileNotReadable);
    writeTo(folder.file(), {});
    EXPECT_EQ(refusal(folder.file()), Problem::NotAStore);
    for (const QByteArray& bytes : {QByteArray("short"), QByteArray(9000, 'x')}) {
        writeTo(folder.file(), bytes);
        EXPECT_EQ(refusal(folder.file()), Problem::StoreBroken) << bytes.size();
    }
    EXPECT_EQ(bytesOf(folder.file()), QByteArray(9000, 'x'));
}

}  // namespace fb::test::record_faults_tests
