#include "app/doors/settings.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace fb::test::settings_test {

TEST(SettingsTest, WhatIsSavedIsLoadedByTheNextStart)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("settings.ini"));
    Preferences kept;
    kept.palette = PaletteKind::Projector;
    kept.textPercent = 150;
    kept.language = QStringLiteral("en");
    kept.policyFile = QStringLiteral("/lab/policy.json");
    kept.runLength = 25;
    kept.help = HelpLevel::Nothing;
    kept.asksSide = false;
    kept.byHand = true;
    kept.mix = {SiteSet::only(Site::Ventrogluteal), false};
    kept.own.choose(Convention::DeltoidHalfway);
    kept.own.choose(Convention::VentroglutealMedians);
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
    kept.own = {};
    kept.mix.sites = {{true, true, false}};
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
}

TEST(SettingsTest, AHandThatOlderProgramsWroteIsReadAndNoneIsWrittenAnyMore)
{
    const QTemporaryDir folder;
    const QString name = folder.filePath(QStringLiteral("older.ini"));
    const auto write = [&](const char* text) {
        QFile file(name);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    };
    write("[practice]\nhand_cm=17.4\n");
    Preferences read = StoredSettings(name).load();
    EXPECT_EQ(read.own.handLength, std::optional(Cm{17.4}));
    read.own.handLength = Cm{20.0};
    read.own.fingerWidth = Cm{1.5};
    StoredSettings(name).save(read);
    EXPECT_EQ(StoredSettings(name).load().own.handLength, std::optional(Cm{17.4}))
        << "what was written stays until the store has it, whatever happens to the store";
    write("");
    StoredSettings(name).save(read);
    EXPECT_EQ(StoredSettings(name).load().own, OwnChoices{}) << "a hand is the profile's";
}

TEST(SettingsTest, NothingStoredReadsAsTheDefaults)
{
    const QTemporaryDir folder;
    EXPECT_EQ(StoredSettings(folder.filePath(QStringLiteral("none.ini"))).load(), Preferences{});
}

TEST(SettingsTest, TheFirstStartAsksEverySiteAndLetsChartsRuleOneOut)
{
    EXPECT_EQ(Preferences{}.mix.sites, SiteSet::all());
    EXPECT_TRUE(Preferences{}.mix.findings);
}

TEST(SettingsTest, WhatMakesNoSenseReadsAsItsDefault)
{
    const QTemporaryDir folder;
    const QString name = folder.filePath(QStringLiteral("odd.ini"));
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("[look]\npalette=99\ntext_percent=13\n[practice]\nlength=-4\nhelp=many\nsites=elbow\n"
               "convention_deltoid=vastus.thirds\nconvention_ventrogluteal=guess\nhand_cm=41\n");
    file.close();
    EXPECT_EQ(StoredSettings(name).load(), Preferences{});
}

}  // namespace fb::test::settings_test
