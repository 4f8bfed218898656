#include "app/lecture/lecture_step.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "app/scene/by_hand_scene.h"
#include "tests/support/core_atlas.h"

namespace fb::test::lecture_step_test {

struct Case {
    Target target;
    std::vector<LectureStep> steps;
    std::string name;
};

Case shownCase(Convention convention, View view, double index = 24, Side side = Side::Right)
{
    Target target = locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, weightOf(index, 165), side),
                           convention, view)
                        .value();
    std::vector<LectureStep> steps = lectureSteps(target);
    return {std::move(target), std::move(steps),
            std::string(wordOf(convention)) + " in " + std::string(wordOf(view)) + ", " +
                std::string(wordOf(side)) + ", index " + std::to_string(index)};
}

// Every convention in every view of its site, lean, average and heavy, on both sides.
const std::vector<Case>& everyCase()
{
    static const std::vector<Case> kAll = [] {
        std::vector<Case> all;
        for (const Convention convention : kConventions)
            for (const View view : kViews)
                for (const double index : {19.0, 25.0, 38.0})
                    for (const Side side : kSides)
                        if (siteOf(view) == siteOf(convention))
                            all.push_back(shownCase(convention, view, index, side));
        return all;
    }();
    return kAll;
}

std::vector<LectureStep> of(const Case& one, LectureStepKind kind)
{
    std::vector<LectureStep> found;
    std::ranges::copy_if(one.steps, std::back_inserter(found),
                         [kind](const LectureStep& step) { return step.kind == kind; });
    return found;
}

int placeOfBuild(const Case& one, StepCode code)
{
    const auto it = std::ranges::find_if(one.steps, [code](const LectureStep& step) {
        return step.kind == LectureStepKind::Build && step.code == code;
    });
    return it == one.steps.end() ? -1 : static_cast<int>(it - one.steps.begin());
}

TEST(LectureStepTest, ALectureBeginsWithTheSkinAlone)
{
    for (const Case& one : everyCase()) {
        ASSERT_EQ(one.steps.front().kind, LectureStepKind::Skin) << one.name;
        EXPECT_EQ(one.steps.front().construction, -1) << one.name;
        EXPECT_EQ(of(one, LectureStepKind::Skin).size(), 1U) << one.name;
    }
}

TEST(LectureStepTest, EveryPressIsFollowedByTheNameOfWhatWasFelt)
{
    for (const Case& one : everyCase()) {
        EXPECT_FALSE(of(one, LectureStepKind::Press).empty()) << one.name << ": a site is found by feeling";
        for (std::size_t i = 0; i < one.steps.size(); ++i) {
            if (one.steps[i].kind != LectureStepKind::Press)
                continue;
            ASSERT_LT(i + 1, one.steps.size()) << one.name;
            const LectureStep& next = one.steps[i + 1];
            EXPECT_EQ(next.kind, LectureStepKind::Build) << one.name;
            EXPECT_EQ(next.code, one.steps[i].code) << one.name;
            EXPECT_EQ(next.construction, one.steps[i].construction) << one.name;
        }
    }
}

TEST(LectureStepTest, TheBuildIsTheTargetsOwnConstructionInItsOrder)
{
    for (const Case& one : everyCase()) {
        const auto built = of(one, LectureStepKind::Build);
        ASSERT_EQ(static_cast<int>(built.size()), watchStepCount(one.target)) << one.name;
        std::size_t next = 0;
        for (const Step& step : one.target.construction) {
            if (step.points.empty())
                continue;
            EXPECT_EQ(built[next].code, step.code) << one.name;
            EXPECT_EQ(built[next].construction, static_cast<int>(next)) << one.name;
            const bool pressed =
                std::ranges::any_of(of(one, LectureStepKind::Press), [&](const LectureStep& press) {
                    return press.construction == built[next].construction;
                });
            EXPECT_EQ(pressed, std::string(wordOf(step.code)).starts_with("feel_")) << one.name;
            ++next;
        }
    }
}

