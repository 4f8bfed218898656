// What a translation file says, message by message, read as XML.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

namespace fb::test {

struct Message {
    QString context;
    QString source;
    bool isPlural = false;
    QString state;      // "", "unfinished", "vanished", "obsolete"
    QStringList forms;  // one, or as many as the language has plurals

    [[nodiscard]] QString name() const { return context + QStringLiteral(": ") + source.left(60); }
};

// Empty, with a failure told to GoogleTest, when the file cannot be read.
[[nodiscard]] QVector<Message> messagesOf(const QString& path);

// Every translation of the source tree, by its path.
[[nodiscard]] QStringList translationFiles();

// Those of languages that say everything: all but English, whose file holds plurals only.
[[nodiscard]] QStringList completeLanguages();

// "es" of ".../fingerbreadth_es.ts"
[[nodiscard]] QString languageOf(const QString& path);

}  // namespace fb::test
