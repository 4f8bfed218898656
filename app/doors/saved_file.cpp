#include "app/doors/saved_file.h"

#include <QFileInfo>
#include <QSaveFile>

namespace fb {

Result<bool> saveWhole(const QByteArray& bytes, const QString& file)
{
    // Saving renames a new file into place, which would do away with a device or a pipe.
    const QFileInfo there(file);
    QSaveFile out(file);
    const bool taken = !bytes.isEmpty() && (there.isFile() || !there.exists()) &&
                       out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
    if (!taken)
        return fault(Problem::OutputNotWritable, file.toStdString());
    return true;
}

}  // namespace fb
