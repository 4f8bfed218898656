#include "app/shell/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>

namespace fb::test::language_test {

TEST(LanguageTest, EnglishHasItsPlurals)
{
    const QLocale before;
    {
        Language language;
        language.use(QStringLiteral("en"));
        const auto years = [](int n) {
            return QCoreApplication::translate("fb::RequestPanel", "%n year(s)", nullptr, n);
        };
        EXPECT_EQ(years(1), QStringLiteral("1 year"));
        EXPECT_EQ(years(44), QStringLiteral("44 years"));
    }
    QLocale::setDefault(before);
}

TEST(LanguageTest, ALanguageWithoutAFileKeepsEnglishWordsAndItsOwnNumbers)
{
    const QLocale before;
    {
        Language language;
        language.use(QStringLiteral("de"));
        EXPECT_EQ(QLocale().toString(1.5, 'f', 1), QStringLiteral("1,5"));
        EXPECT_EQ(QCoreApplication::translate("fb::RequestPanel", "%n year(s)", nullptr, 2),
                  QStringLiteral("2 years"));
    }
    QLocale::setDefault(before);
}

TEST(LanguageTest, SpanishHasItsWordsPluralsAndNumbers)
{
    const QLocale before;
    {
        Language language;
        language.use(QStringLiteral("es"));
        const auto years = [](int n) {
            return QCoreApplication::translate("fb::RequestPanel", "%n year(s)", nullptr, n);
        };
        EXPECT_EQ(years(1), QStringLiteral("1 año"));
        EXPECT_EQ(years(44), QStringLiteral("44 años"));
        EXPECT_EQ(QLocale().toString(1.5, 'f', 1), QStringLiteral("1,5"));
        EXPECT_EQ(QCoreApplication::translate("fb::SiteWords", "Bone"), QStringLiteral("Hueso"));
    }
    QLocale::setDefault(before);
}

TEST(LanguageTest, EveryLanguageThatIsCompiledInIsOfferedByItsOwnName)
{
    QStringList offered;
    for (const OfferedLanguage& each : offeredLanguages())
        offered << each.locale + QLatin1Char(' ') + each.name;
    EXPECT_EQ(offered, (QStringList{QStringLiteral("en English"), QStringLiteral("es Español")}));
}

}  // namespace fb::test::language_test
