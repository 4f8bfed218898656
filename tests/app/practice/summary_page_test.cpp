#include "app/practice/summary_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineF>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>
#include <algorithm>

#include "app/practice/run_by_site.h"
#include "tests/support/hand_learner.h"
#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"
#include "tests/support/window_walk.h"

namespace fb::test::summary_page_test {

// A mark that was lucky is no success: a request counts when its every part was right.
TEST(SummaryPageTest, ARunByHandIsHeadedByWhatWasFoundBuiltAndMarkedRight)
{
    HandRun hand(Convention::DeltoidHalfway, 2);
    hand.learner.plant();
    hand.learner.build();
    hand.learner.grade();
    hand.run.presenter.next();
    hand.learner.plant(1);
    hand.learner.build();
    hand.learner.grade();
    hand.run.presenter.next();
    SummaryPage page;
    page.setScheme(schemeOf(PaletteKind::Light));
    page.showState(hand.state());
    EXPECT_EQ(page.findChild<QLabel*>(QStringLiteral("hits"))->text(),
              QStringLiteral("1 of 2 found, built and marked right"));
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("interval"))->isHidden());
}

TEST(SummaryPageTest, SaysHitsIntervalDistanceLeanAndCounts)
{
    SampleRun run(3);
    for (const QPointF off : {QPointF(0.0, 0.0), QPointF(0.2, 0.3), QPointF(0.0, 2.6)}) {
        run.gradeAt(off);
        run.presenter.next();
    }
    ASSERT_TRUE(run.state().summary.has_value());
    SummaryPage page;
    page.setScheme(schemeOf(PaletteKind::Light));
    page.showState(run.state());
    const auto text = [&page](const char* name) {
        return page.findChild<QLabel*>(QLatin1String(name))->text();
    };
    EXPECT_EQ(text("hits"), QStringLiteral("2 of 3 in the target region"));
    EXPECT_TRUE(text("interval").contains(QLatin1String("67 %"))) << text("interval").toStdString();
    EXPECT_TRUE(text("meanDistance").contains(QLatin1String(" cm")));
    EXPECT_TRUE(text("summaryTitle").contains(QLatin1String("7")));
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("sides"))->isHidden()) << "the side was not asked";
    int counted = 0;
    for (const QLabel* count : page.findChildren<QLabel*>(QStringLiteral("verdictCount")))
        counted += count->text().toInt();
    EXPECT_EQ(counted, 3);
}

TEST(SummaryPageTest, EveryMarkLiesOnOneArmInTheShapeOfItsVerdict)
{
    SampleRun run(2);
    run.gradeAt({0.0, 0.0});
    run.presenter.next();
    run.gradeAt({0.0, 2.6});
    run.presenter.next();
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().runPicture != nullptr; }));
    const Scene& scene = run.state().runScene;
    const auto count = [&scene](Role role) {
        return std::count_if(scene.begin(), scene.end(),
                             [role](const SceneShape& s) { return s.role == role; });
    };
    EXPECT_EQ(count(Role::MarkOnTarget), 1);
    EXPECT_EQ(count(Role::MarkUnsafe), 1);
    EXPECT_EQ(count(Role::Region), 1);
    // A mark on the ideal point lies on the model's ideal point.
    const auto at = [&scene](Role role) {
        return std::find_if(scene.begin(), scene.end(),
                            [role](const SceneShape& s) { return s.role == role; })
            ->points.first();
    };
    EXPECT_LT(QLineF(at(Role::MarkOnTarget), at(Role::Ideal)).length(), 0.05);
    EXPECT_GT(at(Role::MarkUnsafe).y(), at(Role::Ideal).y() + 2.0);
}

TEST(SummaryPageTest, SeveralSitesAreToldApartAndOneIsChosenToBeDrawn)
{
    PracticeSetup setup = setupOf(Site::Deltoid, 6);
    setup.mix = {{{true, false, true}}, true};
    SampleRun run(setup);
    for (int i = 0; i < setup.length; ++i) {
        if (i % 2 == 0)
            run.refuse(FindingCode::Bruise);
        else
            run.gradeAt({});
        run.presenter.next();
    }
    SummaryPage page;
    page.setScheme(schemeOf(PaletteKind::Light));
    page.resize(1280, 700);
    page.show();
    page.showState(run.state());
    const Summary& summary = *run.state().summary;
    EXPECT_EQ(page.findChild<QLabel*>(QStringLiteral("refusals"))->text(), refusalNumbers(summary));
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("hits"))
                    ->text()
                    .endsWith(QStringLiteral("of %1 in the target region").arg(summary.marked)));
    QSignalSpy asked(&page, &SummaryPage::siteAsked);
    QTest::mouseClick(page.findChild<QRadioButton*>(QStringLiteral("runSite.ventrogluteal")), Qt::LeftButton,
                      {}, {8, 8});
    ASSERT_EQ(asked.count(), 1);
    const QString arm = page.findChild<QLabel*>(QStringLiteral("figureCaption"))->text();
    run.presenter.setRunSite(Site::Ventrogluteal);
    page.showState(run.state());
    EXPECT_NE(page.findChild<QLabel*>(QStringLiteral("figureCaption"))->text(), arm);
    settle();
    EXPECT_TRUE(layoutFaults(page).isEmpty()) << layoutFaults(page).join('\n').toStdString();
}

TEST(SummaryPageTest, CanBeRepeatedOrFollowedByANewRun)
{
    SampleRun run(1);
    run.gradeAt({});
    run.presenter.next();
    SummaryPage page;
    page.setScheme(schemeOf(PaletteKind::Light));
    page.showState(run.state());
    page.resize(1280, 700);
    page.show();
    QSignalSpy repeat(&page, &SummaryPage::repeatAsked);
    QSignalSpy anew(&page, &SummaryPage::newRunAsked);
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("repeat")), Qt::LeftButton);
    QTest::keyClick(page.findChild<QPushButton*>(QStringLiteral("newRunFromSummary")), Qt::Key_Space);
    EXPECT_EQ(repeat.count(), 1);
    EXPECT_EQ(anew.count(), 1);
    settle();
    EXPECT_TRUE(layoutFaults(page).isEmpty()) << layoutFaults(page).join('\n').toStdString();
    EXPECT_TRUE(namelessControls(page).isEmpty()) << namelessControls(page).join('\n').toStdString();
}

}  // namespace fb::test::summary_page_test
