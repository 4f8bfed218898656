#include "app/store/store_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <array>

namespace fb {

namespace store_file_detail {

constexpr QFileDevice::Permissions kOwner =
    QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner;
constexpr QFileDevice::Permissions kOwnerFile = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
// What SQLite keeps beside its file.
constexpr std::array kBeside{"-wal", "-shm", "-journal"};

// The missing folders from the top down, each for its owner alone.
bool makeFolder(const QString& path)
{
    if (QFileInfo(path).isDir())
        return true;
    const QFileInfo folder(path);
    const QString above = folder.absolutePath();
    return above != folder.absoluteFilePath() && makeFolder(above) &&
           (QDir(above).mkdir(folder.fileName(), kOwner) || QFileInfo(path).isDir());
}

// Takes rights away and never gives any: what its owner made read-only stays so.
bool keepToOwner(const QString& path)
{
    const QFileDevice::Permissions now = QFile::permissions(path);
    // The "user" bits are the owner's again, seen from whoever asks.
    constexpr QFileDevice::Permissions kOthers = QFileDevice::ReadGroup | QFileDevice::WriteGroup |
                                                 QFileDevice::ExeGroup | QFileDevice::ReadOther |
                                                 QFileDevice::WriteOther | QFileDevice::ExeOther;
    return !(now & kOthers) || QFile::setPermissions(path, now & kOwner);
}

}  // namespace store_file_detail

QString usualStoreFile()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("profile.db"));
}

Result<bool> makeOwnerOnly(const QString& file)
{
    using namespace store_file_detail;
    const auto refused = fault(Problem::StoreNotWritable, file.toStdString());
    const QString folder = QFileInfo(file).absolutePath();
    if (!makeFolder(folder) || !keepToOwner(folder))
        return refused;
    if (!QFileInfo::exists(file)) {
        QFile made(file);
        // Another start may have made it in this very moment.
        if (!made.open(QIODevice::WriteOnly | QIODevice::NewOnly, kOwnerFile) && !QFileInfo::exists(file))
            return refused;
    }
    if (!QFileInfo(file).isFile() || !keepToOwner(file))
        return refused;
    // SQLite would open a read-only file without a word and fail at the first write.
    if (!QFile(file).open(QIODevice::ReadWrite | QIODevice::ExistingOnly))
        return fault(Problem::StoreReadOnly, file.toStdString());
    return true;
}

QString nameAside(const QString& file, const QDateTime& when)
{
    return QStringLiteral("%1.broken-%2").arg(file, when.toString(QStringLiteral("yyyy-MM-dd-HHmmss")));
}

Result<QString> putAside(const QString& file, const QDateTime& when)
{
    using namespace store_file_detail;
    QString aside = nameAside(file, when);
    for (int another = 2; QFileInfo::exists(aside); ++another)
        aside = QStringLiteral("%1-%2").arg(nameAside(file, when)).arg(another);
    // The file itself last: as long as it is there, the next start sees that it is broken.
    for (const QString& beside : besideOf(file)) {
        if (!QFile::rename(beside, aside + beside.sliced(file.size())))
            return fault(Problem::StoreBroken, file.toStdString());
    }
    if (!QFile::rename(file, aside))
        return fault(Problem::StoreBroken, file.toStdString());
    return aside;
}

QString nameBefore(const QString& file, const QDateTime& when)
{
    const QFileInfo whole(file);
    const QString stem =
        QStringLiteral("%1-before-%2")
            .arg(whole.completeBaseName(), when.toString(QStringLiteral("yyyy-MM-dd-HHmmss")));
    QString name = stem;
    for (int another = 2; whole.dir().exists(name + u'.' + whole.suffix()); ++another)
        name = QStringLiteral("%1-%2").arg(stem).arg(another);
    return whole.dir().filePath(name + u'.' + whole.suffix());
}

QStringList besideOf(const QString& file)
{
    QStringList beside;
    for (const char* ending : store_file_detail::kBeside) {
        if (const QString name = file + QLatin1String(ending); QFileInfo::exists(name))
            beside << name;
    }
    return beside;
}

void removeBeside(const QString& file, const QStringList& before)
{
    for (const QString& beside : besideOf(file)) {
        if (!before.contains(beside))
            QFile::remove(beside);
    }
}

bool makePart(const QString& part)
{
    QFile::remove(part);
    QFile made(part);
    return made.open(QIODevice::WriteOnly | QIODevice::NewOnly, store_file_detail::kOwnerFile);
}

bool isFlushed(const QString& path)
{
    const int handle = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return false;
    const bool flushed = ::fsync(handle) == 0;
    ::close(handle);
    return flushed;
}

}  // namespace fb
