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
    kept.convention = Convention::DeltoidHalfway;
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
    kept.convention.reset();
    StoredSettings(file).save(kept);
    EXPECT_EQ(StoredSettings(file).load(), kept);
}

TEST(SettingsTest, NothingStoredReadsAsTheDefaults)
{
    const QTemporaryDir folder;
    EXPECT_EQ(StoredSettings(folder.filePath(QStringLiteral("none.ini"))).load(), Preferences{});
}

TEST(SettingsTest, WhatMakesNoSenseReadsAsItsDefault)
{
    const QTemporaryDir folder;
    const QString name = folder.filePath(QStringLiteral("odd.ini"));
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(
        "[look]\npalette=99\ntext_percent=13\n[practice]\nlength=-4\nhelp=many\nconvention=deltoid.guess\n");
    file.close();
    EXPECT_EQ(StoredSettings(name).load(), Preferences{});
}

}  // namespace fb::test
