// Laws of what a learner builds, over thousands of bodies: the flawless build finds the ideal point,
// sides are mirrors, moves move the site, and no point however wild breaks a build.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/build/build.h"
#include "core/build/hip_build.h"
#include "core/build/thigh_build.h"
#include "core/site/landmark.h"
#include "core/site/ventrogluteal.h"
#include "tests/property/sampling.h"

namespace fb::test::build_law_test {

namespace build_law_detail {

constexpr std::uint64_t kSeed = 83;
constexpr double kExact = 1e-6;  // cm

std::vector<Shown> everyAsked()
{
    std::vector<Shown> all;
    for (const Convention convention : kConventions)
        for (const View view : askedViews(siteOf(convention)))
            all.push_back({convention, view});
    return all;
}

Shown askedInTurn(int number)
{
    static const std::vector<Shown> all = everyAsked();
    return all[static_cast<std::size_t>(number) % all.size()];
}

Policy drawnHand(SeedStream& stream)
{
    return defaultPolicy()
        .with(PolicyKey::DeltoidFingerWidth, stream.between(1.2, 2.5))
        .with(PolicyKey::HandLength, stream.between(14.0, 23.0));
}

void expectNear(Point a, Point b, double within, const std::string& where)
{
    EXPECT_NEAR(a.x, b.x, within) << where;
    EXPECT_NEAR(a.y, b.y, within) << where;
}

bool isFiniteBuild(const Build& build, const Target& target, const Builder& builder)
{
    for (const Handle handle : handlesOf(buildKindOf(build.convention)))
        if (const auto at = handleAt(build, target, builder, handle); at && !isFinite(*at))
            return false;
    for (const Step& step : figuresOf(build, target, builder))
        for (const Point p : step.points)
            if (!isFinite(p))
                return false;
    const auto site = siteBy(build, target, builder);
    return !site || isFinite(*site);
}

// Any whole build: every handle somewhere about the site.
Build anyBuild(const Target& target, const Builder& builder, SeedStream& stream)
{
    Build build = flawlessBuild(target, builder);
    for (const Handle handle : handlesOf(buildKindOf(target.convention))) {
        const Point at = *handleAt(build, target, builder, handle);
        build = placed(build, target, builder, handle, at + pointIn(stream, {{-4.0, -4.0}, {4.0, 4.0}}));
    }
    return build;
}

FreeHand anyHand(SeedStream& stream)
{
    return {stream.below(2) == 0 ? Side::Left : Side::Right, pointIn(stream, {{-20.0, -20.0}, {20.0, 20.0}}),
            Degrees{stream.between(-180.0, 180.0)}, Degrees{stream.between(kClosedOpening, kMostOpening)}};
}

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr std::array kHostile{Point{1e9, 1e9},       Point{-1e9, 0.0},       Point{0.0, 0.0},
                              Point{0.0, 0.0},       Point{kNan, 1.0},       Point{1.0, kNan},
                              Point{kInfinite, 0.0}, Point{0.0, -kInfinite}, Point{1e9, -1e9},
                              Point{1.0, 1e-300},    Point{-1e9, -1e9},      Point{3.0, -4.0}};

}  // namespace build_law_detail

TEST(BuildLaw, FlawlessBuildFindsTheIdealPoint)
{
    using namespace build_law_detail;
    for (int number = 0; number < rounds(6'000); ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const Policy policy = drawnHand(stream);
        const Shown one = askedInTurn(number);
        const Target target = targetIn(sampledPatient(kSeed, number), one, policy);
        const Builder builder = Builder::from(policy);
        const Build build = flawlessBuild(target, builder);
        ASSERT_TRUE(isWhole(build)) << shown(one);
        expectNear(*siteBy(build, target, builder), target.ideal, kExact,
                   shown(one) + ", seed " + std::to_string(kSeed) + " number " + std::to_string(number));
        ASSERT_FALSE(HasFailure());
    }
    for (const Patient& corner : cornerPatients()) {
        for (const Shown one : everyAsked()) {
            const Target target = targetIn(corner, one);
            const Builder builder = Builder::from(defaultPolicy());
            expectNear(*siteBy(flawlessBuild(target, builder), target, builder), target.ideal, kExact,
                       shown(one));
        }
    }
}

TEST(BuildLaw, EveryAskedLandmarkLiesInEveryAskedView)
{
    using namespace build_law_detail;
    for (const Shown one : everyAsked()) {
        const Target target = targetIn(sampledPatient(kSeed, 3), one);
        for (const Landmark landmark : askedLandmarks(one.convention))
            EXPECT_TRUE(placeOf(target, landmark).has_value()) << shown(one) << " " << wordOf(landmark);
    }
}

TEST(BuildLaw, LeftIsTheMirrorOfRight)
{
    using namespace build_law_detail;
    for (int number = 0; number < rounds(3'000); ++number) {
        const Shown one = askedInTurn(number);
        const Patient patient = sampledPatient(kSeed + 1, number);
        const Target right = targetIn(patient.withSide(Side::Right), one);
        const Target left = targetIn(patient.withSide(Side::Left), one);
        const Builder builder = Builder::from(defaultPolicy());
        Build a = flawlessBuild(right, builder);
        Build b = flawlessBuild(left, builder);
        SeedStream stream(kSeed + 2 + static_cast<std::uint64_t>(number));
        for (const Handle handle : handlesOf(buildKindOf(one.convention))) {
            // Laid fingers turn by their tips, which point to one side whoever is the patient.
            if (handle == Handle::FingersTurn)
                continue;
            expectNear(*handleAt(a, right, builder, handle), mirrored(*handleAt(b, left, builder, handle)),
                       kExact, shown(one));
            const Point to =
                *handleAt(a, right, builder, handle) + pointIn(stream, {{-3.0, -3.0}, {3.0, 3.0}});
            a = placed(a, right, builder, handle, to);
            b = placed(b, left, builder, handle, mirrored(to));
        }
        expectNear(*siteBy(a, right, builder), mirrored(*siteBy(b, left, builder)), kExact, shown(one));
        ASSERT_FALSE(HasFailure()) << "number " << number;
    }
}

TEST(BuildLaw, HandlesSetInTheOrderOfTeachingGiveTheFlawlessBuild)
{
    using namespace build_law_detail;
    for (int number = 0; number < rounds(3'000); ++number) {
        const Shown one = askedInTurn(number);
        const Target target = targetIn(sampledPatient(kSeed + 3, number), one);
        const Builder builder = Builder::from(defaultPolicy());
        const Build wanted = flawlessBuild(target, builder);
        Build build = emptyBuild(target);
        if (wanted.hand)
            build = withHand(build, target, builder, wanted.hand->hand);
        if (wanted.fingers)
            build = withFingers(build, target, builder, wanted.fingers->count, wanted.fingers->hand);
        for (const Handle handle : handlesOf(buildKindOf(one.convention))) {
            ASSERT_TRUE(isReady(build, handle)) << shown(one) << " " << wordOf(handle);
            build = placed(build, target, builder, handle, *handleAt(wanted, target, builder, handle));
        }
        if (wanted.cell) {
            build.cell = cellAt(build, target, target.ideal);
            ASSERT_EQ(build.cell, wanted.cell) << shown(one) << ": the ideal point lies in the taught cell";
        }
        ASSERT_TRUE(isWhole(build));
        expectNear(*siteBy(build, target, builder), target.ideal, kExact, shown(one));
        ASSERT_FALSE(HasFailure()) << "number " << number;
    }
}

TEST(BuildLaw, MovingThePalmMovesTheSiteAsMuch)
{
    using namespace build_law_detail;
    SeedStream stream(kSeed + 4);
    for (int number = 0; number < rounds(3'000); ++number) {
        const Policy policy = drawnHand(stream);
        const Target target = targetOf(sampledPatient(kSeed, number), Convention::VentroglutealHand, policy);
        const Builder builder = Builder::from(policy);
        const Build build = anyBuild(target, builder, stream);
        const Point by = pointIn(stream, {{-8.0, -8.0}, {8.0, 8.0}});
        const Build moved = placed(build, target, builder, Handle::Palm, build.hand->palm + by);
        expectNear(*siteBy(moved, target, builder), *siteBy(build, target, builder) + by, 1e-9, "palm");
        ASSERT_FALSE(HasFailure());
    }
}

TEST(BuildLaw, AHandNeverBendsAsAHandCannot)
{
    using namespace build_law_detail;
    SeedStream stream(kSeed + 5);
    for (int number = 0; number < rounds(20'000); ++number) {
        const HandSize size = handSize(drawnHand(stream));
        FreeHand hand = anyHand(stream);
        const Point to = pointIn(stream, {{-40.0, -40.0}, {40.0, 40.0}});
        const FreeHand before = hand;
        switch (stream.below(4)) {
        case 0:
            hand = slid(hand, to);
            ASSERT_EQ(hand.palm, to);
            break;
        case 1: {
            hand = turnedTo(hand, size, to);
            ASSERT_EQ(hand.palm, before.palm);
            const Point way = poseOf(hand, size).indexTip - hand.palm;
            if (distance(to, hand.palm) > size.fingerWidth.value()) {
                ASSERT_NEAR(cross(way, to - hand.palm) / length(way) / distance(to, hand.palm), 0.0, 1e-9);
                ASSERT_GT(dot(way, to - hand.palm), 0.0);
            }
            break;
        }
        case 2: hand = openedTo(hand, size, to); break;
        default: hand = swapped(hand); break;
        }
        ASSERT_GE(hand.opening.value(), kClosedOpening);
        ASSERT_LE(hand.opening.value(), kMostOpening);
        const HandPose pose = poseOf(hand, size);
        const double length = size.length.value();
        ASSERT_NEAR(distance(pose.wrist, pose.fork), size.forkShare * length, 1e-9);
        ASSERT_NEAR(distance(pose.fork, pose.indexTip), (size.indexShare - size.forkShare) * length, 1e-9);
        ASSERT_NEAR(distance(pose.fork, pose.middleTip), (1.0 - size.forkShare) * length, 1e-9);
        ASSERT_NEAR(distance(pose.wrist, hand.palm), size.palm().value() / 2.0, 1e-9);
        const Point index = pose.indexTip - pose.fork;
        const Point middle = pose.middleTip - pose.fork;
        const double opensTo = std::atan2(cross(index, middle), dot(index, middle));
        ASSERT_NEAR(fromRadians(opensTo).value(),
                    hand.opening.value() * (hand.hand == Side::Left ? 1.0 : -1.0), 1e-9);
        const FreeHand back = freeHandOf(pose, size);
        ASSERT_NEAR(distance(back.palm, hand.palm), 0.0, 1e-9);
        ASSERT_EQ(back.opening, hand.opening);
    }
}

TEST(BuildLaw, FeetAndMiddlesStayOnTheirLines)
{
    using namespace build_law_detail;
    SeedStream stream(kSeed + 6);
    for (int number = 0; number < rounds(3'000); ++number) {
        for (const Convention convention : {Convention::VentroglutealMedians, Convention::DeltoidHalfway}) {
            const Target target = targetOf(sampledPatient(kSeed, number), convention);
            const Builder builder = Builder::from(defaultPolicy());
            const Build build = anyBuild(target, builder, stream);
            const auto onLine = [&](Handle handle, Handle from, Handle to) {
                const Point p = *build.point(handle);
                const Point a = *build.point(from);
                const Point b = *build.point(to);
                EXPECT_NEAR(distance(a, p) + distance(p, b), distance(a, b), 1e-9) << wordOf(handle);
            };
            if (convention == Convention::DeltoidHalfway)
                onLine(Handle::LineMiddle, Handle::LineTop, Handle::LineBottom);
            else
                for (const Handle foot : {Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine})
                    onLine(foot, medianOf(foot).sideFrom, medianOf(foot).sideTo);
            ASSERT_FALSE(HasFailure()) << "number " << number;
        }
    }
}

TEST(BuildLaw, NoPointHoweverWildMakesANumberThatIsNone)
{
    using namespace build_law_detail;
    for (const Shown one : everyAsked()) {
        for (int number = 0; number < rounds(400); ++number) {
            SeedStream stream(kSeed + 7 + static_cast<std::uint64_t>(number));
            const Target target = targetIn(sampledPatient(kSeed, number), one);
            const Builder builder = Builder::from(defaultPolicy());
            Build build = flawlessBuild(target, builder);
            const auto handles = handlesOf(buildKindOf(one.convention));
            for (int step = 0; step < 12; ++step) {
                const Handle handle =
                    handles[static_cast<std::size_t>(stream.below(static_cast<int>(handles.size())))];
                const Point to =
                    kHostile[static_cast<std::size_t>(stream.below(static_cast<int>(kHostile.size())))];
                const Build next = placed(build, target, builder, handle, to);
                ASSERT_TRUE(isFinite(to) || next == build) << shown(one) << " " << wordOf(handle);
                build = next;
                ASSERT_TRUE(isFiniteBuild(build, target, builder))
                    << shown(one) << " " << wordOf(handle) << " at " << to.x << ", " << to.y << " number "
                    << number << " step " << step;
            }
        }
    }
}

}  // namespace fb::test::build_law_test
