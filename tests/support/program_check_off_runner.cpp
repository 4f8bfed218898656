// Runs check-offs of invented students without end, by chance, and says each event once it is kept, so that a
// test can end it at any moment. check_off_runner FILE SEED
//
// Says "kept CHECK-OFF SEQ HASH" after each answer of the keeper, HASH the SHA-256 of the event's text; and
// "signed CHECK-OFF HEAD". Ends with a code of its own when the records refuse what they should not.
#include <QCoreApplication>
#include <QCryptographicHash>
#include <cstdio>
#include <cstdlib>

#include "app/store/record_store.h"
#include "core/basics/seed_stream.h"

namespace {

using namespace fb;

enum Refused { kArguments = 2, kDesk, kSetUp, kProof, kBegin, kResume, kAsk, kKeep, kApply, kSign };

Sheet sheetOfTheLab()
{
    Sheet sheet;
    sheet.title = "Two marks, four steps";
    sheet.invented = true;
    sheet.items = {{Site::Deltoid, std::nullopt, View::ShoulderSide},
                   {Site::Ventrogluteal, std::nullopt, View::HipSide}};
    sheet.steps = {{ProcedureStep::HandHygiene, true},
                   {ProcedureStep::Identify, true},
                   {ProcedureStep::Inject, false},
                   {ProcedureStep::Document, false}};
    sheet.secondsPerItem = sheet.secondsOnScreen = sheet.secondsOnManikin = 0;
    return sheet;
}

class Runner : public QObject {
public:
    Runner(const QString& file, std::uint64_t seed) : m_stream(seed), m_store(file, m_clock) { open(); }

private:
    static void end(Refused why) { std::_Exit(why); }
    template <class T, class Go>
    auto then(Refused why, Go go)
    {
        return [why, go](const Result<T>& answer) {
            if (!answer)
                end(why);
            else
                go(*answer);
        };
    }

    void open()
    {
        m_store.openDesk({}, this, then<Desk>(kDesk, [this](const Desk& desk) { atDesk(desk); }));
    }

    void atDesk(const Desk& desk)
    {
        if (desk.told)
            end(kDesk);
        if (desk.assessors.empty())
            return setUp(static_cast<int>(desk.students.size()));
        if (!m_proof) {
            m_store.prove(desk.assessors.front().id, pin(), this,
                          then<Proof>(kProof, [this](const Proof& proof) {
                              m_proof = proof;
                              open();
                          }));
            return;
        }
        if (desk.running)
            return goOn(*desk.running);
        for (const StudentStanding& line : desk.students) {
            if (line.where.standing == Standing::NotTried)
                return begin(line.student.id, desk.currentSheet);
        }
        addStudents(static_cast<int>(desk.students.size()));
    }

    static QString pin() { return QStringLiteral("483920"); }

    void setUp(int students)
    {
        m_store.saveSheet(sheetOfTheLab(), this, then<SheetOnFile>(kSetUp, [](const SheetOnFile&) {}));
        m_store.enrol(QStringLiteral("Invented Assessor"), pin(), std::nullopt, this,
                      then<Proof>(kSetUp, [this, students](const Proof& proof) {
                          m_proof = proof;
                          addStudents(students);
                      }));
    }

    void addStudents(int from)
    {
        std::vector<Student> students;
        for (int i = from; i < from + 20; ++i) {
            students.push_back({QStringLiteral("s-%1").arg(i), QStringLiteral("Family"), QString::number(i),
                                QStringLiteral("A"), 0, QString(), true});
        }
        m_store.saveStudents(students, this, then<int>(kSetUp, [this](int) { open(); }));
    }

    void begin(const QString& student, const QString& sheet)
    {
        const CheckOffOrder order{student,
                                  sheet,
                                  m_stream.next() >> 11,
                                  0,
                                  QStringLiteral("{}"),
                                  QStringLiteral("shoulder-side=00"),
                                  QStringLiteral("0.1.0"),
                                  3.5};
        m_store.begin(order, this, then<RunningCheckOff>(kBegin, [this](const RunningCheckOff& running) {
                          goOn(running);
                      }));
    }

    // Begun now, or before this program was ended.
    void goOn(const RunningCheckOff& running)
    {
        m_id = running.id;
        m_seq = static_cast<int>(running.events.size());
        m_last = running.events.empty() ? QByteArray() : hashOf(running.events.back());
        m_run.emplace(CheckOffSetup{running.sheet.sheet, running.order.seed, running.order.extraPercent});
        for (const CheckOffEvent& event : running.events) {
            if (!m_run->apply(event, std::nullopt))
                end(kResume);
        }
        m_now = m_clock.steady();
        m_run->resumeAt(m_now, running.onScreen, running.onManikin);
        next();
    }

