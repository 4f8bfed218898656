#include "core/body/limb_map.h"

#include <gtest/gtest.h>

using namespace fb;

namespace limb_map_test {

namespace {

std::vector<LevelRow> drawn()
{
    return {{-2.0, {-5, -2, 2, 5}},
            {0.0, {-5.5, -2.2, 2.3, 5.5}},
            {10.0, {-5, -1.3, 1.3, 5.5}},
            {33.0, {-4, -2, 2, 4}}};
}

std::vector<LevelRow> patient()
{
    return {{-2.4, {-6, -2, 2, 6}},
            {0.0, {-7, -2.2, 2.3, 6.5}},
            {12.0, {-7, -1.3, 1.3, 8}},
            {30.0, {-5, -2, 2, 5}}};
}

}  // namespace

TEST(LimbMapTest, RefusesTablesThatMakeNoMap)
{
    EXPECT_FALSE(LimbMap::make(drawn(), {}));
    auto folded = patient();
    folded[2].along = -1.0;
    EXPECT_FALSE(LimbMap::make(drawn(), folded));
    auto crossed = patient();
    crossed[1].edges = {-1, -2.2, 2.3, 6};
    EXPECT_FALSE(LimbMap::make(drawn(), crossed));
    EXPECT_FALSE(LimbMap::make({drawn()[0]}, {patient()[0]}));
}

TEST(LimbMapTest, LevelsAndEdgesGoWhereTheyBelong)
{
    const LimbMap map = LimbMap::make(drawn(), patient()).value();
    for (std::size_t i = 0; i < drawn().size(); ++i) {
        const LevelRow from = drawn()[i];
        const LevelRow to = patient()[i];
        EXPECT_NEAR(map.alongToPatient(from.along), to.along, 1e-9);
        for (std::size_t e = 0; e < 4; ++e) {
            const Point moved = map.toPatient({from.edges[e], from.along});
            EXPECT_NEAR(moved.x, to.edges[e], 1e-9);
            EXPECT_NEAR(map.patientEdges(to.along)[e], to.edges[e], 1e-9);
        }
        EXPECT_NEAR(map.toPatient({0.0, from.along}).x, 0.0, 1e-12);
    }
}

TEST(LimbMapTest, EqualTablesGiveTheIdentity)
{
    const LimbMap map = LimbMap::make(drawn(), drawn()).value();
    for (double y = -6; y < 40; y += 1.7) {
        for (double x = -9; x < 9; x += 0.9)
            EXPECT_LT(distance(map.toPatient({x, y}), {x, y}), 1e-12);
    }
}

TEST(LimbMapTest, TheInverseLeadsBack)
{
    const LimbMap map = LimbMap::make(drawn(), patient()).value();
    for (double y = -6; y < 40; y += 0.73) {
        for (double x = -12; x < 12; x += 0.71)
            EXPECT_LT(distance(map.toDrawn(map.toPatient({x, y})), {x, y}), 1e-9) << x << ',' << y;
    }
}

TEST(LimbMapTest, SpreadKeepsTwoMillimetresAndTouchesNothingElse)
{
    const EdgeRow fine{-5, -2, 2, 5};
    EXPECT_EQ(spread(fine), fine);
    const EdgeRow tight = spread({-1.0, -1.1, 0.05, 0.1});
    EXPECT_LE(tight[0], tight[1] - kLeastGap);
    EXPECT_GE(tight[2], kLeastGap);
    EXPECT_GE(tight[3], tight[2] + kLeastGap);
}

}  // namespace limb_map_test
