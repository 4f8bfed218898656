// What assessors sign: the end of a check-off and the practice after it. A signed check-off never changes
// again; its entry in the log holds the hash of everything that was kept of it.
#pragma once

#include <optional>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// The faults of RecordKeeper::sign; CheckOffOutOfOrder for one that is signed already, unless by this very
// event: then it is answered again.
[[nodiscard]] Result<SignedOff> signCheckOff(Store& store, qint64 checkOff, const CheckOffEvent& event,
                                             const CheckOffResult& result, const Proof& first,
                                             const std::optional<Proof>& second, const Moment& now);
// ReasonMissing without words; CheckOffOutOfOrder before the signature, after a pass and for a second time.
[[nodiscard]] Result<bool> signRemediation(Store& store, qint64 checkOff, const QString& what,
                                           const Proof& by, const Moment& now);

// The line of a signed check-off, as its entry in the log tells it.
struct SignedLine {
    QString student, sheet;
    int attempt = 1;
    QString outcome;
    double percent = 0.0;
    int rating = 0;
    QString remark;
    qint64 first = 0, second = 0;  // 0: none
};
// `eventsHash`: of the texts of all its events, each followed by a newline.
[[nodiscard]] QString signedDetail(const SignedLine& line, const QByteArray& eventsHash);

// What an assessor wrote: of the rating, or why it was ended.
struct Remarked {
    int rating = 0;
    QString remark;
};
void remark(Remarked& so, const CheckOffEvent& event);

}  // namespace fb
