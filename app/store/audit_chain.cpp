#include "app/store/audit_chain.h"

#include <sodium.h>

#include <array>

#include "app/store/record_values.h"

namespace fb {

namespace audit_chain_detail {

void escapeOnto(QByteArray& record, const QString& field)
{
    for (const char c : field.toUtf8()) {
        if (c == '|' || c == '\\')
            record += '\\';
        if (c == '\n')
            record += "\\n";
        else
            record += c;
    }
}

}  // namespace audit_chain_detail

QByteArray sha256(const QByteArray& bytes)
{
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    // Its three steps never fail; the pointer is to bytes, whatever they mean.
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.constData()),
                       static_cast<unsigned long long>(bytes.size()));
    return QByteArray::fromRawData(reinterpret_cast<const char*>(hash.data()), hash.size()).toHex();
}

QByteArray chainStart() { return QByteArray(2 * crypto_hash_sha256_BYTES, '0'); }

QByteArray recordOf(const AuditEntry& entry)
{
    QByteArray record = QByteArray::number(entry.seq);
    for (const QString* field : {&entry.at, &entry.actor, &entry.event, &entry.object, &entry.detail}) {
        record += '|';
        audit_chain_detail::escapeOnto(record, *field);
    }
    return record;
}

QByteArray chained(const QByteArray& head, const QByteArray& record) { return sha256(head + '\n' + record); }

Result<ChainEnd> chainEnd(const Store& store)
{
    return store.rows({QStringLiteral("SELECT seq, hash FROM audit ORDER BY seq DESC LIMIT 1")})
        .map([](const auto& rows) {
            return rows.empty() ? ChainEnd{0, chainStart()}
                                : ChainEnd{rows.front()[0].toLongLong(), rows.front()[1].toByteArray()};
        });
}

Result<ChainEnd> appendAudit(Store& store, AuditEntry entry, const QDateTime& at)
{
    return chainEnd(store).and_then(
        [&](const ChainEnd& end) { return appendAudit(store, end, std::move(entry), at); });
}

Result<ChainEnd> appendAudit(Store& store, const ChainEnd& end, AuditEntry entry, const QDateTime& at)
{
    entry.seq = end.length + 1;
    entry.at = isoText(at);
    const ChainEnd next{entry.seq, chained(end.head, recordOf(entry))};
    const auto written =
        store.change({QStringLiteral("INSERT INTO audit (seq, at, actor, event, object, detail, hash) "
                                     "VALUES (?, ?, ?, ?, ?, ?, ?)"),
                      {entry.seq, entry.at, notNull(entry.actor), notNull(entry.event), notNull(entry.object),
                       notNull(entry.detail), QString::fromLatin1(next.head)}});
    if (!written)
        return tl::unexpected(written.error());
    return next;
}

}  // namespace fb