TEST(LectureStepTest, AFigureOfNoPointsIsNoStep)
{
    Case one = shownCase(Convention::DeltoidStrip, View::ShoulderSide);
    one.target.construction[2].points.clear();
    const auto steps = lectureSteps(one.target);
    EXPECT_EQ(steps.size() + 1, one.steps.size());
    EXPECT_EQ(steps[static_cast<std::size_t>(placeOfBuild(one, StepCode::IdealPoint)) - 1].construction,
              watchStepCount(one.target) - 1)
        << "counted as watchScene() counts";
}

TEST(LectureStepTest, RegionAndIdealPointComeRightBeforeTheHazards)
{
    for (const Case& one : everyCase()) {
        const int region = placeOfBuild(one, StepCode::Region);
        const int ideal = placeOfBuild(one, StepCode::IdealPoint);
        const auto hazards = std::ranges::find(one.steps, LectureStepKind::Hazards, &LectureStep::kind);
        ASSERT_NE(hazards, one.steps.end()) << one.name;
        ASSERT_GT(region, 0) << one.name;
        EXPECT_EQ(ideal, region + 1) << one.name;
        EXPECT_EQ(hazards - one.steps.begin(), ideal + 1) << one.name;
        EXPECT_EQ(hazards->construction, watchStepCount(one.target) - 1) << one.name;
    }
}

TEST(LectureStepTest, EveryWrongPlaceIsShownOnceAfterAllHazards)
{
    for (const Case& one : everyCase()) {
        std::vector<HazardCode> asked;
        for (const Hazard& hazard : one.target.hazards)
            if (hazard.kind != HazardKind::Near)
                asked.push_back(hazard.code);
        ASSERT_FALSE(asked.empty()) << one.name;
        ASSERT_GT(one.steps.size(), asked.size() + 1) << one.name;
        for (std::size_t i = 0; i < asked.size(); ++i) {
            const LectureStep& step = one.steps[one.steps.size() - asked.size() + i];
            EXPECT_EQ(step.kind, LectureStepKind::WrongPlace) << one.name;
            EXPECT_EQ(step.hazard, asked[i]) << one.name;
            EXPECT_EQ(step.construction, watchStepCount(one.target) - 1) << one.name;
        }
        EXPECT_EQ(one.steps[one.steps.size() - asked.size() - 1].kind, LectureStepKind::Hazards) << one.name;
    }
}

TEST(LectureStepTest, AKeyIsOfOneStepButForFiguresLaidOneAfterTheOther)
{
    for (const Case& one : everyCase()) {
        std::set<std::string> seen;
        for (std::size_t i = 0; i < one.steps.size(); ++i) {
            const std::string key = keyOf(one.steps[i]);
            const bool goesOn = i > 0 && keyOf(one.steps[i - 1]) == key;
            const bool isSeveral =
                one.steps[i].code == StepCode::LayFingers || one.steps[i].code == StepCode::Median;
            EXPECT_TRUE(seen.insert(key).second || (goesOn && isSeveral)) << one.name << ": " << key;
        }
    }
}

TEST(LectureStepTest, KeysAreWhatNotesAndHandOutsCallTheSteps)
{
    EXPECT_EQ(keyOf({LectureStepKind::Skin}), "skin");
    EXPECT_EQ(keyOf({LectureStepKind::Press, 1, StepCode::FeelSpine, {}}), "press feel_spine");
    EXPECT_EQ(keyOf({LectureStepKind::Build, 7, StepCode::Region, {}}), "build region");
    EXPECT_EQ(keyOf({LectureStepKind::Hazards, 8, {}, {}}), "hazards");
    EXPECT_EQ(keyOf({LectureStepKind::WrongPlace, 8, {}, HazardCode::SciaticNerve}),
              "wrong_place sciatic_nerve");
}

