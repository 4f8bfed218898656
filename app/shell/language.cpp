#include "app/shell/language.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <algorithm>

namespace fb {

namespace language_detail {

constexpr const char* kFolder = ":/i18n";
constexpr const char* kPrefix = "fingerbreadth_";

//: Name of this language in itself, as the menu of languages shows it.
constexpr const char* kOwnName = QT_TRANSLATE_NOOP("fb::Language", "English");

void use(QTranslator& translator, bool isLoaded)
{
    if (isLoaded)
        QCoreApplication::installTranslator(&translator);
}

}  // namespace language_detail

void Language::use(const QString& name)
{
    using namespace language_detail;
    const QLocale locale = name.isEmpty() ? QLocale::system() : QLocale(name);
    QLocale::setDefault(locale);
    QCoreApplication::removeTranslator(&m_translator);
    QCoreApplication::removeTranslator(&m_toolkit);
    const auto load = [this](const QLocale& wanted) {
        return m_translator.load(wanted, QStringLiteral("fingerbreadth"), QStringLiteral("_"),
                                 QLatin1String(kFolder));
    };
    const bool isOurs = load(locale);
    // Where no word is ours, Qt's words would only make a mixture.
    language_detail::use(m_toolkit,
                         isOurs && m_toolkit.load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                                                  QLibraryInfo::path(QLibraryInfo::TranslationsPath)));
    language_detail::use(m_translator, isOurs || load(QLocale(QLocale::English)));
}

QVector<OfferedLanguage> offeredLanguages()
{
    using namespace language_detail;
    QVector<OfferedLanguage> offered;
    const QString prefix = QLatin1String(kPrefix);
    for (const QString& file : QDir(QLatin1String(kFolder)).entryList({prefix + QStringLiteral("*.qm")})) {
        const QString locale = file.chopped(3).mid(prefix.size());
        QTranslator words;
        const QString own =
            words.load(file, QLatin1String(kFolder)) ? words.translate("fb::Language", kOwnName) : QString();
        // English has no words of its own beside the source's.
        offered.push_back({locale, own.isEmpty() ? QLatin1String(kOwnName) : own});
    }
    std::stable_sort(offered.begin(), offered.end(), [](const OfferedLanguage& a, const OfferedLanguage& b) {
        return (a.locale == QLatin1String("en")) > (b.locale == QLatin1String("en"));
    });
    return offered;
}

}  // namespace fb
