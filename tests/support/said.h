// Everything a window says, to the eye and to a screen reader.
#pragma once

#include <QMap>
#include <QString>
#include <QWidget>

namespace fb::test {

struct SaidKey {
    const QObject* by = nullptr;
    QString what;  // "QLabel hint: text"

    friend bool operator<(const SaidKey& a, const SaidKey& b)
    {
        return a.by != b.by ? std::less<>{}(a.by, b.by) : a.what < b.what;
    }
};

using Said = QMap<SaidKey, QString>;

// Of the window and what is visible in it: titles, labels, buttons, entries of a choice, tool
// tips, accessible names and descriptions, and what a plate tells a screen reader. Without
// what was typed.
[[nodiscard]] Said saidBy(const QWidget& window);

// Has a word of four letters or more.
[[nodiscard]] bool hasWords(const QString& text);

}  // namespace fb::test
