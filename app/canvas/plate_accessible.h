// The plate for a screen reader: a graphic with one child for each thing that is painted and
// has words (see PlateView::spokenItems). Children are read only; the keys do the work.
#pragma once

#include <QAccessibleWidget>
#include <memory>
#include <vector>

#include "app/canvas/plate_view.h"

namespace fb {

class AccessiblePlate : public QAccessibleWidget {
public:
    explicit AccessiblePlate(PlateView* view);
    ~AccessiblePlate() override;

    [[nodiscard]] int childCount() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;

    [[nodiscard]] const PlateView& view() const;
    [[nodiscard]] SpokenItem item(int index) const;  // empty when it is gone

private:
    mutable std::vector<QAccessible::Id> m_children;
};

// Makes every PlateView accessible; may be called again.
void installPlateAccessibility();

}  // namespace fb
