// Holds the records as they are looked through and speaks to their keeper; knows no widget. Requests come in
// as calls, everything that can be seen goes out as one State and one signal.
//
// The PIN is a convenience lock: it is asked on entering, and again after leaving or after kIdle without use.
// What answers late, after the gate was shut or something else was opened, is dropped. A fault is the notice
// and changes nothing else.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <functional>

#include "app/doors/clock.h"
#include "app/doors/library.h"
#include "app/records/records_state.h"

class QPrinter;

namespace fb {

struct FeedbackSheet;

class RecordsPresenter : public QObject {
    Q_OBJECT

public:
    static constexpr Ms kIdle = std::chrono::minutes{10};  // lab's choice
    static constexpr int kTickMs = 250;

    // Both outlive the presenter.
    RecordsPresenter(RecordKeeper& records, Clock& clock, QObject* parent = nullptr);
    ~RecordsPresenter() override;

    [[nodiscard]] const RecordsState& state() const { return m_state; }
    [[nodiscard]] QDate today() const { return m_clock.wall().toLocalTime().date(); }

    // What is replayed is drawn from it; recorded numbers of the lab are read over the shipped ones.
    void useLibrary(const std::shared_ptr<const Library>& library, const Policy& shipped);

    // The gate.
    void enter();
    void leave();
    void lock();  // the PIN is asked again
    bool used();  // by mouse or key; false: it was too late, and the gate is shut
    void open(qint64 assessor, const QString& pin);
    // The first one opens the gate at once; each further one is let in by who is inside. PinsDiffer.
    void enrol(const QString& name, const QString& pin, const QString& again);

    // Looking.
    void show(RecordsArea area);
    void chooseSheet(const QString& key);
    void find(const CheckOffFilter& filter);
    void openHistory(const QString& student);
    void openCheckOff(qint64 id);
    void replay(int item);  // of the opened check-off
    void back();            // out of what was opened last
    void reread();          // records changed elsewhere

    void signPractice(const QString& what, qint64 assessor, const QString& pin);  // after the opened one

    // Long work, one at a time.
    void verify();
    void backup(const QString& file);
    void write(ExportKind kind, const QString& sheet, const QString& file);
    void chooseBackup(const QString& file);  // and looks into it
    void dropBackup();
    void putBack();  // the chosen one, and shuts the gate: whoever opens it may be somebody else now
    void saveSheet(const QString& file);
    void printSheet(const std::shared_ptr<QPrinter>& printer);
    void cancel();

    void tell(const Fault& fault);
    void dismissNotice();
    void retranslate();

Q_SIGNALS:
    void changed();
    void progressed();  // only how far the long work is
    void counted();     // only how long the next PIN has to wait
    void enrolled();    // another assessor, from inside
    void practiceSigned();

private:
    // Taken only while the gate stays as it is.
    template <class T, class Take>
    [[nodiscard]] RecordKeeper::Then<T> here(Take take)
    {
        return [this, visit = m_visit, take](const Result<T>& answer) {
            if (visit != m_visit)
                return;
            m_state.asking = false;
            if (!answer)
                return tell(answer.error());
            take(*answer);
            Q_EMIT changed();
        };
    }
    // And only while nothing else was opened since.
    template <class T, class Take>
    [[nodiscard]] RecordKeeper::Then<T> opening(Take take)
    {
        const int opened = ++m_opening;
        return here<T>([this, opened, take](const T& value) {
            if (opened == m_opening)
                take(value);
        });
    }
    void takeDesk(const Desk& desk);
    void letIn(const Proof& proof);
    void shut(RecordsGate gate);
    void readBoard();
    void readList();
    void readHistory(const QString& student, bool opens);
    void readCheckOff(qint64 id);
    void makeReplay();
    void takeReplay(const std::shared_ptr<const Replay>& made, int wanted);
    void hold(double seconds);
    void tick();
    [[nodiscard]] bool isIdle() const;

    // Null while another is under way.
    [[nodiscard]] std::shared_ptr<LongWork> begin(LongTaskKind kind, const QString& file);
    void end(const Result<LongTaskDone>& how);
    [[nodiscard]] RecordKeeper::Then<bool> ending();
    void makeSheet(LongTaskKind kind, const QString& file,
                   const std::function<Result<bool>(const FeedbackSheet&)>& write);

    RecordKeeper& m_records;
    Clock& m_clock;
    std::shared_ptr<const Library> m_library;
    std::optional<Policy> m_shipped;
    std::optional<Proof> m_proof;
    RecordsState m_state;
    int m_visit = 0;    // counts how often the gate was shut or opened
    int m_opening = 0;  // counts what was opened; an older answer is not wanted any more
    Ms m_usedAt{0};
    QDateTime m_usedAtWall;  // a machine that sleeps keeps no steady time
    std::optional<Ms> m_heldUntil;
    QTimer m_tick;
    std::shared_ptr<LongWork> m_work;
    QThreadPool m_pool;
};

}  // namespace fb
