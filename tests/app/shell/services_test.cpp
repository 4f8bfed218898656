#include "app/shell/services.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "app/store/profile_store.h"
#include "tests/support/open_window.h"
#include "tests/support/store_folder.h"

namespace fb::test::services_test {

TEST(ServicesTest, NothingIsReadBeforeTheWindowIsOnScreen)
{
    MemorySettings settings;
    AnsweringDialogs dialogs;
    CountingSeeds seeds;
    MemoryProfiles profiles;
    MemoryRecords records;
    SystemScreens screens;
    Services services({settings, dialogs, seeds, records.clock, profiles, records, screens});
    QTest::qWait(30);
    EXPECT_FALSE(services.practice().state().ready);
    QSignalSpy painted(&services.window(), &MainWindow::firstPainted);
    services.window().show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return services.practice().state().ready; }));
    EXPECT_EQ(painted.count(), 1);
}

TEST(ServicesTest, TheFirstRunIsSetUpAsTheLastOneWas)
{
    Preferences kept = plainPreferences();
    kept.runLength = 17;
    kept.help = HelpLevel::NamedOnly;
    kept.mix.findings = true;
    kept.own.choose(Convention::DeltoidHalfway);
    kept.own.handLength = Cm{21.0};
    OpenWindow open(kept);
    ASSERT_TRUE(open.isReady);
    EXPECT_EQ(open.state().setup.length, 17);
    EXPECT_EQ(open.state().setup.help, HelpLevel::NamedOnly);
    EXPECT_EQ(open.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(open.state().own, kept.own);
    EXPECT_EQ(open.state().setup.mix, kept.mix);
    EXPECT_EQ(open.state().setup.seed, 7U) << "a fresh seed";
}

TEST(ServicesTest, ARunOfAnySiteIsReadyOnceItsFirstPlatesAreRead)
{
    for (const Site site : kSites) {
        Preferences kept = plainPreferences();
        kept.mix.sites = SiteSet::only(site);
        OpenWindow open(kept);
        ASSERT_TRUE(open.isReady) << wordOf(site);
        EXPECT_EQ(open.state().picture->plate->view, open.state().request->view);
    }
}

TEST(ServicesTest, TheProfileIsTheHandOfTheFirstRun)
{
    Remembered remembered;
    remembered.profile = Profile{.handLength = Cm{16.5}, .fingerWidth = Cm{1.3}, .handedness = Side::Left};
    Preferences kept = plainPreferences();
    kept.own.handLength = Cm{21.0};
    OpenWindow open(kept, {1280, 800}, 7, remembered);
    ASSERT_TRUE(open.isReady);
    EXPECT_EQ(open.state().policy->value(PolicyKey::HandLength), 16.5) << "newer than the settings";
    EXPECT_EQ(open.state().policy->value(PolicyKey::DeltoidFingerWidth), 1.3);
    EXPECT_EQ(open.state().own.handedness, Side::Left);
    EXPECT_EQ(open.profiles.saves, 0) << "nothing has changed";
}

TEST(ServicesTest, WithoutAStoreTheProgramSaysSoAndGoesOn)
{
    Remembered remembered;
    remembered.trouble = Fault{Problem::StoreNotWritable, "/there/profile.db", {}, 0.0, 0.0};
    Preferences kept = plainPreferences();
    kept.own.handLength = Cm{21.0};
    OpenWindow open(kept, {1280, 800}, 7, remembered);
    ASSERT_TRUE(open.isReady);
    EXPECT_TRUE(open.find("notice")->isVisible());
    EXPECT_EQ(open.state().notice, remembered.trouble);
    EXPECT_EQ(open.state().policy->value(PolicyKey::HandLength), 21.0) << "as the settings know it";
    open.practice().dismissNotice();
    Profile changed;
    changed.handLength = Cm{15.0};
    open.services.learner().use(changed);
    EXPECT_EQ(open.state().notice, remembered.trouble) << "each write that fails is told";
    EXPECT_EQ(open.state().policy->value(PolicyKey::HandLength), 15.0);
}

TEST(ServicesTest, ARealStoreRemembersAcrossStarts)
{
    const StoreFolder folder;
    for (const bool isFirst : {true, false}) {
        MemorySettings settings;
        settings.stored = plainPreferences();
        AnsweringDialogs dialogs;
        CountingSeeds seeds;
        ProfileStore profiles(folder.file());
        MemoryRecords records;
        SystemScreens screens;
        Services services({settings, dialogs, seeds, records.clock, profiles, records, screens});
        services.window().show();
        ASSERT_TRUE(QTest::qWaitFor([&] { return services.practice().state().ready; }, 20000));
        if (isFirst)
            services.learner().use({.fingerWidth = Cm{1.9}, .handedness = Side::Left});
        EXPECT_EQ(services.learner().profile(), (Profile{.fingerWidth = Cm{1.9}, .handedness = Side::Left}));
        EXPECT_EQ(services.practice().state().own.fingerWidth, std::optional(Cm{1.9}));
    }
}

TEST(ServicesTest, APolicyFileThatIsGoneIsToldAndTheWindowWorks)
{
    Preferences kept = plainPreferences();
    kept.policyFile = QStringLiteral("/nowhere/policy.json");
    OpenWindow open(kept);
    ASSERT_TRUE(open.isReady);
    EXPECT_TRUE(open.find("notice")->isVisible());
}

TEST(ServicesTest, TheWindowCanBeClosedWhileItIsStillReading)
{
    MemorySettings settings;
    AnsweringDialogs dialogs;
    CountingSeeds seeds;
    MemoryProfiles profiles;
    for (int i = 0; i < 3; ++i) {
        MemoryRecords records;
        SystemScreens screens;
        Services services({settings, dialogs, seeds, records.clock, profiles, records, screens});
        services.window().show();
        QTest::qWait(i * 4);
    }
}

}  // namespace fb::test::services_test
