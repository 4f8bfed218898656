// backup: a copy of the records, made while they are in use.
#include <QCoreApplication>
#include <QDir>

#include "app/cli/record_commands.h"
#include "app/store/backup.h"
#include "app/store/record_migrations.h"

namespace fb {

struct BackupWords {
    Q_DECLARE_TR_FUNCTIONS(fb::BackupCommand)
};

Result<std::string> backupAnswer(const QString& records, const QString& file)
{
    const QString copy = QDir::cleanPath(QDir::current().absoluteFilePath(file));
    LongWork work;
    const auto made = Store::openToRead(records, recordStoreKind()).and_then([&](const auto& store) {
        return writeBackup(*store, copy, work);
    });
    if (!made)
        return tl::unexpected(made.error());
    return verifyAnswer(copy).map([&](const std::string& verified) {
        return BackupWords::tr("The backup is made and verified:\n").toStdString() + verified;
    });
}

}  // namespace fb
