// The one main of all tests of app: offscreen, English, settings nowhere near the user's own.
#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QLocale>
#include <QStandardPaths>

int main(int argc, char** argv)
{
    // Before QApplication: tests are also listed at build time, where no display may be.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    QAccessible::setActive(true);
    return RUN_ALL_TESTS();
}
