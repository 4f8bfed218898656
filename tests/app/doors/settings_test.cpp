#include "app/doors/settings.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace fb::test {

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
    kept.mix = {SiteSet::only(Site::Ventrogluteal), false};
    kept.own.choose(Convention::DeltoidHalfway);
    kept.own.choose(Convention::VentroglutealMedians);
    kept.own.handLength = Cm{17.4};
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
    kept.own = {};
    kept.mix.sites = {{true, true, false}};
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
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

}  // namespace fb::test
