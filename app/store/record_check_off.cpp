#include "app/store/record_check_off.h"

#include "app/store/audit_chain.h"
#include "app/store/record_answers.h"

namespace fb {

namespace record_check_off_detail {

struct LastKept {
    bool isOpen = false;
    qint64 seq = 0;
    QString text;
};

Result<LastKept> lastKept(const Store& store, qint64 checkOff)
{
    const auto rows = store.rows(
        {QStringLiteral(
             "SELECT c.closed_at, e.seq, e.event_text FROM check_off c LEFT JOIN check_off_event e "
             "ON e.check_off_id = c.check_off_id WHERE c.check_off_id = ? ORDER BY e.seq DESC "
             "LIMIT 1"),
         {checkOff}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return LastKept{};
    const QVariantList& row = rows->front();
    return LastKept{row[0].isNull(), row[1].toLongLong(), row[2].toString()};
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

Result<bool> isNextItem(const Store& store, qint64 checkOff, int item)
{
    return store.rows({QStringLiteral("SELECT count(*) FROM answer WHERE check_off_id = ?"), {checkOff}})
        .map([&](const auto& rows) { return rows.front().front().toInt() == item; });
}

// What the log says of an event, where it says anything.
std::optional<AuditEntry> entryOf(qint64 checkOff, const CheckOffEvent& event, const QString& text)
{
    const auto entry = [&](const char* actor, const char* name, const QString& detail) {
        return AuditEntry{.actor = QLatin1String(actor),
                          .event = QLatin1String(name),
                          .object = objectName(checkOff),
                          .detail = detail};
    };
    switch (event.kind) {
    case CheckOffEventKind::Answered:
        return entry("student", "ANSWER",
                     answerDetail(event.answer->item, answerColumns(*event.answer), text.toUtf8()));
    case CheckOffEventKind::SafetyStop: return entry("program", "SAFETY_STOP", textOfUtf8(event.note));
    case CheckOffEventKind::Voided: return entry("program", "VOID", textOfUtf8(event.note));
    case CheckOffEventKind::NoShow: return entry("program", "NO_SHOW", {});
    default: return std::nullopt;
    }
}

Result<bool> keepParts(Store& store, qint64 checkOff, qint64 seq, const CheckOffEvent& event,
                       const QString& text, const Moment& now)
{
    auto kept = addEvent(store, checkOff, seq, event, text, now);
    if (kept && event.answer)
        kept = addAnswer(store, checkOff, seq, isoText(now.at), *event.answer);
    else if (kept && event.observation)
        kept = keepObservation(store, checkOff, event);
    const auto entry = entryOf(checkOff, event, text);
    if (!kept || !entry)
        return kept;
    return appendAudit(store, *entry, now.at).map([](const ChainEnd&) { return true; });
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
    const auto added =
        store.change({QStringLiteral("INSERT INTO check_off_event (check_off_id, seq, kind, at, event_text) "
                                     "VALUES (?, ?, ?, ?, ?)"),
                      {checkOff, seq, word(event.kind), isoText(now.at), text}});
    return added.and_then(
        [&](bool) { return keepCountedTime(store, checkOff, event.onScreen, event.onManikin); });
}

Result<bool> keepEvent(Store& store, qint64 checkOff, const CheckOffEvent& event, const Moment& now)
{
    if (!isWhole(event))
        return fault(Problem::CheckOffOutOfOrder);
    const QString text = textOfUtf8(textOf(event));
    return store.transaction([&]() -> Result<bool> {
        const auto last = lastKept(store, checkOff);
        if (!last)
            return tl::unexpected(last.error());
        if (!last->isOpen)
            return fault(Problem::CheckOffOutOfOrder);
        if (last->text == text)
            return true;
        const auto fits = event.answer ? isNextItem(store, checkOff, event.answer->item) : Result<bool>(true);
        if (!fits)
            return fits;
        return *fits ? keepParts(store, checkOff, last->seq + 1, event, text, now)
                     : fault(Problem::CheckOffOutOfOrder);
    });
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
