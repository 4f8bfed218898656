#include "app/store/record_order.h"

namespace fb {

Result<CheckOffOrder> readOrder(const Store& store, qint64 checkOff)
{
    const auto rows = store.rows(
        {QStringLiteral("SELECT c.student_id, c.sheet_key, c.seed, c.extra_percent, p.policy_text, "
                        "c.plate_hashes, c.program_version, c.pixels_per_mm FROM check_off c "
                        "JOIN policy_text p ON p.policy_hash = c.policy_hash WHERE c.check_off_id = ?"),
         {checkOff}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::CheckOffOutOfOrder);
    const QVariantList& row = rows->front();
    return CheckOffOrder{row[0].toString(), row[1].toString(), row[2].toULongLong(), row[3].toInt(),
                         row[4].toString(), row[5].toString(), row[6].toString(),    row[7].toDouble()};
}

}  // namespace fb
