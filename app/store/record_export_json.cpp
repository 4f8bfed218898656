// Full JSON: see record_export.h.
#include <nlohmann/json.hpp>

#include "app/store/audit_chain.h"
#include "app/store/record_export.h"

namespace fb {

namespace record_export_json_detail {

// What is not UTF-8 is replaced, never thrown at.
QByteArray quoted(const QString& text)
{
    using nlohmann::json;
    return QByteArray::fromStdString(
        json(text.toStdString()).dump(-1, ' ', false, json::error_handler_t::replace));
}

void appendValue(QByteArray& out, const QVariant& value)
{
    if (value.isNull()) {
        out += "null";
        return;
    }
    switch (value.typeId()) {
    case QMetaType::Double: appendNumber(out, value.toDouble()); return;
    case QMetaType::LongLong:
    case QMetaType::Int: out += QByteArray::number(value.toLongLong()); return;
    default: out += quoted(value.toString());
    }
}

// All its members, and no bracket at the end.
QByteArray openObject(const QSqlQuery& row, const std::vector<const char*>& keys)
{
    QByteArray object;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        object += i == 0 ? "{\"" : ",\"";
        object += keys[i];
        object += "\":";
        appendValue(object, row.value(static_cast<int>(i)));
    }
    return object;
}

// One array of objects, its keys the columns' names.
Result<bool> writeTable(const Store& store, const char* name, const Statement& query,
                        const std::vector<const char*>& keys, ExportFile& out)
{
    out.write(QByteArray(",\n\"") + name + "\":[");
    bool isFirst = true;
    const auto read = store.each(query, [&](const QSqlQuery& row) {
        out.write((isFirst ? "\n" : ",\n") + openObject(row, keys) + '}');
        isFirst = false;
        return true;
    });
    out.write("]");
    return read;
}

// A text of JSON stands in it as it is.
Result<bool> writeSheets(const Store& store, ExportFile& out)
{
    out.write(",\n\"sheets\":[");
    bool isFirst = true;
    const auto read = store.each(
        {QStringLiteral("SELECT sheet_key, saved_at, sheet_text FROM sheet ORDER BY saved_at, sheet_key")},
        [&](const QSqlQuery& row) {
            out.write((isFirst ? "\n" : ",\n") + openObject(row, {"key", "saved_at"}) +
                      ",\"sheet\":" + row.value(2).toString().toUtf8().trimmed() + '}');
            isFirst = false;
            return true;
        });
    out.write("]");
    return read;
}

// Made by SQLite, as bytes: Qt would turn every text into UTF-16 first. Not the numbers with a point, of
// which it writes fifteen digits only.
const char* const kCheckOffRows =
    "SELECT c.check_off_id, CAST(json_object('id', c.check_off_id, 'student_id', c.student_id, 'sheet_key', "
    "c.sheet_key, 'attempt', c.attempt, 'seed', c.seed, 'extra_percent', c.extra_percent, 'policy_hash', "
    "c.policy_hash, 'plate_hashes', c.plate_hashes, 'program_version', c.program_version, "
    "'needs_second_assessor', c.needs_second, 'begun_at', c.begun_at, 'on_screen_ms', c.on_screen_ms, "
    "'on_manikin_ms', c.on_manikin_ms, 'closed_at', c.closed_at, 'closed_on', c.closed_on, 'outcome', "
    "c.outcome, "
    "'rating', c.rating, 'remark', c.remark, 'first_assessor_id', c.first_assessor_id, 'second_assessor_id', "
    "c.second_assessor_id, 'chain_length', c.chain_length, 'chain_head', c.chain_head, 'remediation', "
    "r.what, "
    "'remediation_assessor_id', r.assessor_id, 'remediation_signed_at', r.signed_at) AS BLOB), c.percent, "
    "c.pixels_per_mm FROM check_off c LEFT JOIN remediation r ON r.check_off_id = c.check_off_id "
    "WHERE c.check_off_id BETWEEN ? AND ? AND (? = '' OR c.sheet_key = ?) ORDER BY c.check_off_id";

using CheckOffHeads = std::vector<std::pair<qint64, QByteArray>>;

// Each as an object that is not closed yet: its events follow.
Result<CheckOffHeads> headsOf(const Store& store, const QString& sheet, const CheckOffRange& range)
{
    CheckOffHeads heads;
    const auto read = store.each(
        {QString::fromLatin1(kCheckOffRows), {range.from, range.to, notNull(sheet), notNull(sheet)}},
        [&](const QSqlQuery& row) {
            QByteArray head = row.value(1).toByteArray();
            head.chop(1);
            head += ",\"percent\":";
            appendValue(head, row.value(2));
            head += ",\"pixels_per_mm\":";
            appendValue(head, row.value(3));
            heads.emplace_back(row.value(0).toLongLong(), head + ",\"events\":[");
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    return heads;
}

// Check-offs with their events, commas between them.
class CheckOffText {
public:
    explicit CheckOffText(const CheckOffHeads& heads) : m_next(heads.begin()), m_end(heads.end()) {}

    // Events come in order; those of a check-off that is not asked for are passed over.
    void add(qint64 checkOff, const QByteArray& event)
    {
        for (; m_next != m_end && m_next->first <= checkOff; ++m_next)
            open(*m_next);
        if (checkOff != m_open)
            return;
        m_text += m_hasEvents ? ",\n" : "\n";
        m_text += event;
        m_hasEvents = true;
    }
    QByteArray all()
    {
        for (; m_next != m_end; ++m_next)
            open(*m_next);
        close();
        return m_text;
    }

private:
    void open(const CheckOffHeads::value_type& head)
    {
        close();
        m_text += m_text.isEmpty() ? "" : ",\n";
        m_text += head.second;
        m_open = head.first;
        m_hasEvents = false;
    }
    void close()
    {
        if (m_open != 0)
            m_text += "]}";
        m_open = 0;
    }

    CheckOffHeads::const_iterator m_next, m_end;
    QByteArray m_text;
    qint64 m_open = 0;
    bool m_hasEvents = false;
};

Result<QByteArray> checkOffsOf(const Store& store, const QString& sheet, const CheckOffRange& range)
{
    const auto heads = headsOf(store, sheet, range);
    if (!heads)
        return tl::unexpected(heads.error());
    CheckOffText text(*heads);
    // The event's own text is JSON as it is.
    const auto read = store.each(
        {QStringLiteral(
             "SELECT check_off_id, CAST(printf('{\"seq\":%d,\"at\":\"%s\",\"event\":%s}', seq, at, "
             "event_text) AS BLOB) FROM check_off_event "
             "WHERE check_off_id BETWEEN ? AND ? ORDER BY check_off_id, seq"),
         {range.from, range.to}},
        [&](const QSqlQuery& row) {
            text.add(row.value(0).toLongLong(), row.value(1).toByteArray());
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    return text.all();
}

Result<bool> writeTables(const Store& store, ExportFile& out)
{
    return writeTable(store, "students",
                      {QStringLiteral("SELECT student_id, family, given, section, extra_percent, language, "
                                      "invented FROM student ORDER BY student_id")},
                      {"id", "family", "given", "section", "extra_percent", "language", "invented"}, out)
        .and_then([&](bool) {
            return writeTable(
                store, "assessors",
                {QStringLiteral("SELECT assessor_id, name, enrolled_at FROM assessor ORDER BY assessor_id")},
                {"id", "name", "enrolled_at"}, out);
        })
        .and_then([&](bool) { return writeSheets(store, out); })
        .and_then([&](bool) {
            return writeTable(
                store, "policies",
                {QStringLiteral("SELECT policy_hash, policy_text FROM policy_text ORDER BY policy_hash")},
                {"hash", "text"}, out);
        });
}

}  // namespace record_export_json_detail

Result<bool> exportFullJson(const Store& store, const QString& sheet, const Moment& now, ExportFile& out,
                            LongWork& work)
{
    using namespace record_export_json_detail;
    const auto end = chainEnd(store);
    if (!end)
        return tl::unexpected(end.error());
    out.write("{\"format\":\"fingerbreadth-records\",\"version\":1,\"written_at\":\"" +
              isoText(now.at).toLatin1() + "\",\"chain\":{\"length\":" + QByteArray::number(end->length) +
              ",\"head\":\"" + end->head + "\"}");
    if (const auto tables = writeTables(store, out); !tables)
        return tables;
    out.write(",\n\"check_offs\":[\n");
    const auto written =
        writeRanges(store, out, work, ",\n", [&](const Store& in, const CheckOffRange& range) {
            return checkOffsOf(in, sheet, range);
        });
    out.write("]}\n");
    return written.and_then([&](bool) { return out.flushed(); });
}

}  // namespace fb
