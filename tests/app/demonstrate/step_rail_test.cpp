#include "app/demonstrate/step_rail.h"

#include <gtest/gtest.h>

#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::step_rail_test {

struct Rail {
    Rail()
    {
        sample.presenter.setCalm(true);
        rail.setScheme(schemeOf(PaletteKind::Light));
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &rail, &StepRail::showState);
        rail.useLibrary(lectureLibrary());
        rail.showState();
        rail.resize(800, rail.sizeHint().height());
        rail.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&rail));
    }
    [[nodiscard]] QPushButton* button(const char* name)
    {
        return rail.findChild<QPushButton*>(QLatin1String(name));
    }
    [[nodiscard]] bool waitForThumbs()
    {
        return QTest::qWaitFor([this] { return painted.count() > 0; }, 30000);
    }
    [[nodiscard]] bool hasThumb(int step) const
    {
        return !list->item(step)->data(StepRail::kThumbRole).value<QImage>().isNull();
    }

    LectureSample sample{Site::Ventrogluteal};
    StepRail rail{sample.presenter};
    QListWidget* list = rail.findChild<QListWidget*>(QStringLiteral("lectureSteps"));
    QSignalSpy painted{&rail, &StepRail::thumbsPainted};
};

TEST(StepRailTest, EveryStepByItsNameAndTheShownOneChosen)
{
    Rail shown;
    const LectureState& state = shown.sample.state();
    ASSERT_EQ(shown.list->count(), static_cast<int>(state.steps.size()));
    for (int i = 0; i < shown.list->count(); ++i)
        EXPECT_EQ(shown.list->item(i)->text(),
                  stepTitle(*state.shown, state.steps[static_cast<std::size_t>(i)]));
    EXPECT_EQ(shown.list->currentRow(), 0);
    shown.sample.presenter.goTo(shown.sample.lastStep());
    EXPECT_EQ(shown.list->currentRow(), shown.sample.lastStep());
    EXPECT_TRUE(shown.list->viewport()->rect().contains(
        shown.list->visualItemRect(shown.list->currentItem()).center()))
        << "it is scrolled into sight";
}

TEST(StepRailTest, AClickOnAStepShowsIt)
{
    Rail shown;
    QTest::mouseClick(shown.list->viewport(), Qt::LeftButton, {},
                      shown.list->visualItemRect(shown.list->item(3)).center());
    EXPECT_EQ(shown.sample.state().step, 3);
}

TEST(StepRailTest, NextAndBackStopAtTheEnds)
{
    Rail shown;
    EXPECT_FALSE(shown.button("lectureBack")->isEnabled());
    QTest::mouseClick(shown.button("lectureNext"), Qt::LeftButton);
    QTest::keyClick(shown.button("lectureNext"), Qt::Key_Space);
    EXPECT_EQ(shown.sample.state().step, 2);
    QTest::mouseClick(shown.button("lectureBack"), Qt::LeftButton);
    EXPECT_EQ(shown.sample.state().step, 1);
    shown.sample.presenter.goTo(shown.sample.lastStep());
    EXPECT_FALSE(shown.button("lectureNext")->isEnabled());
    EXPECT_TRUE(shown.button("lectureBack")->isEnabled());
}

TEST(StepRailTest, ThumbnailsComeByThemselvesAndAgainForAnotherBody)
{
    Rail shown;
    EXPECT_FALSE(shown.hasThumb(0)) << "nothing waits for them";
    ASSERT_TRUE(shown.waitForThumbs());
    for (int i = 0; i < shown.list->count(); ++i)
        EXPECT_TRUE(shown.hasThumb(i)) << i;
    const auto before = shown.list->item(1)->data(StepRail::kThumbRole).value<QImage>();
    shown.painted.clear();
    shown.sample.presenter.setStoutness(Stoutness::Heavy);
    ASSERT_TRUE(shown.waitForThumbs());
    EXPECT_NE(shown.list->item(1)->data(StepRail::kThumbRole).value<QImage>(), before);
}

TEST(StepRailTest, AStepThatIsShownPaintsNoThumbnailAnew)
{
    Rail shown;
    ASSERT_TRUE(shown.waitForThumbs());
    shown.painted.clear();
    for (int i = 0; i < 4; ++i)
        shown.sample.presenter.next();
    QTest::qWait(600);
    EXPECT_EQ(shown.painted.count(), 0);
}

TEST(StepRailTest, AnotherSiteHasOtherSteps)
{
    Rail shown;
    shown.sample.presenter.openSite(Site::Deltoid);
    EXPECT_EQ(shown.list->count(), static_cast<int>(shown.sample.state().steps.size()));
    EXPECT_EQ(namelessControls(shown.rail).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::step_rail_test
