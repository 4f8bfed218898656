#include "app/practice/why_panel.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>

#include "app/words/site_words.h"
#include "tests/support/sample_run.h"

namespace fb::test {

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
    const auto boxes = panel.findChildren<QCheckBox*>();
    EXPECT_EQ(boxes.size(), static_cast<qsizetype>(kConventions.size()) - 1);
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

TEST(WhyPanelTest, PlacesAreToldUpOrDownTheArm)
{
    EXPECT_EQ(otherPlaceText(Cm{1.2}), QStringLiteral("1.2 cm lower on the arm"));
    EXPECT_EQ(otherPlaceText(Cm{-0.4}), QStringLiteral("0.4 cm higher on the arm"));
    EXPECT_EQ(otherPlaceText(Cm{0.04}), QStringLiteral("at the same height"));
}

}  // namespace fb::test
