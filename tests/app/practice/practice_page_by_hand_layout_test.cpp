#include <gtest/gtest.h>

#include <QScrollArea>

#include "tests/support/by_hand_steps.h"
#include "tests/support/hand_walk.h"
#include "tests/support/layout_audit.h"
#include "tests/support/window_walk.h"

namespace practice_page_by_hand_layout_test {

namespace {

using namespace fb;
using namespace fb::test;

struct Sight {
    int textPercent;
    Qt::LayoutDirection direction;
};

class ByHandInEverySight : public testing::TestWithParam<Sight> {};

TEST_P(ByHandInEverySight, NothingIsCutOffAndEveryControlHasAName)
{
    QApplication::setLayoutDirection(GetParam().direction);
    for (const Convention convention :
         {Convention::VentroglutealHand, Convention::VastusThirds, Convention::DeltoidFingers}) {
        Preferences preferences = byHandPreferences(convention);
        preferences.textPercent = GetParam().textPercent;
        OpenWindow open(preferences);
        ASSERT_TRUE(open.isReady);
        throughHandStates(open, [&](const char* where) {
            settle();
            const QStringList faults = layoutFaults(open.window()) + namelessControls(open.window());
            EXPECT_TRUE(faults.isEmpty()) << wordOf(convention) << ", " << where << ":\n"
                                          << faults.join('\n').toStdString();
            EXPECT_LE(open.window().width(), 1280) << where;
        });
        EXPECT_EQ(open.state().phase, Phase::Summary);
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

// At 150 percent the column is longer than the window.
TEST(PracticePageByHandSightTest, TheRequestIsReadFirstAndWhatPlantsAndBuildsIsInSightOnceTheFingerPresses)
{
    Preferences preferences = byHandPreferences(Convention::VastusThirds);
    preferences.textPercent = 150;
    OpenWindow open(preferences);
    ASSERT_TRUE(open.isReady);
    settle();
    const auto isInSight = [&](const char* name) {
        auto* scroll = open.find<QScrollArea>("columnScroll");
        auto* part = open.find(name);
        const QRect seen(part->mapTo(scroll->viewport(), QPoint()), part->size());
        return part->isVisible() && scroll->viewport()->rect().contains(seen);
    };
    HandLearner learner(open.practice());
    EXPECT_TRUE(isInSight("request"));
    learner.press(Landmark::GreaterTrochanter);
    settle();
    EXPECT_TRUE(isInSight("flagName"));
    EXPECT_TRUE(isInSight("plantFlag"));
    EXPECT_TRUE(isInSight("felt"));
    learner.plant();
    learner.build();
    settle();
    EXPECT_TRUE(isInSight("cellColumn"));
    learner.grade();
    settle();
    EXPECT_TRUE(isInSight("request") && isInSight("firstCause")) << "a grade is read from its top as well";
    open.practice().next();
    settle();
    EXPECT_TRUE(isInSight("request")) << "a new request is read from its top";
}

INSTANTIATE_TEST_SUITE_P(PracticePageByHandLayoutTest, ByHandInEverySight,
                         testing::Values(Sight{100, Qt::LeftToRight}, Sight{150, Qt::LeftToRight},
                                         Sight{100, Qt::RightToLeft}));

}  // namespace

}  // namespace practice_page_by_hand_layout_test
