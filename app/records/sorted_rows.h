// Rows of a model sorted by a role of it: words as every list of people is (records_look.h), everything else
// by its value. What is the same keeps the model's order.
#pragma once

#include <QCollator>
#include <QSortFilterProxyModel>

namespace fb {

class SortedRows : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit SortedRows(QObject* parent = nullptr);

    void retranslate();  // sorts as the program's language now does

protected:
    [[nodiscard]] bool lessThan(const QModelIndex& one, const QModelIndex& other) const override;

private:
    QCollator m_order;
};

}  // namespace fb
