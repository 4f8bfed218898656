#include "app/shell/services.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "tests/support/open_window.h"

namespace fb::test {

TEST(ServicesTest, NothingIsReadBeforeTheWindowIsOnScreen)
{
    MemorySettings settings;
    AnsweringDialogs dialogs;
    CountingSeeds seeds;
    Services services(settings, dialogs, seeds);
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
    for (int i = 0; i < 3; ++i) {
        Services services(settings, dialogs, seeds);
        services.window().show();
        QTest::qWait(i * 4);
    }
}

}  // namespace fb::test
