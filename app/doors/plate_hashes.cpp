#include "app/doors/plate_hashes.h"

#include <QCryptographicHash>
#include <QFile>
#include <QStringList>
#include <set>

#include "core/site/locate.h"

namespace fb {

namespace plate_hashes_detail {

QString nameOf(View view)
{
    const std::string_view word = wordOf(view);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

}  // namespace plate_hashes_detail

using plate_hashes_detail::nameOf;

QString plateHash(View view)
{
    QFile file(QStringLiteral(":/plates/%1.svg").arg(nameOf(view)));
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file))
        return {};
    return QString::fromLatin1(hash.result().toHex());
}

QString plateHashesOf(const std::vector<SetRequest>& requests)
{
    std::set<View> views;
    for (const SetRequest& each : requests) {
        const std::vector<View> needed = neededPlates(each.request.view);
        views.insert(needed.begin(), needed.end());
    }
    QStringList hashes;
    for (const View view : views) {
        // A plate that could be asked could be read; one that cannot is told of where it is opened.
        if (const QString hash = plateHash(view); !hash.isEmpty())
            hashes << nameOf(view) + QLatin1Char('=') + hash;
    }
    return hashes.join(QLatin1Char(' '));
}

QString recordedHash(const QString& plateHashes, View view)
{
    const QString name = nameOf(view) + QLatin1Char('=');
    for (const QString& each : plateHashes.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (each.startsWith(name))
            return each.mid(name.size());
    }
    return {};
}

}  // namespace fb
