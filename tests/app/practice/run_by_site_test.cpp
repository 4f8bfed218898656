#include "app/practice/run_by_site.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"

namespace fb::test::run_by_site_tests {

namespace run_by_site_test {

PracticeState twoSites()
{
    PracticeState state;
    Summary arm;
    arm.attempts = 4;
    arm.marked = 4;
    arm.hits = 3;
    arm.meanDistance = Cm{0.8};
    Summary hip;
    hip.attempts = 1;
    hip.ruledOut = 1;
    hip.refusedRight = 1;
    state.bySite = {{Site::Deltoid, arm}, {Site::Ventrogluteal, hip}};
    state.runSite = Site::Deltoid;
    return state;
}

}  // namespace run_by_site_test

TEST(RunBySiteTest, EverySiteHasItsNumbersAndIsChosenByKey)
{
    const PracticeState state = run_by_site_test::twoSites();
    RunBySite sites;
    sites.showState(state);
    sites.resize(368, 400);
    sites.show();
    auto* arm = sites.findChild<QRadioButton*>(QStringLiteral("runSite.deltoid"));
    ASSERT_NE(arm, nullptr);
    EXPECT_TRUE(arm->isChecked());
    ASSERT_TRUE(QTest::qWaitForWindowActive(&sites));
    arm->setFocus();
    EXPECT_EQ(sites.findChild<QLabel*>(QStringLiteral("runSiteNumbers.deltoid"))->text(),
              QStringLiteral("3 of 4 in the target region, 0.8 cm from the ideal point on average."));
    EXPECT_EQ(sites.findChild<QLabel*>(QStringLiteral("runSiteNumbers.ventrogluteal"))->text(),
              QStringLiteral("No place was marked here."));
    QSignalSpy asked(&sites, &RunBySite::siteAsked);
    QTest::keyClick(arm, Qt::Key_Down);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<Site>(), Site::Ventrogluteal);
    EXPECT_TRUE(namelessControls(sites).isEmpty()) << namelessControls(sites).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(sites).isEmpty()) << layoutFaults(sites).join('\n').toStdString();
}

TEST(RunBySiteTest, ASingleSiteNeedsNoChoice)
{
    PracticeState state = run_by_site_test::twoSites();
    state.bySite.pop_back();
    RunBySite sites;
    sites.showState(state);
    EXPECT_TRUE(sites.isHidden());
}

TEST(RunBySiteTest, RefusalsAreCountedInWords)
{
    EXPECT_TRUE(refusalNumbers(Summary{}).isEmpty());
    Summary summary;
    summary.ruledOut = 4;
    summary.refusedRight = 2;
    summary.refusedOther = 1;
    summary.refusedNeedless = 3;
    EXPECT_EQ(refusalNumbers(summary), QStringLiteral("Charts that ruled the site out: 4.\n"
                                                      "Refused for the right reason: 2.\n"
                                                      "Refused for another reason: 1.\n"
                                                      "Marked all the same, which is unsafe: 1.\n"
                                                      "Refused although nothing ruled it out: 3."));
}

}  // namespace fb::test::run_by_site_tests
