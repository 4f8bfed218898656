#include "core/grade/flag_grade.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace flag_grade_test {

namespace {

Target hip(Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64, side),
                  Convention::VentroglutealHand, View::HipSide)
        .value();
}

std::vector<Flag> flawlessFlags(const Target& target)
{
    std::vector<Flag> flags;
    for (const Landmark asked : askedLandmarks(target.convention)) {
        const auto points = placeOf(target, asked)->points;
        flags.push_back({asked, points[points.size() / 2]});
    }
    return flags;
}

const FlagGrade& of(const std::vector<FlagGrade>& grades, Landmark asked)
{
    return *std::ranges::find(grades, asked, &FlagGrade::asked);
}

}  // namespace

TEST(FlagGradeTest, FlagsOnTheirLandmarksAreFound)
{
    for (const Convention convention : kConventions) {
        for (const View view : askedViews(siteOf(convention))) {
            const Target target = locate(test::atlas(), test::defaultPolicy(),
                                         test::adult(Sex::Male, 180, 85), convention, view)
                                      .value();
            for (const FlagGrade& grade : gradeFlags(target, test::defaultPolicy(), flawlessFlags(target))) {
                EXPECT_EQ(grade.verdict, FlagVerdict::Found) << wordOf(grade.asked);
                EXPECT_EQ(grade.distance.value(), 0.0);
                EXPECT_EQ(grade.direction, Direction::None);
            }
        }
    }
}

TEST(FlagGradeTest, TheToleranceIsThePolicysAndItsBorderCounts)
{
    const Target target = hip();
    const Point spine = target.landmarks.at("asis");
    const auto verdictAt = [&](double away) {
        const std::vector<Flag> flags{{Landmark::AnteriorSuperiorIliacSpine, spine + Point{0.0, away}}};
        return of(gradeFlags(target, test::defaultPolicy(), flags), Landmark::AnteriorSuperiorIliacSpine)
            .verdict;
    };
    EXPECT_EQ(verdictAt(1.0), FlagVerdict::Found);
    EXPECT_EQ(verdictAt(1.01), FlagVerdict::Near);
    EXPECT_EQ(verdictAt(2.0), FlagVerdict::Near);
    EXPECT_EQ(verdictAt(2.01), FlagVerdict::Off);
}

TEST(FlagGradeTest, TheWayAFlagLiesOffIsToldOnTheBodyOnEitherSide)
{
    for (const Side side : kSides) {
        const Target target = hip(side);
        const Point spine = target.landmarks.at("asis");
        const double toFoot = side == Side::Right ? 1.0 : -1.0;
        const auto wayAt = [&](Point off) {
            const std::vector<Flag> flags{{Landmark::AnteriorSuperiorIliacSpine, spine + off}};
            return of(gradeFlags(target, test::defaultPolicy(), flags), Landmark::AnteriorSuperiorIliacSpine)
                .direction;
        };
        EXPECT_EQ(wayAt({3.0 * toFoot, 0.0}), Direction::Low);
        EXPECT_EQ(wayAt({-3.0 * toFoot, 0.0}), Direction::High);
        EXPECT_EQ(wayAt({0.0, 3.0}), Direction::Forward);
        EXPECT_EQ(wayAt({0.0, -3.0}), Direction::Back);
    }
}

TEST(FlagGradeTest, AFlagThatLiesOffAslantIsOffInTwoWays)
{
    const Target target = hip();
    const Point spine = target.landmarks.at("asis");
    const auto waysAt = [&](Point off) {
        const std::vector<Flag> flags{{Landmark::AnteriorSuperiorIliacSpine, spine + off}};
        const auto grades = gradeFlags(target, test::defaultPolicy(), flags);
        const FlagGrade& grade = of(grades, Landmark::AnteriorSuperiorIliacSpine);
        return Ways{grade.direction, grade.second};
    };
    EXPECT_EQ(waysAt({3.0, -2.5}), (Ways{Direction::Low, Direction::Back}));
    EXPECT_EQ(waysAt({2.5, -3.0}), (Ways{Direction::Back, Direction::Low}));
    EXPECT_EQ(waysAt({3.0, -1.4}), (Ways{Direction::Low, Direction::None}));
    EXPECT_EQ(waysAt({0.0, 0.0}), Ways{});
}

TEST(FlagGradeTest, AFlagOnAnotherBoneIsOffAndSaysOnWhich)
{
    const Target target = hip();
    const std::vector<Flag> flags{{Landmark::AnteriorSuperiorIliacSpine, target.landmarks.at("psis")}};
    const auto grades = gradeFlags(target, test::defaultPolicy(), flags);
    const FlagGrade& grade = of(grades, Landmark::AnteriorSuperiorIliacSpine);
    EXPECT_EQ(grade.verdict, FlagVerdict::Off);
    ASSERT_TRUE(grade.really);
    EXPECT_EQ(*grade.really, Landmark::PosteriorSuperiorIliacSpine);
}

TEST(FlagGradeTest, TheRightPlaceUnderTheWrongNameIsMisnamed)
{
    const Target target = hip();
    const std::vector<Flag> flags{
        {Landmark::LesserTrochanter, target.landmarks.at("greater_trochanter") + Point{0.3, 0.0}}};
    const auto grades = gradeFlags(target, test::defaultPolicy(), flags);
    const FlagGrade& grade = of(grades, Landmark::GreaterTrochanter);
    EXPECT_EQ(grade.verdict, FlagVerdict::Misnamed);
    ASSERT_TRUE(grade.flag);
    EXPECT_EQ(grade.flag->name, Landmark::LesserTrochanter);
    EXPECT_NEAR(grade.distance.value(), 0.3, 1e-9);
}

// The spine ends the crest: a flag rightly on it is not a misnamed crest.
TEST(FlagGradeTest, AFlagAtHomeIsNoOtherLandmarksMisnamedOne)
{
    const Target target = hip();
    const std::vector<Flag> flags{{Landmark::AnteriorSuperiorIliacSpine, target.landmarks.at("asis")}};
    EXPECT_EQ(of(gradeFlags(target, test::defaultPolicy(), flags), Landmark::IliacCrest).verdict,
              FlagVerdict::Missing);
}

TEST(FlagGradeTest, WithoutFlagsEverythingIsMissing)
{
    const auto grades = gradeFlags(hip(), test::defaultPolicy(), {});
    EXPECT_EQ(grades.size(), askedLandmarks(Convention::VentroglutealHand).size());
    for (const FlagGrade& grade : grades) {
        EXPECT_EQ(grade.verdict, FlagVerdict::Missing);
        EXPECT_FALSE(grade.flag);
    }
}

TEST(FlagGradeTest, VerdictsHaveWordsOfTheirOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kFlagVerdictCount; ++i)
        words.insert(wordOf(static_cast<FlagVerdict>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kFlagVerdictCount));
}

}  // namespace flag_grade_test
