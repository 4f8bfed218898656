#include "app/roster/samples.h"

#include <QFile>

#include "app/roster/roster.h"

namespace fb {

namespace samples_detail {

QByteArray bytesOf(const QString& resource)
{
    QFile file(resource);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace samples_detail

Result<Sheet> sampleSheet()
{
    const QByteArray text = samples_detail::bytesOf(QStringLiteral(":/samples/sample-sheet.json"));
    return sheetFrom({text.constData(), static_cast<std::size_t>(text.size())});
}

std::vector<Student> sampleStudents()
{
    const auto file = parseRoster(QStringLiteral("sample-roster.csv"),
                                  samples_detail::bytesOf(QStringLiteral(":/samples/sample-roster.csv")));
    if (!file)
        return {};
    const auto rows = rosterRows(*file, file->guessed, {});
    return rows ? studentsToSave(*rows) : std::vector<Student>();
}

}  // namespace fb
