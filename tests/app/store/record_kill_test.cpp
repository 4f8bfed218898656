// Programs that are killed at any moment of running check-offs: nothing acknowledged is lost, nothing
// doubled, the file is whole, the log follows, and what was running goes on at the same item.
#include <gtest/gtest.h>

#include <QProcess>
#include <QTest>
#include <map>
#include <random>

#include "app/store/audit_chain.h"
#include "app/store/backup.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_kill_tests {

namespace record_kill_test {

// What the killed programs had said, all of them together.
struct Acknowledged {
    std::map<std::pair<qint64, int>, QByteArray> events;  // check-off and seq: hash of the text
    std::map<qint64, QByteArray> heads;                   // of the signed

    // How many events were new. The last line may be cut short.
    int take(const QByteArray& said)
    {
        const auto before = events.size();
        for (const QByteArray& line : said.first(said.lastIndexOf('\n') + 1).split('\n')) {
            const QList<QByteArray> words = line.split(' ');
            if (words.front() == "kept") {
                const auto [at, isNew] =
                    events.try_emplace({words[1].toLongLong(), words[2].toInt()}, words[3]);
                EXPECT_TRUE(isNew) << line.toStdString() << " was said before";
            } else if (words.front() == "signed") {
                heads[words[1].toLongLong()] = words[2];
            }
        }
        return static_cast<int>(events.size() - before);
    }
};

// Every acknowledged event once, at its place, as it was.
void expectAllThere(const Store& store, const Acknowledged& acknowledged)
{
    std::map<std::pair<qint64, int>, QByteArray> there;
    qint64 lastCheckOff = 0;
    int lastSeq = 0;
    QString lastText;
    ASSERT_TRUE(store.each(
        {QStringLiteral(
            "SELECT check_off_id, seq, event_text FROM check_off_event ORDER BY check_off_id, seq")},
        [&](const QSqlQuery& row) {
            const qint64 checkOff = row.value(0).toLongLong();
            const int seq = row.value(1).toInt();
            const QString text = row.value(2).toString();
            EXPECT_EQ(seq, checkOff == lastCheckOff ? lastSeq + 1 : 1);
            EXPECT_FALSE(checkOff == lastCheckOff && text == lastText) << "doubled";
            there[{checkOff, seq}] = sha256(text.toUtf8());
            std::tie(lastCheckOff, lastSeq, lastText) = std::tuple(checkOff, seq, text);
            return true;
        }));
    for (const auto& [place, hash] : acknowledged.events)
        EXPECT_EQ(there[place], hash) << place.first << ", " << place.second;
    for (const auto& [checkOff, head] : acknowledged.heads) {
        const auto rows = store.rows(
            {QStringLiteral("SELECT chain_head FROM check_off WHERE check_off_id = ?"), {checkOff}});
        ASSERT_EQ(rows->size(), 1U) << checkOff;
        EXPECT_EQ(rows->front().front().toByteArray(), head) << checkOff;
    }
}

// True: something was running, and goes on.
bool goesOn(const Store& store)
{
    const auto running = readRunning(store);
    EXPECT_TRUE(running);
    if (!running || !*running)
        return false;
    const RunningCheckOff& open = **running;
    CheckOff again({open.sheet.sheet, open.order.seed, open.order.extraPercent});
    int answered = 0;
    Ms onScreen{0};
    for (const CheckOffEvent& event : open.events) {
        EXPECT_TRUE(again.apply(event, std::nullopt)) << wordOf(event.kind);
        answered += event.answer ? 1 : 0;
        onScreen = event.onScreen;
    }
    EXPECT_EQ(again.item(), answered);
    EXPECT_GE(open.onScreen, onScreen) << "the time already used is kept";
    again.resumeAt(Ms{77}, open.onScreen, open.onManikin);
    EXPECT_EQ(again.onScreen(), again.stage() == CheckOffStage::OnScreen ? open.onScreen : again.onScreen());
    EXPECT_NE(again.stage(), CheckOffStage::Closed);
    return true;
}

void expectWhole(const Store& store)
{
    LongWork work;
    const auto verified = verifyRecords(store, work);
    ASSERT_TRUE(verified) << verified.error().what;
    EXPECT_TRUE(verified->whole);
}

// Started, left alone for so long, and killed; what it said.
QByteArray killedAfter(const QString& file, int seed, bool waitsForWork, int milliseconds)
{
    QProcess runner;
    runner.start(QStringLiteral(FINGERBREADTH_CHECK_OFF_RUNNER), {file, QString::number(seed)});
    EXPECT_TRUE(runner.waitForStarted());
    if (waitsForWork) {
        EXPECT_TRUE(runner.waitForReadyRead()) << "it ended with " << runner.exitCode();
    }
    QTest::qSleep(milliseconds);
    runner.kill();
    EXPECT_TRUE(runner.waitForFinished());
    EXPECT_EQ(runner.exitStatus(), QProcess::CrashExit) << "it ended of itself with " << runner.exitCode();
    return runner.readAllStandardOutput();
}

}  // namespace record_kill_test

using namespace record_kill_test;

TEST(RecordKillTest, NothingAcknowledgedIsLostOrDoubledAndEveryOneGoesOn)
{
    bool isGiven = false;
    const int given = qEnvironmentVariableIntValue("FINGERBREADTH_KILLS", &isGiven);
    const int kills = isGiven ? std::max(1, given) : 30;
    constexpr unsigned kSeed = 20261129;
    std::mt19937 random(kSeed);
    std::uniform_int_distribution<int> moment(0, 120);
    RecordFolder folder;
    Acknowledged acknowledged;
    int resumed = 0;
    for (int i = 0; i < kills; ++i) {
        // Every fifth one in its very first moments, opening and looking.
        acknowledged.take(killedAfter(folder.file(), i, i % 5 != 4, moment(random)));
        ASSERT_EQ(folder.sqlite3(QStringLiteral("PRAGMA integrity_check")), QStringLiteral("ok")) << i;
        EXPECT_FALSE(folder.open()) << i << ": nothing was put aside";
        expectAllThere(folder.store(), acknowledged);
        expectWhole(folder.store());
        resumed += goesOn(folder.store()) ? 1 : 0;
        folder.close();
        ASSERT_FALSE(HasFailure()) << "after kill " << i << " of seed " << kSeed;
    }
    EXPECT_GE(acknowledged.events.size(), static_cast<std::size_t>(kills) * 2);
    EXPECT_GE(resumed, kills / 2) << "most were killed in the middle";
    for (const QString& name :
         QDir(backupFolder(folder.file())).entryList({QStringLiteral("*.db")}, QDir::Files)) {
        const auto copy = Store::openToRead(backupFolder(folder.file()) + u'/' + name, recordStoreKind());
        ASSERT_TRUE(copy) << name.toStdString();
        expectWhole(**copy);
    }
    std::printf("%d kills, %zu acknowledged events, %zu signed, %d resumed\n", kills,
                acknowledged.events.size(), acknowledged.heads.size(), resumed);
}

}  // namespace fb::test::record_kill_tests
