#include "core/feel/felt_bones.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace felt_bones_test {

namespace {

std::vector<FeltBone> bonesOf(View view)
{
    const BodyMap map = bodyMap(test::atlas(), view, test::adult(Sex::Female, 163, 66)).value();
    return feltBones(Places(test::plateOf(view), map));
}

Point landmarkOf(View view, std::string_view id)
{
    const BodyMap map = bodyMap(test::atlas(), view, test::adult(Sex::Female, 163, 66)).value();
    return Places(test::plateOf(view), map).landmark(id);
}

const FeltBone* pointAt(const std::vector<FeltBone>& bones, Point at)
{
    const auto bone = std::ranges::find_if(bones, [&](const FeltBone& one) {
        return one.shape == BoneShape::Point && distance(one.line.front(), at) < 1e-9;
    });
    return bone == bones.end() ? nullptr : &*bone;
}

const FeltBone kRim{BoneShape::Edge, {{0, 0}, {4, 0}, {4, 0}, {4, 3}}};

}  // namespace

TEST(FeltBonesTest, EveryCornerAndKnobOfTheDrawingIsThere)
{
    struct Corner {
        View view{};
        std::string_view landmark;
    };
    for (const auto& [view, landmark] :
         {Corner{View::ShoulderSide, "landmark.lateral-epicondyle"},
          Corner{View::ShoulderSide, "landmark.deltoid-tuberosity"}, Corner{View::HipSide, "landmark.asis"},
          Corner{View::HipSide, "landmark.iliac-tubercle"}, Corner{View::HipSide, "landmark.psis"},
          Corner{View::HipSide, "landmark.greater-trochanter"},
          Corner{View::HipSide, "landmark.ischial-tuberosity"},
          Corner{View::HipSide, "landmark.lateral-femoral-epicondyle"},
          Corner{View::ThighSide, "landmark.asis"}, Corner{View::ThighSide, "landmark.greater-trochanter"},
          Corner{View::ThighSide, "landmark.patella"},
          Corner{View::ThighSide, "landmark.lateral-femoral-epicondyle"},
          Corner{View::ThighFront, "landmark.asis"}, Corner{View::ThighFront, "landmark.greater-trochanter"},
          Corner{View::ThighFront, "landmark.patella"},
          Corner{View::ThighFront, "landmark.lateral-femoral-epicondyle"}})
        EXPECT_NE(pointAt(bonesOf(view), landmarkOf(view, landmark)), nullptr)
            << wordOf(view) << ' ' << landmark;
}

TEST(FeltBonesTest, ThePointsOfTheCrestStandOnIt)
{
    const std::vector<FeltBone> bones = bonesOf(View::HipSide);
    for (const std::string_view id : {"landmark.asis", "landmark.iliac-tubercle", "landmark.psis"}) {
        const FeltBone* point = pointAt(bones, landmarkOf(View::HipSide, id));
        ASSERT_NE(point, nullptr) << id;
        ASSERT_GE(point->on, 0) << id;
        const FeltBone& crest = bones[static_cast<std::size_t>(point->on)];
        EXPECT_EQ(crest.shape, BoneShape::Edge);
        // The tubercle swells outward from the rim.
        EXPECT_LT(touched(crest, point->line.front()).away, 1.0) << id;
    }
}

TEST(FeltBonesTest, AKnobIsASurfaceWithItsTopInside)
{
    for (const View view : {View::HipSide, View::ThighSide, View::ThighFront}) {
        int knobs = 0;
        for (const FeltBone& bone : bonesOf(view)) {
            if (bone.shape == BoneShape::Broad && !bone.line.empty()) {
                ++knobs;
                EXPECT_TRUE(bone.area->contains(bone.line.front())) << wordOf(view);
            }
        }
        EXPECT_EQ(knobs, view == View::ThighSide ? 2 : 1) << wordOf(view);
    }
}

TEST(FeltBonesTest, OnlyTheTwoTuberositiesAreFeltThroughMuscle)
{
    for (const View view : {View::ShoulderSide, View::HipSide, View::ThighFront, View::ThighSide}) {
        for (const FeltBone& bone : bonesOf(view)) {
            if (!bone.deep)
                continue;
            const std::string_view id =
                view == View::HipSide ? "landmark.ischial-tuberosity" : "landmark.deltoid-tuberosity";
            EXPECT_EQ(bone.line.front(), landmarkOf(view, id));
        }
    }
    EXPECT_EQ(std::ranges::count_if(bonesOf(View::ShoulderSide), &FeltBone::deep), 1);
    EXPECT_EQ(std::ranges::count_if(bonesOf(View::HipSide), &FeltBone::deep), 1);
}

TEST(FeltBonesTest, TheAcromionsRimRunsFromItsFrontToTheShoulderBlade)
{
    const std::vector<FeltBone> bones = bonesOf(View::ShoulderSide);
    const FeltBone& rim = bones.front();
    EXPECT_EQ(rim.shape, BoneShape::Edge);
    EXPECT_EQ(rim.line.front(), landmarkOf(View::ShoulderSide, "landmark.acromion.front"));
    EXPECT_EQ(rim.line.back(), landmarkOf(View::ShoulderSide, "landmark.scapula.spine"));
    EXPECT_LT(touched(rim, landmarkOf(View::ShoulderSide, "landmark.acromion.lateral")).away, 1e-9);
}

TEST(FeltBonesTest, AViewThatIsOnlyShownHasNone)
{
    for (const View view : {View::ShoulderThreeQuarter, View::HipBehind})
        EXPECT_TRUE(bonesOf(view).empty()) << wordOf(view);
}

TEST(FeltBonesTest, AnEdgeIsTouchedAtItsNearestPlace)
{
    const Touch middle = touched(kRim, {1, 2});
    EXPECT_NEAR(middle.away, 2.0, 1e-12);
    EXPECT_EQ(middle.at, (Point{1, 0}));
    EXPECT_EQ(middle.along, (Point{1, 0}));
    EXPECT_NEAR(middle.place, 1.0, 1e-12);
    const Touch end = touched(kRim, {5, 4});
    EXPECT_EQ(end.at, (Point{4, 3}));
    EXPECT_EQ(end.along, (Point{0, 1}));
    EXPECT_NEAR(end.place, 7.0, 1e-12);
}

TEST(FeltBonesTest, ASurfaceIsTouchedInsideAndElseAtItsBorder)
{
    const FeltBone surface{BoneShape::Broad, {}, Polygon::rectangle(0, 4, 0, 2)};
    EXPECT_EQ(touched(surface, {1, 1}).away, 0.0);
    EXPECT_EQ(touched(surface, {1, 1}).at, (Point{1, 1}));
    EXPECT_NEAR(touched(surface, {1, 5}).away, 3.0, 1e-12);
    EXPECT_EQ(touched(surface, {1, 5}).at, (Point{1, 2}));
    EXPECT_FALSE(touched(surface, {1, 5}).along);
}

TEST(FeltBonesTest, APointIsTouchedWhereItIs)
{
    const FeltBone corner{BoneShape::Point, {{3, 4}}};
    EXPECT_NEAR(touched(corner, {0, 0}).away, 5.0, 1e-12);
    EXPECT_EQ(touched(corner, {0, 0}).at, (Point{3, 4}));
}

}  // namespace felt_bones_test
