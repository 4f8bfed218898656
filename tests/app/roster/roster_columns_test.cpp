#include "app/roster/roster_columns.h"

#include <gtest/gtest.h>

namespace fb::test::roster_columns_tests {

namespace roster_columns_test {

RosterMapping mapping(int id, int family, int given, int full = -1, int section = -1, int extra = -1,
                      int language = -1)
{
    return {id, family, given, full, section, extra, language};
}

QString utf8(const char* text) { return QString::fromUtf8(text); }

}  // namespace roster_columns_test

TEST(RosterColumnsTest, CommonNamesInEnglishAndSpanishAreKnownWhateverTheirDress)
{
    using namespace roster_columns_test;
    EXPECT_EQ(guessedMapping({"Student ID", "Last name", "First Name", "Section", "Extra time", "Language"}),
              mapping(0, 1, 2, -1, 3, 4, 5));
    EXPECT_EQ(guessedMapping({utf8("Matrícula"), "APELLIDOS", "nombre", "Grupo", "Tiempo extra", "Idioma"}),
              mapping(0, 1, 2, -1, 3, 4, 5));
    EXPECT_EQ(guessedMapping({"notes", "full_name", "id"}), mapping(2, -1, -1, 1));
    EXPECT_EQ(guessedMapping({utf8("N\u00ba de estudiante"), utf8("Nombre y apellidos")}),
              mapping(0, -1, -1, 1));
    EXPECT_EQ(guessedMapping({"id", "Nombre"}), mapping(0, -1, -1, 1));
    EXPECT_EQ(guessedMapping({"id", "ID", "surname", "forename"}), mapping(0, 2, 3));
    EXPECT_EQ(guessedMapping({"", " ", "metadata.id", "hair"}), mapping(-1, -1, -1));
    EXPECT_FALSE(isHeader({"Ruiz", "Ana", "004217"}));
    EXPECT_TRUE(isHeader({"Ruiz", "section"}));
}

TEST(RosterColumnsTest, AOneRosterFileIsToldByItsExactWords)
{
    using namespace roster_columns_test;
    EXPECT_TRUE(isOneRoster({"familyName", "identifier", "sourcedId", "givenName"}));
    EXPECT_FALSE(isOneRoster({"familyname", "sourcedid", "givenname"}));
    // By name, and not the identifier, which may be empty.
    EXPECT_EQ(guessedMapping({"familyName", "identifier", "sourcedId", "givenName"}), mapping(2, 0, 3));
}

TEST(RosterColumnsTest, PasswordsAreSecret)
{
    for (const char* name : {"password", "Password", "user_password", "Contraseña"})
        EXPECT_TRUE(isSecretColumn(QString::fromUtf8(name))) << name;
    EXPECT_FALSE(isSecretColumn("passed"));
}

TEST(RosterColumnsTest, AListWithoutHeaderIsGuessedFromItsFirstLine)
{
    using namespace roster_columns_test;
    EXPECT_EQ(mappingOfRow({"004217", "Ruiz", "Ana"}), mapping(0, 1, 2));
    EXPECT_EQ(mappingOfRow({"Ana Ruiz", "s-17"}), mapping(1, -1, -1, 0));
    EXPECT_EQ(mappingOfRow({"Ana Ruiz"}), mapping(-1, -1, -1, 0));
    EXPECT_EQ(mappingOfRow({}), mapping(-1, -1, -1));
}

TEST(RosterColumnsTest, AWholeNameIsSplit)
{
    using namespace roster_columns_test;
    struct Row {
        const char *full, *family, *given;
    };
    for (const Row& row :
         {Row{"Ruiz, Ana", "Ruiz", "Ana"}, Row{"Ruiz Gómez,  Ana María ", "Ruiz Gómez", "Ana María"},
          Row{"Ana Ruiz", "Ruiz", "Ana"}, Row{"Ana María Ruiz", "Ruiz", "Ana María"},
          Row{"Ludwig van Beethoven", "van Beethoven", "Ludwig"},
          Row{"María de la Cruz", "de la Cruz", "María"}, Row{"ana de ruiz", "ruiz", "ana de"},
          Row{"Prince", "Prince", ""}, Row{"ليلى حداد", "حداد", "ليلى"}, Row{"", "", ""}, Row{",", "", ""},
          Row{"Ruiz,", "Ruiz", ""}, Row{", Ana", "", "Ana"}}) {
        const SplitName name = splitName(utf8(row.full));
        EXPECT_EQ(name.family, utf8(row.family)) << row.full;
        EXPECT_EQ(name.given, utf8(row.given)) << row.full;
    }
}

TEST(RosterColumnsTest, TextIsOneLineThatReadsAsItIsKept)
{
    using namespace roster_columns_test;
    EXPECT_EQ(tidyText("  Ana\r\n\tRuiz \u00a0"), "Ana Ruiz");
    EXPECT_EQ(tidyText(QStringLiteral("Ana\u202eziuR\u2066x\u0007y")), QStringLiteral("AnaziuRx y"));
    EXPECT_EQ(tidyText(QStringLiteral("Nu\u0301\u00f1ez")), utf8("Núñez"));
    EXPECT_EQ(tidyText("=HYPERLINK(1)"), "=HYPERLINK(1)");
    EXPECT_EQ(tidyText("'=HYPERLINK(1)"), "=HYPERLINK(1)");
    EXPECT_EQ(tidyText("'t Hooft"), "'t Hooft");
}

TEST(RosterColumnsTest, ExtraTimeIsAWholePercent)
{
    for (const auto& [text, percent] : std::vector<std::pair<QString, int>>{
             {"", 0}, {"  ", 0}, {"0", 0}, {"25", 25}, {"25%", 25}, {" 50 % ", 50}, {"200", 200}, {"5", 5}})
        EXPECT_EQ(extraPercentIn(text), percent) << text.toStdString();
    for (const char* text : {"1.5", "1", "4", "301", "-25", "yes", "25 min", "%", "1e2", "99999999999"})
        EXPECT_EQ(extraPercentIn(text), std::nullopt) << text;
}

TEST(RosterColumnsTest, LanguagesAreToldByCodeAndByName)
{
    using namespace roster_columns_test;
    for (const char* text : {"es", "ES", "es-MX", "es_ES", "Spanish", "español", "Espanol", "castellano"})
        EXPECT_EQ(languageIn(utf8(text)), "es") << text;
    for (const char* text : {"en", "en-GB", "English", "inglés"})
        EXPECT_EQ(languageIn(utf8(text)), "en") << text;
    EXPECT_EQ(languageIn("Deutsch"), "de");
    for (const char* text : {"", "-", "_", "C", "klingon-KX", "12", "yes please"})
        EXPECT_EQ(languageIn(utf8(text)), "") << text;
}

TEST(RosterColumnsTest, TheMarkOfInventedStudentsIsFound)
{
    EXPECT_EQ(inventedColumn({"id", "invented"}), 1);
    EXPECT_EQ(inventedColumn({"id"}), -1);
}

}  // namespace fb::test::roster_columns_tests
