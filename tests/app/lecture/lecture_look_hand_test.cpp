#include "app/lecture/lecture_look_hand.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_look_hand_test {

Builder builder() { return Builder::from(facesLibrary()->defaultPolicy()); }

const Target& hip(Side side)
{
    static const auto right = bodyFor(Convention::VentroglutealHand, View::HipSide);
    static const auto left =
        bodyFor(Convention::VentroglutealHand, View::HipSide, Stoutness::Average, Side::Left);
    return side == Side::Right ? *right->target : *left->target;
}

HandPose during(const Target& target, StepCode code, double progress)
{
    return handDuring(target, builder(), code, progress).value();
}

double apart(const HandPose& a, const HandPose& b)
{
    return std::max({distance(a.wrist, b.wrist), distance(a.fork, b.fork), distance(a.indexTip, b.indexTip),
                     distance(a.middleTip, b.middleTip)});
}

constexpr std::array kInTurn{StepCode::LayPalm, StepCode::IndexOnSpine, StepCode::MiddleAlongCrest};

TEST(LectureLookHandTest, ArrivesAtTheTargetsOwnHand)
{
    for (const Side side : kSides) {
        const Target& target = hip(side);
        EXPECT_LT(apart(during(target, StepCode::MiddleAlongCrest, 1.0), *target.hand), 1e-6);
        EXPECT_LT(apart(during(target, StepCode::IdealPoint, 0.0), *target.hand), 1e-6);
        EXPECT_EQ(during(target, StepCode::LayPalm, 0.3).hand, handFor(side));
    }
}

TEST(LectureLookHandTest, EachStepBeginsWhereTheOneBeforeEnded)
{
    const Target& target = hip(Side::Right);
    for (std::size_t i = 1; i < kInTurn.size(); ++i)
        EXPECT_LT(apart(during(target, kInTurn[i - 1], 1.0), during(target, kInTurn[i], 0.0)), 1e-6);
    // And the last comes to rest without a jump.
    EXPECT_LT(apart(during(target, StepCode::MiddleAlongCrest, 0.9999),
                    during(target, StepCode::MiddleAlongCrest, 1.0)),
              0.02);
}

TEST(LectureLookHandTest, MovesWithoutJumpsAndOnlyAsAHandCan)
{
    const Target& target = hip(Side::Left);
    for (const StepCode code : kInTurn) {
        HandPose before = during(target, code, 0.0);
        for (int i = 1; i <= 100; ++i) {
            const HandPose now = during(target, code, i / 100.0);
            EXPECT_LT(apart(before, now), 0.8) << std::string(wordOf(code)) << " at " << i;
            EXPECT_NEAR(now.length.value(), before.length.value(), 1e-9);
            EXPECT_GE(now.opening.value(), 0.0);
            EXPECT_LE(now.opening.value(), kMostOpening + 1e-9);
            before = now;
        }
    }
}

TEST(LectureLookHandTest, ThePalmIsLaidBeforeTheFingersTurn)
{
    const Target& target = hip(Side::Right);
    const HandPose laid = during(target, StepCode::LayPalm, 1.0);
    const HandPose turned = during(target, StepCode::IndexOnSpine, 1.0);
    EXPECT_GT(distance(laid.indexTip, target.hand->indexTip), 1.0);
    EXPECT_LT(distance(turned.indexTip, target.hand->indexTip), 1e-3);
    EXPECT_LT(turned.opening.value(), target.hand->opening.value());
}

TEST(LectureLookHandTest, NoHandWhereNoneIsLaid)
{
    const auto arm = bodyFor(Convention::DeltoidStrip, View::ShoulderSide);
    EXPECT_FALSE(handDuring(*arm->target, builder(), StepCode::LayPalm, 0.5));
    const auto medians = bodyFor(Convention::VentroglutealMedians, View::HipSide);
    EXPECT_FALSE(handDuring(*medians->target, builder(), StepCode::Median, 0.5));
}

}  // namespace fb::test::lecture_look_hand_test
