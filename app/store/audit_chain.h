// The log that is only ever added to, and the chain of hashes that shows when one of its entries was changed
// later: H_0 is 64 zeros, H_i = SHA-256(H_{i-1}, newline, record_i), all as lower-case hex.
//
// record = seq|time|actor|event|object|detail in UTF-8, the time in UTC with milliseconds and a Z. In the
// fields `|` stands as \|, a newline as \n and a backslash as \\, so that no two entries read alike. The
// chain cannot show that entries at its end are gone, or that all of it was written anew: that shows
// on paper, where its head stands on each signed sheet.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>

#include "app/store/store.h"

namespace fb {

struct AuditEntry {
    qint64 seq = 0;  // from 1
    QString at{};
    QString actor{};   // "program", "student" or "assessor-7"
    QString event{};   // an upper-case word
    QString object{};  // what it is about: "check-off-12"
    QString detail{};
};

// How far the chain goes.
struct ChainEnd {
    qint64 length = 0;
    QByteArray head;  // hex

    friend bool operator==(const ChainEnd&, const ChainEnd&) = default;
};

[[nodiscard]] QByteArray sha256(const QByteArray& bytes);  // hex
[[nodiscard]] QByteArray chainStart();                     // H_0
[[nodiscard]] QByteArray recordOf(const AuditEntry& entry);
[[nodiscard]] QByteArray chained(const QByteArray& head, const QByteArray& record);

[[nodiscard]] Result<ChainEnd> chainEnd(const Store& store);
// In a transaction, with the entry's seq and time as they come. Where the chain goes now.
[[nodiscard]] Result<ChainEnd> appendAudit(Store& store, AuditEntry entry, const QDateTime& at);
// The same where the end is known.
[[nodiscard]] Result<ChainEnd> appendAudit(Store& store, const ChainEnd& end, AuditEntry entry,
                                           const QDateTime& at);

}  // namespace fb
