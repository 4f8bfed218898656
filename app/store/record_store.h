// The keeper of check-offs (app/doors/records.h) on a file of its own, records.db, in threads of its own.
//
// Everything that writes goes through one thread and one connection, in order. Exports, backups and the check
// of the whole read beside it on a connection that only reads, so that no student's answer waits for them;
// they are answered when they are done, among themselves in order. After each signature a backup is made
// (backup.h) without being asked. A backup is put back (put_back.h) by the writer, while the reader rests.
#pragma once

#include <memory>
#include <mutex>
#include <optional>

#include "app/doors/clock.h"
#include "app/doors/records.h"
#include "app/store/record_pins.h"
#include "app/store/record_values.h"
#include "app/store/store_thread.h"

namespace fb {

class RecordStore : public RecordKeeper {
public:
    // The clock outlives it and is read in the thread that asks.
    RecordStore(const QString& file, const Clock& clock);
    ~RecordStore() override;

    void openDesk(const QString& sheet, QObject* asker, Then<Desk> then) override;
    void saveStudents(const std::vector<Student>& students, QObject* asker, Then<int> then) override;
    void saveSheet(const Sheet& sheet, QObject* asker, Then<SheetOnFile> then) override;
    void begin(const CheckOffOrder& order, QObject* asker, Then<RunningCheckOff> then) override;
    void keep(qint64 checkOff, const CheckOffEvent& event, QObject* asker, Then<bool> then) override;
    void keepTime(qint64 checkOff, Ms onScreen, Ms onManikin) override;
    void sign(qint64 checkOff, const CheckOffEvent& event, const CheckOffResult& result, const Proof& first,
              const std::optional<Proof>& second, QObject* asker, Then<SignedOff> then) override;
    void signRemediation(qint64 checkOff, const QString& what, const Proof& by, QObject* asker,
                         Then<bool> then) override;
    void enrol(const QString& name, const QString& pin, const std::optional<Proof>& by, QObject* asker,
               Then<Proof> then) override;
    void prove(qint64 assessor, const QString& pin, QObject* asker, Then<Proof> then) override;
    void board(const QString& sheet, QObject* asker, Then<Board> then) override;
    void find(const CheckOffFilter& filter, QObject* asker, Then<std::vector<CheckOffLine>> then) override;
    void read(qint64 checkOff, QObject* asker, Then<CheckOffOnFile> then) override;
    void write(ExportKind kind, const QString& sheet, const QString& file,
               const std::shared_ptr<LongWork>& work, QObject* asker, Then<bool> then) override;
    void backup(const QString& file, const std::shared_ptr<LongWork>& work, QObject* asker,
                Then<bool> then) override;
    void putBack(const QString& file, const std::optional<Proof>& by, const std::shared_ptr<LongWork>& work,
                 QObject* asker, Then<PutBack> then) override;
    void verify(const std::shared_ptr<LongWork>& work, QObject* asker, Then<Verified> then) override;
    void lookInto(const QString& file, QObject* asker, Then<BackupOnFile> then) override;

private:
    // Work on the open store that ends in a value; `asked` is answered with it.
    template <class T, class Do>
    static void ask(StoreThread& thread, QObject* asker, Then<T> then, Do work);
    // The same beside the writing, once the records are open; `first` is done by the writer before.
    template <class T, class Do>
    void askBeside(QObject* asker, Then<T> then, const std::function<Result<bool>(Store&)>& first, Do work);
    void backUp();
    // In the writing thread.
    [[nodiscard]] Result<PutBack> replaceBy(const QString& backup, const std::optional<Proof>& by,
                                            Store& store, LongWork& work, const QDateTime& at);
    [[nodiscard]] Moment now() const;
    [[nodiscard]] std::optional<Fault> told();

    const QString m_file;
    const Clock& m_clock;
    PinCheck m_pins;        // in the writing thread only
    QStringList m_refused;  // likewise: backups that turned out to be damaged
    std::mutex m_guard;
    std::optional<Fault> m_backupFault;  // under m_guard
    std::atomic<int> m_backupsAsked{0};
    // The writer goes first and may still ask the reader for a backup.
    StoreThread m_reader;
    StoreThread m_writer;
};

// records.db in the user's data folder.
[[nodiscard]] QString usualRecordsFile();

// As RecordStore opens it: with the first entry of a fresh log.
[[nodiscard]] Result<Store::Opened> openRecords(const QString& file, const QDateTime& at,
                                                const std::shared_ptr<FileLock>& alone = nullptr);

template <class T, class Do>
void RecordStore::ask(StoreThread& thread, QObject* asker, Then<T> then, Do work)
{
    thread.ask(asker,
               [then = std::move(then),
                work = std::move(work)](const Result<Store*>& store) mutable -> StoreThread::Then {
                   auto answer = std::make_shared<Result<T>>(
                       store.and_then([&](Store* open) -> Result<T> { return work(*open); }));
                   return [then, answer] { then(*answer); };
               });
}

template <class T, class Do>
void RecordStore::askBeside(QObject* asker, Then<T> then, const std::function<Result<bool>(Store&)>& first,
                            Do work)
{
    ask<bool>(
        m_writer, asker,
        [this, asker, then, work = std::move(work)](const Result<bool>& done) {
            if (done)
                ask<T>(m_reader, asker, then, work);
            else
                then(tl::unexpected(done.error()));
        },
        first);
}

}  // namespace fb
