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
    kept.convention = Convention::DeltoidHalfway;
    OpenWindow open(kept);
    ASSERT_TRUE(open.isReady);
    EXPECT_EQ(open.state().setup.length, 17);
    EXPECT_EQ(open.state().setup.help, HelpLevel::NamedOnly);
    EXPECT_EQ(open.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(open.state().setup.seed, 7U) << "a fresh seed";
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
