// Laws of the body map on both shipped plates.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/body/moved_ink.h"
#include "tests/property/sampling.h"

namespace fb::test::body_map_law_test {

namespace body_map_law_detail {

BodyMap mapOf(const Patient& patient, View view) { return bodyMap(atlas(), view, patient).value(); }

Patient referencePatient(View view)
{
    const ReferenceBody& body = atlas().plate(view).reference;
    return madePatient(body.ageYears, body.sex, body.stature.value(), body.weight.value(), Side::Right);
}

// The least of the gaps between neighbours, the axis included.
double leastGap(const EdgeRow& e) { return std::min({e[1] - e[0], -e[1], e[2], e[3] - e[2]}); }

double leastGap(const BodyMap& map)
{
    double least = 1e9;
    for (int limb = 0; limb < map.limbCount(); ++limb) {
        const auto& rows = map.limbMap(limb).patientLevels();
        for (std::size_t i = 0; i < rows.size(); ++i) {
            least = std::min(least, leastGap(rows[i].edges));
            if (i > 0)
                least = std::min(least, rows[i].along - rows[i - 1].along);
        }
    }
    return least;
}

constexpr double kGap = 0.2 - 1e-12;  // cm: two millimetres

// The least area a small square of the plate is given on the patient, over the whole paper.
double leastJacobian(const BodyMap& map, const Plate& plate)
{
    constexpr double kStep = 1e-4;  // cm
    double least = 1e9;
    for (int limb = 0; limb < map.limbCount(); ++limb) {
        const LimbMap& one = map.limbMap(limb);
        const LimbFrame frame = LimbFrame::at(plate.limbs[static_cast<std::size_t>(limb)].joint,
                                              plate.limbs[static_cast<std::size_t>(limb)].angle);
        for (double x = plate.paper.low.x; x <= plate.paper.high.x; x += 1.0) {
            for (double y = plate.paper.low.y; y <= plate.paper.high.y; y += 1.0) {
                const Point at = frame.toLocal({x, y});
                const Point half{kStep / 2.0, 0.0};
                const double across = one.toPatient(at + half).x - one.toPatient(at - half).x;
                const double along =
                    one.alongToPatient(at.y + kStep / 2.0) - one.alongToPatient(at.y - kStep / 2.0);
                least = std::min(least, across * along / (kStep * kStep));
            }
        }
    }
    return least;
}

}  // namespace body_map_law_detail

TEST(BodyMapLaw, InverseIsExactToANanometre)
{
    using namespace body_map_law_detail;
    SeedStream stream(1);
    std::vector<Patient> patients = cornerPatients();
    for (int number = 0; number < rounds(1'000); ++number)
        patients.push_back(sampledPatient(1, number));
    for (const Patient& patient : patients) {
        for (const View view : kViews) {
            const BodyMap map = mapOf(patient, view);
            for (int limb = 0; limb < map.limbCount(); ++limb) {
                for (int i = 0; i < 20; ++i) {
                    const Point p = pointIn(stream, atlas().plate(view).paper);
                    ASSERT_LE(distance(map.toPlate(limb, map.toPatient(limb, p)), p), 1e-9) << shown(patient);
                    ASSERT_LE(distance(map.toPatient(limb, map.toPlate(limb, p)), p), 1e-9) << shown(patient);
                }
            }
        }
    }
}

TEST(BodyMapLaw, EdgesAndLevelsStayOrderedTwoMillimetresApartInAHundredThousandPatients)
{
    using namespace body_map_law_detail;
    for (int number = 0; number < rounds(100'000); ++number) {
        const Patient patient = sampledPatient(7, number);
        for (const View view : kViews)
            ASSERT_GE(leastGap(mapOf(patient, view)), kGap)
                << wordOf(view) << ", seed 7, request " << number << ": " << shown(patient);
    }
}

TEST(BodyMapLaw, EdgesAndLevelsStayOrderedAtTheCornersOfWhatIsAccepted)
{
    using namespace body_map_law_detail;
    for (const Patient& patient : cornerPatients()) {
        for (const View view : kViews)
            ASSERT_GE(leastGap(mapOf(patient, view)), kGap) << wordOf(view) << ": " << shown(patient);
    }
}

TEST(BodyMapLaw, EdgesBetweenLevelsAreOrderedToo)
{
    using namespace body_map_law_detail;
    SeedStream stream(3);
    for (const Patient& patient : cornerPatients()) {
        for (const View view : kViews) {
            const BodyMap map = mapOf(patient, view);
            for (int limb = 0; limb < map.limbCount(); ++limb) {
                for (int i = 0; i < 20; ++i) {
                    const double along = stream.between(-25.0, 55.0);
                    ASSERT_GE(leastGap(map.limbMap(limb).patientEdges(along)), kGap)
                        << wordOf(view) << ": " << shown(patient);
                }
            }
        }
    }
}

TEST(BodyMapLaw, NothingIsFlattenedBelowATenthOfItsArea)
{
    using namespace body_map_law_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(11, number);
        for (const View view : kViews)
            ASSERT_GE(leastJacobian(mapOf(patient, view), atlas().plate(view)), 0.1)
                << wordOf(view) << ", seed 11, request " << number << ": " << shown(patient);
    }
}

TEST(BodyMapLaw, ReferenceBodyIsLeftAsDrawn)
{
    using namespace body_map_law_detail;
    SeedStream stream(5);
    for (const View view : kViews) {
        const BodyMap map = mapOf(referencePatient(view), view);
        for (int limb = 0; limb < map.limbCount(); ++limb) {
            for (int i = 0; i < rounds(10'000); ++i) {
                const Point p = pointIn(stream, atlas().plate(view).paper);
                ASSERT_LE(distance(map.toPatient(limb, p), p), 1e-9) << p.x << "," << p.y;
                ASSERT_LE(distance(map.boneToPatient(limb, p), p), 1e-9) << p.x << "," << p.y;
            }
        }
    }
}

TEST(BodyMapLaw, ReferenceBodyIsPaintedAsDrawn)
{
    using namespace body_map_law_detail;
    for (const View view : kViews) {
        SCOPED_TRACE(wordOf(view));
        const Plate& plate = plateOf(view);
        const Patient patient = referencePatient(view);
        const MovedInk ink = movedInk(plate, mapOf(patient, plate.view), patient);
        EXPECT_LE(distance(ink.paper.low, plate.paper.low), 1e-9);
        EXPECT_LE(distance(ink.paper.high, plate.paper.high), 1e-9);
        // Shapes come in the order they were drawn, less the cues that do not show on this body; the
        // knots of a pen stroke, which is never cut, are where they were drawn.
        std::vector<const InkShape*> drawn;
        for (const Structure& structure : plate.structures) {
            for (const InkShape& shape : structure.shapes) {
                if (shape.cue == Cue::Always || shape.cue == Cue::Lean)
                    drawn.push_back(&shape);
            }
        }
        std::size_t next = 0;
        int strokes = 0;
        for (const MovedShape& moved : ink.shapes) {
            while (next < drawn.size() &&
                   (drawn[next]->tone != moved.tone || drawn[next]->gradient != moved.gradient ||
                    drawn[next]->penStroke != moved.penStroke))
                ++next;
            ASSERT_LT(next, drawn.size());
            const auto& from = drawn[next++]->rings.front().points;
            const auto& to = moved.rings.front().points;
            for (std::size_t i = 0; moved.penStroke && i < from.size(); i += 3)
                ASSERT_LE(distance(from[i], to[i]), 1e-9)
                    << "structure " << moved.structure << ", point " << i;
            strokes += moved.penStroke;
        }
        EXPECT_GT(strokes, 100);
    }
}

TEST(BodyMapLaw, FirstLandmarkIsTheOriginOnEveryBody)
{
    using namespace body_map_law_detail;
    for (const View view : kViews) {
        const NamedPoint& first = atlas().plate(view).points.find(firstLandmark(view))->second;
        for (const Patient& patient : cornerPatients())
            ASSERT_LE(length(mapOf(patient, view).boneToPatient(first.limb, first.at)), 1e-12)
                << shown(patient);
    }
}

TEST(BodyMapLaw, LimbsHangOnTheirParentsJoint)
{
    using namespace body_map_law_detail;
    for (int number = 0; number < rounds(200); ++number) {
        for (const View view : kViews) {
            const Plate& plate = atlas().plate(view);
            const BodyMap map = mapOf(sampledPatient(13, number), view);
            for (int limb = 0; limb < map.limbCount(); ++limb) {
                const Limb& one = plate.limbs[static_cast<std::size_t>(limb)];
                if (one.parent >= 0) {
                    ASSERT_LE(distance(map.boneToPatient(one.parent, one.joint), map.limbFrame(limb).joint),
                              1e-9)
                        << one.name << ", " << wordOf(view) << ", seed 13, request " << number;
                }
            }
        }
    }
}

}  // namespace fb::test::body_map_law_test
