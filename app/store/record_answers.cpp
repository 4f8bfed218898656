#include "app/store/record_answers.h"

#include "app/store/audit_chain.h"
#include "app/store/record_values.h"

namespace fb {

namespace record_answers_detail {

QVariantList wordsOf(const Answer& answer)
{
    const Request& request = answer.request;
    const auto& finding = request.finding;
    return {word(request.site),
            word(request.patient.side()),
            word(request.view),
            word(answer.convention),
            answer.byHand ? 1 : 0,
            word(request.patient.sex()),
            request.skinTone,
            orNull(finding ? std::optional(word(finding->code)) : std::nullopt),
            orNull(finding ? std::optional(word(finding->part)) : std::nullopt),
            orNull(finding ? std::optional(word(finding->side)) : std::nullopt),
            answer.timeUp ? 1 : 0,
            orNull(word(answer.refusal)),
            word(answer.direction),
            word(answer.verdict),
            orNull(word(answer.hazard))};
}

QVariantList numbersOf(const Answer& answer)
{
    const Patient& patient = answer.request.patient;
    const Individual& own = patient.individual();
    const auto& mark = answer.mark;
    return {patient.ageYears(),
            patient.stature().value(),
            patient.weight().value(),
            own.armLength,
            own.axillaGap,
            own.armGirth,
            own.crestGap,
            own.thighLength,
            own.thighGirth,
            orNull(mark ? std::optional(mark->x) : std::nullopt),
            orNull(mark ? std::optional(mark->y) : std::nullopt),
            answer.distanceToIdeal.value(),
            answer.offDistal.value(),
            answer.offAnterior.value(),
            answer.points};
}

}  // namespace record_answers_detail

const QStringList& answerWords()
{
    static const QStringList words =
        QStringLiteral("site,side,body_view,convention,by_hand,patient_sex,skin_tone,finding,finding_part,"
                       "finding_side,time_up,refusal,direction,verdict,hazard")
            .split(u',');
    return words;
}

const QStringList& answerNumbers()
{
    static const QStringList numbers =
        QStringLiteral(
            "patient_age_years,patient_stature_cm,patient_weight_kg,patient_arm_length_sd,"
            "patient_axilla_gap_sd,patient_arm_girth_sd,patient_crest_gap_sd,patient_thigh_length_sd,"
            "patient_thigh_girth_sd,mark_x_cm,mark_y_cm,distance_to_ideal_cm,off_distal_cm,"
            "off_anterior_cm,points")
            .split(u',');
    return numbers;
}

QString answerColumnNames() { return (answerWords() + answerNumbers()).join(u','); }

QVariantList answerColumns(const Answer& answer)
{
    return record_answers_detail::wordsOf(answer) + record_answers_detail::numbersOf(answer);
}

QByteArray answerHash(const QVariantList& columns)
{
    QByteArray row;
    for (const QVariant& value : columns) {
        if (value.isNull())
            row += '-';
        else if (value.typeId() == QMetaType::Double)
            appendNumber(row, value.toDouble());
        else
            row += value.toString().toUtf8();
        row += '|';
    }
    return sha256(row);
}

Result<bool> addAnswer(Store& store, qint64 checkOff, qint64 eventSeq, const QString& at, int item,
                       const QVariantList& columns)
{
    const QVariantList values = QVariantList{checkOff, item, eventSeq, at} + columns;
    static const QString sql =
        QStringLiteral("INSERT INTO answer (check_off_id, item, event_seq, answered_at, %1) VALUES (?%2)")
            .arg(answerColumnNames(), QStringLiteral(", ?").repeated(values.size() - 1));
    return store.change({sql, values});
}

QString answerDetail(int item, const QVariantList& columns, const QByteArray& eventText)
{
    return QStringLiteral("item=%1 row=%2 event=%3")
        .arg(item + 1)
        .arg(QLatin1String(answerHash(columns)), QLatin1String(sha256(eventText)));
}

}  // namespace fb