TEST(LectureStepTest, EveryStepIsFoundAgainInItsOwnLecture)
{
    for (const Case& one : everyCase())
        for (std::size_t i = 0; i < one.steps.size(); ++i)
            EXPECT_EQ(sameStep(one.steps, one.steps[i]), static_cast<int>(i))
                << one.name << ": " << keyOf(one.steps[i]);
}

TEST(LectureStepTest, WhenTheBodyChangesTheLectureGoesOnWhereItWas)
{
    const Case lean = shownCase(Convention::VentroglutealMedians, View::HipSide, 19);
    const Case heavy = shownCase(Convention::VentroglutealMedians, View::HipSide, 38);
    for (std::size_t i = 0; i < lean.steps.size(); ++i)
        EXPECT_EQ(sameStep(heavy.steps, lean.steps[i]), static_cast<int>(i)) << keyOf(lean.steps[i]);
}

TEST(LectureStepTest, InAnotherConventionTheSameIsShownOrTheNearestBeforeIt)
{
    const Case hand = shownCase(Convention::VentroglutealHand, View::HipSide);
    const Case medians = shownCase(Convention::VentroglutealMedians, View::HipSide);
    const auto keyOfSame = [&](const Case& to, const Case& from, StepCode code) {
        const LectureStep& step = from.steps[static_cast<std::size_t>(placeOfBuild(from, code))];
        return keyOf(to.steps[static_cast<std::size_t>(sameStep(to.steps, step))]);
    };
    EXPECT_EQ(keyOfSame(medians, hand, StepCode::FeelCrest), "build feel_crest");
    EXPECT_EQ(keyOfSame(medians, hand, StepCode::Region), "build region");
    EXPECT_EQ(keyOfSame(hand, medians, StepCode::Region), "build region");
    EXPECT_EQ(keyOfSame(medians, hand, StepCode::LayPalm), "build feel_tubercle");
    EXPECT_EQ(keyOfSame(hand, medians, StepCode::FeelTubercle), "build lay_palm");
}

TEST(LectureStepTest, AWrongPlaceThatIsNotThereGoesBackToAllHazards)
{
    const Case side = shownCase(Convention::VastusThirds, View::ThighSide);
    const Case front = shownCase(Convention::VastusThirds, View::ThighFront);
    const LectureStep vessels{LectureStepKind::WrongPlace, 7, {}, HazardCode::FemoralVessels};
    const auto shown = [&](const Case& one) {
        return keyOf(one.steps[static_cast<std::size_t>(sameStep(one.steps, vessels))]);
    };
    EXPECT_EQ(shown(front), "wrong_place femoral_vessels");
    EXPECT_EQ(shown(side), "hazards");
}

TEST(LectureStepTest, WhereverTheLectureGoesThereIsAStep)
{
    for (const Case& from : everyCase()) {
        for (const Case& to : everyCase()) {
            for (const LectureStep& step : from.steps) {
                const int at = sameStep(to.steps, step);
                ASSERT_TRUE(at >= 0 && at < static_cast<int>(to.steps.size())) << from.name << to.name;
                const bool shown = std::ranges::any_of(
                    to.steps, [&](const LectureStep& other) { return keyOf(other) == keyOf(step); });
                if (shown) {
                    ASSERT_EQ(keyOf(to.steps[static_cast<std::size_t>(at)]), keyOf(step)) << to.name;
                }
            }
        }
    }
}

TEST(LectureStepTest, EveryKindHasAWordOfItsOwn)
{
    std::set<std::string_view> words;
    for (int kind = 0; kind < kLectureStepKindCount; ++kind)
        words.insert(wordOf(static_cast<LectureStepKind>(kind)));
    EXPECT_EQ(words, (std::set<std::string_view>{"build", "hazards", "press", "skin", "wrong_place"}));
}

}  // namespace fb::test::lecture_step_test
