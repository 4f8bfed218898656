#include "app/shell/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>

namespace fb::test {

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

}  // namespace fb::test
