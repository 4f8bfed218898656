#include "core/site/landmark.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace landmark_test {

namespace {

Target targetOf(Convention convention, View view, Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64, side), convention,
                  view)
        .value();
}

}  // namespace

TEST(LandmarkTest, EveryAskedLandmarkHasAPlaceInEveryViewThatAsks)
{
    for (const Convention convention : kConventions) {
        ASSERT_FALSE(askedLandmarks(convention).empty());
        for (const View view : askedViews(siteOf(convention))) {
            const Target target = targetOf(convention, view);
            for (const Landmark asked : askedLandmarks(convention))
                EXPECT_TRUE(placeOf(target, asked)) << wordOf(convention) << ' ' << wordOf(asked);
        }
    }
}

TEST(LandmarkTest, AskedNamesAreOfferedAmongNearMisses)
{
    for (const Convention convention : kConventions) {
        const auto offered = offeredLandmarks(siteOf(convention));
        EXPECT_EQ(std::set(offered.begin(), offered.end()).size(), offered.size());
        for (const Landmark asked : askedLandmarks(convention))
            EXPECT_NE(std::ranges::find(offered, asked), offered.end()) << wordOf(asked);
        EXPECT_GE(offered.size(), askedLandmarks(convention).size() + 4);
    }
}

TEST(LandmarkTest, ThePlaceOfAPointIsThePointOfTheTarget)
{
    const Target target = targetOf(Convention::VentroglutealHand, View::HipSide);
    const auto place = placeOf(target, Landmark::AnteriorSuperiorIliacSpine);
    ASSERT_TRUE(place);
    EXPECT_EQ(place->kind, FigureKind::Point);
    EXPECT_EQ(place->nearest({100.0, 3.0}), target.landmarks.at("asis"));
}

TEST(LandmarkTest, TheCrestIsALineAndTheNearestPlaceLiesOnIt)
{
    const Target target = targetOf(Convention::VentroglutealMedians, View::HipSide);
    const auto crest = placeOf(target, Landmark::IliacCrest);
    ASSERT_TRUE(crest);
    EXPECT_EQ(crest->kind, FigureKind::Line);
    const Point between = lerp(crest->points[2], crest->points[3], 0.4);
    EXPECT_LT(distance(crest->nearest(between), between), 1e-9);
    const Point spine = target.landmarks.at("asis");
    EXPECT_LT(distance(crest->nearest(spine), spine), 0.5);
}

TEST(LandmarkTest, LeftIsTheMirrorOfRight)
{
    for (const Landmark asked : askedLandmarks(Convention::VentroglutealHand)) {
        const auto right = placeOf(targetOf(Convention::VentroglutealHand, View::HipSide), asked);
        const auto left = placeOf(targetOf(Convention::VentroglutealHand, View::HipSide, Side::Left), asked);
        ASSERT_EQ(right->points.size(), left->points.size());
        for (std::size_t i = 0; i < right->points.size(); ++i)
            EXPECT_LT(distance(mirrored(right->points[i]), left->points[i]), 1e-5);
    }
}

TEST(LandmarkTest, NearMissesThatNoPlateShowsHaveNoPlace)
{
    const Target target = targetOf(Convention::VentroglutealHand, View::HipSide);
    EXPECT_FALSE(placeOf(target, Landmark::LesserTrochanter));
    EXPECT_FALSE(placeOf(target, Landmark::Acromion));
}

TEST(LandmarkTest, WordsAreOfTheirOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kLandmarkCount; ++i)
        words.insert(wordOf(landmarkAt(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kLandmarkCount));
    EXPECT_FALSE(words.contains(""));
}

}  // namespace landmark_test
