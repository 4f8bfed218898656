#include "core/site/places.h"

#include <gtest/gtest.h>

#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace places_test {

namespace {

BodyMap mapOf(View view, const Patient& patient) { return bodyMap(test::atlas(), view, patient).value(); }

const Patient& reference()
{
    static const Patient body = test::adult(Sex::Male, 172, 70);
    return body;
}

}  // namespace

TEST(PlacesTest, OnTheReferenceBodyEverythingLiesWhereItWasDrawn)
{
    const BodyMap map = mapOf(View::HipSide, reference());
    const Places places(test::plateOf(View::HipSide), map);
    for (const auto& [id, point] : test::plateOf(View::HipSide).points) {
        if (id.starts_with("landmark.")) {
            EXPECT_LT(distance(places.landmark(id), point.at), 1e-9) << id;
        }
    }
    EXPECT_LT(distance(places.boneLine("line.iliac-crest").front(),
                       test::plateOf(View::HipSide).lines.at("line.iliac-crest").ring.points.front()),
              1e-9);
}

TEST(PlacesTest, ABoneAreaIsAPolygonAboutItsLandmark)
{
    const BodyMap map = mapOf(View::HipSide, test::adult(Sex::Female, 158, 95));
    const Places places(test::plateOf(View::HipSide), map);
    EXPECT_TRUE(places.boneArea("area.bone.greater-trochanter")
                    .contains(places.landmark("landmark.greater-trochanter")));
}

TEST(PlacesTest, AnOutlineRunsBetweenItsLevelsWithTheBackBehindTheFront)
{
    const BodyMap map = mapOf(View::HipSide, reference());
    const Places places(test::plateOf(View::HipSide), map);
    const Places::Outline trunk = places.outline("pelvis", "waist", "fold");
    ASSERT_EQ(trunk.back.size(), trunk.front.size());
    for (std::size_t i = 0; i < trunk.back.size(); ++i) {
        EXPECT_LT(trunk.back[i].y, trunk.front[i].y);
        EXPECT_NEAR(trunk.back[i].x, trunk.front[i].x, 1e-9);
        if (i > 0) {
            EXPECT_GT(trunk.back[i].x, trunk.back[i - 1].x);
        }
    }
}

TEST(PlacesTest, ADomeLeavesItsDentsOutAndKeepsItsEnds)
{
    const std::vector<Point> line{{4, 4}, {1, 3}, {0.5, 1.5}, {0, 0}, {0.4, -1}, {0, -2}, {4, -4}};
    EXPECT_EQ(domeOf(line), (std::vector<Point>{{4, 4}, {1, 3}, {0, 0}, {0, -2}, {4, -4}}));
    EXPECT_EQ(domeOf({{1, 1}, {0, 0}}), (std::vector<Point>{{1, 1}, {0, 0}}));
}

TEST(PlacesTest, PublicNamesAreLowerSnakeCase)
{
    EXPECT_EQ(publicName("landmark.acromion.lateral"), "acromion");
    EXPECT_EQ(publicName("landmark.acromion.front"), "acromion_front");
    EXPECT_EQ(publicName("landmark.lateral-femoral-epicondyle"), "lateral_femoral_epicondyle");
}

}  // namespace places_test
