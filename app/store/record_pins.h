// Who may sign: assessors are enrolled with a PIN, and prove that they are who they say. Wrong tries are
// kept, so that a new start of the program does not forgive them.
#pragma once

#include <map>
#include <optional>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// The faults of RecordKeeper::enrol; AssessorUnknown where one who is proved was needed.
[[nodiscard]] Result<Proof> enrolAssessor(Store& store, const QString& name, const QString& pin,
                                          const std::optional<Proof>& by, const Moment& now);

// Waiting is counted on the monotonic clock. Only a wait that a start of the program inherits is read off
// the calendar, and never as longer than it was when it was imposed: so a calendar that is put back holds
// nobody for a day.
class PinCheck {
public:
    // The faults of RecordKeeper::prove. Each try is kept before it is judged.
    [[nodiscard]] Result<Proof> prove(Store& store, qint64 assessor, const QString& pin, const Moment& now,
                                      Ms steady);

private:
    struct Kept {
        Assessor assessor;
        QString hash;
        int wrong = 0;
        QDateTime until;  // invalid: no wait
    };
    [[nodiscard]] static Result<Kept> kept(const Store& store, qint64 assessor);
    [[nodiscard]] Ms left(const Kept& kept, const Moment& now, Ms steady);

    std::map<qint64, Ms> m_until;  // on the monotonic clock
};

}  // namespace fb
