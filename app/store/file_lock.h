// A lock between programs that ends with whoever holds it, however that ends.
#pragma once

#include <QString>

namespace fb {

class FileLock {
public:
    // On a small file of its own, made for its owner alone and left where it is.
    explicit FileLock(const QString& file);
    FileLock(const FileLock&) = delete;
    FileLock& operator=(const FileLock&) = delete;
    ~FileLock();

    [[nodiscard]] bool isThere() const { return m_file >= 0; }  // the small file could be made
    // False when another holds it all that time, or the file cannot be made.
    [[nodiscard]] bool take(int milliseconds);

private:
    int m_file;
};

}  // namespace fb
