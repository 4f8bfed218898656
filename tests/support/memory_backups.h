// The backups that records in memory tell of, and what stands in them once one is put back.
#pragma once

#include <functional>
#include <optional>
#include <utility>

#include "app/doors/records.h"

namespace fb::test {

[[nodiscard]] inline BackupOnFile backupSample()
{
    return {QStringLiteral("/lab/backups/records-2026-11-28-140300-1f2e3d4c-97.db"),
            QDateTime(QDate(2026, 11, 28), QTime(14, 3), Qt::UTC), 97, 15, 9};
}

struct BackupShelf {
    [[nodiscard]] Result<PutBack> putBack(const QString& file, const std::optional<Proof>& proof,
                                          const LongWork& work)
    {
        asked << file;
        by = proof;
        if (work.cancelled)
            return fault(Problem::NotPutBack, file.toStdString());
        if (trouble)
            return tl::unexpected(*trouble);
        offered.reset();
        if (fill)
            fill();
        return PutBack{found, QStringLiteral("/lab/records-before-2026-11-29-100000.db")};
    }

    void tell(Desk& desk)
    {
        desk.told = std::exchange(told, std::nullopt);
        desk.offered = offered;
    }

    std::optional<BackupOnFile> offered;  // after a damage
    std::optional<Fault> told;            // once
    BackupOnFile found = backupSample();  // in whatever file is looked into
    std::optional<Fault> trouble;         // with a backup; nothing is changed then
    std::function<void()> fill;           // what then stands in the records
    QStringList asked;
    std::optional<Proof> by;  // of the last one
};

class MemoryBackups : public RecordKeeper {
public:
    void putBack(const QString& file, const std::optional<Proof>& by, const std::shared_ptr<LongWork>& work,
                 QObject*, Then<PutBack> then) override
    {
        work->percent = 50;
        answer([this, file, by, work, then] { then(backups.putBack(file, by, *work)); });
    }
    void lookInto(const QString& file, QObject*, Then<BackupOnFile> then) override
    {
        answer([this, file, then] {
            if (backups.trouble)
                return then(tl::unexpected(*backups.trouble));
            backups.found.file = file;
            then(backups.found);
        });
    }

    BackupShelf backups;

private:
    // Now, or when the test says so.
    virtual void answer(const std::function<void()>& what) = 0;
};

}  // namespace fb::test
