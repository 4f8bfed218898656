// An answer as a row of the table of answers: every value a grade is replayed from but flags and builds,
// which stand in its event's text.
#pragma once

#include <QByteArray>
#include <QStringList>
#include <QVariantList>

#include "app/store/store.h"
#include "core/session/answer.h"

namespace fb {

// The columns after check-off, item, event and time: words and small counts first, then numbers with a point.
[[nodiscard]] const QStringList& answerWords();
[[nodiscard]] const QStringList& answerNumbers();
[[nodiscard]] QString answerColumnNames();  // both, separated by commas
[[nodiscard]] QVariantList answerColumns(const Answer& answer);

// SHA-256 of the columns' values, hex: the same of what is kept and of what is read back.
[[nodiscard]] QByteArray answerHash(const QVariantList& columns);

// In a transaction.
[[nodiscard]] Result<bool> addAnswer(Store& store, qint64 checkOff, qint64 eventSeq, const QString& at,
                                     int item, const QVariantList& columns);

// What the log tells of an answer.
[[nodiscard]] QString answerDetail(int item, const QVariantList& columns, const QByteArray& eventText);

}  // namespace fb
