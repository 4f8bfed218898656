#include "core/body/body_map.h"

#include <gtest/gtest.h>

#include "core/site/locate.h"
#include "tests/support/core_atlas.h"
#include "tests/support/polygon_text.h"

using namespace fb;
using test::adult;
using test::atlas;

namespace body_map_test {

TEST(BodyMapTest, TheReferenceBodyMapsToItself)
{
    for (const View view : kViews) {
        const Plate& plate = atlas().plate(view);
        const Patient reference = Patient::make(plate.reference.ageYears, plate.reference.sex,
                                                plate.reference.stature, plate.reference.weight, Side::Right)
                                      .value();
        const BodyMap map = bodyMap(atlas(), view, reference).value();
        for (const auto& [id, point] : plate.points)
            EXPECT_LT(distance(map.toPatient(point.limb, point.at), point.at), 1e-9) << id;
    }
}

TEST(BodyMapTest, TheFirstLandmarkStaysAtTheOrigin)
{
    for (const View view : kViews) {
        const Plate& plate = atlas().plate(view);
        for (const double weight : {45.0, 130.0}) {
            const BodyMap map = bodyMap(atlas(), view, adult(Sex::Male, 180, weight)).value();
            const NamedPoint& first = plate.points.at(std::string(firstLandmark(view)));
            EXPECT_LT(length(map.boneToPatient(first.limb, first.at)), 1e-9);
        }
    }
}

TEST(BodyMapTest, ForearmHangsOnTheElbowOfTheArm)
{
    const Plate& plate = test::sidePlate();
    const BodyMap map = bodyMap(atlas(), View::ShoulderSide, adult(Sex::Female, 150, 45)).value();
    const NamedPoint& elbow = plate.points.at("joint.elbow");
    EXPECT_LT(distance(map.limbFrame(plate.limbNamed("forearm")).joint,
                       map.boneToPatient(plate.limbNamed("arm"), elbow.at)),
              1e-9);
}

TEST(BodyMapTest, ALimbThatHangsOnItselfIsRefused)
{
    Plate plate = test::sidePlate();
    const int arm = plate.limbNamed("arm");
    plate.limbs[static_cast<std::size_t>(arm)].parent = arm;
    const BodyMeasures body = measured(test::proportions(), adult(Sex::Male, 172, 70));
    const auto map = BodyMap::make(plate, body, body);
    ASSERT_FALSE(map);
    EXPECT_EQ(map.error().problem, Problem::PlateDisordered);
}

TEST(BodyMapTest, AFrameLeadsThereAndBack)
{
    const LimbFrame frame = LimbFrame::at({2, 3}, Degrees{75});
    EXPECT_LT(distance(frame.toLocal(frame.toFrame({1.5, 20})), {1.5, 20}), 1e-12);
    const LimbFrame straight = LimbFrame::at({0, 0}, Degrees{0});
    EXPECT_LT(distance(straight.toFrame({1, 5}), {1, -5}), 1e-12);
}

}  // namespace body_map_test
