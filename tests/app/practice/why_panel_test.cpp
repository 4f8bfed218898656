#include "app/practice/why_panel.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <set>

#include "app/words/site_words.h"
#include "tests/support/sample_run.h"

namespace fb::test::why_panel_test {

TEST(WhyPanelTest, ShowsRuleSourceAndEveryOtherConvention)
{
    SampleRun run;
    run.gradeAt({});
    WhyPanel panel;
    panel.showState(run.state());
    const auto text = [&panel](const char* name) {
        return panel.findChild<QLabel*>(QLatin1String(name))->text();
    };
    EXPECT_EQ(text("whyRule"),
              conventionRule(Convention::DeltoidStrip, *run.state().policy, *run.state().target));
    EXPECT_TRUE(text("whySource").contains(conventionSource(Convention::DeltoidStrip, *run.state().policy)));
    const auto boxes = panel.findChildren<QCheckBox*>(QRegularExpression(QStringLiteral("^other\\.")));
    EXPECT_EQ(boxes.size(), 4) << "of the deltoid";
    for (const QCheckBox* box : boxes)
        EXPECT_FALSE(box->accessibleName().contains(conventionName(Convention::DeltoidStrip)));
    EXPECT_EQ(text("name.deltoid.halfway"), conventionName(Convention::DeltoidHalfway));
}

TEST(WhyPanelTest, TickingAConventionAsksForItsPoint)
{
    SampleRun run;
    run.gradeAt({});
    WhyPanel panel;
    panel.showState(run.state());
    panel.show();
    QSignalSpy asked(&panel, &WhyPanel::otherToggled);
    auto* box = panel.findChild<QCheckBox*>(QStringLiteral("other.deltoid.halfway"));
    ASSERT_NE(box, nullptr);
    QTest::keyClick(box, Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<Convention>(), Convention::DeltoidHalfway);
    EXPECT_TRUE(asked[0][1].toBool());
    QTest::mouseClick(panel.findChild<QLabel*>(QStringLiteral("name.deltoid.halfway")), Qt::LeftButton);
    ASSERT_EQ(asked.count(), 2) << "the name belongs to its box";
    EXPECT_FALSE(asked[1][1].toBool());
}

TEST(WhyPanelTest, PlacesAreToldAlongTheLimbAndAnyWayOnTheHip)
{
    const auto at = [](Site site, double lower, double forward) {
        return otherPlaceText(site, {{}, {}, Cm{lower}, Cm{forward}, false});
    };
    EXPECT_EQ(at(Site::Deltoid, 1.2, 0.0), QStringLiteral("1.2 cm lower on the arm"));
    EXPECT_EQ(at(Site::Deltoid, -0.4, 0.0), QStringLiteral("0.4 cm higher on the arm"));
    EXPECT_EQ(at(Site::Deltoid, 0.04, 0.0), QStringLiteral("at the same height"));
    EXPECT_EQ(at(Site::VastusLateralis, 2.0, 0.0), QStringLiteral("2.0 cm lower on the thigh"));
    EXPECT_EQ(at(Site::Ventrogluteal, 0.3, -0.4), QStringLiteral("0.5 cm away, mostly toward the back"));
    EXPECT_EQ(at(Site::Ventrogluteal, 0.0, 0.4), QStringLiteral("0.4 cm away, mostly toward the front"));
    EXPECT_EQ(at(Site::Ventrogluteal, -1.2, 0.5), QStringLiteral("1.3 cm away, mostly toward the head"));
    EXPECT_EQ(at(Site::Ventrogluteal, 1.2, 0.5), QStringLiteral("1.3 cm away, mostly toward the foot"));
    EXPECT_EQ(at(Site::Ventrogluteal, 0.01, -0.02), QStringLiteral("at the same place"));
}

TEST(WhyPanelTest, TheHandIsToldWhereOneIsLaidWithItsLengthAndItsPin)
{
    OwnChoices own;
    own.choose(Convention::VentroglutealHand);
    std::set<QString> told;
    for (const double length : {13.0, 24.0}) {
        own.handLength = Cm{length};
        SampleRun run(setupOf(Site::Ventrogluteal), own);
        run.gradeAt({});
        WhyPanel panel;
        panel.showState(run.state());
        auto* hand = panel.findChild<QLabel*>(QStringLiteral("whyHand"));
        ASSERT_TRUE(run.state().target->hand.has_value());
        EXPECT_EQ(hand->text(), handText(*run.state().target->hand));
        EXPECT_TRUE(hand->text().contains(cmText(length))) << hand->text().toStdString();
        const bool left = run.state().request->patient.side() == Side::Right;
        EXPECT_TRUE(hand->text().contains(left ? QLatin1String("left hand") : QLatin1String("right hand")));
        told.insert(hand->text());
    }
    EXPECT_EQ(told.size(), 2U);
}

TEST(WhyPanelTest, EveryPinAndEveryHandHasASentenceOfItsOwn)
{
    std::set<QString> told;
    for (const Side side : kSides) {
        for (const Pin pin : {Pin::Spine, Pin::Palm}) {
            HandPose pose;
            pose.hand = side;
            pose.pin = pin;
            pose.length = Cm{18.0};
            told.insert(handText(pose));
        }
    }
    EXPECT_EQ(told.size(), 4U);
}

TEST(WhyPanelTest, TheHandCanBeHiddenAndIsNotSpokenOfWhereNoneIsLaid)
{
    OwnChoices own;
    own.choose(Convention::VentroglutealHand);
    SampleRun run(setupOf(Site::Ventrogluteal), own);
    run.gradeAt({});
    WhyPanel panel;
    panel.showState(run.state());
    panel.show();
    QSignalSpy asked(&panel, &WhyPanel::handToggled);
    auto* box = panel.findChild<QCheckBox*>(QStringLiteral("handShown"));
    ASSERT_TRUE(box->isVisible());
    EXPECT_TRUE(box->isChecked());
    QTest::keyClick(box, Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_FALSE(asked[0][0].toBool());
    SampleRun arm;
    arm.gradeAt({});
    panel.showState(arm.state());
    EXPECT_FALSE(box->isVisible());
    EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("whyHand"))->isVisible());
}

TEST(WhyPanelTest, EverySiteHasItsOwnRuleSourceAndOthers)
{
    for (const Site site : kSites) {
        SampleRun run(setupOf(site));
        run.gradeAt({});
        WhyPanel panel;
        panel.showState(run.state());
        const Convention convention = run.state().policy->convention(site);
        EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("whyName"))->text(), conventionName(convention));
        EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("whyRule"))->text(),
                  conventionRule(convention, *run.state().policy, *run.state().target));
        ASSERT_FALSE(run.state().others.empty());
        for (const OtherPoint& other : run.state().others)
            EXPECT_EQ(siteOf(other.convention), site);
    }
}

}  // namespace fb::test::why_panel_test
