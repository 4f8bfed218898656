// Laws of what a fingertip feels, over thousands of bodies in every view that can be marked.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/feel/feel.h"
#include "core/site/places.h"
#include "tests/property/sampling.h"

namespace fb::test::feel_law_test {

namespace feel_law_detail {

constexpr std::array kMarkable{View::ShoulderSide, View::HipSide, View::ThighFront, View::ThighSide};

// A patient, felt in a view from the right; and the bones as the map has them.
struct Felt {
    Felt(const Patient& whose, View in)
        : patient(whose.withSide(Side::Right)),
          view(in),
          body(bodyMap(atlas(), in, patient).value()),
          bones(feltBones(Places(plateOf(in), body))),
          map(FeelMap::make(atlas(), defaultPolicy(), patient, in).value())
    {
    }
    Patient patient;
    View view{};
    BodyMap body;
    std::vector<FeltBone> bones;
    FeelMap map;

    // Every bone's listed places: points, corners of edges, tops of knobs.
    [[nodiscard]] Bounds bounds() const
    {
        std::vector<Point> all;
        for (const FeltBone& bone : bones)
            all.insert(all.end(), bone.line.begin(), bone.line.end());
        const Bounds box = boundsOf(all);
        return {box.low + Point{-4.0, -4.0}, box.high + Point{4.0, 4.0}};
    }
};

Felt sampled(int number)
{
    return {sampledPatient(404, number), kMarkable[static_cast<std::size_t>(number) % kMarkable.size()]};
}

std::string told(const Felt& felt, int number)
{
    return std::string(wordOf(felt.view)) + ", seed 404, request " + std::to_string(number) + ": " +
           shown(felt.patient);
}

Cm fingerIn(SeedStream& stream) { return Cm{stream.between(1.2, 2.4)}; }

// On very lean bodies the drawn outline runs a little inside of a bone that stands out: the
// nearest skin, by steps of half a millimetre.
Point onSkin(const FeelMap& map, Point bone)
{
    constexpr int kWays = 16;
    for (double away = 0.0; away < 1.5; away += 0.05) {
        for (int turn = 0; turn < kWays; ++turn) {
            const double angle = 2.0 * std::numbers::pi * turn / kWays;
            const Point at = bone + Point{std::cos(angle), std::sin(angle)} * away;
            if (map.at(at, Cm{1.6}))
                return at;
        }
    }
    return bone;
}

bool isUnit(const std::optional<Point>& way) { return !way || std::abs(length(*way) - 1.0) < 1e-9; }

}  // namespace feel_law_detail

using namespace feel_law_detail;

TEST(FeelLaw, ReachFallsWithFatAndIsAtMostACentimetreAboveFortyMillimetres)
{
    const FeelMap map = sampled(1).map;
    Cm before = map.reach(Mm{0.0});
    for (double fat = 0.0; fat < 150.0; fat += 0.25) {
        const Cm now = map.reach(Mm{fat});
        EXPECT_LE(now, before);
        EXPECT_GT(now, Cm{0.0});
        if (fat >= 40.0) {
            EXPECT_LE(now, Cm{1.0});
        }
        before = now;
    }
}

TEST(FeelLaw, EveryFeelKeepsItsPromises)
{
    SeedStream stream(405);
    int pressed = 0;
    for (int number = 0; number < rounds(2000); ++number) {
        const Felt felt = sampled(number);
        const Bounds box = felt.bounds();
        for (int press = 0; press < 20; ++press) {
            const Point at = pointIn(stream, box);
            const Cm finger = fingerIn(stream);
            const auto feel = felt.map.at(at, finger);
            if (!feel)
                continue;
            ++pressed;
            EXPECT_EQ(felt.map.at(at, finger), feel) << told(felt, number);
            EXPECT_TRUE(isUnit(feel->toward) && isUnit(feel->along)) << told(felt, number);
            EXPECT_LE(feel->away, felt.map.reach(feel->fat)) << told(felt, number);
            EXPECT_EQ(feel->shape == BoneShape::None, feel->bone < 0) << told(felt, number);
            if (feel->firmness == Firmness::Hard) {
                EXPECT_NE(feel->shape, BoneShape::None);
                EXPECT_LE(feel->away, finger * 0.5) << told(felt, number);
            }
            if (feel->shape == BoneShape::Edge) {
                EXPECT_TRUE(feel->along) << told(felt, number);
            }
            if (feel->shape == BoneShape::None) {
                EXPECT_FALSE(feel->toward || feel->along) << told(felt, number);
            }
        }
    }
    EXPECT_GT(pressed, rounds(2000) * 10);
}

TEST(FeelLaw, ALeftSideIsTheMirrorOfTheRight)
{
    SeedStream stream(406);
    for (int number = 0; number < rounds(2000); ++number) {
        const Felt felt = sampled(number);
        const FeelMap left =
            FeelMap::make(atlas(), defaultPolicy(), felt.patient.withSide(Side::Left), felt.view).value();
        for (int press = 0; press < 10; ++press) {
            const Point at = pointIn(stream, felt.bounds());
            const Cm finger = fingerIn(stream);
            auto mirror = left.at(mirrored(at), finger);
            if (mirror && mirror->toward)
                mirror->toward = mirrored(*mirror->toward);
            if (mirror && mirror->along)
                mirror->along = mirrored(*mirror->along);
            EXPECT_EQ(mirror, felt.map.at(at, finger)) << told(felt, number);
        }
    }
}

TEST(FeelLaw, ABonyPointIsHardFromRightAboveOnAnyBody)
{
    int felt40 = 0;
    int outside = 0;
    for (int number = 0; number < rounds(4000); ++number) {
        const Felt felt = sampled(number);
        for (const FeltBone& bone : felt.bones) {
            if (bone.shape != BoneShape::Point)
                continue;
            const Point at = onSkin(felt.map, bone.line.front());
            const auto feel = felt.map.at(at, Cm{1.6});
            ASSERT_TRUE(feel) << told(felt, number);
            EXPECT_EQ(feel->firmness == Firmness::Hard, !bone.deep) << told(felt, number);
            const bool onKnob = bone.on >= 0 && felt.bones[static_cast<std::size_t>(bone.on)].area;
            EXPECT_EQ(feel->shape, onKnob ? BoneShape::Broad : BoneShape::Point) << told(felt, number);
            EXPECT_NEAR(feel->away.value(), distance(at, bone.line.front()), 1e-9) << told(felt, number);
            EXPECT_LT(feel->away, Cm{0.6}) << told(felt, number);
            outside += at == bone.line.front() ? 0 : 1;
            felt40 += feel->fat > Mm{40.0} ? 1 : 0;
        }
    }
    EXPECT_GT(felt40, rounds(4000) / 20);
    EXPECT_LT(outside, rounds(4000) / 20);
}

TEST(FeelLaw, ThroughThickFatNoBoneIsFeltFartherThanACentimetre)
{
    SeedStream stream(407);
    int thick = 0;
    for (int number = 0; number < rounds(2000); ++number) {
        const Patient drawn = sampledPatient(407, number);
        const double stature = drawn.stature().value();
        const double weight = std::min(250.0, weightOf(stream.between(36.0, 60.0), stature));
        const Felt felt(
            madePatient(drawn.ageYears(), drawn.sex(), stature, weight, Side::Right, drawn.individual()),
            View::HipSide);
        for (const FeltBone& bone : felt.bones) {
            if (bone.shape != BoneShape::Point)
                continue;
            const double turn = stream.between(0.0, 6.28);
            const Point way{std::cos(turn), std::sin(turn)};
            const auto feel = felt.map.at(bone.line.front() + way * 1.001, Cm{2.4});
            if (!feel || feel->fat <= Mm{40.0})
                continue;
            ++thick;
            EXPECT_LE(feel->away, Cm{1.0}) << told(felt, number);
            if (bone.on < 0) {
                EXPECT_EQ(feel->shape, BoneShape::None) << told(felt, number);
            }
        }
    }
    EXPECT_GT(thick, rounds(2000));
}

TEST(FeelLaw, OfALeanPatientTheSpineIsFeltFromNearlyTwoCentimetres)
{
    SeedStream stream(408);
    for (int number = 0; number < rounds(1000); ++number) {
        const Patient drawn = sampledPatient(408, number);
        const double stature = drawn.stature().value();
        const Felt felt(madePatient(drawn.ageYears(), drawn.sex(), stature, weightOf(19.5, stature),
                                    Side::Right, drawn.individual()),
                        View::HipSide);
        const Point spine = Places(plateOf(View::HipSide), felt.body).landmark("landmark.asis");
        // From the foot's side, where no crest runs.
        const Point at = spine + Point{1.9, 0.0};
        const auto feel = felt.map.at(at, fingerIn(stream));
        ASSERT_TRUE(feel) << told(felt, number);
        EXPECT_LE(feel->fat, Mm{10.0});
        EXPECT_EQ(feel->shape, BoneShape::Point) << told(felt, number);
        EXPECT_NE(feel->firmness, Firmness::Hard) << told(felt, number);
        EXPECT_NEAR(feel->away.value(), 1.9, 1e-9) << told(felt, number);
        ASSERT_TRUE(feel->toward) << told(felt, number);
        EXPECT_LT(distance(at + *feel->toward * feel->away.value(), spine), 1e-9) << told(felt, number);
    }
}

TEST(FeelLaw, WhatLiesBesideLeadsToTheBone)
{
    SeedStream stream(409);
    for (int number = 0; number < rounds(2000); ++number) {
        const Felt felt = sampled(number);
        for (int press = 0; press < 10; ++press) {
            const Point at = pointIn(stream, felt.bounds());
            const auto feel = felt.map.at(at, Cm{1.6});
            if (!feel || !feel->toward || feel->away <= Cm{0.0})
                continue;
            const Point there = at + *feel->toward * feel->away.value();
            double nearest = 1e9;
            for (const FeltBone& bone : felt.bones)
                nearest = std::min(nearest, touched(bone, there).away);
            EXPECT_LT(nearest, 1e-6) << told(felt, number);
        }
    }
}

TEST(FeelLaw, ASweepFollowsTheWholeCrestAndStopsWhenItLeaves)
{
    constexpr double kStep = 0.2;  // cm
    for (int number = 0; number < rounds(300); ++number) {
        const Felt felt(sampledPatient(410, number), View::HipSide);
        std::vector<Point> crest = Places(plateOf(View::HipSide), felt.body).boneLine("line.iliac-crest");
        std::ranges::reverse(crest);
        double whole = 0.0;
        Sweep sweep;
        const auto press = [&](Point bone) {
            const Point at = onSkin(felt.map, bone);
            sweep.add(at, felt.map.at(at, Cm{1.6}).value());
        };
        for (std::size_t i = 0; i + 1 < crest.size(); ++i) {
            const double span = distance(crest[i], crest[i + 1]);
            for (double gone = 0.0; gone < span; gone += kStep)
                press(lerp(crest[i], crest[i + 1], gone / span));
            whole += span;
        }
        press(crest.back());
        EXPECT_NEAR(sweep.followed().value(), whole, 0.03 * whole) << told(felt, number);
        // Over the front spine and on to the foot, where no crest runs.
        for (int step = 6; step < 20; ++step)
            press(crest.back() + Point{kStep * step, 0.0});
        EXPECT_EQ(sweep.followed().value(), 0.0) << "it has left the edge: " << told(felt, number);
    }
}

TEST(FeelLaw, TheCornersOfWhatIsAcceptedAreFeltToo)
{
    for (const Patient& patient : cornerPatients()) {
        for (const View view : kMarkable) {
            const Felt felt(patient, view);
            for (const FeltBone& bone : felt.bones) {
                if (bone.shape != BoneShape::Point)
                    continue;
                const auto feel = felt.map.at(onSkin(felt.map, bone.line.front()), Cm{1.6});
                ASSERT_TRUE(feel) << shown(patient) << ' ' << wordOf(view);
                // A knob's top may lie beyond the skin there; then its surface is felt.
                EXPECT_EQ(feel->firmness == Firmness::Hard, !bone.deep)
                    << shown(patient) << ' ' << wordOf(view);
                EXPECT_NE(feel->shape, BoneShape::None) << shown(patient) << ' ' << wordOf(view);
            }
        }
    }
}

}  // namespace fb::test::feel_law_test
