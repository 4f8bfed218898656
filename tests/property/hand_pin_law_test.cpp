// A larger hand moves the middle of its V: by which way depends on what holds the hand. The table
// is printed; no sign in it is claimed as published.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <string>
#include <vector>

#include "core/hand/hand_pose.h"
#include "core/site/ventrogluteal.h"
#include "tests/property/sampling.h"

namespace fb::test::hand_pin_law_test {

namespace hand_pin_detail {

struct Hip2 {
    Point trochanter, spine;
};

Hip2 hipOf(const Patient& patient)
{
    const Target target = targetOf(patient.withSide(Side::Right), Convention::VentroglutealHand);
    return {target.landmarks.at("greater_trochanter"), target.landmarks.at("asis")};
}

HandSize sized(double length)
{
    HandSize size = handSize(defaultPolicy());
    size.length = Cm{length};
    return size;
}

HandPose laid(double length, Pin pin, const Hip2& hip)
{
    return laidHand(sized(length), hip.trochanter, hip.spine, Degrees{40.0}, pin);
}

Point middleOfV(const HandPose& pose) { return (pose.fork + pose.indexTip + pose.middleTip) * (1.0 / 3.0); }

double fromTrochanter(double length, Pin pin, const Hip2& hip)
{
    return distance(middleOfV(laid(length, pin, hip)), hip.trochanter);
}

// All of one sign, none of them nothing.
int signOfSteps(const std::vector<double>& values)
{
    int sign = 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        const double step = values[i] - values[i - 1];
        const int way = step > 1e-6 ? 1 : step < -1e-6 ? -1 : 0;
        if (way == 0 || (sign != 0 && way != sign))
            return 0;
        sign = way;
    }
    return sign;
}

}  // namespace hand_pin_detail

TEST(HandPinLaw, MiddleOfTheVMovesOneWayWithTheHandForEitherPin)
{
    using namespace hand_pin_detail;
    const ReferenceBody& r = plateOf(View::HipSide).reference;
    const Hip2 hip = hipOf(madePatient(r.ageYears, r.sex, r.stature.value(), r.weight.value(), Side::Right));
    std::printf("hand cm   V's middle to trochanter, cm\n          spine    palm\n");
    std::vector<double> bySpine;
    std::vector<double> byPalm;
    for (double length = 15.0; length <= 22.0; length += 1.0) {
        bySpine.push_back(fromTrochanter(length, Pin::Spine, hip));
        byPalm.push_back(fromTrochanter(length, Pin::Palm, hip));
        std::printf("%6.1f  %7.2f %7.2f\n", length, bySpine.back(), byPalm.back());
    }
    EXPECT_NE(signOfSteps(bySpine), 0) << "pinned by the spine";
    EXPECT_NE(signOfSteps(byPalm), 0) << "pinned by the palm";
    EXPECT_EQ(signOfSteps(byPalm), 1) << "a longer hand on the same heel reaches farther: plain geometry";
}

TEST(HandPinLaw, BothPinsAreMonotoneOnEveryHip)
{
    using namespace hand_pin_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const Hip2 hip = hipOf(sampledPatient(201, number));
        for (const Pin pin : {Pin::Spine, Pin::Palm}) {
            std::vector<double> away;
            for (double length = 15.0; length <= 22.0; length += 0.5)
                away.push_back(fromTrochanter(length, pin, hip));
            ASSERT_NE(signOfSteps(away), 0) << wordOf(pin) << ", seed 201, request " << number;
        }
    }
}

TEST(HandPinLaw, PoseHasTheLengthsOfTheHand)
{
    using namespace hand_pin_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Hip2 hip = hipOf(sampledPatient(202, number));
        for (const Pin pin : {Pin::Spine, Pin::Palm}) {
            for (double length = 13.0; length <= 24.0; length += 1.0) {
                const HandSize size = sized(length);
                const HandPose pose = laid(length, pin, hip);
                ASSERT_NEAR(distance(pose.wrist, pose.indexTip), size.indexShare * length, 1e-9);
                ASSERT_NEAR(distance(pose.wrist, pose.fork), size.forkShare * length, 1e-9);
                ASSERT_NEAR(distance(pose.fork, pose.middleTip), (1.0 - size.forkShare) * length, 1e-9);
                // The hand points along the line from trochanter to spine.
                ASSERT_NEAR(cross(pose.indexTip - pose.wrist, hip.spine - hip.trochanter), 0.0, 1e-9);
                ASSERT_GT(dot(pose.indexTip - pose.wrist, hip.spine - hip.trochanter), 0.0);
            }
        }
    }
}

TEST(HandPinLaw, HandIsPinnedByTheSpineUntilTheTrochanterWouldLeaveItsHeel)
{
    using namespace hand_pin_detail;
    int spine = 0;
    int palm = 0;
    for (int number = 0; number < rounds(500); ++number) {
        const Hip2 hip = hipOf(sampledPatient(203, number));
        for (double length = 13.0; length <= 24.0; length += 0.5) {
            const HandSize size = sized(length);
            const HandPose pose = laidHand(size, hip.trochanter, hip.spine, Degrees{40.0});
            const double heel =
                dot(hip.trochanter - pose.wrist, pose.fork - pose.wrist) / distance(pose.fork, pose.wrist);
            ASSERT_GE(heel, size.heelShare * length - 1e-9) << "seed 203, request " << number;
            if (pose.pin == Pin::Spine) {
                ++spine;
                ASSERT_LE(distance(pose.indexTip, hip.spine), 1e-9);
            } else {
                ++palm;
                ASSERT_NEAR(heel, size.heelShare * length, 1e-9) << "seed 203, request " << number;
                ASSERT_LT(distance(pose.indexTip, hip.trochanter), distance(hip.spine, hip.trochanter));
            }
        }
    }
    EXPECT_GT(spine, 100);
    EXPECT_GT(palm, 10);
}

TEST(HandPinLaw, OpeningIsHeldToTheJointsLimits)
{
    using namespace hand_pin_detail;
    const Hip2 hip{{0.0, 0.0}, {-9.0, 7.0}};
    for (double asked = 0.0; asked <= 90.0; asked += 1.0) {
        const HandPose pose = laidHand(sized(18.0), hip.trochanter, hip.spine, Degrees{asked});
        const Point index = pose.indexTip - pose.fork;
        const Point middle = pose.middleTip - pose.fork;
        const double drawn =
            std::acos(dot(index, middle) / (length(index) * length(middle))) * 180.0 / std::numbers::pi;
        ASSERT_NEAR(drawn, std::clamp(asked, 25.0, 45.0), 1e-6) << asked;
        ASSERT_GT(cross(index, middle), 0.0) << "the middle finger opens back, counter-clockwise";
    }
}

}  // namespace fb::test::hand_pin_law_test
