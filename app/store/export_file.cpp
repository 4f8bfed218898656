#include "app/store/export_file.h"

#include <QFileInfo>

namespace fb {

ExportFile::ExportFile(const QString& file) : m_file(file) {}

tl::unexpected<Fault> ExportFile::refused() const
{
    return fault(Problem::OutputNotWritable, m_file.fileName().toStdString());
}

Result<bool> ExportFile::open()
{
    // Saving renames a new file into place, which must never take the place of a device or a pipe.
    const QFileInfo there(m_file.fileName());
    const bool isFree = there.isFile() || !there.exists();
    if (!isFree || !m_file.open(QIODevice::WriteOnly) ||
        !m_file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner))
        return refused();
    return true;
}

void ExportFile::write(const QByteArray& bytes)
{
    constexpr qsizetype kFull = 1 << 20;
    m_waiting += bytes;
    if (m_waiting.size() >= kFull)
        flush();
}

void ExportFile::flush()
{
    m_good = m_good && m_file.write(m_waiting) == m_waiting.size();
    m_waiting.resize(0);
}

Result<bool> ExportFile::flushed()
{
    flush();
    if (!m_good)
        return refused();
    return true;
}

Result<bool> ExportFile::commit()
{
    flush();
    if (!m_good || !m_file.commit())
        return refused();
    return true;
}

void ExportFile::drop() { m_file.cancelWriting(); }

}  // namespace fb
