// Fat moves the skin of hip and thigh, never the bone, and never the way the drawing lies.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "core/body/moved_ink.h"
#include "tests/property/sampling.h"

namespace fb::test::lower_body_law_test {

namespace lower_body_detail {

constexpr double kStill = 1e-9;  // cm
constexpr std::array kLower{View::HipSide, View::HipBehind, View::ThighFront, View::ThighSide};

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

BodyMap mapFor(const Patient& patient, View view) { return bodyMap(atlas(), view, patient).value(); }

Point moved(const BodyMap& map, const NamedPoint& point) { return map.boneToPatient(point.limb, point.at); }

Point pointOn(const Patient& patient, View view, const char* name)
{
    return moved(mapFor(patient, view), plateOf(view).points.at(name));
}

double widthOf(const Patient& patient, View view, const char* limb, std::size_t level)
{
    const BodyMap map = mapFor(patient, view);
    const EdgeRow& e = map.limbMap(plateOf(view).limbNamed(limb)).patientLevels()[level].edges;
    return e[3] - e[0];
}

// Of the line from the hip joint to the knee's, degrees.
double drawnAngle(const Patient& patient, View view)
{
    const Point way = pointOn(patient, view, "joint.knee") - pointOn(patient, view, "joint.hip");
    return std::atan2(way.y, way.x) * 180.0 / std::numbers::pi;
}

}  // namespace lower_body_detail

TEST(LowerBodyLaw, EveryNamedPointIsAtTheSamePlaceLeanOrFull)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : kLower) {
            const BodyMap lean = mapFor(pair.lean, view);
            const BodyMap full = mapFor(pair.full, view);
            for (const auto& [name, point] : plateOf(view).points)
                ASSERT_LE(distance(moved(lean, point), moved(full, point)), kStill)
                    << name << ", " << wordOf(view) << ": " << shown(pair.lean);
        }
    }
}

TEST(LowerBodyLaw, SpineLiesAsFarFromTheTrochanterLeanOrFull)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : {View::HipSide, View::ThighFront, View::ThighSide}) {
            const auto offset = [view](const Patient& p) {
                return pointOn(p, view, "landmark.asis") - pointOn(p, view, "landmark.greater-trochanter");
            };
            ASSERT_LE(distance(offset(pair.lean), offset(pair.full)), kStill)
                << wordOf(view) << ": " << shown(pair.lean);
        }
        const auto hand = [](const Patient& p) { return targetOf(p, Convention::VentroglutealHand); };
        ASSERT_EQ(hand(pair.lean).asisToTrochanter.value(), hand(pair.full).asisToTrochanter.value());
    }
}

TEST(LowerBodyLaw, TrochanterIsTheOriginWhateverTheBody)
{
    using namespace lower_body_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(191, number);
        for (const View view : kLower)
            ASSERT_LE(length(pointOn(patient, view, "landmark.greater-trochanter")), 1e-12)
                << wordOf(view) << ", seed 191, request " << number;
    }
}

TEST(LowerBodyLaw, ThighLiesAtItsDrawnAngleAtAnyWeight)
{
    using namespace lower_body_detail;
    for (const View view : {View::HipSide, View::ThighFront, View::ThighSide}) {
        const Plate& plate = plateOf(view);
        const double drawn =
            plate.limbs[static_cast<std::size_t>(plate.limbNamed("thigh"))].angle.value() - 90.0;
        for (const Sex sex : kSexes) {
            for (const double stature : {150.0, 172.0, 195.0}) {
                const Patient lean = madePatient(40.0, sex, stature, weightOf(18.0, stature), Side::Right);
                for (const double index : {15.0, 18.0, 24.0, 30.0, 45.0, 60.0}) {
                    const Patient p = madePatient(40.0, sex, stature, weightOf(index, stature), Side::Right);
                    // Joints are drawn to a tenth of a millimetre, a ten-thousandth of a degree here.
                    ASSERT_NEAR(drawnAngle(p, view), drawn, 1e-3) << wordOf(view) << ": " << shown(p);
                    ASSERT_NEAR(drawnAngle(p, view), drawnAngle(lean, view), 1e-9)
                        << wordOf(view) << ": " << shown(p);
                }
            }
        }
    }
}

