#include "app/checkoff/plate_hashes.h"

#include <QCryptographicHash>
#include <QFile>
#include <QStringList>
#include <set>

#include "core/site/locate.h"

namespace fb {

QString plateHashesOf(const std::vector<SetRequest>& requests)
{
    std::set<View> views;
    for (const SetRequest& each : requests) {
        const std::vector<View> needed = neededPlates(each.request.view);
        views.insert(needed.begin(), needed.end());
    }
    QStringList hashes;
    for (const View view : views) {
        const std::string_view word = wordOf(view);
        const QString name = QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
        QFile file(QStringLiteral(":/plates/%1.svg").arg(name));
        QCryptographicHash hash(QCryptographicHash::Sha256);
        // A plate that could be asked could be read; one that cannot is told of where it is opened.
        if (file.open(QIODevice::ReadOnly) && hash.addData(&file))
            hashes << name + QLatin1Char('=') + QString::fromLatin1(hash.result().toHex());
    }
    return hashes.join(QLatin1Char(' '));
}

}  // namespace fb
