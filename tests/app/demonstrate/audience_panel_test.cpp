#include "app/demonstrate/audience_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

#include "tests/support/layout_audit.h"
#include "tests/support/speaker_sample.h"

namespace fb::test::audience_panel_test {

using Where = AudienceWindow::Where;

struct Panel {
    Panel()
    {
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &panel, &AudiencePanel::showState);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    }
    [[nodiscard]] QAbstractButton* find(const char* name)
    {
        return panel.findChild<QAbstractButton*>(QLatin1String(name));
    }
    void click(const char* name) { QTest::mouseClick(find(name), Qt::LeftButton); }
    [[nodiscard]] QString where()
    {
        return panel.findChild<QLabel*>(QStringLiteral("audienceWhere"))->text();
    }

    LectureSample sample;
    PluggedScreens screens;
    AudienceWindow audience{sample.presenter, screens};
    AudiencePanel panel{sample.presenter, audience};
};

TEST(AudiencePanelTest, OnASecondScreenItOpensAndCloses)
{
    Panel shown;
    shown.screens.plug(twoScreens());
    const QString closed = shown.where();
    EXPECT_FALSE(shown.find("closeAudience")->isVisible());
    shown.click("openAudience");
    EXPECT_EQ(shown.audience.where(), Where::OtherScreen);
    EXPECT_NE(shown.where(), closed);
    EXPECT_FALSE(shown.find("openAudience")->isVisible());
    EXPECT_FALSE(shown.sample.state().notice.has_value());
    shown.click("closeAudience");
    EXPECT_EQ(shown.audience.where(), Where::Closed);
    EXPECT_EQ(shown.where(), closed);
}

TEST(AudiencePanelTest, WithOneScreenTheSpeakerIsToldHowToComeBack)
{
    Panel shown;
    shown.click("openAudience");
    EXPECT_EQ(shown.audience.where(), Where::OverSpeaker);
    ASSERT_TRUE(shown.sample.state().notice.has_value());
    EXPECT_EQ(shown.sample.state().notice->problem, Problem::NoSecondScreen);
    shown.panel.swap();
    EXPECT_EQ(shown.audience.where(), Where::PutAway);
    EXPECT_TRUE(shown.where().contains(QStringLiteral("F6")));
    shown.panel.swap();
    EXPECT_EQ(shown.audience.where(), Where::OverSpeaker);
    shown.panel.close();
}

TEST(AudiencePanelTest, AScreenThatIsUnpluggedIsTold)
{
    Panel shown;
    shown.screens.plug(twoScreens());
    shown.click("openAudience");
    shown.screens.plug({twoScreens().first()});
    ASSERT_TRUE(shown.sample.state().notice.has_value());
    EXPECT_EQ(shown.sample.state().notice->problem, Problem::ScreenLost);
    EXPECT_NE(shown.audience.where(), Where::OtherScreen);
    shown.screens.plug(twoScreens());
    EXPECT_EQ(shown.audience.where(), Where::OtherScreen);
    EXPECT_FALSE(shown.sample.state().notice.has_value()) << "it is back: nothing is gone any more";
    shown.panel.close();
}

TEST(AudiencePanelTest, AScreenThatComesLeavesOtherNoticesAlone)
{
    Panel shown;
    shown.screens.plug(twoScreens());
    shown.click("openAudience");
    shown.screens.plug({twoScreens().first()});
    shown.sample.presenter.tell({Problem::NotesNotReadable, "notes.json", {}, 0.0, 0.0});
    shown.screens.plug(twoScreens());
    ASSERT_TRUE(shown.sample.state().notice.has_value());
    EXPECT_EQ(shown.sample.state().notice->problem, Problem::NotesNotReadable);
    shown.panel.close();
}

TEST(AudiencePanelTest, BlankGoesAndComes)
{
    Panel shown;
    shown.click("blankAudience");
    EXPECT_TRUE(shown.sample.state().blank);
    EXPECT_TRUE(shown.find("blankAudience")->isChecked());
    shown.sample.presenter.setBlank(false);
    EXPECT_FALSE(shown.find("blankAudience")->isChecked());
}

TEST(AudiencePanelTest, ClosedNothingSwaps)
{
    Panel shown;
    shown.panel.swap();
    shown.panel.close();
    EXPECT_EQ(shown.audience.where(), Where::Closed);
    EXPECT_EQ(namelessControls(shown.panel).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::audience_panel_test
