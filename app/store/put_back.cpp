#include "app/store/put_back.h"

#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <cstdio>

#include "app/store/put_back_copy.h"
#include "app/store/record_check_off.h"
#include "app/store/record_people.h"
#include "app/store/store_file.h"

namespace fb {

namespace put_back_detail {

bool isRenamed(const QString& from, const QString& to)
{
    return std::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) == 0;
}

bool isFolderFlushed(const QString& file) { return isFlushed(QFileInfo(file).absolutePath()); }

// Another name for the same file; where the disk knows no such thing, a copy of it. The file stays where it
// is.
bool isKept(const QString& file, const QString& aside)
{
    if (::link(QFile::encodeName(file).constData(), QFile::encodeName(aside).constData()) == 0)
        return isFolderFlushed(aside);
    const QString part = aside + QStringLiteral(".part");
    QFile::remove(part);
    const bool kept = QFile::copy(file, part) && isFlushed(part) && isRenamed(part, aside);
    if (!kept)
        QFile::remove(part);
    return kept && isFolderFlushed(aside);
}

bool isSameFile(const QString& one, const QString& other)
{
    struct stat first {};
    struct stat second {};
    return ::stat(QFile::encodeName(one).constData(), &first) == 0 &&
           ::stat(QFile::encodeName(other).constData(), &second) == 0 && first.st_dev == second.st_dev &&
           first.st_ino == second.st_ino;
}

// The store from before, in its place again: with what the other left beside its file it must not be opened.
bool isBack(const QString& file, const QString& aside)
{
    for (const QString& beside : besideOf(file)) {
        if (!QFile::remove(beside))
            return false;
    }
    return isRenamed(aside, file) && isFolderFlushed(file);
}

class Replacing {
public:
    Replacing(std::unique_ptr<Store> records, const OpenAgain& openAgain)
        : m_file(records->file()),
          m_alone(records->alone()),
          m_openAgain(openAgain)
    {
        records.reset();
    }

    Replaced by(const QString& ready, const QString& aside, const LongWork& work)
    {
        // Closed cleanly, all of it is in the one file.
        if (!besideOf(m_file).isEmpty() || work.cancelled)
            return notDone();
        if (!isKept(m_file, aside) || work.cancelled || !isRenamed(ready, m_file)) {
            QFile::remove(aside);
            return notDone();
        }
        const bool isSafe = isFolderFlushed(m_file);
        auto opened = isSafe ? m_openAgain(m_alone) : failed();
        if (opened && !opened->told)
            return {aside, std::move(opened->store)};
        if (opened)
            opened->store.reset();
        if (!isBack(m_file, aside))
            return {tl::unexpected(failed().error()), nullptr};
        return notDone();
    }

private:
    [[nodiscard]] Result<Store::Opened> failed() const
    {
        return fault(Problem::NotPutBack, m_file.toStdString());
    }
    Replaced notDone()
    {
        auto opened = m_openAgain(m_alone);
        return {tl::unexpected(failed().error()), opened ? std::move(opened->store) : nullptr};
    }

    const QString m_file;
    const std::shared_ptr<FileLock> m_alone;
    const OpenAgain& m_openAgain;
};

}  // namespace put_back_detail

using namespace put_back_detail;

Replaced replaceRecords(std::unique_ptr<Store> records, const QString& ready, const QString& aside,
                        const LongWork& work, const OpenAgain& openAgain)
{
    return Replacing(std::move(records), openAgain).by(ready, aside, work);
}

void tidyReplacing(const QString& records)
{
    removePutBackPart(records);
    const QFileInfo whole(records);
    const QString before = whole.completeBaseName() + QStringLiteral("-before-*.") + whole.suffix();
    for (const QFileInfo& each :
         whole.dir().entryInfoList({before, before + QStringLiteral(".part")}, QDir::Files)) {
        if (each.fileName().endsWith(QLatin1String(".part")) || isSameFile(each.filePath(), records))
            QFile::remove(each.filePath());
    }
}

Result<bool> mayPutBack(const Store& records, const std::optional<Proof>& by)
{
    const auto running = readRunning(records);
    if (!running)
        return tl::unexpected(running.error());
    if (*running) {
        const Student& student = (*running)->student;
        return fault(Problem::CheckOffRunning, {},
                     (student.given + u' ' + student.family).trimmed().toStdString());
    }
    const auto assessors = readAssessors(records);
    if (!assessors)
        return tl::unexpected(assessors.error());
    const bool isOneOfThem =
        by && std::ranges::find(*assessors, by->assessor.id, &Assessor::id) != assessors->end();
    if (!assessors->empty() && !isOneOfThem)
        return fault(Problem::AssessorUnknown);
    return true;
}

}  // namespace fb
