#include "app/store/record_signing.h"

#include "app/store/audit_chain.h"
#include "app/store/record_check_off.h"
#include "app/store/record_people.h"

namespace fb {

namespace record_signing_detail {

struct BeforeSigning {
    SignedLine line;
    bool isClosed = false;
    bool needsSecond = false;
    QString closedAt, chainHead;
    qint64 chainLength = 0;
};

Result<BeforeSigning> beforeSigning(const Store& store, qint64 checkOff)
{
    const auto rows = store.rows(
        {QStringLiteral("SELECT student_id, sheet_key, attempt, needs_second, closed_at, chain_head, "
                        "chain_length, outcome, first_assessor_id, second_assessor_id FROM check_off "
                        "WHERE check_off_id = ?"),
         {checkOff}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::CheckOffOutOfOrder);
    const QVariantList& row = rows->front();
    BeforeSigning before;
    before.line = {.student = row[0].toString(),
                   .sheet = row[1].toString(),
                   .attempt = row[2].toInt(),
                   .outcome = row[7].toString(),
                   .remark = {},
                   .first = row[8].toLongLong(),
                   .second = row[9].toLongLong()};
    before.needsSecond = row[3].toBool();
    before.isClosed = !row[4].isNull();
    before.closedAt = row[4].toString();
    before.chainHead = row[5].toString();
    before.chainLength = row[6].toLongLong();
    return before;
}

// A void and a no-show are no judgement: one assessor will do.
Result<bool> mayBeSignedBy(const BeforeSigning& before, Outcome outcome, const Proof& first,
                           const std::optional<Proof>& second)
{
    const bool isJudged = outcome != Outcome::VoidTechnical && outcome != Outcome::NoShow;
    if (before.needsSecond && isJudged && !second)
        return fault(Problem::SecondAssessorMissing);
    if (second && second->assessor.id == first.assessor.id)
        return fault(Problem::SameAssessor);
    return true;
}

struct KeptEvents {
    qint64 count = 0;
    Remarked said;
    QByteArray hash;
    QString lastText;
};

Result<KeptEvents> keptEvents(const Store& store, qint64 checkOff)
{
    KeptEvents kept;
    QByteArray texts;
    const auto read = store.each(
        {QStringLiteral("SELECT event_text FROM check_off_event WHERE check_off_id = ? ORDER BY seq"),
         {checkOff}},
        [&](const QSqlQuery& row) {
            ++kept.count;
            kept.lastText = row.value(0).toString();
            texts += kept.lastText.toUtf8() + '\n';
            if (const auto event = eventFrom(kept.lastText.toStdString()))
                remark(kept.said, *event);
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    kept.hash = sha256(texts);
    return kept;
}

Result<ChainEnd> close(Store& store, qint64 checkOff, const SignedLine& line, const QByteArray& hash,
                       const Moment& now)
{
    const Assessor first{line.first, {}};
    const auto end = appendAudit(store,
                                 {.actor = actorName(first),
                                  .event = QStringLiteral("SIGN"),
                                  .object = objectName(checkOff),
                                  .detail = signedDetail(line, hash)},
                                 now.at);
    if (!end)
        return end;
    const QVariant second =
        line.second != 0 ? QVariant(line.second) : QVariant(QMetaType::fromType<qlonglong>());
    return store
        .change(
            {QStringLiteral("UPDATE check_off SET closed_at = ?, closed_on = ?, outcome = ?, percent = ?, "
                            "rating = ?, remark = ?, first_assessor_id = ?, second_assessor_id = ?, "
                            "chain_length = ?, chain_head = ? WHERE check_off_id = ?"),
             {isoText(now.at), now.day.toString(Qt::ISODate), line.outcome, line.percent, line.rating,
              notNull(line.remark), line.first, second, end->length, QString::fromLatin1(end->head),
              checkOff}})
        .map([&](bool) { return *end; });
}

Result<bool> isKnown(const Store& store, const Proof& first, const std::optional<Proof>& second)
{
    const auto one = readAssessor(store, first.assessor.id);
    const auto other = second ? readAssessor(store, second->assessor.id) : one;
    if (!one || !other)
        return tl::unexpected(one ? other.error() : one.error());
    return true;
}

}  // namespace record_signing_detail

using namespace record_signing_detail;

void remark(Remarked& so, const CheckOffEvent& event)
{
    using enum CheckOffEventKind;
    if (event.kind == Rated)
        so.rating = event.rating;
    if (event.kind == Rated || event.kind == SafetyStop || event.kind == Voided)
        so.remark = textOfUtf8(event.note);
}

QString signedDetail(const SignedLine& line, const QByteArray& eventsHash)
{
    return QStringLiteral("outcome=%1 percent=%2 rating=%3 attempt=%4 first=%5 second=%6 events=%7 sheet=%8 "
                          "student=%9 remark=")
               .arg(line.outcome, QString::number(line.percent, 'g', QLocale::FloatingPointShortest))
               .arg(line.rating)
               .arg(line.attempt)
               .arg(line.first)
               .arg(line.second)
               .arg(QString::fromLatin1(eventsHash), line.sheet, line.student) +
           line.remark;
}

Result<SignedOff> signCheckOff(Store& store, qint64 checkOff, const CheckOffEvent& event,
                               const CheckOffResult& result, const Proof& first,
                               const std::optional<Proof>& second, const Moment& now)
{
    const QString text = textOfUtf8(textOf(event));
    SignedOff off{checkOff, result, now.at, {}, 0, {first.assessor}};
    if (second)
        off.assessors.push_back(second->assessor);
    const auto done = store.transaction([&]() -> Result<bool> {
        auto before = beforeSigning(store, checkOff);
        const auto kept = before ? keptEvents(store, checkOff) : tl::unexpected(before.error());
        if (!kept)
            return tl::unexpected(kept.error());
        if (before->isClosed && kept->lastText == text) {
            off.at = timeFrom(before->closedAt);
            off.chainHead = before->chainHead;
            off.chainLength = before->chainLength;
            return true;
        }
        if (before->isClosed || event.kind != CheckOffEventKind::Signed)
            return fault(Problem::CheckOffOutOfOrder);
        const auto may = mayBeSignedBy(*before, result.decision.outcome, first, second).and_then([&](bool) {
            return isKnown(store, first, second);
        });
        if (!may)
            return may;
        const auto added = addEvent(store, checkOff, kept->count + 1, event, text, now).and_then([&](bool) {
            return keepCountedTime(store, checkOff, event.onScreen, event.onManikin);
        });
        if (!added)
            return added;
        const auto all = keptEvents(store, checkOff);
        if (!all)
            return tl::unexpected(all.error());
        before->line.outcome = word(result.decision.outcome);
        before->line.percent = result.decision.percent;
        before->line.rating = all->said.rating;
        before->line.remark = all->said.remark;
        before->line.first = first.assessor.id;
        before->line.second = second ? second->assessor.id : 0;
        const auto end = close(store, checkOff, before->line, all->hash, now);
        if (!end)
            return tl::unexpected(end.error());
        off.chainHead = QString::fromLatin1(end->head);
        off.chainLength = end->length;
        return true;
    });
    return done.map([&](bool) { return off; });
}

Result<bool> signRemediation(Store& store, qint64 checkOff, const QString& what, const Proof& by,
                             const Moment& now)
{
    if (what.trimmed().isEmpty())
        return fault(Problem::ReasonMissing);
    return store.transaction([&]() -> Result<bool> {
        const auto before = beforeSigning(store, checkOff);
        if (!before)
            return tl::unexpected(before.error());
        const auto there =
            store.rows({QStringLiteral("SELECT what FROM remediation WHERE check_off_id = ?"), {checkOff}});
        if (!there)
            return tl::unexpected(there.error());
        if (!there->empty() && there->front().front().toString() == what.trimmed())
            return true;
        if (!before->isClosed || before->line.outcome == word(Outcome::Pass) || !there->empty())
            return fault(Problem::CheckOffOutOfOrder);
        if (const auto known = isKnown(store, by, std::nullopt); !known)
            return known;
        const auto added = store.change(
            {QStringLiteral("INSERT INTO remediation (check_off_id, what, assessor_id, signed_at) "
                            "VALUES (?, ?, ?, ?)"),
             {checkOff, what.trimmed(), by.assessor.id, isoText(now.at)}});
        if (!added)
            return added;
        return appendAudit(store,
                           {.actor = actorName(by.assessor),
                            .event = QStringLiteral("REMEDIATION"),
                            .object = objectName(checkOff),
                            .detail = what.trimmed()},
                           now.at)
            .map([](const ChainEnd&) { return true; });
    });
}

}  // namespace fb
