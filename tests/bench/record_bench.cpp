// What keeping costs: an answer on disk through the keeper against the same rows through SQLite's own C
// interface (same transaction, settings and file system, in turns), and the board, the exports, the backup
// and the check of the whole at 2,000 students with 500,000 marks.
//
//   QT_QPA_PLATFORM=offscreen bench_record [FOLDER [CHECK-OFFS]]
// FOLDER: where the files lie; else for temporary ones. CHECK-OFFS: of six marks each, 83,334.
#include <QCoreApplication>
#include <QDir>
#include <QEventLoop>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QThread>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>

#include "app/store/backup.h"
#include "app/store/record_desk.h"
#include "app/store/record_export.h"
#include "app/store/record_find.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "tests/bench/record_by_hand.h"

namespace fb::test {

namespace {

using Clock = std::chrono::steady_clock;

double millisecondsSince(Clock::time_point begin)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double medianOf(std::vector<double> times)
{
    std::ranges::sort(times);
    return times[times.size() / 2];
}

constexpr int kAnswers = 1000;
constexpr int kItems = 20;

Sheet longSheet()
{
    Sheet sheet = sixMarks();
    sheet.items.assign(kItems, sheet.items.front());
    sheet.secondsPerItem = sheet.secondsOnScreen = 0;
    sheet.steps.clear();
    return sheet;
}

// The keeper, waited for as the screen waits.
class Through {
public:
    explicit Through(const QString& file) : m_store(file, m_clock)
    {
        m_store.saveStudents(students(), &m_asker, [](const auto&) {});
        m_sheet = got<SheetOnFile>([&](const auto& then) { m_store.saveSheet(longSheet(), &m_asker, then); });
        m_proof = got<Proof>([&](const auto& then) {
            m_store.enrol(QStringLiteral("Ada"), QStringLiteral("493817"), std::nullopt, &m_asker, then);
        });
    }

    // One answer on disk.
    double answer()
    {
        if (!m_run || m_run->stage() != CheckOffStage::OnScreen)
            next();
        const auto& request = m_run->requests()[static_cast<std::size_t>(m_run->item())].request;
        const auto event = m_run->answer(anyMark(m_stream, m_run->item(), request), m_now);
        return keep(ManyRecords::must(event));
    }
    [[nodiscard]] const CheckOffEvent& last() const { return m_last; }

private:
    static std::vector<Student> students()
    {
        std::vector<Student> all;
        for (int i = 0; i < kAnswers / kItems + 1; ++i)
            all.push_back({QString::number(i), QStringLiteral("Family"), {}, {}, 0, {}, true});
        return all;
    }
    template <class T, class Ask>
    T got(const Ask& ask)
    {
        QEventLoop loop;
        std::optional<T> answer;
        ask([&](const Result<T>& result) {
            answer = ManyRecords::must(result);
            loop.quit();
        });
        loop.exec();
        return *answer;
    }
    double keep(const CheckOffEvent& event)
    {
        const auto begin = Clock::now();
        static_cast<void>(got<bool>([&](const auto& then) { m_store.keep(m_id, event, &m_asker, then); }));
        const double time = millisecondsSince(begin);
        ManyRecords::must(m_run->apply(event, m_now));
        m_now += Ms{700};
        m_last = event;
        return time;
    }
    // Ends the one that is open without a word of judgement, waits for the backup after it, and begins
    // another.
    void next()
    {
        if (m_run) {
            keep(ManyRecords::must(m_run->voidTechnical("the next one", m_now)));
            static_cast<void>(got<SignedOff>([&](const auto& then) {
                m_store.sign(m_id, ManyRecords::must(m_run->sign(m_now)), m_run->result(), m_proof,
                             std::nullopt, &m_asker, then);
            }));
            const auto work = std::make_shared<LongWork>();
            static_cast<void>(got<Verified>([&](const auto& then) { m_store.verify(work, &m_asker, then); }));
        }
        const CheckOffOrder order{QString::number(m_student++), m_sheet.key, 5, 0, {}, {}, {}, 0.0};
        m_id = got<RunningCheckOff>([&](const auto& then) { m_store.begin(order, &m_asker, then); }).id;
        m_run.emplace(CheckOffSetup{m_sheet.sheet, 5, 0});
        keep(ManyRecords::must(m_run->confirm(m_now)));
        keep(ManyRecords::must(m_run->start(m_now)));
    }

