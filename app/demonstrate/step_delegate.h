// One step in the rail: its thumbnail in a thin frame, number and name under it. The one that is shown has a
// heavy frame and heavy letters.
#pragma once

#include <QStyledItemDelegate>

#include "app/look/palette.h"

namespace fb {

class StepDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    // thumbRole: of an item's picture, a QImage; its words are the item's text, its number its row.
    StepDelegate(int thumbRole, QObject* parent);

    void setScheme(const Scheme& scheme) { m_scheme = scheme; }
    void setThumb(QSize size) { m_thumb = size; }
    [[nodiscard]] QSize thumb() const { return m_thumb; }

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

private:
    int m_thumbRole;
    Scheme m_scheme;
    QSize m_thumb{112, 63};
};

}  // namespace fb
