#include "tests/support/layout_audit.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QToolButton>
#include <vector>

namespace fb::test {

namespace layout_audit_detail {

QString nameOf(const QWidget& widget)
{
    return QStringLiteral("%1 \"%2\"")
        .arg(QLatin1String(widget.metaObject()->className()), widget.objectName());
}

QString wordsOf(const QWidget& widget)
{
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        return label->text();
    if (const auto* tool = qobject_cast<const QToolButton*>(&widget))
        return tool->toolButtonStyle() == Qt::ToolButtonIconOnly ? QString() : tool->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        return button->text();
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
        return combo->currentText();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        return line->text();
    return {};
}

// What a scroll area hides can be scrolled to, so its contents are held to its own width only.
const QScrollArea* scrollerOf(const QWidget& widget)
{
    for (const QWidget* up = widget.parentWidget(); up; up = up->parentWidget()) {
        const auto* area = qobject_cast<const QScrollArea*>(up);
        if (area && area->viewport()->isAncestorOf(&widget))
            return area;
    }
    return nullptr;
}

void checkWords(const QWidget& widget, QStringList& faults)
{
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        const int width = label->width();
        const bool wraps = label->wordWrap();
        const int needed = wraps ? label->heightForWidth(width) : label->sizeHint().height();
        if (needed > label->height())
            faults << QStringLiteral("%1 is %2 high, its words need %3: %4")
                          .arg(nameOf(widget))
                          .arg(label->height())
                          .arg(needed)
                          .arg(label->text());
        // A word that cannot be broken is cut at the side.
        const int widest = wraps ? label->minimumSizeHint().width() : label->sizeHint().width();
        if (widest > width)
            faults << QStringLiteral("%1 is %2 wide, its words need %3: %4")
                          .arg(nameOf(widget))
                          .arg(width)
                          .arg(widest)
                          .arg(label->text());
        return;
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
        constexpr int kFrame = 4;
        if (line->fontMetrics().horizontalAdvance(line->text()) + kFrame > line->width())
            faults << QStringLiteral("%1 cuts its text: %2").arg(nameOf(widget), line->text());
        return;
    }
    const QSize needed = widget.sizeHint();
    if (needed.width() > widget.width() || needed.height() > widget.height())
        faults << QStringLiteral("%1 is %2 x %3, its words need %4 x %5: %6")
                      .arg(nameOf(widget))
                      .arg(widget.width())
                      .arg(widget.height())
                      .arg(needed.width())
                      .arg(needed.height())
                      .arg(wordsOf(widget));
}

void checkPlace(const QWidget& widget, const QWidget& window, QStringList& faults)
{
    QRect place(widget.mapTo(&window, QPoint()), widget.size());
    QRect room = window.rect();
    if (const QScrollArea* area = scrollerOf(widget)) {
        const QWidget* viewport = area->viewport();
        const QRect seen(viewport->mapTo(&window, QPoint()), viewport->size());
        // Up and down it can be scrolled; to the sides it cannot.
        place.setTop(seen.top());
        place.setBottom(seen.bottom());
        room = seen;
    }
    if (!room.contains(place))
        faults << QStringLiteral("%1 hangs over the edge: %2").arg(nameOf(widget), wordsOf(widget));
}

}  // namespace layout_audit_detail

QStringList layoutFaults(const QWidget& window)
{
    using namespace layout_audit_detail;
    QStringList faults;
    std::vector<const QWidget*> texts;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&window) || widget->window() != &window)
            continue;
        checkPlace(*widget, window, faults);
        if (wordsOf(*widget).isEmpty())
            continue;
        checkWords(*widget, faults);
        texts.push_back(widget);
    }
    const auto placeOf = [&](const QWidget* w) { return QRect(w->mapTo(&window, QPoint()), w->size()); };
    for (std::size_t i = 0; i < texts.size(); ++i) {
        for (std::size_t j = i + 1; j < texts.size(); ++j) {
            const bool nested = texts[i]->isAncestorOf(texts[j]) || texts[j]->isAncestorOf(texts[i]);
            const bool scrolled = scrollerOf(*texts[i]) != scrollerOf(*texts[j]);
            if (!nested && !scrolled && placeOf(texts[i]).intersects(placeOf(texts[j])))
                faults << QStringLiteral("%1 crosses %2: %3 / %4")
                              .arg(nameOf(*texts[i]), nameOf(*texts[j]), wordsOf(*texts[i]),
                                   wordsOf(*texts[j]));
        }
    }
    return faults;
}

QStringList namelessControls(const QWidget& window)
{
    using layout_audit_detail::nameOf;
    QStringList faults;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        // Parts of a control (the edit of a box, a pop-up's list) speak through their owner.
        const bool isPart = widget->focusProxy() || widget->objectName().startsWith(QLatin1String("qt_")) ||
                            widget->window() != &window;
        if (isPart || !(widget->focusPolicy() & Qt::TabFocus))
            continue;
        if (widget->objectName().isEmpty())
            faults << QStringLiteral("%1 has no object name").arg(nameOf(*widget));
        const QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        if (!told || told->text(QAccessible::Name).isEmpty())
            faults << QStringLiteral("%1 has no accessible name").arg(nameOf(*widget));
    }
    return faults;
}

}  // namespace fb::test
