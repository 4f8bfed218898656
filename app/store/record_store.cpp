#include "app/store/record_store.h"

#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>

#include "app/store/audit_chain.h"
#include "app/store/backup.h"
#include "app/store/put_back.h"
#include "app/store/record_check_off.h"
#include "app/store/record_desk.h"
#include "app/store/record_export.h"
#include "app/store/record_find.h"
#include "app/store/record_migrations.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_signing.h"
#include "app/store/record_verify.h"
#include "app/store/store_file.h"

namespace fb {

namespace record_store_detail {

// By which one store is told from another.
QString randomText()
{
    const auto half = [] {
        return QStringLiteral("%1").arg(QRandomGenerator::system()->generate64(), 16, 16, QChar(u'0'));
    };
    return half() + half();
}

// `after`: what the store takes the place of, if it was damaged.
Result<bool> beginLog(Store& store, const QString& after, const QDateTime& at)
{
    const auto end = chainEnd(store);
    if (!end)
        return tl::unexpected(end.error());
    if (end->length > 0)
        return true;
    const QString detail = randomText() + (after.isEmpty() ? QString() : QStringLiteral(" after ") + after);
    return store.transaction([&] {
        return appendAudit(store,
                           {.actor = QStringLiteral("program"),
                            .event = QStringLiteral("MADE"),
                            .object = QStringLiteral("records"),
                            .detail = detail},
                           at)
            .map([](const ChainEnd&) { return true; });
    });
}

// A file that a crash left without anything in it, where there were records before.
bool isEmptied(const QString& file)
{
    return QFileInfo(file).isFile() && QFileInfo(file).size() == 0 && besideOf(file).isEmpty() &&
           !lastBackup(file).isEmpty();
}

const char* nameOf(ExportKind kind)
{
    switch (kind) {
    case ExportKind::GradebookCsv: return "gradebook";
    case ExportKind::FullCsv: return "answers";
    case ExportKind::FullJson: return "all";
    }
    return "";
}

// Who looks at the log later sees what left the house, and where to.
Result<bool> noteExport(Store& store, ExportKind kind, const QString& file, const QDateTime& at)
{
    return store.transaction([&] {
        return appendAudit(store,
                           {.actor = QStringLiteral("program"),
                            .event = QStringLiteral("EXPORT"),
                            .object = QLatin1String(nameOf(kind)),
                            .detail = file},
                           at)
            .map([](const ChainEnd&) { return true; });
    });
}

}  // namespace record_store_detail

using namespace record_store_detail;

QString usualRecordsFile()
{
    return QFileInfo(usualStoreFile()).dir().filePath(QStringLiteral("records.db"));
}

Result<Store::Opened> openRecords(const QString& file, const QDateTime& at,
                                  const std::shared_ptr<FileLock>& alone)
{
    const bool wasEmptied = isEmptied(file);
    auto opened = Store::open(file, recordStoreKind(), alone);
    if (!opened)
        return opened;
    tidyReplacing(file);
    const QString after = opened->told ? QFileInfo(QString::fromStdString(opened->told->what)).fileName()
                          : wasEmptied ? QStringLiteral("an empty file")
                                       : QString();
    if (const auto begun = beginLog(*opened->store, after, at); !begun)
        return tl::unexpected(begun.error());
    return opened;
}

RecordStore::RecordStore(const QString& file, const Clock& clock)
    : m_file(file),
      m_clock(clock),
      m_reader([file]() -> Result<Store::Opened> {
          return Store::openToRead(file, recordStoreKind()).map([](std::unique_ptr<Store>&& store) {
              return Store::Opened{std::move(store), std::nullopt};
          });
      }),
      m_writer([file] { return openRecords(file, QDateTime::currentDateTimeUtc()); })
{
}

RecordStore::~RecordStore() = default;

Moment RecordStore::now() const { return momentOf(m_clock.wall()); }

void RecordStore::saveStudents(const std::vector<Student>& students, QObject* asker, Then<int> then)
{
    ask<int>(m_writer, asker, std::move(then),
             [students, now = now()](Store& store) { return fb::saveStudents(store, students, now); });
}

void RecordStore::saveSheet(const Sheet& sheet, QObject* asker, Then<SheetOnFile> then)
{
    ask<SheetOnFile>(m_writer, asker, std::move(then),
                     [sheet, now = now()](Store& store) { return fb::saveSheet(store, sheet, now); });
}

void RecordStore::begin(const CheckOffOrder& order, QObject* asker, Then<RunningCheckOff> then)
{
    ask<RunningCheckOff>(m_writer, asker, std::move(then),
                         [order, now = now()](Store& store) { return beginCheckOff(store, order, now); });
}

void RecordStore::keep(qint64 checkOff, const CheckOffEvent& event, QObject* asker, Then<bool> then)
{
    // The screen waits for this one: the rows are made here while the writer wakes.
    const auto rows = std::make_shared<std::promise<EventRows>>();
    ask<bool>(m_writer, asker, std::move(then),
              [=, now = now(), coming = rows->get_future().share()](Store& store) {
                  return keepEvent(store, checkOff, event, coming, now);
              });
    rows->set_value(rowsOf(event));
}

// Nobody waits for it: the next event keeps the time again.
void RecordStore::keepTime(qint64 checkOff, Ms onScreen, Ms onManikin)
{
    m_writer.ask(nullptr, [=](const Result<Store*>& store) -> StoreThread::Then {
        static_cast<void>(store.and_then(
            [&](Store* open) { return keepCountedTime(*open, checkOff, onScreen, onManikin); }));
        return {};
    });
}

void RecordStore::sign(qint64 checkOff, const CheckOffEvent& event, const CheckOffResult& result,
                       const Proof& first, const std::optional<Proof>& second, QObject* asker,
                       Then<SignedOff> then)
{
    ask<SignedOff>(m_writer, asker, std::move(then), [=, this, now = now()](Store& store) {
        auto signedOff = signCheckOff(store, checkOff, event, result, first, second, now);
        if (signedOff)
            backUp();
        return signedOff;
    });
}

void RecordStore::signRemediation(qint64 checkOff, const QString& what, const Proof& by, QObject* asker,
                                  Then<bool> then)
{
    ask<bool>(m_writer, asker, std::move(then),
              [=, now = now()](Store& store) { return fb::signRemediation(store, checkOff, what, by, now); });
}

void RecordStore::enrol(const QString& name, const QString& pin, const std::optional<Proof>& by,
                        QObject* asker, Then<Proof> then)
{
    ask<Proof>(m_writer, asker, std::move(then),
               [=, now = now()](Store& store) { return enrolAssessor(store, name, pin, by, now); });
}

void RecordStore::prove(qint64 assessor, const QString& pin, QObject* asker, Then<Proof> then)
{
    ask<Proof>(m_writer, asker, std::move(then),
               [=, this, now = now(), steady = m_clock.steady()](Store& store) {
                   return m_pins.prove(store, assessor, pin, now, steady);
               });
}

void RecordStore::board(const QString& sheet, QObject* asker, Then<Board> then)
{
    ask<Board>(m_writer, asker, std::move(then),
               [sheet, now = now()](Store& store) { return readBoard(store, sheet, now); });
}

void RecordStore::find(const CheckOffFilter& filter, QObject* asker, Then<std::vector<CheckOffLine>> then)
{
    ask<std::vector<CheckOffLine>>(m_writer, asker, std::move(then),
                                   [filter](Store& store) { return findCheckOffs(store, filter); });
}

void RecordStore::read(qint64 checkOff, QObject* asker, Then<CheckOffOnFile> then)
{
    ask<CheckOffOnFile>(m_writer, asker, std::move(then),
                        [checkOff](Store& store) { return readCheckOff(store, checkOff); });
}

void RecordStore::write(ExportKind kind, const QString& sheet, const QString& file,
                        const std::shared_ptr<LongWork>& work, QObject* asker, Then<bool> then)
{
    askBeside<bool>(
        asker, std::move(then),
        [=, now = now()](Store& store) { return noteExport(store, kind, file, now.at); },
        [=, now = now()](Store& store) { return exportRecords(store, kind, sheet, file, now, *work); });
}

void RecordStore::backup(const QString& file, const std::shared_ptr<LongWork>& work, QObject* asker,
                         Then<bool> then)
{
    askBeside<bool>(
        asker, std::move(then), [](Store&) { return true; },
        [=](Store& store) { return writeBackup(store, file, *work); });
}

void RecordStore::verify(const std::shared_ptr<LongWork>& work, QObject* asker, Then<Verified> then)
{
    askBeside<Verified>(
        asker, std::move(then), [](Store&) { return true; },
        [=](Store& store) { return verifyRecords(store, *work); });
}

// From the writing thread. Of several that wait only the last is made.
void RecordStore::backUp()
{
    const int number = ++m_backupsAsked;
    m_reader.ask(nullptr, [this, number](const Result<Store*>& store) -> StoreThread::Then {
        if (number != m_backupsAsked)
            return {};
        const auto made = store.and_then(
            [](Store* open) { return writeUsualBackup(*open, QDateTime::currentDateTimeUtc()); });
        if (!made) {
            const std::lock_guard lock(m_guard);
            m_backupFault = made.error();
        }
        return {};
    });
}

}  // namespace fb
