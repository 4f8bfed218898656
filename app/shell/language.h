// The language of words, numbers and plurals. English is the language of the source; its file
// holds plurals only.
#pragma once

#include <QString>
#include <QTranslator>
#include <QVector>

namespace fb {

class Language {
public:
    // A locale name ("en"), or empty for the system's. A language without a file of ours is
    // shown in English with that locale's numbers. May be called again at any time: every
    // window gets a LanguageChange.
    void use(const QString& name);

private:
    QTranslator m_translator;
    QTranslator m_toolkit;  // what Qt itself says, in a file dialog or a field's menu
};

struct OfferedLanguage {
    QString locale;  // "es"
    QString name;    // in that language itself: "Español"
};

// Every language that is compiled in, English first.
[[nodiscard]] QVector<OfferedLanguage> offeredLanguages();

}  // namespace fb
