// Fat moves skin, never bone.
#include <gtest/gtest.h>

#include <cmath>

#include "core/body/moved_ink.h"
#include "core/plate/ring.h"
#include "tests/property/sampling.h"

namespace fb::test::fat_and_bone_law_test {

namespace fat_law_detail {

constexpr double kStill = 1e-9;  // cm

struct Pair {
    Patient lean, full;
};

std::vector<Pair> leanAndFull()
{
    std::vector<Pair> pairs;
    for (const Sex sex : kSexes) {
        for (const double stature : {150.0, 163.0, 175.0, 195.0}) {
            for (const double age : {25.0, 80.0}) {
                const auto at = [&](double index) {
                    return madePatient(age, sex, stature, weightOf(index, stature), Side::Right);
                };
                pairs.push_back({at(18.0), at(45.0)});
            }
        }
    }
    return pairs;
}

BodyMap mapFor(const Patient& patient, View view = View::ShoulderSide)
{
    return bodyMap(atlas(), view, patient).value();
}

// As the target names them: what a learner sees and a grade is measured from.
Point landmark(const Patient& patient, const std::string& name)
{
    return targetOf(patient, Convention::DeltoidStrip).landmarks.at(name);
}

double frontToBack(const Patient& patient, std::string_view level)
{
    const Plate& plate = sidePlate();
    const auto arm = static_cast<std::size_t>(plate.limbNamed("arm"));
    const BodyMap map = mapFor(patient);
    for (std::size_t i = 0; i < plate.limbs[arm].levels.size(); ++i) {
        const EdgeRow& e = map.limbMap(static_cast<int>(arm)).patientLevels()[i].edges;
        if (plate.limbs[arm].levels[i].name == level)
            return e[3] - e[0];
    }
    return 0.0;
}

}  // namespace fat_law_detail

TEST(FatAndBone, BoneEdgesAtEveryLevelAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        const BodyMap lean = mapFor(pair.lean);
        const BodyMap full = mapFor(pair.full);
        for (int limb = 0; limb < lean.limbCount(); ++limb) {
            const auto& a = lean.limbMap(limb).patientLevels();
            const auto& b = full.limbMap(limb).patientLevels();
            for (std::size_t i = 0; i < a.size(); ++i) {
                ASSERT_NEAR(a[i].edges[1], b[i].edges[1], kStill)
                    << shown(pair.lean) << " limb " << limb << " " << i;
                ASSERT_NEAR(a[i].edges[2], b[i].edges[2], kStill)
                    << shown(pair.lean) << " limb " << limb << " " << i;
            }
        }
    }
}

TEST(FatAndBone, BonyLandmarksAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const char* name : {"acromion", "acromion_front", "acromion_back", "deltoid_tuberosity",
                                 "lateral_epicondyle", "clavicle_medial", "scapula_spine"})
            EXPECT_LE(distance(landmark(pair.lean, name), landmark(pair.full, name)), kStill)
                << name << " " << shown(pair.lean);
    }
}

TEST(FatAndBone, OutlinesOfTheBonesAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : kViews) {
            const BodyMap lean = mapFor(pair.lean, view);
            const BodyMap full = mapFor(pair.full, view);
            for (const auto& [id, area] : atlas().plate(view).areas) {
                if (!id.starts_with("area.bone."))
                    continue;
                double most = 0.0;
                for (const Point p : flattened(area.ring, 2))
                    most = std::max(
                        most, distance(lean.boneToPatient(area.limb, p), full.boneToPatient(area.limb, p)));
                EXPECT_LE(most, kStill) << id << ", " << wordOf(view) << ": " << shown(pair.lean);
            }
        }
    }
}

TEST(FatAndBone, InkOfTheBonesIsTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    const Plate& plate = sidePlate();
    const Pair pair = leanAndFull().front();
    const MovedInk lean = movedInk(plate, mapFor(pair.lean), pair.lean);
    const MovedInk full = movedInk(plate, mapFor(pair.full), pair.full);
    const auto bones = [&plate](const MovedInk& ink) {
        std::vector<const MovedShape*> shapes;
        for (const MovedShape& shape : ink.shapes) {
            if (plate.structures[static_cast<std::size_t>(shape.structure)].layer == Layer::Bone)
                shapes.push_back(&shape);
        }
        return shapes;
    };
    const auto a = bones(lean);
    const auto b = bones(full);
    ASSERT_FALSE(a.empty());
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t k = 0; k < a[i]->rings.front().points.size(); ++k)
            ASSERT_LE(distance(a[i]->rings.front().points[k], b[i]->rings.front().points[k]), kStill);
    }
}

TEST(FatAndBone, ArmLengthIsTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        EXPECT_EQ(targetOf(pair.lean, Convention::DeltoidStrip).armLength,
                  targetOf(pair.full, Convention::DeltoidStrip).armLength);
    }
}

TEST(FatAndBone, SkinOfTheArmGrowsWithFat)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const char* level : {"acromion", "axilla", "mid-arm", "radiale"})
            EXPECT_GT(frontToBack(pair.full, level), frontToBack(pair.lean, level) + 0.3) << level;
    }
}

}  // namespace fb::test::fat_and_bone_law_test