    SystemClock m_clock;
    QObject m_asker;
    RecordStore m_store;
    SheetOnFile m_sheet;
    Proof m_proof;
    SeedStream m_stream{7};
    std::optional<CheckOff> m_run;
    CheckOffEvent m_last;
    qint64 m_id = 0;
    int m_student = 0;
    Ms m_now{0};
};

void measureAnswers(const QString& folder)
{
    Through through(folder + QStringLiteral("/keeper/records.db"));
    AnswerByHand byHand(folder + QStringLiteral("/hand/records.db"));
    std::vector<double> keeper, hand;
    for (int i = 0; i < kAnswers; ++i) {
        // Answers are seconds apart: neither begins while the disk still puts the other's away.
        QThread::msleep(1);
        keeper.push_back(through.answer());
        QThread::msleep(1);
        hand.push_back(byHand.answer(through.last()));
    }
    const double ratio = medianOf(keeper) / medianOf(hand);
    std::printf(
        "an answer on disk, medians of %d in turns: keeper %.3f ms, C interface %.3f ms, ratio %.2f\n",
        kAnswers, medianOf(keeper), medianOf(hand), ratio);
}

// Beside the clock on the wall the processor's: on a machine that does other things too the first is too
// long.
template <class Do>
void measure(const char* what, int times, const Do& work)
{
    std::vector<double> took, worked;
    for (int i = 0; i < times; ++i) {
        const auto begin = Clock::now();
        const std::clock_t beginWork = std::clock();
        work();
        took.push_back(millisecondsSince(begin));
        worked.push_back(1000.0 * static_cast<double>(std::clock() - beginWork) / CLOCKS_PER_SEC);
    }
    std::printf("%-28s %8.0f ms, of the processor %8.0f ms (medians of %d)\n", what, medianOf(took),
                medianOf(worked), times);
    std::fflush(stdout);
}

void measureMany(const QString& folder, int checkOffs)
{
    constexpr int kStudents = 2000;
    const QString file = folder + QStringLiteral("/many/records.db");
    ManyRecords many(file);
    many.fill(kStudents, checkOffs);
    Store& store = many.store();
    const Moment now = momentOf(QDateTime::currentDateTimeUtc());
    const auto megabytes = [](const QString& path) {
        return static_cast<double>(QFileInfo(path).size()) / 1e6;
    };
    std::printf("%d students, %d check-offs, %d marks: %.0f MB\n", kStudents, checkOffs, checkOffs * 6,
                megabytes(file));
    const QString key = many.sheets().front().key;
    measure("board", 7, [&] { ManyRecords::must(readBoard(store, key, now)); });
    measure("desk", 7, [&] { ManyRecords::must(readDesk(store, key, now)); });
    CheckOffFilter filter;
    filter.words = QStringLiteral("family 17");
    measure("search, 500 lines", 7, [&] { ManyRecords::must(findCheckOffs(store, filter)); });
    const QString out = folder + QStringLiteral("/out");
    for (const auto& [what, kind] :
         {std::pair{"gradebook CSV", ExportKind::GradebookCsv}, std::pair{"full CSV", ExportKind::FullCsv},
          std::pair{"full JSON", ExportKind::FullJson}}) {
        measure(what, 3, [&, kind = kind] {
            LongWork work;
            ManyRecords::must(exportRecords(store, kind, {}, out, now, work));
        });
        std::printf("    %.1f MB\n", megabytes(out));
    }
    LongWork work;
    measure("backup, verified", 3, [&] { ManyRecords::must(writeBackup(store, out, work)); });
    measure("check of the whole", 1, [&] { ManyRecords::must(verifyRecords(store, work)); });
}

}  // namespace

}  // namespace fb::test

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    const QTemporaryDir own(QDir(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QDir::tempPath())
                                .filePath(QStringLiteral("bench_record-XXXXXX")));
    if (!own.isValid())
        return 1;
    fb::test::measureAnswers(own.path());
    constexpr int kCheckOffs = 83334;
    fb::test::measureMany(own.path(), argc > 2 ? std::atoi(argv[2]) : kCheckOffs);
    return 0;
}
