// A file that is written for its owner alone, beside the place where it will stand, and put there once it is
// whole: until then whatever stood there stays.
#pragma once

#include <QByteArray>
#include <QSaveFile>
#include <QString>

#include "core/basics/problem.h"

namespace fb {

class ExportFile {
public:
    explicit ExportFile(const QString& file);

    // OutputNotWritable names the file; so for a folder or a device.
    [[nodiscard]] Result<bool> open();
    // Writes now and then; a failure is told by flushed() and commit().
    void write(const QByteArray& bytes);
    [[nodiscard]] Result<bool> flushed();
    [[nodiscard]] Result<bool> commit();
    void drop();  // nothing is left

private:
    [[nodiscard]] tl::unexpected<Fault> refused() const;
    void flush();

    QSaveFile m_file;
    QByteArray m_waiting;
    bool m_good = true;
};

}  // namespace fb
