#include "app/records/sorted_rows.h"

#include "app/records/records_look.h"

namespace fb {

SortedRows::SortedRows(QObject* parent) : QSortFilterProxyModel(parent), m_order(listOrder()) {}

void SortedRows::retranslate()
{
    m_order = listOrder();
    invalidate();
}

bool SortedRows::lessThan(const QModelIndex& one, const QModelIndex& other) const
{
    const QVariant first = one.data(sortRole());
    if (first.metaType().id() != QMetaType::QString)
        return QSortFilterProxyModel::lessThan(one, other);
    return m_order.compare(first.toString(), other.data(sortRole()).toString()) < 0;
}

}  // namespace fb
