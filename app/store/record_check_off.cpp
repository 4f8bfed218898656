#include "app/store/record_check_off.h"

#include "app/store/audit_chain.h"
#include "app/store/record_answers.h"

namespace fb {

namespace record_check_off_detail {

struct LastKept {
    bool isOpen = false;
    int answers = 0;
    qint64 seq = 0;
    ChainEnd end;  // of the log
};

// The log is never empty: its first entry tells of its making.
Result<LastKept> lastKept(const Store& store, qint64 checkOff)
{
    const auto rows = store.rows(
        {QStringLiteral(
             "SELECT c.closed_at, (SELECT count(*) FROM answer a WHERE a.check_off_id = c.check_off_id), "
             "e.seq, l.seq, l.hash FROM check_off c "
             "JOIN audit l ON l.seq = (SELECT max(seq) FROM audit) LEFT JOIN check_off_event e "
             "ON e.check_off_id = c.check_off_id WHERE c.check_off_id = ? ORDER BY e.seq DESC LIMIT 1"),
         {checkOff}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return LastKept{};
    const QVariantList& row = rows->front();
    return LastKept{
        row[0].isNull(), row[1].toInt(), row[2].toLongLong(), {row[3].toLongLong(), row[4].toByteArray()}};
}

// Asked for again, in every word. Of an answer its item tells beforehand.
Result<bool> isKept(const Store& store, qint64 checkOff, const LastKept& last, const CheckOffEvent& event,
                    const QByteArray& text)
{
    if (!last.isOpen || (event.answer && event.answer->item != last.answers - 1))
        return false;
    return store
        .rows({QStringLiteral("SELECT event_text FROM check_off_event WHERE check_off_id = ? AND seq = ?"),
               {checkOff, last.seq}})
        .map([&](const auto& rows) {
            return !rows.empty() && rows.front().front().toString().toUtf8() == text;
        });
}

// The step's word of now; the events keep every earlier one.
Result<bool> keepObservation(Store& store, qint64 checkOff, const CheckOffEvent& event)
{
    const QString step = word(event.observation->step);
    if (event.kind == CheckOffEventKind::Withdrawn)
        return store.change({QStringLiteral("DELETE FROM observation WHERE check_off_id = ? AND step = ?"),
                             {checkOff, step}});
    return store.change(
        {QStringLiteral("INSERT INTO observation (check_off_id, step, seen, at_s, remark) "
                        "VALUES (?, ?, ?, ?, ?) ON CONFLICT (check_off_id, step) DO UPDATE SET "
                        "seen = excluded.seen, at_s = excluded.at_s, remark = excluded.remark"),
         {checkOff, step, word(event.observation->seen), event.observation->at,
          textOfUtf8(event.observation->remark)}});
}

// What the log says of an event that ends it before its time.
std::optional<AuditEntry> entryOf(qint64 checkOff, const CheckOffEvent& event)
{
    const auto entry = [&](const char* name) {
        return AuditEntry{.actor = QStringLiteral("program"),
                          .event = QLatin1String(name),
                          .object = objectName(checkOff),
                          .detail = textOfUtf8(event.note)};
    };
    switch (event.kind) {
    case CheckOffEventKind::SafetyStop: return entry("SAFETY_STOP");
    case CheckOffEventKind::Voided: return entry("VOID");
    case CheckOffEventKind::NoShow: return entry("NO_SHOW");
    default: return std::nullopt;
    }
}

Result<ChainEnd> keepAnswer(Store& store, qint64 checkOff, const LastKept& last, int item,
                            const EventRows& rows, const Moment& now)
{
    const auto added = addAnswer(store, checkOff, last.seq + 1, isoText(now.at), item, rows.columns);
    if (!added)
        return tl::unexpected(added.error());
    return appendAudit(store, last.end,
                       {.actor = QStringLiteral("student"),
                        .event = QStringLiteral("ANSWER"),
                        .object = objectName(checkOff),
                        .detail = rows.detail},
                       now.at);
}

Result<bool> keepParts(Store& store, qint64 checkOff, const LastKept& last, const CheckOffEvent& event,
                       const EventRows& rows, const Moment& now)
{
    const auto added = addEvent(store, checkOff, last.seq + 1, event, QString::fromUtf8(rows.text), now);
    if (!added)
        return added;
    const auto done = [](const ChainEnd&) { return true; };
    if (event.answer)
        return keepAnswer(store, checkOff, last, event.answer->item, rows, now).map(done);
    if (event.observation)
        return keepObservation(store, checkOff, event);
    const auto entry = entryOf(checkOff, event);
    return entry ? appendAudit(store, last.end, *entry, now.at).map(done) : added;
}

// Whether an event has what its kind says.
bool isWhole(const CheckOffEvent& event)
{
    using enum CheckOffEventKind;
    return event.kind != Signed && event.answer.has_value() == (event.kind == Answered) &&
           event.observation.has_value() == (event.kind == Observed || event.kind == Withdrawn);
}

}  // namespace record_check_off_detail

using namespace record_check_off_detail;

QString objectName(qint64 checkOff) { return QStringLiteral("check-off-%1").arg(checkOff); }

Result<bool> addEvent(Store& store, qint64 checkOff, qint64 seq, const CheckOffEvent& event,
                      const QString& text, const Moment& now)
{
    return store.change(
        {QStringLiteral("INSERT INTO check_off_event (check_off_id, seq, kind, at, event_text) "
                        "VALUES (?, ?, ?, ?, ?)"),
         {checkOff, seq, word(event.kind), isoText(now.at), text}});
}

EventRows rowsOf(const CheckOffEvent& event)
{
    EventRows rows{QByteArray::fromStdString(textOf(event)), {}, {}};
    if (event.answer) {
        rows.columns = answerColumns(*event.answer);
        rows.detail = answerDetail(event.answer->item, rows.columns, rows.text);
    }
    return rows;
}

Result<bool> keepEvent(Store& store, qint64 checkOff, const CheckOffEvent& event,
                       const std::shared_future<EventRows>& coming, const Moment& now)
{
    if (!isWhole(event))
        return fault(Problem::CheckOffOutOfOrder);
    return store.transaction([&]() -> Result<bool> {
        const auto last = lastKept(store, checkOff);
        if (!last)
            return tl::unexpected(last.error());
        const EventRows& rows = coming.get();
        if (const auto kept = isKept(store, checkOff, *last, event, rows.text); !kept || *kept)
            return kept;
        if (!last->isOpen || (event.answer && event.answer->item != last->answers))
            return fault(Problem::CheckOffOutOfOrder);
        return keepParts(store, checkOff, *last, event, rows, now);
    });
}

Result<bool> keepEvent(Store& store, qint64 checkOff, const CheckOffEvent& event, const Moment& now)
{
    std::promise<EventRows> rows;
    rows.set_value(rowsOf(event));
    return keepEvent(store, checkOff, event, rows.get_future(), now);
}

Result<bool> keepCountedTime(Store& store, qint64 checkOff, Ms onScreen, Ms onManikin)
{
    const auto screen = static_cast<qint64>(onScreen.count());
    const auto manikin = static_cast<qint64>(onManikin.count());
    return store.change(
        {QStringLiteral(
             "UPDATE check_off SET on_screen_ms = CASE WHEN on_screen_ms < ? THEN ? ELSE on_screen_ms "
             "END, on_manikin_ms = CASE WHEN on_manikin_ms < ? THEN ? ELSE on_manikin_ms END "
             "WHERE check_off_id = ? AND closed_at IS NULL"),
         {screen, screen, manikin, manikin, checkOff}});
}

Result<std::vector<CheckOffEvent>> readEvents(const Store& store, qint64 checkOff)
{
    std::vector<CheckOffEvent> events;
    std::optional<Fault> unreadable;
    const auto read = store.each(
        {QStringLiteral("SELECT event_text FROM check_off_event WHERE check_off_id = ? ORDER BY seq"),
         {checkOff}},
        [&](const QSqlQuery& row) {
            auto event = eventFrom(row.value(0).toString().toStdString());
            if (event)
                events.push_back(std::move(*event));
            else
                unreadable = event.error();
            return !unreadable;
        });
    if (!read)
        return tl::unexpected(read.error());
    if (unreadable)
        return tl::unexpected(*unreadable);
    return events;
}

}  // namespace fb