    void next()
    {
        m_now += Ms{m_stream.below(800)};
        m_run->look(m_now);
        if (m_stream.below(4) == 0)
            m_store.keepTime(m_id, m_run->onScreen(), m_run->onManikin());
        if (m_run->stage() == CheckOffStage::Closing && (m_run->rating() || m_stream.below(3) == 0))
            return sign();
        const auto event = anyEvent();
        // It does not fit, or is word for word what was kept last, which would be a second try: another one.
        if (!event || hashOf(*event) == m_last)
            return next();
        m_store.keep(m_id, *event, this, then<bool>(kKeep, [this, event = *event](bool) {
                         say(event);
                         if (!m_run->apply(event, m_now))
                             end(kApply);
                         next();
                     }));
    }

    Result<CheckOffEvent> anyEvent()
    {
        if (m_run->isPaused())
            return m_run->resume(m_now);
        switch (m_stream.below(24)) {
        case 0: return m_run->pause("a bell rang", m_now);
        case 1: return m_stream.below(8) == 0 ? m_run->voidTechnical("the screen froze", m_now) : likely();
        case 2: return m_stream.below(8) == 0 ? m_run->stopForSafety("bare needle", m_now) : likely();
        default: return likely();
        }
    }

    Result<CheckOffEvent> likely()
    {
        switch (m_run->stage()) {
        case CheckOffStage::Identity: return m_run->confirm(m_now);
        case CheckOffStage::Instructions: return m_run->start(m_now);
        case CheckOffStage::OnScreen: return m_run->answer(anyAnswer(), m_now);
        case CheckOffStage::Handover: return m_run->takeOver(m_now);
        case CheckOffStage::OnManikin: return onManikin();
        case CheckOffStage::Closing: return m_run->rate(1 + m_stream.below(5), "seen by chance", m_now);
        case CheckOffStage::Closed: break;
        }
        return m_run->sign(m_now);
    }

    Answer anyAnswer()
    {
        const Request& request = m_run->requests()[static_cast<std::size_t>(m_run->item())].request;
        Answer answer{m_run->item(), request, conventionsOf(request.site).front()};
        answer.mark = Point{m_stream.between(-9.0, 9.0), m_stream.between(-9.0, 9.0)};
        answer.verdict = static_cast<Verdict>(m_stream.below(kVerdictCount));
        answer.points = m_stream.unit();
        answer.distanceToIdeal = Cm{m_stream.between(0.0, 9.0)};
        return answer;
    }

    Result<CheckOffEvent> onManikin()
    {
        const auto& steps = m_run->setup().sheet.steps;
        const auto step =
            steps[static_cast<std::size_t>(m_stream.below(static_cast<int>(steps.size())))].step;
        switch (m_stream.below(6)) {
        case 0: return m_run->hold(m_stream.between(0.0, 20.0), m_now);
        case 1: return m_run->withdraw(step, m_now);
        case 2: return m_run->finish(m_now);
        default: return m_run->observe(step, static_cast<Seen>(m_stream.below(kSeenCount)), "as seen", m_now);
        }
    }

    void sign()
    {
        const auto event = m_run->sign(m_now);
        if (!event) {
            const auto rated = m_run->rate(3, {}, m_now);
            if (!rated)
                end(kAsk);
            m_store.keep(m_id, *rated, this, then<bool>(kKeep, [this, rated = *rated](bool) {
                             say(rated);
                             if (!m_run->apply(rated, m_now))
                                 end(kApply);
                             sign();
                         }));
            return;
        }
        m_store.sign(m_id, *event, m_run->result(), *m_proof, std::nullopt, this,
                     then<SignedOff>(kSign, [this, event = *event](const SignedOff& off) {
                         say(event);
                         std::printf("signed %lld %s\n", m_id, qPrintable(off.chainHead));
                         std::fflush(stdout);
                         open();
                     }));
    }

    [[nodiscard]] static QByteArray hashOf(const CheckOffEvent& event)
    {
        return QCryptographicHash::hash(QByteArray::fromStdString(textOf(event)), QCryptographicHash::Sha256);
    }

    void say(const CheckOffEvent& event)
    {
        m_last = hashOf(event);
        std::printf("kept %lld %d %s\n", m_id, ++m_seq, m_last.toHex().constData());
        std::fflush(stdout);
    }

    SeedStream m_stream;
    SystemClock m_clock;
    RecordStore m_store;
    std::optional<Proof> m_proof;
    std::optional<CheckOff> m_run;
    long long m_id = 0;
    int m_seq = 0;
    QByteArray m_last;  // the hash of what was kept last
    Ms m_now{0};
};

}  // namespace

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    if (argc != 3)
        return kArguments;
    const Runner runner(QString::fromLocal8Bit(argv[1]), std::strtoull(argv[2], nullptr, 10));
    return QCoreApplication::exec();
}
