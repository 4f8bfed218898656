#include "app/sheets/sheet_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace fb {

Result<Sheet> readSheet(const QString& file)
{
    constexpr qint64 kLargest = 1024 * 1024;  // bytes: a hundred times the longest sheet
    const std::string name = QFileInfo(file).fileName().toStdString();
    QFile opened(file);
    if (QFileInfo(file).isDir() || !opened.open(QIODevice::ReadOnly))
        return fault(Problem::FileNotReadable, name);
    const QByteArray text = opened.read(kLargest + 1);
    if (opened.error() != QFileDevice::NoError)
        return fault(Problem::FileNotReadable, name);
    if (text.size() > kLargest)
        return fault(Problem::SheetNotReadable, name);
    return sheetFrom({text.constData(), static_cast<std::size_t>(text.size())});
}

Result<bool> writeSheet(const Sheet& sheet, const QString& file)
{
    const QByteArray text = QByteArray::fromStdString(textOf(sheet));
    QSaveFile saved(file);
    if (!saved.open(QIODevice::WriteOnly) || saved.write(text) != text.size() || !saved.commit())
        return fault(Problem::OutputNotWritable, QFileInfo(file).fileName().toStdString());
    return true;
}

QString sheetFileName(const Sheet& sheet)
{
    constexpr qsizetype kLongest = 60;
    QString name;
    for (const QChar c : QString::fromStdString(sheet.title)) {
        if (c.isLetterOrNumber())
            name += c.toLower();
        else if (!name.isEmpty() && !name.endsWith(QLatin1Char('-')))
            name += QLatin1Char('-');
    }
    name.truncate(kLongest);
    while (name.endsWith(QLatin1Char('-')))
        name.chop(1);
    return name.isEmpty() ? QStringLiteral("sheet") : name;
}

}  // namespace fb
