// Laws of the skin round the thigh: two views of one limb.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/math/special_functions/ellint_2.hpp>
#include <cmath>
#include <numbers>

#include "core/grade/grade.h"
#include "tests/property/sampling.h"

namespace fb::test::round_limb_law_test {

namespace round_law_detail {

constexpr double kQuarter = std::numbers::pi / 2.0;

struct BothViews {
    Target side, front;
};

BothViews bothViews(std::uint64_t seed, int number)
{
    const Patient patient = sampledPatient(seed, number);
    const Convention convention = conventionInTurn(Site::VastusLateralis, number);
    return {targetIn(patient, {convention, View::ThighSide}),
            targetIn(patient, {convention, View::ThighFront})};
}

const RoundLimb& limbOf(const Target& target) { return target.surface.thigh()->limb; }

// A place on the thigh: an angle from the outer line and a height.
struct Spot {
    double turn = 0.0, y = 0.0;
};
Spot spotOn(SeedStream& stream, const Target& target, double low, double high)
{
    const double turn = stream.between(low, high);
    return {turn, -target.thighLength.value() * stream.between(0.02, 0.98)};
}

// Front half axes as the edges give them: across from the outline's middle line.
double frontAxis(const Target& side, double y)
{
    return limbOf(side).shown(LimbSight::FromSide, kQuarter, y).y -
           limbOf(side).shown(LimbSight::FromSide, 0.0, y).y;
}
double outerAxis(const Target& front, double y)
{
    return limbOf(front).shown(LimbSight::FromFront, kQuarter, y).y -
           limbOf(front).shown(LimbSight::FromFront, 0.0, y).y;
}

}  // namespace round_law_detail

TEST(RoundLimbLaw, SkinAndPictureGiveEachOtherBackInBothViews)
{
    using namespace round_law_detail;
    SeedStream stream(171);
    for (int number = 0; number < rounds(1'000); ++number) {
        const auto [side, front] = bothViews(171, number);
        for (int i = 0; i < 20; ++i) {
            // Near an outline a hair of the picture is much skin: it is gone round to it from skin.
            const Spot a = spotOn(stream, side, -kQuarter + 0.02, kQuarter - 0.02);
            const Point s{limbOf(side).arcOf(a.turn, a.y), a.y};
            ASSERT_LE(distance(side.toSkin(side.toViewer(s)), s), 1e-6) << "seed 171, request " << number;
            const Spot b = spotOn(stream, front, 0.02, 2.0 * kQuarter - 0.02);
            const Point f{limbOf(front).arcOf(b.turn, b.y), b.y};
            ASSERT_LE(distance(front.toSkin(front.toViewer(f)), f), 1e-6) << "seed 171, request " << number;
            ASSERT_NEAR(limbOf(side).turnOf(s), a.turn, 1e-9) << "seed 171, request " << number;
            ASSERT_NEAR(limbOf(front).turnOf(f), b.turn, 1e-9) << "seed 171, request " << number;
        }
    }
}

TEST(RoundLimbLaw, PictureAndSkinGiveEachOtherBackOnTheWholePaper)
{
    using namespace round_law_detail;
    SeedStream stream(172);
    for (int number = 0; number < rounds(500); ++number) {
        const auto [side, front] = bothViews(172, number);
        for (const Target* target : {&side, &front}) {
            const bool left = target->side == Side::Left;
            for (int i = 0; i < 20; ++i) {
                const Point right = pointIn(stream, {{-14.0, -15.0}, {55.0, 15.0}});
                const Point p = left ? mirrored(right) : right;
                ASSERT_LE(distance(target->toViewer(target->toSkin(p)), p), 1e-7)
                    << wordOf(target->view) << " " << p.x << "," << p.y << ", seed 172, request " << number;
            }
        }
    }
}

TEST(RoundLimbLaw, SamePlaceOfTheSkinIsGradedAlikeInEitherView)
{
    using namespace round_law_detail;
    SeedStream stream(173);
    for (int number = 0; number < rounds(1'000); ++number) {
        const auto [side, front] = bothViews(173, number);
        ASSERT_EQ(side.regionSkin, front.regionSkin) << "seed 173, request " << number;
        ASSERT_EQ(side.idealSkin, front.idealSkin) << "seed 173, request " << number;
        for (int i = 0; i < 10; ++i) {
            // The outer front quarter is what both see.
            const Spot spot = spotOn(stream, side, 0.03, kQuarter - 0.03);
            const Point skin{limbOf(side).arcOf(spot.turn, spot.y), spot.y};
            const Grade a = gradeMark(side, defaultPolicy(), side.toViewer(skin), MarkedLimb::Thigh);
            const Grade b = gradeMark(front, defaultPolicy(), front.toViewer(skin), MarkedLimb::Thigh);
            // Grades are rounded to a millionth of a centimetre.
            ASSERT_NEAR(a.offDistal.value(), b.offDistal.value(), 2e-6) << "seed 173, request " << number;
            ASSERT_NEAR(a.offAnterior.value(), b.offAnterior.value(), 2e-6) << "seed 173, request " << number;
            ASSERT_NEAR(a.distanceToBorder.value(), b.distanceToBorder.value(), 2e-6)
                << "seed 173, request " << number;
            // Bone lies where each view draws it; the rest is of the skin.
            const bool bone = a.hazard == HazardCode::Trochanter || b.hazard == HazardCode::Trochanter ||
                              a.hazard == HazardCode::Patella || b.hazard == HazardCode::Patella;
            if (!bone && std::abs(a.distanceToBorder.value()) > 1e-5) {
                ASSERT_EQ(wordOf(a.reason.direction), wordOf(b.reason.direction));
            }
        }
    }
}

TEST(RoundLimbLaw, OutlinesOfTheLimbAreTheDrawnEdgesOfBothViews)
{
    using namespace round_law_detail;
    SeedStream stream(177);
    for (int number = 0; number < rounds(300); ++number) {
        const auto [side, front] = bothViews(177, number);
        for (const Target* target : {&side, &front}) {
            const View view = target->view;
            const BodyMap map = bodyMap(atlas(), view, sampledPatient(177, number)).value();
            const int thigh = plateOf(view).limbNamed("thigh");
            const Point joint = map.limbFrame(thigh).joint;
            const double x = target->thighLength.value() * stream.between(0.02, 0.98);
            const EdgeRow edges = map.limbMap(thigh).patientEdges(x - joint.x);
            const LimbSight sight = target->surface.thigh()->sight;
            const double low = sight == LimbSight::FromSide ? -kQuarter : 0.0;
            ASSERT_NEAR(limbOf(*target).shown(sight, low, -x).y, joint.y + edges[0], 1e-9)
                << wordOf(view) << ", seed 177, request " << number;
            ASSERT_NEAR(limbOf(*target).shown(sight, low + 2.0 * kQuarter, -x).y, joint.y + edges[3], 1e-9)
                << wordOf(view) << ", seed 177, request " << number;
        }
    }
}

TEST(RoundLimbLaw, HeightsOfBothViewsAreTheSame)
{
    using namespace round_law_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const auto [side, front] = bothViews(174, number);
        ASSERT_NEAR(side.ideal.x, front.ideal.x, 1e-9) << "seed 174, request " << number;
        ASSERT_NEAR(side.region.bounds().low.x, front.region.bounds().low.x, 1e-9) << number;
        ASSERT_NEAR(side.region.bounds().high.x, front.region.bounds().high.x, 1e-9) << number;
        ASSERT_EQ(side.heights, front.heights);
    }
}

TEST(RoundLimbLaw, ArcOfTheOuterFrontQuarterIsBoostsEllipticIntegral)
{
    using namespace round_law_detail;
    using boost::math::ellint_2;
    SeedStream stream(175);
    for (int number = 0; number < rounds(1'000); ++number) {
        const auto [side, front] = bothViews(175, number);
        const double y = -side.thighLength.value() * stream.between(0.05, 0.95);
        const double a = std::abs(frontAxis(side, y));
        const double b = std::abs(outerAxis(front, y));
        const double longer = std::max(a, b);
        const double shorter = std::min(a, b);
        const double k = std::sqrt(1.0 - shorter * shorter / (longer * longer));
        const double quarter = longer * ellint_2(k, kQuarter);
        ASSERT_NEAR(limbOf(side).arcOf(kQuarter, y), quarter, 1e-6 * quarter)
            << a << " by " << b << ", seed 175, request " << number;
    }
}

TEST(RoundLimbLaw, SkinRunsOnWithThePictureAcrossEitherView)
{
    using namespace round_law_detail;
    SeedStream stream(176);
    for (int number = 0; number < rounds(300); ++number) {
        const auto [side, front] = bothViews(176, number);
        for (const Target* target : {&side, &front}) {
            const double x = stream.between(0.0, 40.0) * (target->side == Side::Left ? -1.0 : 1.0);
            double before = target->toSkin({x, -16.0}).x;
            for (double y = -15.9; y < 16.0; y += 0.1) {
                const double s = target->toSkin({x, y}).x;
                ASSERT_GT(s, before) << wordOf(target->view) << " at " << y << ", request " << number;
                before = s;
            }
        }
    }
}

}  // namespace fb::test::round_limb_law_test
