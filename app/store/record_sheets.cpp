#include "app/store/record_sheets.h"

#include "app/store/audit_chain.h"

namespace fb {

namespace record_sheets_detail {

Result<SheetOnFile> sheetIn(const QVariantList& row)
{
    return sheetFrom(row[1].toString().toStdString()).map([&](const Sheet& sheet) {
        return SheetOnFile{row[0].toString(), sheet};
    });
}

Result<bool> addSheet(Store& store, const QString& key, const Sheet& sheet, const QByteArray& text,
                      const Moment& now)
{
    const auto added =
        store.change({QStringLiteral("INSERT INTO sheet (sheet_key, title, sheet_text, used_order, saved_at) "
                                     "VALUES (?, ?, ?, 0, ?)"),
                      {key, QString::fromStdString(sheet.title), QString::fromUtf8(text), isoText(now.at)}});
    if (!added)
        return added;
    return appendAudit(store,
                       {.actor = QStringLiteral("program"),
                        .event = QStringLiteral("SHEET"),
                        .object = QStringLiteral("sheet-") + key,
                        .detail = QString::fromStdString(sheet.title)},
                       now.at)
        .map([](const ChainEnd&) { return true; });
}

}  // namespace record_sheets_detail

Result<bool> useSheet(Store& store, const QString& key)
{
    return store.change(
        {QStringLiteral("UPDATE sheet SET used_order = (SELECT max(used_order) + 1 FROM sheet) "
                        "WHERE sheet_key = ?"),
         {key}});
}

Result<SheetOnFile> saveSheet(Store& store, const Sheet& sheet, const Moment& now)
{
    // What cannot be read back is not kept.
    if (const auto checked = checkedSheet(sheet); !checked)
        return tl::unexpected(checked.error());
    const QByteArray text = QByteArray::fromStdString(textOf(sheet));
    const QString key = QString::fromLatin1(sha256(text));
    const auto saved = store.transaction([&]() -> Result<bool> {
        const auto there = store.rows({QStringLiteral("SELECT 1 FROM sheet WHERE sheet_key = ?"), {key}});
        if (!there)
            return tl::unexpected(there.error());
        const auto added = there->empty() ? record_sheets_detail::addSheet(store, key, sheet, text, now)
                                          : Result<bool>(true);
        return added ? useSheet(store, key) : added;
    });
    return saved.map([&](bool) { return SheetOnFile{key, sheet}; });
}

Result<std::vector<SheetOnFile>> readSheets(const Store& store)
{
    const auto rows =
        store.rows({QStringLiteral("SELECT sheet_key, sheet_text FROM sheet ORDER BY used_order DESC")});
    if (!rows)
        return tl::unexpected(rows.error());
    std::vector<SheetOnFile> sheets;
    for (const QVariantList& row : *rows) {
        auto sheet = record_sheets_detail::sheetIn(row);
        if (!sheet)
            return tl::unexpected(sheet.error());
        sheets.push_back(std::move(*sheet));
    }
    return sheets;
}

Result<SheetOnFile> readSheet(const Store& store, const QString& key)
{
    const auto rows =
        store.rows({QStringLiteral("SELECT sheet_key, sheet_text FROM sheet WHERE sheet_key = ?"), {key}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::SheetNotReadable, key.toStdString());
    return record_sheets_detail::sheetIn(rows->front());
}

Result<QString> keepPolicy(Store& store, const QString& text)
{
    const QString hash = QString::fromLatin1(sha256(text.toUtf8()));
    return store
        .change({QStringLiteral("INSERT INTO policy_text (policy_hash, policy_text) VALUES (?, ?) "
                                "ON CONFLICT (policy_hash) DO NOTHING"),
                 {hash, text}})
        .map([&](bool) { return hash; });
}

}  // namespace fb
