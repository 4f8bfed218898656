// A folder of a test's own with a store in it, looked at from outside.
#pragma once

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

namespace fb::test {

class StoreFolder {
public:
    // Two levels that do not exist yet, as on a first start.
    [[nodiscard]] QString file() const { return m_root.filePath(QStringLiteral("data/program/profile.db")); }
    [[nodiscard]] QString folder() const { return m_root.filePath(QStringLiteral("data/program")); }
    [[nodiscard]] QString root() const { return m_root.path(); }

    [[nodiscard]] QByteArray bytes() const
    {
        QFile stored(file());
        return stored.open(QIODevice::ReadOnly) ? stored.readAll() : QByteArray();
    }
    void write(const QByteArray& bytes) const
    {
        QDir().mkpath(folder());
        QFile stored(file());
        if (stored.open(QIODevice::WriteOnly | QIODevice::Truncate))
            stored.write(bytes);
    }
    [[nodiscard]] QStringList namesAside() const
    {
        // Without what SQLite had laid beside them.
        return QDir(folder()).entryList({QStringLiteral("profile.db.broken-*[0-9]")}, QDir::Files);
    }

    // What SQLite's own command line says; an empty answer with its error when it fails.
    QString sqlite3(const QString& sql) const
    {
        QProcess shell;
        shell.start(QStringLiteral("sqlite3"), {file(), sql});
        if (!shell.waitForFinished())
            return QStringLiteral("sqlite3 did not run");
        return QString::fromUtf8(shell.readAllStandardOutput() + shell.readAllStandardError()).trimmed();
    }

private:
    QTemporaryDir m_root;
};

}  // namespace fb::test
