// Spanish is wordier than English: nothing is cut off, crossing or nameless on any screen.
#include <gtest/gtest.h>

#include <QLocale>

#include "app/shell/about_dialog.h"
#include "tests/support/by_hand_steps.h"
#include "tests/support/hand_walk.h"
#include "tests/support/layout_audit.h"
#include "tests/support/window_walk.h"

namespace fb::test::spanish_layout_tests {

namespace spanish_layout_test {

struct Screen {
    const char* name;
    QSize size;
    int textPercent;
};

std::ostream& operator<<(std::ostream& out, const Screen& screen) { return out << screen.name; }

class SpanishLayoutTest : public ::testing::TestWithParam<Screen> {
protected:
    ~SpanishLayoutTest() override { QLocale::setDefault(m_before); }

    static Preferences spanish()
    {
        Preferences preferences = plainPreferences();
        preferences.language = QStringLiteral("es");
        preferences.textPercent = GetParam().textPercent;
        preferences.asksSide = true;
        return preferences;
    }

    static void expectSound(const QWidget& window, const char* where)
    {
        settle();
        const QStringList faults = layoutFaults(window) + namelessControls(window);
        EXPECT_TRUE(faults.isEmpty()) << where << ":\n" << faults.join(QLatin1Char('\n')).toStdString();
    }

private:
    const QLocale m_before;
};

}  // namespace spanish_layout_test

using namespace spanish_layout_test;

TEST_P(SpanishLayoutTest, EveryStateHasRoomForItsWords)
{
    OpenWindow open(spanish(), GetParam().size);
    ASSERT_TRUE(open.isReady);
    ASSERT_EQ(open.find<QPushButton>("grade")->text(), QStringLiteral("Evaluar"));
    throughEveryState(open, [&](const char* where) {
        expectSound(open.window(), where);
        EXPECT_EQ(open.window().size(), GetParam().size) << where << ": the window had to grow";
    });
}

TEST_P(SpanishLayoutTest, EverySiteHasRoomForItsWords)
{
    for (const Site site : kSites) {
        SCOPED_TRACE(wordOf(site));
        Preferences preferences = spanish();
        preferences.asksSide = false;
        preferences.mix = {SiteSet::only(site), true};
        OpenWindow open(preferences, GetParam().size);
        ASSERT_TRUE(open.isReady);
        throughARun(open, [&](const char* where) {
            expectSound(open.window(), where);
            EXPECT_EQ(open.window().size(), GetParam().size) << where << ": the window had to grow";
        });
        EXPECT_EQ(open.state().phase, Phase::Summary);
    }
}

TEST_P(SpanishLayoutTest, EveryStateByHandHasRoomForItsWords)
{
    for (const Convention convention :
         {Convention::VentroglutealHand, Convention::VastusThirds, Convention::DeltoidFingers}) {
        SCOPED_TRACE(wordOf(convention));
        Preferences preferences = byHandPreferences(convention);
        preferences.language = spanish().language;
        preferences.textPercent = spanish().textPercent;
        OpenWindow open(preferences, GetParam().size);
        ASSERT_TRUE(open.isReady);
        throughHandStates(open, [&](const char* where) {
            expectSound(open.window(), where);
            EXPECT_EQ(open.window().size(), GetParam().size) << where << ": the window had to grow";
        });
    }
}

TEST_P(SpanishLayoutTest, TheDialogsHaveRoomForTheirWords)
{
    OpenWindow open(spanish(), GetParam().size);
    ASSERT_TRUE(open.isReady);
    AboutDialog about(open.state().policy.get(), nullptr);
    about.show();
    expectSound(about, "about");
    QTest::mouseClick(open.find("newRun"), Qt::LeftButton);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return open.find("runDialog") && open.find("runDialog")->isVisible(); }));
    expectSound(*open.find("runDialog"), "new run");
    EXPECT_LE(open.find("runDialog")->height(), GetParam().size.height());
}

INSTANTIATE_TEST_SUITE_P(Languages, SpanishLayoutTest,
                         ::testing::Values(Screen{"Desk1280", {1280, 800}, 100},
                                           Screen{"LargeText1280", {1280, 800}, 150},
                                           Screen{"Desk1920", {1920, 1080}, 100},
                                           Screen{"Desk3840LargeText", {3840, 2160}, 200}),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace fb::test::spanish_layout_tests
