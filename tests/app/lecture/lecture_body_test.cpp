#include "app/lecture/lecture_body.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/grade/grade.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"
#include "tests/support/shipped.h"

namespace fb::test::lecture_body_test {

BodyAsk ask(Convention convention, View view, double weight = 70, Side side = Side::Right)
{
    return {adult(Sex::Male, 176, weight, side), convention, view, 2};
}

LectureBody made(const BodyAsk& of)
{
    return makeLectureBody(shippedLibrary(), shippedLibrary().defaultPolicy(), of).value();
}

std::vector<BodyAsk> everyAsk()
{
    std::vector<BodyAsk> all;
    for (const Convention convention : kConventions)
        for (const View view : kViews)
            for (const Side side : kSides)
                if (siteOf(view) == siteOf(convention))
                    all.push_back(ask(convention, view, 70, side));
    return all;
}

TEST(LectureBodyTest, WhatIsShownIsWhatAGradeIsMadeFrom)
{
    for (const BodyAsk& one : everyAsk()) {
        const LectureBody body = made(one);
        const Atlas shipped = shippedLibrary().atlas(one.view).value();
        const Target graded =
            locate(shipped, shippedLibrary().defaultPolicy(), one.patient, one.convention, one.view).value();
        EXPECT_EQ(body.ask, one);
        EXPECT_EQ(body.target->ideal, graded.ideal) << wordOf(one.view);
        EXPECT_EQ(body.target->region, graded.region) << wordOf(one.view);
        EXPECT_EQ(body.target->side, one.patient.side());
        const BodyMap map = bodyMap(shipped, one.view, one.patient).value();
        for (const auto& [id, point] : body.plate->points)
            EXPECT_EQ(body.map->toPatient(point.limb, point.at), map.toPatient(point.limb, point.at)) << id;
    }
}

TEST(LectureBodyTest, ThePictureIsThisPatientsOwnInkInTheSkinThatIsAsked)
{
    for (const BodyAsk& one : everyAsk()) {
        const LectureBody body = made(one);
        const MovedInk ink = movedInk(*body.plate, *body.map, one.patient);
        EXPECT_EQ(body.picture->plate, body.plate) << "one plate, not a copy";
        EXPECT_EQ(body.plate->view, one.view);
        EXPECT_EQ(body.picture->skinTone, 2);
        EXPECT_EQ(body.picture->ink.paper.low, ink.paper.low);
        EXPECT_EQ(body.picture->ink.paper.high, ink.paper.high);
        ASSERT_EQ(body.picture->ink.shapes.size(), ink.shapes.size());
        EXPECT_EQ(body.picture->ink.shapes.back().rings.front().points,
                  ink.shapes.back().rings.front().points);
    }
}

TEST(LectureBodyTest, AViewThatIsAskedCanBeFeltAndOneThatIsShownOnlyCannot)
{
    for (const BodyAsk& one : everyAsk()) {
        const LectureBody body = made(one);
        const auto asked = askedViews(siteOf(one.view));
        const bool felt = std::ranges::find(asked, one.view) != asked.end();
        ASSERT_EQ(body.feel != nullptr, felt) << wordOf(one.view);
        if (felt) {
            const Step& bone = body.target->construction.front();
            const auto feel = body.feel->at(bone.points.front(), Cm{1.7});
            ASSERT_TRUE(feel) << wordOf(one.view);
            EXPECT_EQ(feel->firmness, Firmness::Hard) << "the first landmark is bone: " << wordOf(one.view);
        }
    }
}

TEST(LectureBodyTest, FatMovesTheOutlineAndNoBone)
{
    const LectureBody lean = made(ask(Convention::VentroglutealHand, View::HipSide, 58));
    const LectureBody heavy = made(ask(Convention::VentroglutealHand, View::HipSide, 120));
    for (const auto& [name, place] : lean.target->landmarks)
        EXPECT_LT(distance(place, heavy.target->landmarks.at(name)), 1e-9) << name;
    EXPECT_GT(heavy.picture->ink.paper.high.y, lean.picture->ink.paper.high.y + 1.0);
}

TEST(LectureBodyTest, TheLabsOwnPolicyIsTheOneThatIsShown)
{
    const Policy tall =
        shippedLibrary().defaultPolicy().with(PolicyKey::HandLength, 22.0).with(PolicyKey::VgOpening, 30.0);
    const BodyAsk one = ask(Convention::VentroglutealHand, View::HipSide);
    const LectureBody body = makeLectureBody(shippedLibrary(), tall, one).value();
    EXPECT_EQ(body.target->hand->length, Cm{22.0});
    EXPECT_EQ(body.target->hand->opening, Degrees{30.0});
}

TEST(LectureBodyTest, AConventionOfAnotherSiteIsAFault)
{
    const auto body = makeLectureBody(shippedLibrary(), shippedLibrary().defaultPolicy(),
                                      ask(Convention::DeltoidStrip, View::ThighSide));
    ASSERT_FALSE(body);
    EXPECT_EQ(body.error().problem, Problem::ConventionOfAnotherSite);
}

}  // namespace fb::test::lecture_body_test
