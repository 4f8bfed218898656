#include "app/practice/companion_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QScrollArea>
#include <QTest>

#include "app/look/type.h"
#include "app/words/why_words.h"
#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"

namespace fb::test::companion_panel_test {

TEST(CompanionPanelTest, SaysWhyNotThereOnceTheMarkIsGraded)
{
    for (const Site site : {Site::Ventrogluteal, Site::VastusLateralis}) {
        SampleRun run(setupOf(site));
        CompanionPanel panel;
        panel.resize(400, 640);
        panel.show();
        panel.showState(run.state());
        auto* words = panel.findChild<QLabel*>(QStringLiteral("whyNot"));
        EXPECT_FALSE(words->isVisible()) << wordOf(site);
        run.gradeAt({});
        panel.showState(run.state());
        EXPECT_TRUE(words->isVisible()) << wordOf(site);
        EXPECT_EQ(words->text(), whyNotText(companionOf(run.state().request->view)));
    }
}

TEST(CompanionPanelTest, BesideTheShoulderThereIsNothingToWarnOf)
{
    SampleRun run;
    CompanionPanel panel;
    panel.show();
    run.gradeAt({});
    panel.showState(run.state());
    EXPECT_FALSE(panel.findChild<QScrollArea*>(QStringLiteral("whyNotScroll"))->isVisible());
    EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("whyNotTitle"))->isVisible());
}

TEST(CompanionPanelTest, WordsThatDoNotFitScrollByKeyAndThePictureKeepsMostOfTheRoom)
{
    SampleRun run(setupOf(Site::Ventrogluteal));
    run.gradeAt({});
    CompanionPanel panel;
    panel.resize(260, 520);
    panel.show();
    panel.showState(run.state());
    QCoreApplication::processEvents();
    auto* scroll = panel.findChild<QScrollArea*>(QStringLiteral("whyNotScroll"));
    auto* plate = panel.findChild<PlateView*>(QStringLiteral("companionPlate"));
    EXPECT_LE(scroll->height(), panel.height() / 2);
    EXPECT_GT(plate->height(), panel.height() * 2 / 5);
    EXPECT_TRUE(scroll->focusPolicy() & Qt::TabFocus);
    EXPECT_TRUE(namelessControls(panel).isEmpty()) << namelessControls(panel).join('\n').toStdString();
    panel.resize(900, 1400);
    QCoreApplication::processEvents();
    EXPECT_FALSE(scroll->focusPolicy() & Qt::TabFocus) << "what is seen whole needs no key";
    EXPECT_TRUE(layoutFaults(panel).isEmpty()) << layoutFaults(panel).join('\n').toStdString();
}

TEST(CompanionPanelTest, OnASmallPictureNamesAreNoLargerThanItHasRoomFor)
{
    SampleRun run(setupOf(Site::Ventrogluteal));
    CompanionPanel panel;
    panel.setFont(fontOf(Type::Body, 1.5));
    panel.resize(260, 600);
    panel.show();
    panel.showState(run.state());
    QCoreApplication::processEvents();
    auto* plate = panel.findChild<PlateView*>(QStringLiteral("companionPlate"));
    EXPECT_NEAR(textScaleOf(plate->font()), 1.0, 0.05);
    panel.resize(700, 600);
    QCoreApplication::processEvents();
    EXPECT_NEAR(textScaleOf(plate->font()), 1.5, 0.05)
        << "where there is room they are as large as all letters";
}

TEST(CompanionPanelTest, ItIsToLookAtOnly)
{
    SampleRun run(setupOf(Site::VastusLateralis));
    run.presenter.setCompanionShown(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().companion != nullptr; }, 20000));
    CompanionPanel panel;
    panel.resize(400, 640);
    panel.show();
    panel.showState(run.state());
    auto* plate = panel.findChild<PlateView*>(QStringLiteral("companionPlate"));
    QTest::mouseClick(plate, Qt::LeftButton);
    EXPECT_FALSE(run.state().mark.has_value());
    EXPECT_FALSE(plate->accessibleName().isEmpty());
}

}  // namespace fb::test::companion_panel_test
