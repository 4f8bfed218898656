// Small parts every practice page is made of, so that they all sit and read alike.
#pragma once

#include <QString>

class QBoxLayout;
class QFrame;
class QLabel;
class QLayoutItem;
class QPushButton;
class QScrollArea;
class QToolButton;
class QWidget;

namespace fb::parts {

// A label in the look's role (see look/style.h; empty: running text) that wraps its words.
[[nodiscard]] QLabel* text(QWidget* parent, const char* name, const char* look = "");
[[nodiscard]] QFrame* rule(QWidget* parent);
[[nodiscard]] QPushButton* mainButton(QWidget* parent, const char* name);
[[nodiscard]] QPushButton* button(QWidget* parent, const char* name);
// A button that stays down, with an icon beside its word.
[[nodiscard]] QToolButton* toggle(QWidget* parent, const char* name);

// Text and accessible name at once; an ampersand in a word stays an ampersand.
void say(QPushButton* button, const QString& words);
void say(QToolButton* button, const QString& words);

// Words that stand alone begin with a capital; in the middle of a sentence the same words do not.
[[nodiscard]] QString alone(const QString& words);

// A typed number, with a point or a comma whatever the language; what is none is not finite.
[[nodiscard]] double numberIn(const QString& typed);
// As the language writes it, no digit more than it has.
[[nodiscard]] QString numberText(double value);
// Points, which may be parts of one: to the hundredth.
[[nodiscard]] QString pointsText(double points);

// Whatever gets the focus by key is scrolled into sight; a scroll area does that for Tab alone.
void followFocus(QScrollArea* area);

// A length of the design at the text size the widget is set in.
[[nodiscard]] int scaled(const QWidget* widget, int pixels);
// The same for a whole column: grows more slowly than its letters, so that the plate keeps
// its room.
[[nodiscard]] int columnWidth(const QWidget* widget, int pixels);

}  // namespace fb::parts