TEST(LowerBodyLaw, BoneEdgesAtEveryLevelAreTheSameLeanOrFull)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : kLower) {
            const BodyMap lean = mapFor(pair.lean, view);
            const BodyMap full = mapFor(pair.full, view);
            for (int limb = 0; limb < lean.limbCount(); ++limb) {
                const auto& a = lean.limbMap(limb).patientLevels();
                const auto& b = full.limbMap(limb).patientLevels();
                for (std::size_t i = 0; i < a.size(); ++i) {
                    ASSERT_NEAR(a[i].along, b[i].along, kStill) << wordOf(view) << " " << limb << " " << i;
                    ASSERT_NEAR(a[i].edges[1], b[i].edges[1], kStill) << wordOf(view) << " " << limb;
                    ASSERT_NEAR(a[i].edges[2], b[i].edges[2], kStill) << wordOf(view) << " " << limb;
                }
            }
        }
    }
}

TEST(LowerBodyLaw, BoneAreasAndLinesAreTheSameLeanOrFull)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : kLower) {
            const BodyMap lean = mapFor(pair.lean, view);
            const BodyMap full = mapFor(pair.full, view);
            for (const auto* paths : {&plateOf(view).lines, &plateOf(view).areas}) {
                for (const auto& [name, path] : *paths) {
                    if (name.starts_with("area.") && !name.starts_with("area.bone."))
                        continue;
                    for (const Point p : path.ring.points)
                        ASSERT_LE(
                            distance(lean.boneToPatient(path.limb, p), full.boneToPatient(path.limb, p)),
                            kStill)
                            << name << ", " << wordOf(view) << ": " << shown(pair.lean);
                }
            }
        }
    }
}

TEST(LowerBodyLaw, InkOfTheBonesIsTheSameLeanOrFull)
{
    using namespace lower_body_detail;
    const Pair pair = leanAndFull().front();
    for (const View view : kLower) {
        const Plate& plate = plateOf(view);
        const MovedInk lean = movedInk(plate, mapFor(pair.lean, view), pair.lean);
        const MovedInk full = movedInk(plate, mapFor(pair.full, view), pair.full);
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
        ASSERT_FALSE(a.empty()) << wordOf(view);
        ASSERT_EQ(a.size(), b.size()) << wordOf(view);
        for (std::size_t i = 0; i < a.size(); ++i) {
            for (std::size_t k = 0; k < a[i]->rings.front().points.size(); ++k)
                ASSERT_LE(distance(a[i]->rings.front().points[k], b[i]->rings.front().points[k]), kStill)
                    << wordOf(view);
        }
    }
}

TEST(LowerBodyLaw, LandmarksOfTheTargetAndItsHeightsAreTheSameLeanOrFull)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const Convention convention : {Convention::VastusThirds, Convention::VentroglutealHand}) {
            const Target lean = targetOf(pair.lean, convention);
            const Target full = targetOf(pair.full, convention);
            ASSERT_EQ(lean.heights, full.heights);
            ASSERT_EQ(lean.thighLength, full.thighLength);
            for (const auto& [name, at] : lean.landmarks)
                ASSERT_LE(distance(at, full.landmarks.at(name)), kStill) << name << " " << shown(pair.lean);
        }
        // The hip's region is of bones and the hand alone.
        const Target lean = targetOf(pair.lean, Convention::VentroglutealHand);
        const Target full = targetOf(pair.full, Convention::VentroglutealHand);
        ASSERT_LE(distance(lean.ideal, full.ideal), kStill) << shown(pair.lean);
        ASSERT_NEAR(lean.region.area(), full.region.area(), kStill) << shown(pair.lean);
    }
}

TEST(LowerBodyLaw, SkinOfHipAndThighGrowsWithFat)
{
    using namespace lower_body_detail;
    for (const Pair& pair : leanAndFull()) {
        for (const View view : kLower) {
            for (const Limb& limb : plateOf(view).limbs) {
                for (std::size_t level = 0; level < limb.levels.size(); ++level)
                    EXPECT_GT(widthOf(pair.full, view, limb.name.c_str(), level),
                              widthOf(pair.lean, view, limb.name.c_str(), level) + 1.0)
                        << limb.name << " " << limb.levels[level].name << ", " << wordOf(view);
            }
        }
    }
}

TEST(LowerBodyLaw, BothViewsOfTheThighAreAsLong)
{
    using namespace lower_body_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(192, number);
        const double length = measured(proportions(), patient).thighLength.value();
        for (const View view : {View::ThighFront, View::ThighSide}) {
            const double drawn = pointOn(patient, view, "landmark.lateral-femoral-epicondyle").x;
            // Drawn to half a millimetre on the reference body.
            ASSERT_NEAR(drawn, length, 0.0015 * length)
                << wordOf(view) << ", seed 192, request " << number << ": " << shown(patient);
        }
    }
}

}  // namespace fb::test::lower_body_law_test
