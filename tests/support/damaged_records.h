// A class that was signed off, backed up and then damaged: what a backup is put back after.
#pragma once

#include <random>

#include "app/store/backup.h"
#include "tests/support/record_folder.h"

namespace fb::test {

[[nodiscard]] inline QByteArray bytesIn(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void writeBytes(const QString& path, const QByteArray& bytes)
{
    QDir().mkpath(QFileInfo(path).absolutePath());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(bytes);
}

// Every fifth byte behind the first page is another.
[[nodiscard]] inline QByteArray scratched(QByteArray bytes)
{
    std::mt19937 random(7);
    for (qsizetype i = 4096; i < bytes.size(); i += 5)
        bytes[i] = static_cast<char>(random());
    return bytes;
}

// Forty students and two assessors; so many signed, a backup after each.
struct DamagedRecords {
    explicit DamagedRecords(int signedOff = 1)
    {
        sheet = folder.fill(40);
        for (int i = 1; i <= signedOff; ++i) {
            EXPECT_TRUE(signedCheckOff(folder.store(), inventedStudent(i).id, sheet, true, momentAt(i)));
            EXPECT_TRUE(writeUsualBackup(folder.store(), momentAt(i).at));
        }
        folder.close();
    }
    // With that in its place it is opened anew: what opening told.
    std::optional<Fault> damage(const QByteArray& bytes = "no database at all")
    {
        folder.close();
        for (const char* ending : {"-wal", "-shm"})
            QFile::remove(folder.file() + QLatin1String(ending));
        writeBytes(folder.file(), bytes);
        return folder.open();
    }
    // By name, the oldest first.
    [[nodiscard]] QStringList backups() const
    {
        QStringList files;
        const QDir all(backupFolder(folder.file()));
        for (const QString& name : all.entryList({QStringLiteral("*.db")}, QDir::Files, QDir::Name))
            files << all.filePath(name);
        return files;
    }
    [[nodiscard]] QStringList names(const QString& pattern = QStringLiteral("records*")) const
    {
        return QDir(folder.folder()).entryList({pattern}, QDir::Files, QDir::Name);
    }

    RecordFolder folder;
    SheetOnFile sheet;
};

}  // namespace fb::test
