#include "app/handout/handout_words.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/handout_sample.h"

namespace fb::test::handout_words_tests {

TEST(HandoutWordsTest, AFigureThatIsRepeatedIsOnePlateAndShowsAllOfIt)
{
    for (const auto& [convention, code] : {std::pair{Convention::DeltoidFingers, StepCode::LayFingers},
                                           {Convention::VentroglutealMedians, StepCode::Median}}) {
        const HandoutAsk ask = handoutAsk(convention);
        int asked = 0;
        int last = -1;
        for (std::size_t i = 0; i < ask.steps.size(); ++i)
            if (ask.steps[i].kind == LectureStepKind::Build && ask.steps[i].code == code) {
                ++asked;
                last = static_cast<int>(i);
            }
        ASSERT_GE(asked, 3);
        int shown = 0;
        for (const int step : keySteps(ask.steps))
            if (ask.steps[static_cast<std::size_t>(step)].code == code) {
                ++shown;
                EXPECT_EQ(step, last);
            }
        EXPECT_EQ(shown, 1);
    }
}

TEST(HandoutWordsTest, EveryOtherStepOfFindingTheSiteIsThereInOrder)
{
    for (const Convention convention : kConventions) {
        const HandoutAsk ask = handoutAsk(convention);
        const std::vector<int> chosen = keySteps(ask.steps);
        EXPECT_TRUE(std::ranges::is_sorted(chosen));
        std::set<StepCode> built;
        for (const LectureStep& step : ask.steps)
            if (step.kind == LectureStepKind::Build)
                built.insert(step.code);
        std::set<StepCode> shown;
        for (const int step : chosen) {
            EXPECT_EQ(ask.steps[static_cast<std::size_t>(step)].kind, LectureStepKind::Build);
            shown.insert(ask.steps[static_cast<std::size_t>(step)].code);
        }
        EXPECT_EQ(shown, built);
        EXPECT_EQ(chosen.size(), built.size());
    }
}

TEST(HandoutWordsTest, NothingToBuildIsNoPlate) { EXPECT_TRUE(keySteps({{LectureStepKind::Skin}}).empty()); }

TEST(HandoutWordsTest, StepsAreNumberedFromOneAndNoWordIsMissing)
{
    for (const Convention convention : kConventions) {
        const HandoutWords words = handoutWords(handoutAsk(convention));
        for (std::size_t i = 0; i < words.steps.size(); ++i) {
            EXPECT_EQ(words.steps[i].number, QString::number(i + 1));
            EXPECT_FALSE(words.steps[i].look.caption.isEmpty());
            EXPECT_EQ(words.steps[i].look.area, words.skin.area) << "nothing jumps from plate to plate";
        }
        for (const QString& each : {words.heading,
                                    words.manner,
                                    words.patient,
                                    words.skin.caption,
                                    words.hazards.caption,
                                    words.hazardsHeading,
                                    words.ruleHeading,
                                    words.rule,
                                    words.sourcesHeading,
                                    words.sources,
                                    words.caution,
                                    words.task,
                                    words.name,
                                    words.day,
                                    words.howTo,
                                    words.order,
                                    words.keepClear,
                                    words.keyHeading,
                                    words.keyHowTo,
                                    words.page})
            EXPECT_FALSE(each.isEmpty());
        EXPECT_TRUE(words.skin.scene.isEmpty());
        EXPECT_FALSE(words.hazards.scene.isEmpty());
    }
}

TEST(HandoutWordsTest, TheWholeFigureIsInSightOnAStoutBodyToo)
{
    for (const Convention convention : kConventions)
        for (const View view : askedViews(siteOf(convention))) {
            const HandoutWords words = handoutWords(handoutAsk(convention, view, 120.0, Side::Left));
            for (const HandoutStep& step : words.steps)
                for (const SceneShape& shape : step.look.scene)
                    for (const QPointF& point : shape.points)
                        EXPECT_TRUE(step.look.area.contains(point))
                            << wordOf(convention) << step.number.toStdString();
        }
}

TEST(HandoutWordsTest, ThePatientIsToldByBuildAndPosture)
{
    const QString lean = handoutWords(handoutAsk(Convention::DeltoidStrip, {}, 52.0)).patient;
    const QString heavy = handoutWords(handoutAsk(Convention::DeltoidStrip, {}, 110.0)).patient;
    EXPECT_TRUE(lean.contains(QStringLiteral("52 kg"))) << lean.toStdString();
    EXPECT_TRUE(lean.contains(QStringLiteral("19"))) << lean.toStdString();
    EXPECT_TRUE(heavy.contains(QStringLiteral("110 kg"))) << heavy.toStdString();
    EXPECT_TRUE(heavy.contains(QStringLiteral("forearm in the lap"))) << heavy.toStdString();
}

}  // namespace fb::test::handout_words_tests
