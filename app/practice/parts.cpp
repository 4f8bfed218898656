#include "app/practice/parts.h"

#include <QApplication>
#include <QFrame>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <QVariant>
#include <cmath>

#include "app/look/type.h"

namespace fb::parts {

namespace detail {

QString shownWords(QString words) { return words.replace(QLatin1Char('&'), QLatin1String("&&")); }

}  // namespace detail

QLabel* text(QWidget* parent, const char* name, const char* look)
{
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    if (*look)
        label->setProperty("look", QLatin1String(look));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QFrame* rule(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setProperty("look", QLatin1String("rule"));
    line->setFixedHeight(1);
    return line;
}

QPushButton* mainButton(QWidget* parent, const char* name)
{
    QPushButton* made = button(parent, name);
    made->setProperty("look", QLatin1String("main"));
    return made;
}

QPushButton* button(QWidget* parent, const char* name)
{
    auto* made = new QPushButton(parent);
    made->setObjectName(QLatin1String(name));
    // Enter presses the button that has the focus, in a window as in a dialog.
    made->setAutoDefault(true);
    return made;
}

QToolButton* toggle(QWidget* parent, const char* name)
{
    auto* made = new QToolButton(parent);
    made->setObjectName(QLatin1String(name));
    made->setProperty("look", QLatin1String("layer"));
    made->setCheckable(true);
    made->setFocusPolicy(Qt::StrongFocus);
    made->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    return made;
}

void say(QPushButton* button, const QString& words)
{
    button->setText(detail::shownWords(words));
    button->setAccessibleName(words);
}

void say(QToolButton* button, const QString& words)
{
    button->setText(detail::shownWords(words));
    button->setAccessibleName(words);
    button->setToolTip(words);
}

double numberIn(const QString& typed)
{
    bool isNumber = false;
    const double value =
        QLocale::c().toDouble(typed.trimmed().replace(QLatin1Char(','), QLatin1Char('.')), &isNumber);
    return isNumber ? value : std::nan("");
}

QString numberText(double value) { return QLocale().toString(value, 'f', QLocale::FloatingPointShortest); }

QString pointsText(double points)
{
    constexpr double kHundredths = 100.0;
    return numberText(std::round(points * kHundredths) / kHundredths);
}

void followFocus(QScrollArea* area)
{
    QObject::connect(qApp, &QApplication::focusChanged, area, [area](QWidget*, QWidget* now) {
        if (now && area->widget()->isAncestorOf(now))
            area->ensureWidgetVisible(now);
    });
}

QString alone(const QString& words) { return QLocale().toUpper(words.left(1)) + words.mid(1); }

int scaled(const QWidget* widget, int pixels) { return qRound(pixels * textScaleOf(widget->font())); }

int columnWidth(const QWidget* widget, int pixels)
{
    constexpr double kShare = 0.65;
    return qRound(pixels * (1.0 - kShare + kShare * textScaleOf(widget->font())));
}

}  // namespace fb::parts
