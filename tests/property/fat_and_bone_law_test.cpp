// Fat moves skin, never bone.
#include <gtest/gtest.h>

#include <cmath>

#include "core/plate/ring.h"
#include "tests/property/sampling.h"

namespace fb::test {

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

BodyMap mapFor(const Patient& patient)
{
    return bodyMap(sideAtlas(), View::ShoulderSide, patient).value();
}

Point landmark(const BodyMap& map, std::string_view id)
{
    const NamedPoint& point = sidePlate().points.find(id)->second;
    return map.toPatient(point.limb, point.at);
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
                ASSERT_NEAR(a[i].edges[1], b[i].edges[1], kStill) << shown(pair.lean) << " limb " << limb << " " << i;
                ASSERT_NEAR(a[i].edges[2], b[i].edges[2], kStill) << shown(pair.lean) << " limb " << limb << " " << i;
            }
        }
    }
}

TEST(FatAndBone, AcromionTuberosityAndEpicondyleAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        const BodyMap lean = mapFor(pair.lean);
        const BodyMap full = mapFor(pair.full);
        for (const char* id : {"landmark.acromion.lateral", "landmark.acromion.front", "landmark.acromion.back",
                               "landmark.deltoid-tuberosity", "landmark.lateral-epicondyle"})
            EXPECT_LE(distance(landmark(lean, id), landmark(full, id)), kStill) << id << " " << shown(pair.lean);
    }
}

TEST(FatAndBone, ClavicleAndScapulaAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        const BodyMap lean = mapFor(pair.lean);
        const BodyMap full = mapFor(pair.full);
        for (const char* id : {"landmark.clavicle.medial", "landmark.scapula.spine"})
            EXPECT_LE(distance(landmark(lean, id), landmark(full, id)), kStill) << id << " " << shown(pair.lean);
    }
}

TEST(FatAndBone, OutlinesOfTheBonesAreTheSameLeanOrFull)
{
    using namespace fat_law_detail;
    for (const Pair& pair : leanAndFull()) {
        const BodyMap lean = mapFor(pair.lean);
        const BodyMap full = mapFor(pair.full);
        for (const auto& [id, area] : sidePlate().areas) {
            if (!id.starts_with("area.bone."))
                continue;
            double most = 0.0;
            for (const Point p : flattened(area.ring, 2))
                most = std::max(most, distance(lean.toPatient(area.limb, p), full.toPatient(area.limb, p)));
            EXPECT_LE(most, kStill) << id << " " << shown(pair.lean);
        }
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

}  // namespace fb::test
