#include "app/demonstrate/screens.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QScreen>
#include <QSignalSpy>
#include <QTest>

namespace fb::test::screens_test {

TEST(ScreensTest, TheMainScreenIsTheFirstAndNoneIsLeftOut)
{
    const SystemScreens screens;
    const QVector<ScreenPlace> all = screens.all();
    ASSERT_EQ(all.size(), QGuiApplication::screens().size());
    EXPECT_EQ(all.front().name, QGuiApplication::primaryScreen()->name());
    EXPECT_EQ(all.front().geometry, QGuiApplication::primaryScreen()->geometry());
}

TEST(ScreensTest, AScreenThatChangesItsSizeIsTold)
{
    SystemScreens screens;
    QSignalSpy changed(&screens, &Screens::changed);
    QScreen* screen = QGuiApplication::primaryScreen();
    Q_EMIT screen->geometryChanged(screen->geometry());
    EXPECT_EQ(changed.count(), 0) << "told once the system is done with it";
    EXPECT_TRUE(QTest::qWaitFor([&] { return changed.count() == 1; }));
}

}  // namespace fb::test::screens_test
