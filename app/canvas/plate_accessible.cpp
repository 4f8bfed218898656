#include "app/canvas/plate_accessible.h"

#include <algorithm>

namespace fb {

namespace accessible_detail {

// One painted thing. It names its place in the list, so it always tells what is painted now.
class AccessibleItem : public QAccessibleInterface {
public:
    AccessibleItem(AccessiblePlate& plate, int index) : m_plate(plate), m_index(index) {}

    bool isValid() const override { return m_plate.isValid() && m_index < m_plate.childCount(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QAccessibleInterface* parent() const override { return &m_plate; }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Name ? m_plate.item(m_index).words : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override
    {
        const QRect box = m_plate.item(m_index).box;
        return {m_plate.view().mapToGlobal(box.topLeft()), box.size()};
    }
    QAccessible::Role role() const override { return QAccessible::Graphic; }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.readOnly = true;
        state.invisible = !m_plate.view().isVisible();
        return state;
    }

private:
    AccessiblePlate& m_plate;
    int m_index;
};

QAccessibleInterface* madeFor(const QString&, QObject* object)
{
    auto* view = qobject_cast<PlateView*>(object);
    return view ? new AccessiblePlate(view) : nullptr;
}

}  // namespace accessible_detail

AccessiblePlate::AccessiblePlate(PlateView* view) : QAccessibleWidget(view, QAccessible::Graphic) {}

AccessiblePlate::~AccessiblePlate()
{
    for (const QAccessible::Id id : m_children)
        QAccessible::deleteAccessibleInterface(id);
}

const PlateView& AccessiblePlate::view() const { return *static_cast<const PlateView*>(widget()); }

SpokenItem AccessiblePlate::item(int index) const
{
    if (!isValid())
        return {};
    const auto items = view().spokenItems();
    return index < items.size() ? items[index] : SpokenItem{};
}

int AccessiblePlate::childCount() const
{
    return isValid() ? static_cast<int>(view().spokenItems().size()) : 0;
}

QAccessibleInterface* AccessiblePlate::child(int index) const
{
    if (index < 0 || index >= childCount())
        return nullptr;
    auto* self = const_cast<AccessiblePlate*>(this);
    while (static_cast<int>(m_children.size()) <= index)
        m_children.push_back(QAccessible::registerAccessibleInterface(
            new accessible_detail::AccessibleItem(*self, static_cast<int>(m_children.size()))));
    return QAccessible::accessibleInterface(m_children[static_cast<std::size_t>(index)]);
}

int AccessiblePlate::indexOfChild(const QAccessibleInterface* child) const
{
    const auto known = std::find_if(m_children.begin(), m_children.end(), [child](QAccessible::Id id) {
        return QAccessible::accessibleInterface(id) == child;
    });
    return known == m_children.end() ? -1 : static_cast<int>(known - m_children.begin());
}

QAccessibleInterface* AccessiblePlate::childAt(int x, int y) const
{
    for (int i = 0; i < childCount(); ++i)
        if (child(i)->rect().contains(x, y))
            return child(i);
    return nullptr;
}

void installPlateAccessibility()
{
    static const bool once = [] {
        QAccessible::installFactory(&accessible_detail::madeFor);
        return true;
    }();
    static_cast<void>(once);
}

}  // namespace fb
