#include "tests/support/said.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QRegularExpression>
#include <QTextBrowser>

#include "app/canvas/plate_view.h"

namespace fb::test {

namespace said_detail {

class Listener {
public:
    void hear(const QWidget& widget)
    {
        m_by = &widget;
        m_name = QStringLiteral("%1 %2: ").arg(QLatin1String(widget.metaObject()->className()),
                                               widget.objectName());
        add("title", widget.isWindow() ? widget.windowTitle() : QString());
        add("tip", widget.toolTip());
        add("name", widget.accessibleName());
        add("description", widget.accessibleDescription());
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            add("text", label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
            add("text", button->text());
        if (const auto* browser = qobject_cast<const QTextBrowser*>(&widget))
            add("text", browser->toPlainText());
        if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
            for (int i = 0; i < combo->count(); ++i)
                add("entry", combo->itemText(i), i);
        }
        if (const auto* plate = qobject_cast<const PlateView*>(&widget)) {
            int i = 0;
            for (const SpokenItem& item : plate->spokenItems())
                add("spoken", item.words, i++);
        }
    }

    Said said;

private:
    void add(const char* what, const QString& words, int index = 0)
    {
        if (!words.isEmpty())
            said[{m_by, m_name + QLatin1String(what) + QString::number(index)}] = words;
    }

    const QObject* m_by = nullptr;
    QString m_name;
};

}  // namespace said_detail

Said saidBy(const QWidget& window)
{
    said_detail::Listener listener;
    listener.hear(window);
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->isVisible() && !widget->objectName().startsWith(QLatin1String("qt_")))
            listener.hear(*widget);
    }
    return listener.said;
}

bool hasWords(const QString& text)
{
    static const QRegularExpression kWord(QStringLiteral("\\p{L}{4,}"));
    return text.contains(kWord);
}

}  // namespace fb::test
