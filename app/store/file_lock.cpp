#include "app/store/file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <QFile>
#include <QThread>

namespace fb {

FileLock::FileLock(const QString& file)
    : m_file(::open(QFile::encodeName(file).constData(), O_RDWR | O_CREAT | O_CLOEXEC, S_IRUSR | S_IWUSR))
{
}

FileLock::~FileLock()
{
    if (m_file >= 0)
        ::close(m_file);
}

bool FileLock::take(int milliseconds)
{
    constexpr int kPause = 5;
    for (int waited = 0; m_file >= 0; waited += kPause) {
        if (::flock(m_file, LOCK_EX | LOCK_NB) == 0)
            return true;
        if (waited >= milliseconds)
            return false;
        QThread::msleep(kPause);
    }
    return false;
}

}  // namespace fb
