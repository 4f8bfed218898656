// Laws of what a demonstration changes and moves, over thousands of bodies: every held body is one, bones
// stand still while weight alone changes, the ideal point glides and never leaps, and what is drawn on the
// body stays on it.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/body/anchor.h"
#include "core/body/body_values.h"
#include "core/body/moved_ink.h"
#include "core/grade/grade.h"
#include "core/site/difference.h"
#include "tests/property/any_body.h"

namespace fb::test::lecture_law_test {

namespace lecture_law_detail {

constexpr double kStill = 1e-9;    // cm
constexpr double kReturns = 1e-3;  // cm, of an anchor

double anyNumber(SeedStream& stream)
{
    constexpr std::array kOdd{std::numeric_limits<double>::quiet_NaN(),
                              std::numeric_limits<double>::infinity(),
                              -std::numeric_limits<double>::infinity(),
                              0.0,
                              -1e300,
                              1e300,
                              std::numeric_limits<double>::denorm_min()};
    const int odd = stream.below(3 * static_cast<int>(kOdd.size()));
    return odd < static_cast<int>(kOdd.size()) ? kOdd[static_cast<std::size_t>(odd)]
                                               : stream.between(-50.0, 400.0);
}

// As every picture, caption and grade has them: bone, not the folds of the armpit, which are skin.
bool isOfBone(const std::string& landmark) { return !landmark.starts_with("axilla"); }

}  // namespace lecture_law_detail

using namespace any_body;
using namespace lecture_law_detail;

TEST(LectureLaw, WhateverIsAskedWhatIsHeldIsABody)
{
    for (int number = 0; number < rounds(50'000); ++number) {
        SeedStream stream = streamOf(1, number);
        const BodyValues asked{anyNumber(stream), Sex::Male, anyNumber(stream), anyNumber(stream)};
        const BodyValues body = held(asked);
        const auto patient =
            Patient::make(body.ageYears, body.sex, Cm{body.statureCm}, Kg{body.weightKg}, Side::Left);
        ASSERT_TRUE(patient) << "number " << number << ": " << asked.ageYears << " y " << asked.statureCm
                             << " cm " << asked.weightKg << " kg";
        ASSERT_EQ(*patient, patientOf(asked, Side::Left)) << "number " << number;
        ASSERT_EQ(held(body), body) << "number " << number << ": held twice is held once";
        const ValueRange weights = weightRange(body.statureCm);
        ASSERT_TRUE(body.weightKg >= weights.least && body.weightKg <= weights.most) << number;
    }
}

TEST(LectureLaw, OnTheWayFromBodyToBodyEveryOneHasAMapAndATarget)
{
    for (int number = 0; number < rounds(4'000); ++number) {
        SeedStream stream = streamOf(2, number);
        const BodyValues from = anyBody(stream);
        const BodyValues to = anyBody(stream);
        const double t = stream.unit();
        const BodyValues on = between(from, to, t);
        ASSERT_EQ(between(from, to, 0.0), from);
        ASSERT_EQ(between(from, to, 1.0), to);
        ASSERT_EQ(on.sex, t > 0.0 ? to.sex : from.sex);
        ASSERT_NEAR(on.statureCm - from.statureCm, (to.statureCm - from.statureCm) * t, kStill);
        const Shown one = inTurn(number);
        const auto target =
            locate(atlas(), defaultPolicy(), patientOf(on, anySide(stream)), one.convention, one.view);
        ASSERT_TRUE(target) << told(number, on, one);
        ASSERT_TRUE(isFinite(target->ideal)) << told(number, on, one);
    }
}

TEST(LectureLaw, BonesStandStillWhileWeightAloneChanges)
{
    for (int number = 0; number < rounds(4'000); ++number) {
        SeedStream stream = streamOf(3, number);
        const BodyValues lean = anyBody(stream);
        BodyValues full = lean;
        full.weightKg = stream.between(weightRange(lean.statureCm).least, weightRange(lean.statureCm).most);
        const Shown one = inTurn(number);
        const Side side = anySide(stream);
        const Target before = targetIn(patientOf(lean, side), one);
        const Target after = targetIn(patientOf(full, side), one);
        ASSERT_EQ(before.landmarks.size(), after.landmarks.size());
        for (const auto& [name, place] : before.landmarks) {
            if (isOfBone(name)) {
                ASSERT_LT(distance(place, after.landmarks.at(name)), kStill)
                    << told(number, lean, one) << ": " << name;
            }
        }
        ASSERT_EQ(before.construction.size(), after.construction.size()) << told(number, lean, one);
        for (std::size_t i = 0; i < before.construction.size(); ++i)
            ASSERT_EQ(before.construction[i].code, after.construction[i].code) << told(number, lean, one);
    }
}

TEST(LectureLaw, TheIdealPointGlidesAndNeverLeaps)
{
    // What one tick of a slider may move it in any view, cm: a millimetre is a glide, a centimetre a leap.
    constexpr double kGlide = 0.15;
    // There the bones go over to the stature of younger days, at once: a step of the proportions' own.
    constexpr double kOlderFrom = 65.0;
    for (int number = 0; number < rounds(9'000); ++number) {
        SeedStream stream = streamOf(4, number);
        const BodyValues from = anyBody(stream);
        BodyValues to = from;
        switch (number % 3) {
        case 0: to.weightKg += 0.5; break;
        case 1: to.statureCm += 0.25; break;
        default: to.ageYears += 0.5; break;
        }
        if ((from.ageYears < kOlderFrom) != (to.ageYears < kOlderFrom))
            continue;
        const Shown one = inTurn(number / 3);
        const Point before = targetIn(patientOf(from, Side::Right), one).ideal;
        const Point after = targetIn(patientOf(to, Side::Right), one).ideal;
        ASSERT_LT(distance(before, after), kGlide) << told(number, from, one);
    }
}

TEST(LectureLaw, AnAnchorComesBackAndStaysOnItsLimb)
{
    int onBody = 0;
    for (int number = 0; number < rounds(2'500); ++number) {
        SeedStream stream = streamOf(5, number);
        const View view = kViews[static_cast<std::size_t>(number) % kViews.size()];
        const Plate& plate = plateOf(view);
        const Side side = anySide(stream);
        const BodyValues body = anyBody(stream);
        const BodyValues other = anyBody(stream);
        const BodyMap here = bodyMap(atlas(), view, patientOf(body, side)).value();
        const BodyMap there = bodyMap(atlas(), view, patientOf(other, side)).value();
        for (int i = 0; i < 8; ++i) {
            const Point place = pointIn(stream, plate.paper);
            const int limb = limbAt(plate, here, side, place);
            const auto anchor = anchorOf(plate, here, side, place);
            ASSERT_EQ(anchor.has_value(), limb >= 0) << "number " << number;
            if (!anchor)
                continue;
            ++onBody;
            ASSERT_EQ(anchor->limb, limb) << "number " << number;
            ASSERT_LT(distance(placeOf(*anchor, here, side), place), kReturns) << "number " << number;
            // Its own limb still covers it on any other body; a limb that grew may lie on top of that.
            const Point moved = placeOf(*anchor, there, side);
            ASSERT_GE(limbAt(plate, there, side, moved), limb)
                << "seed " << kLectureSeed << " number " << number << " " << wordOf(view) << " at " << place.x
                << ", " << place.y;
        }
    }
    EXPECT_GT(onBody, rounds(2'500)) << "enough of the places lay on a body";
}

TEST(LectureLaw, ADifferenceIsThatOfAMarkOnTheOthersIdealPoint)
{
    for (int number = 0; number < rounds(3'000); ++number) {
        SeedStream stream = streamOf(9, number);
        const Shown one = inTurn(number);
        const Side side = anySide(stream);
        const BodyValues body = anyBody(stream);
        const Target first = targetIn(patientOf(body, side), one);
        const auto rivals = conventionsOf(siteOf(one.convention));
        const Shown rival{rivals[static_cast<std::size_t>(stream.below(static_cast<int>(rivals.size())))],
                          one.view};
        const Target second = targetIn(patientOf(body, side), rival);
        const TargetDifference way = differenceOf(first, second);
        const TargetDifference back = differenceOf(second, first);
        ASSERT_DOUBLE_EQ(way.apart.value(), back.apart.value());
        ASSERT_DOUBLE_EQ(way.lower.value(), -back.lower.value());
        ASSERT_DOUBLE_EQ(way.forward.value(), -back.forward.value());
        ASSERT_NEAR(way.apart.value(), distance(first.ideal, second.ideal), 1e-6);
        if (!plateOf(one.view).markable || one.view == View::ShoulderThreeQuarter)
            continue;
        const Grade grade = gradeMark(first, defaultPolicy(), second.ideal, MarkedLimb::Arm);
        ASSERT_NEAR(way.lower.value(), grade.offDistal.value(), 1e-5) << told(number, body, one);
        ASSERT_NEAR(way.forward.value(), grade.offAnterior.value(), 1e-5) << told(number, body, one);
    }
}

}  // namespace fb::test::lecture_law_test
